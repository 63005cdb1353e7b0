using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Making;
using Protocolist.Plans;

namespace Protocolist.Planning.Deciding;

/// <summary>What was decided and why, written into the plan: over what each option was chosen, and what no other way avoids.</summary>
internal static class DecisionWriting
{
    private static readonly Phrase Before = new("decided.before", "taken before '{other}', {why}");
    private static readonly Phrase NoneIsBetter = new("decided.none-is-better", "{remedy} (of {ways} {ways|way|ways} on this bench none does less harm)");
    private static readonly Phrase AtAPrice = new("decided.at-a-price", "{remedy}; '{other}' would avoid it, and {why}");
    private static readonly Phrase NotAll = new("ways-not-all-weighed", "{weighed} ways were weighed, and there are more of vessel and stock");
    private static readonly Phrase NotAllRemedy = new("ways-not-all-weighed.remedy", "settle some with --choose, --vessel or --supply");

    /// <summary>The plan of the way that was taken.</summary>
    public static MadePlan Of(Way taken, Search search, Question question)
    {
        var plan = taken.Made.Plan.Value!;
        var settled = taken.Settled.Means with { Posture = taken.Made.Draft!.Posture?.Kept };
        if (!settled.IsEmpty()) plan = plan with { Settled = settled };
        if (search.Weighed == 1) return taken.Made with { Plan = new(plan, plan.Findings) };
        var findings = plan.Findings.Select(f => Told(f, taken, search, question));
        if (!search.IsWhole) findings = findings.Append(Finding.Note(NotAll.Id, NotAll.With(("weighed", search.Weighed)), NotAllRemedy));
        plan = plan with
        {
            Figures = [.. plan.Figures.Select(f => Reasoned(f, taken, search, question))],
            Findings = [.. findings],
        };
        return taken.Made with { Plan = new(plan, plan.Findings) };
    }

    /// <summary>The figure of a choice that was left open, with what it was taken before.</summary>
    private static Figure Reasoned(Figure figure, Way taken, Search search, Question question)
    {
        const string prefix = "choice.";
        if (!figure.Id.StartsWith(prefix, StringComparison.Ordinal)) return figure;
        var name = figure.Id[prefix.Length..];
        if (question.Request.Choices.ContainsKey(name) || !taken.Settled.Choices.TryGetValue(name, out var own)) return figure;
        var others = search.Ways.Select(w => (w.Settled, w.Harm)).Concat(search.PassedOver).Where(w => w.Settled.Choices[name] != own).ToList();
        if (others.Count == 0) return figure;
        var other = others.MinBy(w => w.Item2);
        return new FigureOrigin(figure.Id, [], question.Prepared.Protocol.ToString())
        {
            Rule = Before.With(("other", other.Settled.Choices[name]), ("why", HarmWords.Of(taken.Harm, other.Item2))),
        }.Of(figure.Answer);
    }

    /// <summary>A harm that remains: no way avoids it, or one does that is worse.</summary>
    private static Finding Told(Finding finding, Way taken, Search search, Question question)
    {
        if (OrderOfHarm.Of(finding, question.Prepared.Protocol) is not { } harm || harm is Harm.Start or >= Harm.Option) return finding;
        var without = search.Ways.Where(w => !ReferenceEquals(w, taken) && w.Made.Plan.Value!.Findings.All(f => f.Id != finding.Id)).MinBy(w => w.Harm);
        var remedy = without is null
            ? NoneIsBetter.With(("remedy", finding.Remedy), ("ways", search.Weighed))
            : AtAPrice.With(("remedy", finding.Remedy), ("other", Difference(taken, without)), ("why", HarmWords.Of(without.Harm, taken.Harm)));
        return finding with { Remedy = remedy };
    }

    /// <summary>What one way does otherwise than another: its options, vessels and stock.</summary>
    private static string Difference(Way taken, Way other) => string.Join(", ",
        Posed(taken, other).Concat(other.Settled.Choices.Where(c => taken.Settled.Choices.GetValueOrDefault(c.Key) != c.Value).Select(c => c.Value))
            .Concat(other.Settled.Means.Vessels.Select(v => v.Value))
            .Concat(other.Settled.Means.Supplies.Select(s => s.Value)).Distinct(StringComparer.Ordinal));

    private static IEnumerable<string> Posed(Way taken, Way other) =>
        other.Made.Draft!.Posture is { Kept: { } kept } && kept != taken.Made.Draft!.Posture?.Kept ? [kept] : [];
}
