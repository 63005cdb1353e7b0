using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Infiltration;
using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using Protocolist.Vessels.Glass;
using UnitsNet;

namespace Protocolist.Checks;

/// <summary>Everything a check may look at: the finished plan, and what stands behind it.</summary>
internal sealed record ReviewCase(Plan Plan, BodyMeasure Body, Bench Bench, Protocol Protocol)
{
    /// <summary>The steps in order, and what follows from them, kept in step with every change.</summary>
    public required ImmutableArray<ReviewStep> Steps
    {
        get;
        init
        {
            field = value;
            FluidSteps = Those(value, s => s.Fluid is not null && s.Kind is not (StageKind.Sample or StageKind.Discard));
            Formalin = Those(FluidSteps, s => s.Fluid!.HasFormaldehyde);
            Alcohol = Those(FluidSteps, s => s.Fluid!.IsAlcohol);
            (House, FirstFixing, Opens) = (null, null, false);
            foreach (var step in FluidSteps)
            {
                if (step.Kind == StageKind.House) House = step;
                if (step.Kind is StageKind.Inject or StageKind.Immerse) FirstFixing ??= step;
            }

            foreach (var step in value) Opens |= step.Kind is StageKind.Slit or StageKind.Inject;
        }
    }

    /// <summary>The steps in which fluid meets the body, in order.</summary>
    public ImmutableArray<ReviewStep> FluidSteps { get; private init; } = [];

    /// <summary>Those of them with formaldehyde.</summary>
    public ImmutableArray<ReviewStep> Formalin { get; private init; } = [];

    /// <summary>Those of them with alcohol.</summary>
    public ImmutableArray<ReviewStep> Alcohol { get; private init; } = [];

    /// <summary>The move into the final vessel; null where there is none.</summary>
    public ReviewStep? House { get; private init; }

    /// <summary>The first step that fixes; null where none does.</summary>
    public ReviewStep? FirstFixing { get; private init; }

    /// <summary>Whether knife or needle goes in.</summary>
    public bool Opens { get; private init; }

    /// <summary>Steps after sealing: inspections and topping up.</summary>
    public ImmutableArray<ReviewStep> Care { get; init; } = [];

    /// <summary>What the passes before had to say.</summary>
    public ImmutableArray<Finding> Earlier { get; init; } = [];

    /// <summary>The model's time for this body to be fixed to the core; null where nothing fixes it.</summary>
    public BodyFixation? Fixation { get; init; }

    /// <summary>The final vessel as a tank of glass, where it is one and deep enough to need a reckoning.</summary>
    public Checked<TankDesign>? Tank { get; init; }

    /// <summary>What stands on the shelf and is bought, summed.</summary>
    public StoredTotals Stored { get; init; } = StoredTotals.None;

    /// <summary>Which fluid or salt an item of stock is, as far as anybody can tell.</summary>
    public required Func<StockItem, (Fluid? Fluid, Salt? Salt)> Holds { get; init; }

    /// <summary>What a name of a house check's condition stands for; null where this plan has no such thing.</summary>
    public Func<string, FormulaValue?> ValueOf { get; init; } = _ => null;

    public TaxonGroup Group => Body.Group;

    public Specimen Specimen => Body.Specimen;

    /// <summary>The water that the body, or the lot, brings along.</summary>
    public Volume Water =>
        TissueWater.Of(Body.LotVolume.Nominal, Density.FromKilogramsPerCubicMeter(Group.DensityKgPerM3.Nominal), Group.WaterFraction.Nominal);

    /// <summary>What is left for fluid to cross, cuts and injections counted.</summary>
    public Length Depth => Fixation is { } fixation ? Length.FromMillimeters(fixation.Slowest.DepthMm) : Body.HalfThickness.Nominal;

    /// <summary>Whether the history of the specimen, as somebody noted it, has one of these words.</summary>
    public bool HistoryHas(HistoryWords words) => words.AreIn(Specimen.HowObtained) || words.AreIn(Specimen.Notes);

    /// <summary>The first step of a kind; null where there is none.</summary>
    public ReviewStep? First(StageKind kind)
    {
        foreach (var step in Steps)
        {
            if (step.Kind == kind) return step;
        }

        return null;
    }

    /// <summary>Where a step stands in the order; -1 for none.</summary>
    public int IndexOf(ReviewStep? step)
    {
        for (var i = 0; i < Steps.Length; i++)
        {
            if (ReferenceEquals(Steps[i], step)) return i;
        }

        return -1;
    }

    /// <summary>Whether any step declares to see to that.</summary>
    public bool Covers(Coverage what)
    {
        foreach (var step in Steps)
        {
            if ((step.Covers & what) != 0) return true;
        }

        return false;
    }

    /// <summary>What the passes before had to say under an id.</summary>
    public ImmutableArray<Finding> Found(string id)
    {
        ImmutableArray<Finding> found = [];
        foreach (var finding in Earlier)
        {
            if (string.Equals(finding.Id, id, StringComparison.Ordinal)) found = found.Add(finding);
        }

        return found;
    }

    private static ImmutableArray<ReviewStep> Those(ImmutableArray<ReviewStep> steps, Func<ReviewStep, bool> which)
    {
        var those = ImmutableArray.CreateBuilder<ReviewStep>(steps.Length);
        foreach (var step in steps)
        {
            if (which(step)) those.Add(step);
        }

        return those.DrainToImmutable();
    }
}
