using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Checks.Labels;

/// <summary>Labels are written with what fluid does not take away.</summary>
internal static class LabelMedia
{
    private static readonly Phrase WashedOff = new("label-media", "'{step}' asks for {medium}, which fluid takes away");
    private static readonly Phrase PencilOrInk = new("label-media.remedy", "soft pencil or carbon ink on cotton-rag paper");

    public static PlanCheck Check { get; } = new(
        "label-media",
        "the specimen's worth: ball-point, felt pen and thermal print are gone in a year",
        "Michonneau 2017 and USGS 93-104 (soft pencil or carbon ink); common practice for what fails",
        Find)
    {
        Severities = [new(Severity.Warning, "a label is to be written with something that fluid takes away")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Steps)
        {
            if (step.Work is not LabelWork { WrittenWith: { Lasts: false } medium }) continue;
            found = found.Add(Finding.Warning("label-media", WashedOff.With(Argument.Id("step", step.Id), ("medium", medium.Name)), PencilOrInk).At(step));
        }

        return found;
    }
}
