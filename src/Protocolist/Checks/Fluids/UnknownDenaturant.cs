using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Checks.Fluids;

/// <summary>What makes alcohol undrinkable is known before a specimen meets it.</summary>
internal static class UnknownDenaturant
{
    private const string Id = "unknown-denaturant";
    private static readonly Phrase Unknown = new(Id, "'{stock}' is {substance}, and this plan keeps an animal in alcohol");
    private static readonly Phrase FindOut = new(
        "unknown-denaturant.remedy",
        "find out the denaturant, write it on the label and in the log, and dilute a little first: it must stay clear");

    private static readonly string[] Signs = ["denatured", "methylated", "industrial", "spirit"];

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: pyridine, naphtha and dye turn cloudy on dilution, stain, and spoil DNA and density readings",
        "composition of British methylated spirits (regulations as quoted by the trade); clouding is common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "an alcohol on the shelf is called methylated, denatured or the like, and the plan uses alcohol")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Alcohol.IsEmpty) return found;
        foreach (var item in plan.Bench.Stock)
        {
            if (item.Kind == StockKind.Fluid && Array.Exists(Signs, s => item.Substance.Contains(s, StringComparison.OrdinalIgnoreCase)))
                found = found.Add(Finding.Warning(Id, Unknown.With(Argument.Id("stock", item.Id), ("substance", item.Substance)), FindOut, item.Where));
        }

        return found;
    }
}
