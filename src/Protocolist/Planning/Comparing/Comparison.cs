using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Comparing;
using Protocolist.Planning.Making;
using Protocolist.Plans;

namespace Protocolist;

/// <summary>All lawful ways to preserve one specimen side by side: the choices of its protocol, the vessels that hold it, the stock that serves.</summary>
/// <param name="SpecimenId">The specimen.</param>
/// <param name="Protocol">The protocol that serves it.</param>
/// <param name="Ways">The planner's own way first; then by choices, in the order of the protocol's options, then by vessel and stock.</param>
public sealed record Comparison(string SpecimenId, PlanProtocol Protocol, ImmutableArray<ComparedWay> Ways)
{
    private static readonly Phrase OneAtATime = new(
        "one-at-a-time",
        "there are {all} ways in all, more than the {most-combined} that are combined freely; vessels and stock vary one at a time "
            + "against the planner's own way, A");
    private static readonly Phrase OneAtATimeRemedy = new("one-at-a-time.remedy", "settle some with --choose, --vessel or --supply to see the rest combined");
    private static readonly Phrase WaysNotAllCompared = new("ways-not-all-compared", "{count} ways are too many; the first {most-ways} are compared");
    private static readonly Phrase WaysNotAllComparedRemedy = new("ways-not-all-compared.remedy", "settle some with --choose, --vessel or --supply");

    /// <summary>Ways that are planned at most.</summary>
    public const int MostWays = 256;

    /// <summary>
    /// So many ways are combined freely: each vessel and each stock with each choice. Beyond it the choices are combined with one another, and vessels and
    /// stock vary one at a time against the planner's own way. The project's choice: what still fits on a few pages.
    /// </summary>
    public const int MostCombined = 36;

    /// <summary>Whether each vessel and stock was combined with each choice, and not varied one at a time.</summary>
    public bool IsCombined { get; init; }

    internal static Checked<Comparison> Of(PlanRequest request, Pipeline pipeline)
    {
        var first = pipeline.Plan(request);
        if (first.Value is not { } plan) return new(null, first.Findings);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var bases = ByChoice(request, pipeline, pipeline.Shelf.Find(plan.Protocol.Id)!, findings);
        if (bases.Count == 0) return new(null, first.Findings);
        var all = bases.Sum(b => b.Open.Aggregate(1L, (product, d) => Math.Min(product * d.Options.Length, int.MaxValue)));
        var isCombined = all <= MostCombined;
        var requests = (isCombined ? bases.SelectMany(Variation.Combined) : bases.Select(b => b.Request).Concat(Variation.OneAtATime(bases[0]))).ToList();
        if (!isCombined)
            findings.Add(Finding.Note("one-at-a-time", OneAtATime.With(("all", all), ("most-combined", MostCombined)), OneAtATimeRemedy));
        if (requests.Count > MostWays)
            findings.Add(Finding.Note(
                "ways-not-all-compared",
                WaysNotAllCompared.With(("count", requests.Count), ("most-ways", MostWays)),
                WaysNotAllComparedRemedy));
        ImmutableArray<ComparedWay> ways = [.. requests.Take(MostWays)
            .Select(r => (Request: r, Made: Made(r, bases, pipeline)))
            .Where(m => m.Made.Plan.Value is not null && !IsUnmet(m.Made.Plan.Value))
            .Select(m => WayWriting.Of(m.Made, m.Request, "", pipeline.Shelf.Kinds)).DistinctBy(Kind).Select((w, i) => w with { Name = Letters(i) })];
        return new(new(request.Specimen.Id, plan.Protocol, [.. ways.Select(w => w with { DominatedBy = ways.FirstOrDefault(w.IsDominatedBy)?.Name })])
        {
            IsCombined = isCombined,
        }, findings.ToImmutable());
    }

    /// <summary>The plan of each combination of choices, with vessels and stock as the pipeline takes them.</summary>
    private static List<Variation> ByChoice(PlanRequest request, Pipeline pipeline, Protocol protocol, ImmutableArray<Finding>.Builder findings)
    {
        var bases = new List<Variation>();
        foreach (var choices in Combinations(protocol, request.Choices).Take(MostWays + 1))
        {
            var chosen = request with { Choices = choices };
            var made = pipeline.Make(chosen);
            if (made.Plan.Value is not null) bases.Add(new(chosen, made, [.. Variation.AlternativesOf(chosen, made)]));
            else
                findings.Add(Finding.Note(
                    "choice-cannot-be-planned",
                    CannotBePlanned.With(Argument.Texts("choices", choices.Select(c => $"{c.Key} {c.Value}")), ("why", Why(made)))));
        }

        return bases;
    }

    private static MadePlan Made(PlanRequest request, List<Variation> bases, Pipeline pipeline) =>
        bases.Find(b => ReferenceEquals(b.Request, request))?.Made ?? pipeline.Make(request);

    private static Message Why(MadePlan made) =>
        made.Plan.Findings.FirstOrDefault(f => f.Severity == Severity.Error) is { } error ? error.Message : NoPlan;

    private static readonly Phrase CannotBePlanned = new("choice-cannot-be-planned", "{choices}: {why}");
    private static readonly Phrase NoPlan = new("choice-cannot-be-planned.no-plan", "no plan");

    /// <summary>A way of making a fluid may be there for one vessel's volume and not for another's: a used fixative that does not suffice, for one.</summary>
    private static bool IsUnmet(Plan plan) => plan.Findings.Any(f => f.Id is "unknown-supply" or "wished-vessel-does-not-fit");

    private static IEnumerable<ImmutableSortedDictionary<string, string>> Combinations(Protocol protocol, ImmutableSortedDictionary<string, string> settled)
    {
        IEnumerable<ImmutableSortedDictionary<string, string>> all = [settled];
        foreach (var choice in protocol.Choices.Where(c => !settled.ContainsKey(c.Name)))
            all = all.SelectMany(sofar => choice.Options.Select(option => sofar.SetItem(choice.Name, option)));
        return all;
    }

    /// <summary>What a way is: insisting on one thing may bring the pipeline to another, and two wishes to the same plan.</summary>
    private static string Kind(ComparedWay way) => string.Join('\n', way.Choices.Concat(way.Vessels).Concat(way.Supplies));

    /// <summary>A to Z, AA to ZZ ...</summary>
    private static string Letters(int number) => number < 26 ? ((char)('A' + number)).ToString() : Letters(number / 26 - 1) + Letters(number % 26);
}
