using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Protocolist.Checks.Vessels;
using Protocolist.Findings;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Making;
using Protocolist.Planning.Provisioning;

namespace Protocolist.Planning.Deciding;

/// <summary>What a way does in harm of each kind; less is better, the earlier kind before the later.</summary>
internal readonly record struct HarmDone : IComparable<HarmDone>
{
    private const int Kinds = (int)Harm.Shelf + 1;

    private readonly Amounts amounts;

    private HarmDone(in Amounts amounts) => this.amounts = amounts;

    /// <summary>How much of one kind.</summary>
    public long this[Harm harm] => amounts[(int)harm];

    /// <summary>Whether no other way can do less in what ranks before the order of the protocol's options.</summary>
    public bool IsNone => FirstFrom(Harm.Start) >= Harm.Option;

    /// <summary>What a plan does.</summary>
    /// <param name="made">The plan and what stands behind it.</param>
    /// <param name="settled">What it was settled by.</param>
    public static HarmDone Of(MadePlan made, Settled settled)
    {
        var (plan, amounts) = (made.Plan.Value!, default(Amounts));
        Count(ref amounts, plan.Findings, made.Draft!.Protocol, id => !OrderOfHarm.OfVessels.Contains(id));
        CountVessels(ref amounts, made.Draft);
        var wait = WaitUnfixed.Of(made.Draft!, plan.EarliestStart!.Value.ToInstant(), made.Review!.Bench.Opening.Zone);
        amounts[(int)Harm.Waiting] += wait.TenthsBeyond;
        amounts[(int)Harm.Option] = Place(settled);
        amounts[(int)Harm.Minute] = wait.Minutes;
        foreach (var step in plan.Steps) amounts[(int)Harm.Work] += (long)Math.Ceiling(step.HandsOn.TotalMinutes) + 1 + step.Inspections.Length;
        amounts[(int)Harm.Money] = plan.Costs.Cash?.Minor ?? 0;
        foreach (var recipe in plan.Recipes) amounts[(int)Harm.Fluid] += (long)Math.Round(recipe.Volume.Milliliters);
        return new(amounts);
    }

    /// <summary>What a way does at the least, as far as it is known before it is dated and reviewed.</summary>
    /// <param name="provisioned">The way provisioned.</param>
    /// <param name="found">What was found before that.</param>
    /// <param name="settled">What it is settled by.</param>
    /// <param name="scheduled">The way dated; null before that.</param>
    public static HarmDone AtLeast(Provisioned provisioned, ImmutableArray<Finding> found, Settled settled, Scheduled? scheduled = null)
    {
        var (amounts, protocol, zone) = (default(Amounts), provisioned.Draft.Protocol, provisioned.Day.Stock.Bench.Opening.Zone);
        amounts[(int)Harm.Option] = Place(settled);
        if (!protocol.Severities.IsEmpty) return new(amounts);
        ImmutableArray<Finding> known = [.. found, .. provisioned.Findings, .. scheduled?.Findings ?? []];
        Count(ref amounts, known, protocol, id => AllChecks.IsToldAsFound(id) && !OrderOfHarm.OfStock.Contains(id));
        CountVessels(ref amounts, provisioned.Draft);
        var lacksVessel = false;
        foreach (var step in provisioned.Draft.Steps)
            lacksVessel |= step.NoVessel is { Needed.Advice.IsEmpty: false } none && !VesselTooSmall.IsOnlyTooShallow(none.Reasons);
        if (lacksVessel) amounts[(int)Harm.Start]++;
        if (scheduled is not { Draft: var draft, Bounds.Start: var start }) return new(amounts);
        var wait = WaitUnfixed.Of(draft, start.InZoneLeniently(zone).ToInstant(), zone);
        amounts[(int)Harm.Waiting] += wait.TenthsBeyond;
        amounts[(int)Harm.Minute] = wait.Minutes;
        return new(amounts);
    }

    /// <summary>Among the ways of the same options the preferred posture comes first.</summary>
    public static long Place(Settled settled) => (settled.Option * 16L) + settled.Laid;

    private static void CountVessels(ref Amounts amounts, Draft draft)
    {
        foreach (var step in draft.Steps)
        {
            var findings = step.Vessel?.Findings ?? [];
            for (var i = 0; i < findings.Length; i++)
            {
                // Wall, lid and seal of one vessel are one harm.
                var isAgain = i > 0 && findings[i].Id == findings[i - 1].Id;
                if (!isAgain && OrderOfHarm.Of(findings[i], draft.Protocol) is { } harm) amounts[(int)harm]++;
            }
        }
    }

    /// <summary>Counts each check once, by the gravest of what it says.</summary>
    private static void Count(ref Amounts amounts, ImmutableArray<Finding> findings, Protocol protocol, Func<string, bool> counts)
    {
        for (var i = 0; i < findings.Length; i++)
        {
            var finding = findings[i];
            if (OrderOfHarm.Of(finding, protocol) is not { } harm || !counts(finding.Id)) continue;
            var isGravest = true;
            for (var j = 0; j < findings.Length && isGravest; j++)
                isGravest = i == j || findings[j].Id != finding.Id || (findings[j].Severity, -j).CompareTo((finding.Severity, -i)) < 0;
            if (isGravest) amounts[(int)(finding.Severity == Severity.Error ? Harm.Start : harm)]++;
        }
    }

    /// <inheritdoc/>
    public int CompareTo(HarmDone other)
    {
        for (var i = 0; i < Kinds; i++)
        {
            var by = amounts[i].CompareTo(other.amounts[i]);
            if (by != 0) return by;
        }

        return 0;
    }

    /// <summary>Whether this is no worse in anything and better in something.</summary>
    public bool Dominates(HarmDone other)
    {
        var isBetter = false;
        for (var i = 0; i < Kinds; i++)
        {
            if (amounts[i] > other.amounts[i]) return false;
            isBetter |= amounts[i] < other.amounts[i];
        }

        return isBetter;
    }

    /// <summary>Whether this is no worse than another by what anybody would mind: a few coins, minutes or millilitres nobody does.</summary>
    public bool IsAsGoodAs(HarmDone other)
    {
        for (var i = 0; i < Kinds; i++)
        {
            if (amounts[i] > other.amounts[i] + Unminded((Harm)i, other.amounts[i])) return false;
        }

        return true;
    }

    /// <summary>The project's choice: a hundredth, a coin of a hundred, a quarter of an hour, a decilitre.</summary>
    private static long Unminded(Harm harm, long amount) => harm switch
    {
        Harm.Money => Math.Max(100, amount / 100),
        Harm.Minute or Harm.Work => Math.Max(15, amount / 100),
        Harm.Fluid => Math.Max(100, amount / 100),
        _ => 0,
    };

    /// <summary>The first kind in which two differ; null where they do not.</summary>
    public Harm? Differs(HarmDone other)
    {
        for (var i = 0; i < Kinds; i++)
        {
            if (amounts[i] != other.amounts[i]) return (Harm)i;
        }

        return null;
    }

    /// <inheritdoc/>
    public bool Equals(HarmDone other) => CompareTo(other) == 0;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(amounts[0], amounts[(int)Harm.Ruin], amounts[(int)Harm.Money]);

    /// <summary>The first kind of harm, from one on, of which there is any.</summary>
    private Harm FirstFrom(Harm first)
    {
        var i = (int)first;
        while (i < Kinds - 1 && amounts[i] == 0) i++;
        return (Harm)i;
    }

    [InlineArray(Kinds)]
    private struct Amounts
    {
        private long first;
    }
}
