using System.Collections.Immutable;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Making;
using Protocolist.Planning.Provisioning;

namespace Protocolist.Planning.Comparing;

/// <summary>Something that the planner chose by itself and that could be otherwise: a step's vessel, or what a fluid is made from.</summary>
/// <param name="Of">The step's id, or the fluid.</param>
/// <param name="IsVessel">A vessel; else a supply.</param>
/// <param name="Options">What it can be, the planner's own first.</param>
internal sealed record Alternatives(string Of, bool IsVessel, ImmutableArray<string> Options)
{
    public PlanRequest With(PlanRequest request, string option)
    {
        var wishes = request.Wishes;
        return request with
        {
            Wishes = IsVessel ? wishes with { Vessels = wishes.Vessels.SetItem(Of, option) } : wishes with { Supplies = wishes.Supplies.SetItem(Of, option) },
        };
    }
}

/// <summary>A plan and what in it could be otherwise.</summary>
internal sealed record Variation(PlanRequest Request, MadePlan Made, ImmutableArray<Alternatives> Open)
{
    /// <summary>Every option of every question with every other; the planner's own combination as it is.</summary>
    public static IEnumerable<PlanRequest> Combined(Variation own)
    {
        IEnumerable<PlanRequest> all = [own.Request];
        foreach (var alternatives in own.Open)
            all = all.SelectMany(request => alternatives.Options.Select((option, i) => i == 0 ? request : alternatives.With(request, option)));
        return all;
    }

    /// <summary>Each option that is not the planner's own, everything else as the planner has it.</summary>
    public static IEnumerable<PlanRequest> OneAtATime(Variation own) =>
        own.Open.SelectMany(d => d.Options.Skip(1).Select(option => d.With(own.Request, option)));

    /// <summary>The vessels of the steps that fix and house, and the stock behind each fluid, where there is more than one and nothing is wished.</summary>
    public static IEnumerable<Alternatives> AlternativesOf(PlanRequest request, MadePlan made)
    {
        if (made is not { Draft: { } draft, Provisioned: { } provisioned }) yield break;
        var day = request.Bench.On(request.Start.Date);
        foreach (var step in draft.Steps.Where(s => IsWeighed(s) && s.Vessel is not null && !request.Wishes.Vessels.ContainsKey(s.Id)))
        {
            var own = step.Vessel!.Vessel.Id;
            var fitting = VesselChoice.Fitting(step, draft.Body, draft.Posture!.Body, day);
            ImmutableArray<string> others = [.. fitting.Select(f => f.Vessel.Id).Where(id => id != own)];
            if (others.Length > 0) yield return new(step.Id, true, [own, .. others]);
        }

        foreach (var (need, ways) in provisioned.Choice.Ways.OrderBy(w => w.Need.Key, StringComparer.Ordinal))
        {
            var fluid = need.Key;
            if (ways.IsEmpty || request.Wishes.Supplies.ContainsKey(fluid) || provisioned.Choice.RecipeOf(need) is not { } recipe) continue;
            var own = recipe.Way.Supply.Id;
            ImmutableArray<string> others = [.. Different(need, ways).Select(w => w.Supply.Id).Where(w => w != own)];
            if (others.Length > 0) yield return new(fluid, false, [own, .. others]);
        }
    }

    /// <summary>The ways that differ in what they take; of those that take the same the first stands for all.</summary>
    private static IEnumerable<FluidWay> Different(FluidNeed need, ImmutableArray<FluidWay> ways) => ways.DistinctBy(way => string.Join('|',
        ChosenRecipe.Demands(need, way).OrderBy(d => d.Product).Select(d => FormattableString.Invariant($"{d.Product}: {d.Units}"))
            .Concat(way.Parts.Where(p => p.Material is null).Select(p => p.Part.Name))));

    /// <summary>A rinse or a bath is poured off again, and its vessel changes little; what fixes and what houses decides volumes, cost and care.</summary>
    public static bool IsWeighed(DraftStep step) => step.Kind is StageKind.Immerse or StageKind.House;
}
