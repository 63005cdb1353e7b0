using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Sheets;

/// <summary>What a plan costs, line by line, in the words of all sheets.</summary>
internal static class CostLines
{
    private static readonly Phrase Cash = new("cost.cash", "to spend now");
    private static readonly Phrase Used = new("cost.used", "worth of what is used");
    private static readonly Phrase Wear = new("cost.wear", "wear of tools");
    private static readonly Phrase Labour = new("cost.labour", "work");
    private static readonly Phrase Disposal = new("cost.disposal", "disposal");
    private static readonly Phrase DisposalOf = new("cost.disposal-of", "disposal, of it {class}");
    private static readonly Phrase Total = new("cost.total", "in all (used, wear, work, disposal)");
    private static readonly Phrase BySpecimen = new("cost.by-specimen", "for one specimen");
    private static readonly Phrase LeftOnShelf = new("cost.left-on-shelf", "worth of what stays on the shelf");
    private static readonly Phrase CareByYear = new("cost.care", "a year of care");
    private static readonly Phrase TopUp = new("cost.top-up", "of it fluid to top up");
    private static readonly Phrase SoMuchTopUp = new("cost.top-up-of", "of it fluid to top up, {volume} a year");
    private static readonly Phrase OverTenYears = new("cost.ten-years", "in all, with ten years of care");

    public static IEnumerable<(Message What, Money Sum)> Of(PlanCosts costs)
    {
        (Message What, Money? Sum)[] lines =
        [
            (Cash, costs.Cash),
            (Used, costs.Used),
            (Wear, costs.Wear),
            (Labour, costs.Labour),
            (Disposal, costs.Disposal),
            .. costs.DisposalByClass.Select(d => (DisposalOf.With(("class", d.ClassWords)), (Money?)d.Cost)),
            (Total, costs.Total),
            (BySpecimen, costs.BySpecimen == costs.Total ? null : costs.BySpecimen),
            (LeftOnShelf, costs.LeftOnShelf),
            (CareByYear, costs.CareByYear),
            (costs.TopUpByYear is { } loss ? SoMuchTopUp.With(("volume", loss)) : TopUp, costs.CareFluidByYear),
            (OverTenYears, costs.OverTenYears),
        ];
        return lines.Where(l => l.Sum is not null).Select(l => (l.What, l.Sum!));
    }
}
