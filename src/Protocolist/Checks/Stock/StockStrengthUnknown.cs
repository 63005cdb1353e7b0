using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>The strength of what is diluted is known.</summary>
internal static class StockStrengthUnknown
{
    private const string Id = "stock-strength-unknown";
    private static readonly Phrase Unknown = new(Id, "nothing says how strong '{stock}', {amount} of {substance}, is; the plan does not use it");
    private static readonly Phrase Measure = new("stock-strength-unknown.remedy", "read its label, or measure it by hydrometer at a known temperature");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: a fluid mixed from an unknown strength has an unknown strength",
        "common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "nothing says how strong a bottle is that the plan could use")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Formalin.IsEmpty && plan.Alcohol.IsEmpty) return found;
        foreach (var item in plan.Bench.Stock)
        {
            if (item.OnHand.Units <= 0 || item.IsStrengthKnown) continue;
            var message = Unknown.With(Argument.Id("stock", item.Id), OnShelf.Of(item), ("substance", item.Substance));
            found = found.Add(Finding.Warning(Id, message, Measure, item.Where));
        }

        return found;
    }
}
