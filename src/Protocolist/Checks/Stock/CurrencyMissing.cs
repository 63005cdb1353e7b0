using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>Prices have a currency to be summed in.</summary>
internal static class CurrencyMissing
{
    private const string Id = "currency-missing";
    private const int MostNamed = 3;
    private static readonly Phrase Missing = new(Id, "the bench prices {priced:and} and names no currency, so nothing is summed");
    private static readonly Phrase Named = new("currency-missing.named", "'{stock}'");
    private static readonly Phrase More = new("currency-missing.more", "{n} more");
    private static readonly Phrase Add = new("currency-missing.remedy", "add 'currency:' to the bench file");

    public static PlanCheck Check { get; } = new(
        Id,
        "the budget",
        "the bench's own prices",
        Find)
    {
        Severities = [new(Severity.Warning, "the bench has prices and names no currency")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Currency is not null) return [];
        var priced = new List<string>();
        foreach (var item in plan.Bench.Stock)
        {
            if (IsPriced(item)) priced.Add(item.Id);
        }

        if (priced.Count == 0) return [];
        priced.Sort(StringComparer.Ordinal);
        var named = priced.Take(MostNamed).Select(p => Named.With(Argument.Id("stock", p)));
        if (priced.Count > MostNamed) named = named.Append(More.With(("n", priced.Count - MostNamed)));
        return [Finding.Warning(Id, Missing.With(Argument.Messages("priced", named)), Add)];
    }

    private static bool IsPriced(StockItem item)
    {
        foreach (var pack in item.Packs)
        {
            if (pack.Price is not null) return true;
        }

        return false;
    }
}
