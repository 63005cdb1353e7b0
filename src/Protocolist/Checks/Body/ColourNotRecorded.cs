using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.Body;

/// <summary>Colours are photographed while they are there.</summary>
internal static class ColourNotRecorded
{
    private static readonly Phrase Unrecorded = new("colour-not-recorded", "nothing before '{step}' records its colours, which no fluid keeps");
    private static readonly Phrase Photograph = new("colour-not-recorded.remedy", "photograph both sides with a scale and a colour chart first");

    public static PlanCheck Check { get; } = new(
        "colour-not-recorded",
        "the specimen's worth: colour fades in every fluid",
        "Allen, Marine Fishes of South-East Asia (Western Australian Museum); Michonneau 2017",
        Find)
    {
        Severities = [new(Severity.Warning, "no stage before the first fixing declares 'covers: colours'")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.FirstFixing is not { } first) return [];
        foreach (var step in plan.Steps)
        {
            if (ReferenceEquals(step, first)) break;
            if ((step.Covers & Coverage.Colours) != 0) return [];
        }

        return [Finding.Warning("colour-not-recorded", Unrecorded.With(Argument.Id("step", first.Id)), Photograph).At(first)];
    }
}
