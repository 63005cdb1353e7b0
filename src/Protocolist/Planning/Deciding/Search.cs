using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Making;
using Protocolist.Planning.Provisioning;

namespace Protocolist.Planning.Deciding;

/// <summary>The search for the least harmful way: by the options in the protocol's order, and within them by vessel and stock where that can help.</summary>
internal sealed class Search(Question question)
{
    /// <summary>So many ways are weighed at most; beyond it the plan says so. The project's choice: what nobody waits for.</summary>
    public const int MostWeighed = 96;

    /// <summary>So many ways of vessel and stock are combined freely; of more, one is changed after the other while that helps.</summary>
    private const int MostCombined = 12;

    private readonly List<Way> ways = [];
    private readonly List<(Settled Settled, HarmDone AtLeast)> passedOver = [];
    private Checked<Draft> drafted = new(null, []);
    private ImmutableSortedDictionary<string, string>? draftedBy;
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
        var options = new List<Root>();
        foreach (var choices in Options())
        {
            if (Weighed >= MostWeighed)
            {
                IsWhole = false;
                break;
            }

            if (Rooted(new() { Choices = choices, Option = options.Count }) is not { } root) continue;
            options.Add(root);

            // What comes later in the protocol's order can only do less harm where there is some.
            if (root.Way is { Harm.IsNone: true }) break;
        }

        Branch(options);
        return least;
    }

    /// <summary>A way as its steps settle it; null where it cannot be planned.</summary>
    private Root? Rooted(Settled settled)
    {
        var way = Made(settled, out var draft);
        return draft is null ? null : new(settled with { Posture = draft.Posture }, way, draft, way?.Harm ?? passedOver[^1].AtLeast);
    }

    /// <summary>
    /// Those that differ from ways in posture, vessel and stock where that may help. The most promising first, so that the others are soon seen to do no
    /// less harm; all postures before vessels and stock, of which there may be more than are weighed.
    /// </summary>
    private void Branch(List<Root> roots)
    {
        foreach (var root in roots.OrderBy(r => r.Bound).ToList()) roots.AddRange(Posed(root));
        foreach (var root in roots.OrderBy(r => r.Bound))
        {
            if (root.Way is { } way && !CannotDoLess(root.Settled)) Vary(way with { Settled = root.Settled });
        }
    }

    /// <summary>The other postures of a way, where it does harm that its posture may have to do with, or was passed over for what it may be laid in.</summary>
    private IEnumerable<Root> Posed(Root root)
    {
        if (root.Settled.Posture!.Kept is null) yield break;
        if (root.Way is { } way && (way.Harm.IsNone || !(way.AwaitsDelivery || Means.Has(way, OrderOfHarm.OfPosture)))) yield break;
        var laid = 0;
        foreach (var other in PostureChoice.Others(root.Draft.Body, root.Settled.Posture.Body))
        {
            var settled = root.Settled with { Posture = other, Laid = ++laid };
            if (Weighed >= MostWeighed || CannotDoLess(settled)) yield break;
            if (Rooted(settled) is { } posed) yield return posed;
        }
    }

    /// <summary>Whether the best so far does no harm before the place of the options, and has an earlier one.</summary>
    private bool CannotDoLess(Settled settled) => least is { Harm.IsNone: true } && least.Harm[Harm.Option] < HarmDone.Place(settled);

    private void Vary(Way own)
    {
        var open = Means.Worthwhile(own, question);
        if (open.IsEmpty) return;
        if (open.Aggregate(1L, (product, m) => Math.Min(product * (1 + m.Others.Length), int.MaxValue)) <= MostCombined)
            Combined(own, open);
        else
            OneAfterTheOther(own, open);
    }

    private void Combined(Way own, ImmutableArray<Means> open)
    {
        IEnumerable<Settled> all = [own.Settled];
        foreach (var means in open) all = all.SelectMany(settled => means.Others.Select(other => other(settled)).Prepend(settled));
        foreach (var settled in all.Skip(1)) Made(settled, out _);
    }

    private void OneAfterTheOther(Way own, ImmutableArray<Means> open)
    {
        IsWhole = false;
        var best = own;
        foreach (var means in open)
        {
            var sofar = best.Settled;
            foreach (var other in means.Others)
            {
                if (Weighed >= MostWeighed) return;
                if (Made(other(sofar), out _) is { } way && Better(way, best)) best = way;
            }
        }
    }

    /// <summary>The least harmful way with certain options; null where it cannot be planned.</summary>
    public Way? LeastWith(ImmutableSortedDictionary<string, string> choices, int option)
    {
        if (Rooted(new() { Choices = choices, Option = option }) is { } root) Branch([root]);
        return least;
    }

    /// <summary>Just one way; null where it cannot be planned.</summary>
    public Way? Only(Settled settled) => Made(settled, out _);

    /// <summary>A way worked out; null where it cannot be, or where what is known before it is dated shows that it does no less harm than the best.</summary>
    private Way? Made(Settled settled, out Draft? provided)
    {
        provided = null;
        if (drafted.Value is null || settled.Choices != draftedBy) (drafted, draftedBy) = (Pipeline.Draft(question, settled.Choices), settled.Choices);
        if (drafted.Value is not { } draft)
        {
            Unplanned ??= new(new(null, drafted.Findings));
            return null;
        }

        // A way of making a fluid may be there for one vessel's volume and not for another's.
        var provisioned = Pipeline.Provision(question, draft, settled);
        if (!settled.Means.IsEmpty() && provisioned.Findings.Any(f => f.Id is "unknown-supply" or "wished-vessel-does-not-fit")) return null;
        provided = provisioned.Draft;
        Weighed++;
        if (IsPassedOver(settled, HarmDone.AtLeast(provisioned, drafted.Findings, settled))) return null;
        var scheduled = Pipeline.Date(question, provisioned);
        if (IsPassedOver(settled, HarmDone.AtLeast(provisioned, drafted.Findings, settled, scheduled))) return null;
        var made = Pipeline.Finish(question, provisioned, scheduled, drafted.Findings);
        var way = new Way(settled, made, HarmDone.Of(made, settled));
        ways.Add(way);
        if (Better(way, least)) least = way;
        return way;
    }

    private bool IsPassedOver(Settled settled, HarmDone atLeast)
    {
        if (least is null || atLeast.CompareTo(least.Harm) < 0) return false;
        passedOver.Add((settled, atLeast));
        return true;
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

    /// <summary>A way from which others branch off.</summary>
    /// <param name="Settled">What it is settled by.</param>
    /// <param name="Way">The way; null where it was passed over.</param>
    /// <param name="Draft">Its steps, provisioned.</param>
    /// <param name="Bound">The harm that it does at the least.</param>
    private readonly record struct Root(Settled Settled, Way? Way, Draft Draft, HarmDone Bound);
}
