using NodaTime.Text;
using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>What is used is in date.</summary>
internal static class StockExpired
{
    public static PlanCheck Check { get; } = new(
        "stock-expired",
        "the specimen: old formaldehyde has turned acid and weak, old buffer salts have caked",
        "the bench's own dates",
        Find)
    {
        Speaks = [new(Severity.Warning, "a bottle that the plan could use is past its date")],
        Absorbs = ["stock-expired"],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Plan.Start?.Date is not { } on || plan.Plan.Recipes.IsEmpty) yield break;
        foreach (var item in plan.Bench.Stock)
        {
            if (item.Expires is { } last && item.IsExpired(on) && item.OnHand.Units > 0 && plan.Uses(item))
                yield return Finding.Warning("stock-expired", $"'{item.Id}', {item.OnHand} of {item.Substance}, was good until {LocalDatePattern.Iso.Format(last)}; work begins on {LocalDatePattern.Iso.Format(on)}", "it is not reckoned with; buy fresh, and collect the old as waste", item.Where);
        }
    }
}
