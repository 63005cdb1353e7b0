using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Labels;

/// <summary>The label says number, name, date, place, collector and fluid.</summary>
internal static class LabelIncomplete
{
    private static readonly Phrase NoLabel = new("label-incomplete", "the plan has no label");
    private static readonly Phrase Write = new("label-incomplete.remedy", "write number, name, date, place, collector, fluid and strength");
    private static readonly Phrase Lacks = new("label-incomplete.lacks", "the label lacks {missing}");
    private static readonly Phrase FindOut = new("label-incomplete.remedy-lacks", "find it out before the jar is closed; leave room for a name");
    private static readonly Phrase Name = new("label-incomplete.name", "the scientific name");
    private static readonly Phrase Date = new("label-incomplete.date", "the date");
    private static readonly Phrase Place = new("label-incomplete.place", "the place");
    private static readonly Phrase Collector = new("label-incomplete.collector", "the collector");
    private static readonly Phrase TheFluid = new("label-incomplete.fluid", "the fluid ({fluid})");

    public static PlanCheck Check { get; } = new(
        "label-incomplete",
        "the specimen's worth: without them it is an animal in a jar",
        "Bishop Museum (collector, date, exact locality); common practice for the rest",
        Find)
    {
        Severities =
        [
            new(Severity.Error, "the plan has no label"),
            new(Severity.Warning, "the label lacks date, place, collector, scientific name or the fluid"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Plan.Label.IsEmpty) return [Finding.Error("label-incomplete", NoLabel, Write)];
        var specimen = plan.Specimen;
        ImmutableArray<Message> missing = [];
        if (string.IsNullOrWhiteSpace(specimen.ScientificName)) missing = missing.Add(Name);
        if (specimen.FoundOn is null && specimen.DiedAt is null) missing = missing.Add(Date);
        if (string.IsNullOrWhiteSpace(specimen.Where)) missing = missing.Add(Place);
        if (string.IsNullOrWhiteSpace(specimen.CollectedBy)) missing = missing.Add(Collector);
        if (plan.House is { Fluid.Name: var fluid } && !Names(plan.Plan.Label, fluid)) missing = missing.Add(TheFluid.With(("fluid", fluid)));
        if (missing.IsEmpty) return [];
        return [Finding.Warning("label-incomplete", Lacks.With(Argument.Messages("missing", missing)), FindOut)];
    }

    private static bool Names(ImmutableArray<Message> label, string fluid)
    {
        foreach (var line in label)
        {
            if (line.Find("fluid") is { Text: var named } && named == fluid) return true;
        }

        return false;
    }
}
