using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>The strength of what is diluted is known.</summary>
internal static class StockStrengthUnknown
{
    public static PlanCheck Check { get; } = new(
        "stock-strength-unknown",
        "the specimen: a fluid mixed from an unknown strength has an unknown strength",
        "common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "nothing says how strong a bottle is that the plan could use")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Formalin.IsEmpty && plan.Alcohol.IsEmpty) yield break;
        foreach (var item in plan.Bench.Stock)
        {
            if (!item.IsStrengthKnown && item.OnHand.Units > 0)
                yield return Finding.Warning("stock-strength-unknown", $"nothing says how strong '{item.Id}', {item.OnHand} of {item.Substance}, is; it is not reckoned with", "read its label, or measure it by hydrometer at a known temperature", item.Where);
        }
    }
}
