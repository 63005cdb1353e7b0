using Protocolist.Findings;

namespace Protocolist.Checks.Labels;

/// <summary>The label says number, name, date, place, collector and fluid.</summary>
internal static class LabelIncomplete
{
    private const string Missing = "(not known)";

    public static PlanCheck Check { get; } = new(
        "label-incomplete",
        "the specimen's worth: without them it is an animal in a jar",
        "Bishop Museum (collector, date, exact locality); common practice for the rest",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "the plan has no label"),
            new(Severity.Warning, "the label lacks date, place, collector, scientific name or the fluid"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Plan.Label.IsEmpty)
        {
            yield return Finding.Error("label-incomplete", "the plan has no label", "write number, name, date, place, collector, fluid and strength");
            yield break;
        }

        var missing = new List<string>();
        foreach (var line in plan.Plan.Label)
        {
            if (line.Contains(Missing, StringComparison.Ordinal)) missing.Add(line.StartsWith("found", StringComparison.Ordinal) ? "the date" : line.StartsWith("collected", StringComparison.Ordinal) ? "the collector" : "the place");
            else if (line.EndsWith("not identified", StringComparison.Ordinal)) missing.Add("the scientific name");
        }

        if (plan.House is { Fluid: { } fluid } && !plan.Plan.Label.Any(l => l.Contains(fluid.Name, StringComparison.Ordinal))) missing.Add($"the fluid ({fluid.Name})");
        if (missing.Count > 0)
            yield return Finding.Warning("label-incomplete", $"the label lacks {string.Join(", ", missing)}", "find it out before the jar is closed; leave room for a name");
    }
}
