using Protocolist.Findings;

namespace Protocolist.Checks.Body;

/// <summary>Colours are photographed while they are there.</summary>
internal static class ColourNotRecorded
{
    public static PlanCheck Check { get; } = new(
        "colour-not-recorded",
        "the specimen's worth: colour fades in every fluid",
        "Allen, Marine Fishes of South-East Asia (Western Australian Museum); Michonneau 2017",
        Find)
    {
        Speaks = [new(Severity.Warning, "no sentence before the first fixing speaks of a photograph or of colour")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.FirstFixing is not { } first) yield break;
        foreach (var step in plan.Steps)
        {
            if (step == first) break;
            foreach (var sentence in step.Step.Instructions.Select(m => m.ToString()))
            {
                if (sentence.Contains("photograph", StringComparison.OrdinalIgnoreCase) || sentence.Contains("colour", StringComparison.OrdinalIgnoreCase)) yield break;
            }
        }

        yield return Finding.Warning("colour-not-recorded", $"nothing before '{first.Id}' records its colours, which no fluid keeps", "photograph both sides with a scale and a colour chart first").At(first);
    }
}
