using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>What is used is in date.</summary>
internal static class StockExpired
{
    private const string Id = "stock-expired";
    private static readonly Phrase Expired = new(Id, "'{stock}', {amount} of {substance}, was good until {until:day}; work begins on {on:day}");
    private static readonly Phrase BuyFresh = new("stock-expired.remedy", "the plan does not use it; buy fresh, and collect the old as waste");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: old formaldehyde has turned acid and weak, old buffer salts have caked",
        "the bench's own dates",
        Find)
    {
        Severities = [new(Severity.Warning, "a bottle that the plan could use is past its date")],
        Absorbs = [Id],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Plan.Start?.Date is not { } on || plan.Plan.Recipes.IsEmpty) return found;
        foreach (var item in plan.Bench.Stock)
        {
            if (item.Expires is not { } until || !item.IsExpired(on) || item.OnHand.Units <= 0 || !plan.Uses(item)) continue;
            var message = Expired.With(Argument.Id("stock", item.Id), OnShelf.Of(item), ("substance", item.Substance), ("until", until), ("on", on));
            found = found.Add(Finding.Warning(Id, message, BuyFresh, item.Where));
        }

        return found;
    }
}
