using System.Collections.Immutable;
using Protocolist.Planning.Making;

namespace Protocolist.Planning.Deciding;

/// <summary>The search for the least harmful way: by the options in the protocol's order, and within them by vessel and stock where that can help.</summary>
internal sealed class Search(Question question)
{
    /// <summary>So many ways are weighed at most; beyond it the plan says so. The project's choice: what nobody waits for.</summary>
    public const int MostWeighed = 48;

    /// <summary>So many ways of vessel and stock are combined freely; of more, one is changed after the other while that helps.</summary>
    private const int MostCombined = 12;

    private readonly List<Way> ways = [];
    private readonly List<(Settled Settled, HarmDone AtLeast)> passedOver = [];
    private Way? least;

    /// <summary>The ways that were worked out to the end, in that order.</summary>
    public IReadOnlyList<Way> Ways => ways;

    /// <summary>Those that were seen to do no less harm before they were dated, and what they do at the least.</summary>
    public IReadOnlyList<(Settled Settled, HarmDone AtLeast)> PassedOver => passedOver;

    /// <summary>How many ways were weighed.</summary>
    public int Weighed { get; private set; }

    /// <summary>Whether no way that might do less harm was left out.</summary>
    public bool IsWhole { get; private set; } = true;

    /// <summary>Why there is no plan, by the protocol's first options; null where there is one.</summary>
    public MadePlan? Unplanned { get; private set; }

    /// <summary>The way that does least harm; null where nothing can be planned.</summary>
    public Way? Least()
    {
        var option = 0;
        foreach (var choices in Options())
        {
            if (Weighed >= MostWeighed)
            {
                IsWhole = false;
                break;
            }

            Weigh(new() { Choices = choices }, option++);

            // What comes later in the protocol's order can only do less harm where there is some.
            if (least is { Harm.IsNone: true }) break;
        }

        return least;
    }

    /// <summary>Weighs a way, and those that differ from it in vessel and stock where that may help.</summary>
    private void Weigh(Settled settled, int option)
    {
        if (Made(settled, option) is not { } own) return;
        var open = Means.Worthwhile(own, question);
        if (open.IsEmpty) return;
        if (open.Aggregate(1L, (product, m) => Math.Min(product * (1 + m.Others.Length), int.MaxValue)) <= MostCombined)
            Combined(own, open, option);
        else
            OneAfterTheOther(own, open, option);
    }

    private void Combined(Way own, ImmutableArray<Means> open, int option)
    {
        IEnumerable<Settled> all = [own.Settled];
        foreach (var means in open) all = all.SelectMany(settled => means.Others.Select(other => other(settled)).Prepend(settled));
        foreach (var settled in all.Skip(1)) Made(settled, option);
    }

    private void OneAfterTheOther(Way own, ImmutableArray<Means> open, int option)
    {
        IsWhole = false;
        var best = own;
        foreach (var means in open)
        {
            foreach (var other in means.Others)
            {
                if (Weighed >= MostWeighed) return;
                if (Made(other(best.Settled), option) is { } way && Better(way, best)) best = way;
            }
        }
    }

    /// <summary>The least harmful way with certain options; null where it cannot be planned.</summary>
    public Way? LeastWith(ImmutableSortedDictionary<string, string> choices, int option)
    {
        Weigh(new() { Choices = choices }, option);
        return least;
    }

    /// <summary>Just one way; null where it cannot be planned.</summary>
    public Way? Only(Settled settled, int option) => Made(settled, option);

    /// <summary>A way worked out; null where it cannot be, or where what is known before it is dated shows that it does no less harm than the best.</summary>
    private Way? Made(Settled settled, int option)
    {
        var provisioned = Pipeline.Provision(question, settled);
        if (provisioned.Value is not { } provided)
        {
            Unplanned ??= new(new(null, provisioned.Findings));
            return null;
        }

        // A way of making a fluid may be there for one vessel's volume and not for another's.
        if (!settled.Means.IsEmpty() && provided.Findings.Any(f => f.Id is "unknown-supply" or "wished-vessel-does-not-fit")) return null;
        Weighed++;
        if (least is not null && HarmDone.AtLeast(provided, provisioned.Findings, option) is var bound && bound.CompareTo(least.Harm) >= 0)
        {
            passedOver.Add((settled, bound));
            return null;
        }

        var made = Pipeline.Finish(question, provided, provisioned.Findings);
        var way = new Way(settled, made, HarmDone.Of(made, option));
        ways.Add(way);
        if (Better(way, least)) least = way;
        return way;
    }

    private static bool Better(Way way, Way? than) => than is null || way.Harm.CompareTo(than.Harm) < 0;

    /// <summary>Every combination of the options that are left open, the protocol's first ones first, the last choice changing fastest.</summary>
    public IEnumerable<ImmutableSortedDictionary<string, string>> Options()
    {
        IEnumerable<ImmutableSortedDictionary<string, string>> all = [Settled.Nothing.Choices];
        foreach (var choice in question.Prepared.Protocol.Choices)
        {
            if (!question.Request.Choices.ContainsKey(choice.Name))
                all = all.SelectMany(sofar => choice.Options.Select(option => sofar.SetItem(choice.Name, option)));
        }

        return all;
    }
}
