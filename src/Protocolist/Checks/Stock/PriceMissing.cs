using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>What has to be bought has a price.</summary>
internal static class PriceMissing
{
    public static PlanCheck Check { get; } = new(
        "price-missing",
        "the budget: a sum that leaves something out looks like a whole",
        "the bench's own prices",
        Find)
    {
        Speaks = [new(Severity.Warning, "something must be bought that has no price")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Currency is null) yield break;
        var unpriced = plan.Plan.Purchases.Where(p => p.Price is null).Select(p => $"{p.Pack} of {p.Item}").ToList();
        if (unpriced.Count > 0)
            yield return Finding.Warning("price-missing", $"{Telling.And(unpriced)} must be got and {(unpriced.Count == 1 ? "has" : "have")} no price on this bench, so the costs leave {(unpriced.Count == 1 ? "it" : "them")} out", "add packs with prices to the bench file");
    }
}
