using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Labels;

/// <summary>Labels are written with what fluid does not take away.</summary>
internal static class LabelMedia
{
    private static readonly string[] Fails = ["ball-point", "ballpoint", "felt", "thermal", "marker", "inkjet"];

    public static PlanCheck Check { get; } = new(
        "label-media",
        "the specimen's worth: ball-point, felt pen and thermal print are gone in a year",
        "Michonneau 2017 and USGS 93-104 (soft pencil or carbon ink); common practice for what fails",
        Find)
    {
        Speaks = [new(Severity.Warning, "a label is to be written with something that fluid takes away")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var step in plan.Steps)
        {
            if (step.Kind != StageKind.Label) continue;
            foreach (var sentence in step.Step.Instructions.Select(m => m.ToString()))
            {
                if (Array.Find(Fails, w => sentence.Contains(w, StringComparison.OrdinalIgnoreCase) && !sentence.Contains("no ", StringComparison.OrdinalIgnoreCase) && !sentence.Contains("never", StringComparison.OrdinalIgnoreCase)) is { } bad)
                    yield return Finding.Warning("label-media", $"'{step.Id}' writes with {bad}, which fluid takes away: {sentence}", "soft pencil or carbon ink on cotton-rag paper").At(step);
            }
        }
    }
}
