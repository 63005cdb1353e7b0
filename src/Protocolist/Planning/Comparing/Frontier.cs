using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Deciding;
using Protocolist.Planning.Making;

namespace Protocolist.Planning.Comparing;

/// <summary>
/// The ways of a question, each worked out whole, the least harmful first: the same that the planner weighs, and those that it need not weigh.
/// </summary>
/// <param name="Ways">The ways; the planner's own first.</param>
/// <param name="IsWhole">Whether none was left out.</param>
/// <param name="Unplanned">Options that no plan can be made of, and why.</param>
internal sealed record Frontier(
    ImmutableArray<Way> Ways, bool IsWhole, ImmutableArray<(ImmutableSortedDictionary<string, string> Choices, Message Why)> Unplanned)
{
    public static Frontier Of(Question question, int most)
    {
        var search = new Search(question);
        var own = search.Least()!;
        var (ways, isWhole) = (new List<Way>(), true);
        var unplanned = ImmutableArray.CreateBuilder<(ImmutableSortedDictionary<string, string>, Message)>();
        var option = 0;
        foreach (var choices in search.Options())
        {
            var place = option++;
            if (place == own.Settled.Option)
            {
                ways.Add(own);
                continue;
            }

            var one = new Search(question);
            if (ways.Count >= most) isWhole = false;
            else if (one.LeastWith(choices, place) is { } way) ways.Add(way);
            else if (one.Unplanned!.Plan.Findings.FirstOrDefault(f => f.Severity == Severity.Error) is { } error) unplanned.Add((choices, error.Message));
        }

        // What the planner settled by itself may be otherwise: each vessel worth a thought with each stock.
        IEnumerable<Settled> all = [own.Settled];
        foreach (var means in Means.All(own, question)) all = all.SelectMany(settled => means.Others.Select(other => other(settled)).Prepend(settled));
        foreach (var settled in all.Skip(1))
        {
            if (ways.Count >= most)
            {
                isWhole = false;
                break;
            }

            if (new Search(question).Only(settled) is { } way) ways.Add(way);
        }

        return new([.. ways.DistinctBy(Kind).OrderBy(w => w.Harm)], isWhole, unplanned.DrainToImmutable());
    }

    /// <summary>
    /// Those that somebody might take: none is shown that a less harmful one equals in all that anybody would mind. Of each option of the protocol one is.
    /// </summary>
    public ImmutableArray<Way> Shown(Protocol protocol)
    {
        var shown = new List<Way>();
        foreach (var way in Ways)
        {
            if (!shown.Exists(s => s.Harm.IsAsGoodAs(way.Harm)) || HasNewOption(way, shown, protocol)) shown.Add(way);
        }

        return [.. shown];
    }

    private static bool HasNewOption(Way way, List<Way> shown, Protocol protocol) => protocol.Choices.Any(choice =>
        !shown.Exists(s => s.Made.Draft!.Choices[choice.Name] == way.Made.Draft!.Choices[choice.Name]));

    /// <summary>What a way is: two settlements may come to the same plan.</summary>
    private static string Kind(Way way) => string.Join('\n', WayWriting.ChoicesVesselsAndSupplies(way));
}
