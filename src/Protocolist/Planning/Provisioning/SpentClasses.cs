using System.Collections.Immutable;
using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using Protocolist.Planning.Drafting;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What sort of waste each filling of each step becomes, by what it holds when it is poured off.</summary>
internal readonly struct SpentClasses
{
    private readonly ImmutableArray<DraftStep> steps;

    /// <summary>Of steps after fixative, the class of each filling; null where the fluid's own class holds.</summary>
    private readonly WasteClass[]?[]? carried;

    private SpentClasses(ImmutableArray<DraftStep> steps, WasteClass[]?[]? carried) => (this.steps, this.carried) = (steps, carried);

    /// <summary>
    /// The first water after formalin is collected with it (common practice; California's fish laboratories collect the first rinse); what follows, by what
    /// comes out of the body into it.
    /// </summary>
    public static SpentClasses Of(ImmutableArray<DraftStep> steps, BodyMeasure body)
    {
        WasteClass[]?[]? classes = null;
        var water = TissueWater.Of(
            body.LotVolume.Nominal, Density.FromKilogramsPerCubicMeter(body.Group.DensityKgPerM3.Nominal), body.Group.WaterFraction.Nominal);
        var carried = new CarriedFormaldehyde(body.HalfThickness.Nominal, water, body.LotVolume.Nominal);
        for (var (at, isFirst) = (0, false); at < steps.Length; at++)
        {
            if (steps[at] is not { Fluid: { } fluid, Volume: { CubicMeters: > 0 } volume } step) continue;
            if (fluid.FormaldehydeGramsPerLitre is { } grams)
            {
                carried.Fixed(grams, step.Kind == StageKind.Inject ? Volume.Zero : volume);
                isFirst = true;
                continue;
            }

            if (!carried.IsAny) continue;
            var fillings = new WasteClass[1 + step.Changes];
            var lasts = (step.When?.Duration ?? step.Least) / fillings.Length;
            for (var i = 0; i < fillings.Length; i++)
            {
                var percent = carried.Into(volume, lasts) / 10; // g/L in 100 g, as heavy as water
                fillings[i] = isFirst && fluid.IsWater ? WasteClass.Formaldehyde : ClassOf(fluid, percent);
                isFirst = false;
            }

            (classes ??= new WasteClass[]?[steps.Length])[at] = fillings;
        }

        return new(steps, classes);
    }

    /// <summary>The class of one filling of a step.</summary>
    public WasteClass Of(int step, int filling) => carried?[step] is { } fillings ? fillings[filling] : steps[step].Fluid!.WasteClass;

    private static WasteClass ClassOf(Fluid fluid, double formaldehyde) =>
        formaldehyde < 0.1 ? fluid.WasteClass : WasteClasses.Of(formaldehyde, fluid.IsAlcohol ? fluid.AlcoholVolumePercent : 0);
}
