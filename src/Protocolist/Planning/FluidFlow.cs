using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>Where every volume of fluid comes from and where it goes. What enters a step leaves it, or stays where the plan says.</summary>
internal static class FluidFlow
{
    public const string Tap = "tap or source";
    public const string InBody = "stays in the body; what runs back is collected with the fixative";
    public const string FinalVessel = "stays in the final vessel";
    public const string Reserve = "reserve, kept labelled for topping up";

    public static ImmutableArray<FluidMove> Moves(ImmutableArray<FluidUse> uses, IReadOnlyList<DraftStep> steps, ImmutableArray<PlannedWaste> waste)
    {
        var moves = ImmutableArray.CreateBuilder<FluidMove>();
        foreach (var use in uses)
        {
            var from = use.Fluid.IsWater ? Tap : $"recipe: {use.Fluid.Name}";
            foreach (var (stepId, volume) in use.Steps)
            {
                var step = steps.First(s => s.Id == stepId);
                moves.Add(new(use.Fluid.Name, volume, from, stepId));
                moves.Add(new(use.Fluid.Name, volume, stepId, Destination(step, waste)));
            }

            if (!use.Fluid.IsWater) moves.Add(new(use.Fluid.Name, use.Made - use.Asked, from, Reserve));
        }

        return moves.DrainToImmutable();
    }

    /// <summary>What is poured off at the end of each step, by class, with a named destination.</summary>
    public static ImmutableArray<PlannedWaste> Waste(ImmutableArray<FluidUse> uses, IReadOnlyList<DraftStep> steps, WasteRules rules)
    {
        var waste = ImmutableArray.CreateBuilder<PlannedWaste>();
        foreach (var use in uses)
        {
            foreach (var (stepId, volume) in use.Steps)
            {
                var step = steps.First(s => s.Id == stepId);
                if (step.Kind is StageKind.Inject or StageKind.House) continue;
                var kind = ClassOf(step, steps);
                var route = rules.Route(use.Fluid.Name, kind, Amount.Of(volume)).Value!;
                waste.Add(new(use.Fluid.Name, volume, Words(kind), route.Destination, stepId));
            }
        }

        return waste.DrainToImmutable();
    }

    public static WasteClass ClassOf(DraftStep step, IReadOnlyList<DraftStep> steps)
    {
        var fluid = step.Fluid!;
        if (fluid.IsWater) return AfterFormaldehyde(step, steps) ? WasteClass.Formaldehyde : WasteClass.RinseWater;
        return Purchasing.Waste.ClassOf(fluid.FormaldehydeMassPercent ?? 0, fluid.AlcoholVolumePercent);
    }

    /// <summary>The first water after formalin carries formaldehyde and is collected with it; the washes that follow go where local rules allow. Common practice.</summary>
    private static bool AfterFormaldehyde(DraftStep step, IReadOnlyList<DraftStep> steps)
    {
        var before = steps.TakeWhile(s => s.Id != step.Id).LastOrDefault(s => s.Fluid is not null && s.Volume is not null);
        return before?.Fluid is { HasFormaldehyde: true };
    }

    private static string Destination(DraftStep step, ImmutableArray<PlannedWaste> waste) => step.Kind switch
    {
        StageKind.Inject => InBody,
        StageKind.House => FinalVessel,
        _ => waste.First(w => w.Step == step.Id).Destination,
    };

    private static string Words(WasteClass kind) => kind switch
    {
        WasteClass.Formaldehyde => "formaldehyde, hazardous",
        WasteClass.FlammableAlcohol => "alcohol, flammable",
        WasteClass.FormaldehydeAndAlcohol => "formaldehyde and alcohol, hazardous and flammable",
        WasteClass.DiluteAlcohol => "dilute alcohol",
        _ => "rinse water",
    };
}
