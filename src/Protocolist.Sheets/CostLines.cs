using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Sheets;

/// <summary>What a plan costs, line by line, in the words of all sheets.</summary>
internal static class CostLines
{
    public static IEnumerable<(string What, Money Sum)> Of(PlanCosts costs)
    {
        (string What, Money? Sum)[] lines =
        [
            ("to spend now", costs.Cash),
            ("worth of what is used", costs.Used),
            ("wear of tools", costs.Wear),
            ("work", costs.Labour),
            ("disposal", costs.Disposal),
            .. costs.DisposalByClass.Select(d => ($"disposal, of it {d.ClassWords}", (Money?)d.Cost)),
            ("in all (used, wear, work, disposal)", costs.Total),
            ("for one specimen", costs.BySpecimen == costs.Total ? null : costs.BySpecimen),
            ("worth of what stays on the shelf", costs.LeftOnShelf),
            ("a year of care", costs.CareByYear),
            (costs.TopUpByYear is { } loss
                ? $"of it fluid to top up, {Measurable.Text(loss.CubicMeters, Dimension.OfVolume)} a year"
                : "of it fluid to top up", costs.CareFluidByYear),
            ("in all, with ten years of care", costs.OverTenYears),
        ];
        return lines.Where(l => l.Sum is not null).Select(l => (l.What, l.Sum!));
    }
}
