using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Making;
using Protocolist.Planning.Provisioning;

namespace Protocolist.Planning.Deciding;

/// <summary>Something that a way took by itself and that may be otherwise: a vessel in some steps, or a stock for a fluid.</summary>
/// <param name="Others">What else may be settled, on top of what is.</param>
internal sealed record Means(ImmutableArray<Func<Settled, Settled>> Others)
{
    /// <summary>Those by which a way may come to do less harm; what they cannot change is not tried.</summary>
    public static ImmutableArray<Means> Worthwhile(Way way, Question question)
    {
        var waits = way.AwaitsDelivery;
        var cash = way.Harm[Harm.Money];
        var (hasStockHarm, hasFluidHarm) = (Has(way, OrderOfHarm.OfStock), Has(way, OrderOfHarm.OfFluid));
        var late = waits || way.Harm[Harm.Hands] > 0;
        if (!late && cash == 0 && !hasStockHarm && !hasFluidHarm) return [];
        var (draft, provisioned, day) = (way.Made.Draft!, way.Made.Provisioned!, question.Request.Bench.On(question.Request.Start.Date));
        var open = ImmutableArray.CreateBuilder<Means>();
        if (day.VesselsForSale.Count > 0) open.AddRange(Vessels(draft, day, question, late, cash));
        if (hasFluidHarm) open.AddRange(Roomier(way, draft, day, question));
        if (waits || hasStockHarm) open.AddRange(Supplies(provisioned, question));
        return open.DrainToImmutable();
    }

    /// <summary>All that may be otherwise and is worth a thought: the vessels that fix and that house, and the stock of each fluid.</summary>
    public static IEnumerable<Means> All(Way way, Question question)
    {
        var (draft, day) = (way.Made.Draft!, question.Request.Bench.On(question.Request.Start.Date));
        foreach (var step in draft.Steps)
        {
            if (step.Kind is not (StageKind.Immerse or StageKind.House) || step.Vessel is not { } own) continue;
            if (question.Request.Wishes.Vessels.ContainsKey(step.Id)) continue;
            ImmutableArray<Func<Settled, Settled>> others = [.. VesselChoice.Worthwhile(step, draft.Body, draft.Posture!.Body, day)
                .Where(v => v.Vessel.Id != own.Vessel.Id).Select(v => (Func<Settled, Settled>)(settled => settled.WithVessel(step.Id, v.Vessel.Id)))];
            if (others.Length > 0) yield return new(others);
        }

        foreach (var supply in Supplies(way.Made.Provisioned!, question)) yield return supply;
    }

    /// <summary>
    /// A vessel that is bought is used in each step that it serves as well with less fluid: that is all it can save, and worth it only where fluid is bought.
    /// A body that waits may be better off in what is there.
    /// </summary>
    private static IEnumerable<Means> Vessels(Draft draft, StockDay day, Question question, bool late, long cash)
    {
        var bought = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        var there = new List<Means>();
        foreach (var step in draft.Steps)
        {
            if (step.Vessel is not { } own || question.Request.Wishes.Vessels.ContainsKey(step.Id)) continue;
            var all = VesselChoice.Worthwhile(step, draft.Body, draft.Posture!.Body, day);
            foreach (var (vessel, price, isAsGood) in all)
            {
                if (vessel.Id == own.Vessel.Id || price == 0 || !isAsGood || price >= cash) continue;
                if (!bought.TryGetValue(vessel.Id, out var steps)) bought[vessel.Id] = steps = [];
                steps.Add(step.Id);
            }

            if (!late || all.Length < 2 || all[0].Price == 0) continue;
            there.Add(new([.. all.Where(v => v.Price == 0).Select(v => (Func<Settled, Settled>)(settled => settled.WithVessel(step.Id, v.Vessel.Id)))]));
        }

        // What comes by post is there for the later steps, if not for the first.
        foreach (var (vessel, steps) in bought)
        {
            yield return new([
                settled => steps.Aggregate(settled, (sofar, step) => sofar.WithVessel(step, vessel)),
                settled => steps.Skip(1).Aggregate(settled, (sofar, step) => sofar.WithVessel(step, vessel)),
                .. steps.Select(step => (Func<Settled, Settled>)(settled => settled.WithVessel(step, vessel))),
            ]);
        }

        foreach (var means in there) yield return means;
    }

    /// <summary>The stock behind each fluid, where there is more than one way and nothing is wished.</summary>
    private static IEnumerable<Means> Supplies(Provisioned provisioned, Question question)
    {
        foreach (var (need, ways) in provisioned.Choice.Ways)
        {
            if (ways.IsEmpty || question.Request.Wishes.Supplies.ContainsKey(need.Key) || provisioned.Choice.RecipeOf(need) is not { } recipe) continue;
            var own = recipe.Way.Supply.Id;
            ImmutableArray<Func<Settled, Settled>> others = [.. Different(need, ways).Select(w => w.Supply.Id).Where(w => w != own)
                .Select(o => (Func<Settled, Settled>)(settled => settled.WithSupply(need.Key, o)))];
            if (others.Length > 0) yield return new(others);
        }
    }

    /// <summary>More fluid than a step needs may weaken less by what the body brings along.</summary>
    private static IEnumerable<Means> Roomier(Way way, Draft draft, StockDay day, Question question)
    {
        foreach (var step in draft.Steps)
        {
            if (step.Vessel is not { } own || question.Request.Wishes.Vessels.ContainsKey(step.Id) || !IsSaid(step.Id)) continue;
            ImmutableArray<Func<Settled, Settled>> others = [.. VesselChoice.Fitting(step, draft.Body, draft.Posture!.Body, day)
                .Where(f => f.FluidVolume > own.FluidVolume).Select(f => (Func<Settled, Settled>)(settled => settled.WithVessel(step.Id, f.Vessel.Id)))];
            if (others.Length > 0) yield return new(others);
        }

        bool IsSaid(string step) => way.Made.Plan.Findings.Any(f => f.Subject == step && f.Severity > Severity.Note && OrderOfHarm.OfFluid.Contains(f.Id));
    }

    /// <summary>Whether something that is more than a note is told of a way.</summary>
    public static bool Has(Way way, FrozenSet<string> ids)
    {
        foreach (var finding in way.Made.Plan.Findings)
        {
            if (finding.Severity > Severity.Note && ids.Contains(finding.Id)) return true;
        }

        return false;
    }

    /// <summary>The ways that differ in what they take; of those that take the same the first stands for all.</summary>
    private static IEnumerable<FluidWay> Different(FluidNeed need, ImmutableArray<FluidWay> ways) => ways.DistinctBy(way => string.Join('|',
        ChosenRecipe.Demands(need, way).OrderBy(d => d.Product).Select(d => FormattableString.Invariant($"{d.Product}: {d.Units}"))
            .Concat(way.Parts.Where(p => p.Material is null).Select(p => p.Part.Name))));
}
