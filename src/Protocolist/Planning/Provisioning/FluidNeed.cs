using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What one step uses of a fluid.</summary>
/// <param name="Step">The step's place in the plan; -1 for none.</param>
/// <param name="Volume">How much, changes of the fluid included.</param>
internal readonly record struct FluidUse(int Step, Volume Volume);

/// <summary>One fluid that steps use: how much of it, and where.</summary>
internal sealed class FluidNeed
{
    /// <summary>Below this nothing can be measured out.</summary>
    private static readonly Volume Least = Volume.FromMicroliters(1);

    private FluidNeed(Fluid fluid, bool forImmersion, ImmutableArray<FluidUse> uses, ImmutableArray<string> steps)
    {
        (Fluid, ForImmersion, Uses, Steps) = (fluid, forImmersion, uses, steps);
        var sum = 0.0;
        foreach (var use in uses) sum += use.Volume.CubicMeters;
        Asked = Volume.FromCubicMeters(sum);
        var asked = Amount.Of(Asked);
        Dead = sum > 0 ? (Reserve.Usual.Used(asked, uses.Length) - asked).Volume : Volume.Zero;
        Spare = Reserve.Usual.ForSpills(asked).Volume;
        Made = Grid.On(Asked + Dead + Spare); // so that its recipe and what stands over it are rounded from one number
    }

    public Fluid Fluid { get; }

    /// <summary>
    /// Whether it is for lying in alone, and used fixative that may be restored for it is there: for lying in, never for injecting or keeping.
    /// </summary>
    public bool ForImmersion { get; }

    public ImmutableArray<FluidUse> Uses { get; }

    /// <summary>The ids of the steps, in the order of <see cref="Uses"/>.</summary>
    public ImmutableArray<string> Steps { get; }

    public Volume Asked { get; }

    /// <summary>What stays behind in jugs, hoses and syringes, once for each step.</summary>
    public Volume Dead { get; }

    /// <summary>What is kept ready for spills.</summary>
    public Volume Spare { get; }

    /// <summary>What is made: what is asked, and a reserve for what spills and clings.</summary>
    public Volume Made { get; private init; }

    /// <summary>The name by which a person says what it is to be made from, the same in every language.</summary>
    public string Key => ForImmersion ? $"{Fluid.Name} for immersion" : Fluid.Name;

    /// <summary>What people call it; two needs of one fluid differ by it.</summary>
    public Message Name => PlannedRecipe.NameOf(Fluid, ForImmersion);

    /// <summary>What several plans make of a fluid together, their reserves included.</summary>
    public static FluidNeed Together(Fluid fluid, Volume volume) => new(fluid, false, [new(-1, volume)], []) { Made = volume };

    /// <summary>What the steps use, by fluid.</summary>
    /// <param name="steps">The steps, with their fluids and volumes.</param>
    /// <param name="day">The bench on the day of use.</param>
    public static List<FluidNeed> Of(ImmutableArray<DraftStep> steps, StockDay day)
    {
        var (needs, open) = (new List<FluidNeed>(), new bool[steps.Length]);
        for (var i = 0; i < steps.Length; i++) open[i] = steps[i] is { Fluid: not null, Volume: { } volume } && volume >= Least;
        for (var first = 0; first < steps.Length; first++)
        {
            if (!open[first]) continue;
            var (fluid, forImmersion) = (steps[first].Fluid!, IsForImmersion(steps[first], day));
            var count = 0;
            for (var i = first; i < steps.Length; i++)
            {
                if (open[i] && IsSame(steps[i])) count++;
            }

            var (uses, ids) = (ImmutableArray.CreateBuilder<FluidUse>(count), ImmutableArray.CreateBuilder<string>(count));
            for (var i = first; i < steps.Length; i++)
            {
                if (!open[i] || !IsSame(steps[i])) continue;
                open[i] = false;
                uses.Add(new(i, FreshFor(steps[i])));
                ids.Add(steps[i].Id);
            }

            needs.Add(new(fluid, forImmersion, uses.MoveToImmutable(), ids.MoveToImmutable()));

            bool IsSame(DraftStep step) => (ReferenceEquals(step.Fluid, fluid) || step.Fluid == fluid) && IsForImmersion(step, day) == forImmersion;
        }

        return needs;
    }

    /// <summary>What a step takes in all, changes included, without what has served in another bath.</summary>
    public static Volume FreshFor(DraftStep step)
    {
        var all = step.Volume!.Value * (1 + step.Changes);
        return step.Work is SoakWork { Again: { } again } ? all - again.Volume : all;
    }

    private static bool IsForImmersion(DraftStep step, StockDay day) =>
        step.Kind == StageKind.Immerse && step.Fluid!.HasFormaldehyde && day.CanRestore(step.Fluid);
}
