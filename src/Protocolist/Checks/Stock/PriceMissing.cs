using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>What has to be bought has a price.</summary>
internal static class PriceMissing
{
    private const string Id = "price-missing";
    private static readonly Phrase Missing = new(
        Id,
        "{packs:and} must be got and {packs|has|have} no price on this bench, so the costs leave {packs|it|them} out");

    private static readonly Phrase Pack = new("price-missing.pack", "{pack:amount} of {item}");
    private static readonly Phrase Add = new("price-missing.remedy", "add packs with prices to the bench file");

    public static PlanCheck Check { get; } = new(
        Id,
        "the budget: a sum that leaves something out looks like a whole",
        "the bench's own prices",
        Find)
    {
        Severities = [new(Severity.Warning, "something must be bought that has no price")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Currency is null) return [];
        var unpriced = new List<Message>();
        foreach (var purchase in plan.Plan.Purchases)
        {
            if (purchase.Price is null) unpriced.Add(Pack.With(purchase.Pack.Fact("pack"), ("item", purchase.Item)));
        }

        return unpriced.Count > 0 ? [Finding.Warning(Id, Missing.With(Argument.Messages("packs", unpriced)), Add)] : [];
    }
}
