using System.Collections.Immutable;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning.Provisioning;

/// <summary>Where every volume of fluid comes from and where it goes. What enters a step leaves it, or stays where the plan says.</summary>
internal static class FluidFlow
{
    public const string Tap = "tap or source";
    public const string InBody = "stays in the body; what runs back is collected with the fixative";
    public const string FinalVessel = "stays in the final vessel";
    public const string Reserve = "reserve, kept labelled for topping up";

    public static ImmutableArray<FluidMove> Moves(IEnumerable<FluidUse> uses, RecipeBook recipes, IReadOnlyList<DraftStep> steps, ImmutableArray<PlannedWaste> waste)
    {
        var moves = ImmutableArray.CreateBuilder<FluidMove>();
        foreach (var use in uses)
        {
            var isMade = recipes.Recipes.Any(r => r.Use == use) || !use.Fluid.IsWater;
            var from = isMade ? WasteBook.RecipeOf(use) : Tap;
            foreach (var (stepId, volume) in use.Steps)
            {
                moves.Add(new(use.Id, volume, from, stepId));
                moves.Add(new(use.Id, volume, stepId, Destination(steps.First(s => s.Id == stepId), use.Fluid.Name, waste)));
            }

            if (!isMade) continue;
            var jugs = waste.FirstOrDefault(w => w.Step == from)?.Destination ?? "dries in the jugs";
            moves.Add(new(use.Id, use.Dead, from, jugs));
            moves.Add(new(use.Id, use.Spare, from, Reserve));
        }

        return moves.DrainToImmutable();
    }

    private static string Destination(DraftStep step, string fluid, ImmutableArray<PlannedWaste> waste) => step.Kind switch
    {
        StageKind.Inject => InBody,
        StageKind.House => FinalVessel,
        _ => waste.FirstOrDefault(w => w.Step == step.Id && w.What == fluid)?.Destination ?? "too little to collect",
    };
}
