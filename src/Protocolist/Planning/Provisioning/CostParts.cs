using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>What a plan pays for, before labour, wear and disposal have their prices.</summary>
internal readonly record struct CostParts()
{
    /// <summary>A year as the rhythm of care counts it, s.</summary>
    private const double YearSeconds = 365.25 * 86400;

    /// <summary>To spend now on materials, in smallest coins.</summary>
    public long CashMinor { get; init; }

    /// <summary>Worth of what is used, in smallest coins.</summary>
    public long UsedMinor { get; init; }

    /// <summary>Worth of what stays on the shelf, in smallest coins.</summary>
    public long LeftMinor { get; init; }

    /// <summary>Things that last, and how often the plan uses a piece that it does not use up.</summary>
    public IReadOnlyList<(StockItem Item, long Uses)> Worn { get; init; } = [];

    public Duration HandsOn { get; init; }

    /// <summary>Everything that leaves.</summary>
    public ImmutableArray<PlannedWaste> Waste { get; init; } = [];

    /// <summary>The work of a year of care after sealing.</summary>
    public Duration CareByYear { get; init; }

    /// <summary>The fluid that is topped up in a year.</summary>
    public CareFluid CareFluid { get; init; }

    /// <summary>How many specimens share the costs.</summary>
    public int Specimens { get; init; } = 1;

    /// <summary>Gathers what a plan pays for.</summary>
    public static CostParts Of(Draft draft, MaterialBooks books, List<SundryUse> sundries, WasteBook waste, CareFluid careFluid)
    {
        var (handsOn, care, worn) = (waste.Mixing, Duration.Zero, new List<(StockItem, long)>());
        foreach (var step in draft.Steps)
        {
            if (!step.IsCare) handsOn += step.HandsOn + WorkMinutes.WhileItLasts(step, draft.Body.Count);
            else if (step.Work is CareWork { Every: { IsFinite: true, Middle: > 0 } every }) care += step.HandsOn * Math.Min(366, YearSeconds / every.Middle);
        }

        foreach (var use in sundries)
        {
            if (use.Stock is { } stock && use.UsesBeyond is > 0 and var uses) worn.Add((stock.Items[0], uses));
        }

        return new()
        {
            CashMinor = books.CashMinor,
            UsedMinor = books.CostOfUsedMinor,
            LeftMinor = books.WorthOfLeftMinor,
            Worn = worn,
            HandsOn = handsOn,
            Waste = waste.Lots,
            CareByYear = care,
            CareFluid = careFluid,
            Specimens = draft.Body.Count,
        };
    }
}
