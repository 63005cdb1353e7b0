using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Deciding;
using Protocolist.Planning.Making;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning.Comparing;

/// <summary>A plan as one way among others: what it is, and its numbers.</summary>
internal static class WayWriting
{
    private static readonly Phrase Gains = new("compared.gains", "{gains:, }{but}");
    private static readonly Phrase But = new("compared.but", "; but {why}");

    /// <param name="way">The way.</param>
    /// <param name="own">The planner's own.</param>
    /// <param name="question">What was asked.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="kinds">The groups and substances that there are.</param>
    public static ComparedWay Of(Way way, Way own, Question question, string name, Kinds kinds)
    {
        var (made, plan) = (way.Made, way.Made.Plan.Value!);
        return new()
        {
            Name = name,
            GoodFor = ReferenceEquals(way, own) ? default : GoodFor(way.Harm, own.Harm),
            Choices = plan.Choices,
            Vessels = Vessels(way).ToImmutableSortedDictionary(s => s.Step, s => s.Vessel, StringComparer.Ordinal),
            Supplies = Supplies(way).ToImmutableSortedDictionary(s => s.Fluid, s => s.Supply, StringComparer.Ordinal),
            Wishes = way.Settled.With(question.Request.Wishes),
            Startable = plan.Startable,
            Days = plan.Start is { } start && plan.End is { } end ? (end.ToInstant() - start.ToInstant()).TotalDays : null,
            HandsOnHours = plan.Steps.Sum(s => s.HandsOn.TotalHours),
            CostNow = plan.Costs.Cash,
            OverTenYears = plan.Costs.OverTenYears,
            FormaldehydeStockLitres = plan.Recipes.SelectMany(r => r.Parts).Sum(StockEquivalent),
            FlammableAlcoholLitres = plan.Recipes
                .SelectMany(r => r.Parts)
                .Where(p => p.Fluid is { AlcoholVolumePercent: >= 24 })
                .Sum(p => p.Volume?.Liters ?? 0),
            Findings = [.. plan.Findings.Where(f => f.Severity != Severity.Note)],
            Remarks = KeepingRemarks.Of(plan, kinds),
        };
    }

    /// <summary>All in which it differs from other ways.</summary>
    public static IEnumerable<string> ChoicesVesselsAndSupplies(Way way) =>
        way.Made.Draft!.Choices.Values.Concat(way.Made.Draft.Steps.Select(s => s.Vessel?.Vessel.Id ?? "")).Concat(Supplies(way).Select(s => s.Supply));

    /// <summary>A rinse or a bath is poured off again, and its vessel changes little; what fixes and what houses decides volumes, cost and care.</summary>
    private static IEnumerable<(string Step, string Vessel)> Vessels(Way way) => way.Made.Draft!.Steps
        .Where(s => s.Kind is StageKind.Immerse or StageKind.House && s.Vessel is not null).Select(s => (s.Id, s.Vessel!.Vessel.Id));

    private static IEnumerable<(string Fluid, string Supply)> Supplies(Way way) =>
        way.Made.Provisioned!.Choice.Recipes.Where(r => !r.Need.Fluid.IsWater).Select(r => (r.Need.Key, r.Way.Supply.Id));

    /// <summary>In what it does better than the planner's own, and the first thing that it does worse.</summary>
    private static Message GoodFor(HarmDone way, HarmDone own)
    {
        var gains = new List<Message>();
        Harm? worse = null;
        for (var harm = Harm.Start; harm <= Harm.Shelf; harm++)
        {
            if (way[harm] < own[harm] && harm != Harm.Option) gains.Add(HarmWords.Gain(harm));
            if (way[harm] > own[harm]) worse ??= harm;
        }

        var but = worse is { } harmful ? But.With(("why", HarmWords.More(harmful))) : default(Message);
        return gains.Count == 0 ? HarmWords.NoGain.With(("but", but)) : Gains.With(Argument.Messages("gains", gains), ("but", but));
    }

    /// <summary>Litres of the reference stock that hold as much formaldehyde as this part.</summary>
    private static double StockEquivalent(PlannedPart part) =>
        part.Fluid is { HasFormaldehyde: true, FormaldehydeGramsPerLitre: { } grams }
            ? (part.Volume?.Liters ?? 0) * grams / (Fluid.ReferenceStock.FormaldehydeGramsPerLitre ?? grams)
            : 0;
}
