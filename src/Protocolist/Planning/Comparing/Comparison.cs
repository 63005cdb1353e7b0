using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Comparing;
using Protocolist.Planning.Deciding;
using Protocolist.Planning.Making;
using Protocolist.Plans;

namespace Protocolist;

/// <summary>The lawful ways to preserve one specimen that somebody might take: by choices, the vessels that hold it, the stock that serves.</summary>
/// <param name="SpecimenId">The specimen.</param>
/// <param name="Protocol">The protocol that serves it.</param>
/// <param name="Ways">The planner's own way first, then the others as they do more harm, in the order in which the planner weighs it.</param>
public sealed record Comparison(string SpecimenId, PlanProtocol Protocol, ImmutableArray<ComparedWay> Ways)
{
    private static readonly Phrase Folded = new(
        "ways-folded", "{count} {count|way is|ways are} not shown: another is as good in everything, or differs by what nobody would mind");
    private static readonly Phrase FoldedRemedy = new("ways-folded.remedy", "insist on it with --choose, --vessel or --supply to see what it comes to");
    private static readonly Phrase NotAll = new("ways-not-all-compared", "there are more than {most} ways; so many are compared");
    private static readonly Phrase NotAllRemedy = new("ways-not-all-compared.remedy", "settle some with --choose, --vessel or --supply");

    private static readonly Phrase CannotBePlanned = new("choice-cannot-be-planned", "{choices}: {why}");

    /// <summary>Ways that are planned at most.</summary>
    public const int MostWays = 256;

    /// <summary>How many ways were weighed; those that are not among <see cref="Ways"/> are no better than one that is.</summary>
    public int Weighed { get; init; }

    internal static Checked<Comparison> Of(PlanRequest request, Pipeline pipeline)
    {
        if (request.Refusals() is { IsEmpty: false } refusals) return new(null, refusals);
        var asked = pipeline.Ask(request);
        if (asked.Value is not { } question) return new(null, asked.Findings);
        var own = DecidePass.Run(question);
        if (own.Plan.Value is not { } plan) return new(null, own.Plan.Findings);
        var frontier = Frontier.Of(question, MostWays);
        var shown = frontier.Shown(question.Prepared.Protocol);
        ImmutableArray<ComparedWay> ways = [.. shown.Select((way, i) => WayWriting.Of(way, shown[0], question, Letters(i), pipeline.Shelf.Kinds))];
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var (choices, why) in frontier.Unplanned)
        {
            var options = Argument.Texts("choices", choices.Select(c => $"{c.Key} {c.Value}"));
            findings.Add(Finding.Note(CannotBePlanned.Id, CannotBePlanned.With(options, ("why", why))));
        }

        if (frontier.Ways.Length > shown.Length)
            findings.Add(Finding.Note(Folded.Id, Folded.With(("count", frontier.Ways.Length - shown.Length)), FoldedRemedy));
        if (!frontier.IsWhole) findings.Add(Finding.Note(NotAll.Id, NotAll.With(("most", MostWays)), NotAllRemedy));
        ways = [.. ways.Select((w, i) => w with { DominatedBy = Better(shown, i) is { } at ? ways[at].Name : null })];
        return new(new(request.Specimen.Id, plan.Protocol, ways) { Weighed = frontier.Ways.Length }, findings.ToImmutable());
    }

    /// <summary>The first of the ways that is no worse than one in anything and better in something; null where there is none.</summary>
    private static int? Better(ImmutableArray<Way> ways, int at)
    {
        for (var i = 0; i < ways.Length; i++)
        {
            if (ways[i].Harm.Dominates(ways[at].Harm)) return i;
        }

        return null;
    }

    /// <summary>A to Z, AA to ZZ ...</summary>
    private static string Letters(int number) => number < 26 ? ((char)('A' + number)).ToString() : Letters(number / 26 - 1) + Letters(number % 26);
}
