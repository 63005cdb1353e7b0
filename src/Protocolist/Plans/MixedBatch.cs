using System.Collections.Immutable;
using NodaTime;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>What is mixed of a recipe at one time.</summary>
/// <param name="For">The moves from where the recipe is made to the steps; the first says in what, and in how many batches.</param>
/// <param name="At">When the first of them is wanted; null where no time could be found.</param>
/// <param name="Each">One batch, what stays behind in jugs and in reserve included.</param>
internal sealed record MixedBatch(ImmutableArray<FluidMove> For, OffsetDateTime? At, Volume Each)
{
    /// <summary>In what it is mixed, and in how many batches.</summary>
    public FluidMove First => For[0];

    /// <summary>All that is mixed of a recipe, in the order of the plan; what has no batches of its own is of the one before.</summary>
    public static IEnumerable<MixedBatch> Of(PlannedRecipe recipe, Plan plan)
    {
        var moves = plan.Fluids.Where(m => IsOf(m, recipe)).ToList();
        var made = recipe.Volume / Volume.FromMilliliters(moves.Sum(m => m.Volume.Milliliters));
        for (var from = moves.FindIndex(m => m.Batches > 0); from >= 0 && from < moves.Count;)
        {
            var to = from + 1;
            while (to < moves.Count && moves[to].Batches == 0) to++;
            var (first, together) = (moves[from], moves[from..to]);
            var all = Volume.FromMilliliters(together.Sum(m => m.Volume.Milliliters));
            yield return new([.. together], When(first, plan), all * (made / first.Batches));
            from = to;
        }
    }

    /// <summary>When a filling comes into its step.</summary>
    public static OffsetDateTime? When(FluidMove move, Plan plan) => plan.Step(move.To.Step) is not { } step ? null
        : move.Filling == 0 ? step.Start
        : move.Filling <= step.ChangesAt.Length ? step.ChangesAt[move.Filling - 1] : null;

    private static bool IsOf(FluidMove move, PlannedRecipe recipe) =>
        move is { From.Kind: FluidPlaceKind.Recipe, To.Kind: FluidPlaceKind.Step } && move.Fluid == recipe.Fluid && move.ForImmersion == recipe.ForImmersion;
}
