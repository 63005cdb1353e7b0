using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Stock;

/// <summary>Prices have a currency to be summed in.</summary>
internal static class CurrencyMissing
{
    public static PlanCheck Check { get; } = new(
        "currency-missing",
        "the budget",
        "the bench's own prices",
        Find)
    {
        Speaks = [new(Severity.Warning, "the bench has prices and names no currency")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Currency is not null) yield break;
        var priced = plan.Bench.Stock.Where(i => i.Packs.Any(p => p.Price is not null)).Select(i => i.Id).Order(StringComparer.Ordinal).ToList();
        if (priced.Count > 0)
            yield return Finding.Warning("currency-missing", $"the bench prices {(priced.Count > 3 ? Telling.And([.. priced.Take(3).Select(p => $"'{p}'"), Invariant($"{priced.Count - 3} more")]) : Telling.And([.. priced.Select(p => $"'{p}'")]))} and names no currency, so nothing is summed", "add 'currency:' to the bench file");
    }
}
