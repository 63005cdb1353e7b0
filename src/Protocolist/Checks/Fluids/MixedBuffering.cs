using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>The same buffering from the first injection to the last top-up.</summary>
internal static class MixedBuffering
{
    private static readonly Phrase Several = new(OneBuffering.Id, "this body comes into formalin that is buffered in {count} ways: {kinds:; }");
    private static readonly Phrase Buffered = new("mixed-buffering.of", "{buffering} buffered in {steps:'}");
    private static readonly Phrase Unbuffered = new("mixed-buffering.unbuffered", "unbuffered in {steps:'}");
    private static readonly Phrase One = new("mixed-buffering.remedy", "use one buffering from the first injection to the last top-up");

    public static PlanCheck Check { get; } = new(
        OneBuffering.Id,
        "the specimen: two bufferings in one body leave its acidity unknown, and salts fall out",
        OneBuffering.Source,
        Find)
    {
        Severities = [new(Severity.Error, "formalin of two bufferings or more meets the body, from the first injection to the last top-up")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Formalin.IsEmpty || !Clashes(plan)) return [];
        var kinds = plan.Formalin.Concat(plan.Care.Where(c => c.Fluid is { HasFormaldehyde: true })).GroupBy(s => s.Fluid!.Buffering).ToList();
        var message = Several.With(("count", kinds.Count), Argument.Messages("kinds", kinds.Select(Kind)));
        return [Finding.Error(OneBuffering.Id, message, One).ByEach(kinds.SelectMany(k => k), "fluid") with { Subject = kinds[1].First().Id }];
    }

    private static bool Clashes(ReviewCase plan)
    {
        var first = plan.Formalin[0].Fluid!;
        foreach (var step in plan.Formalin)
        {
            if (OneBuffering.Clash(first, step.Fluid!)) return true;
        }

        foreach (var step in plan.Care)
        {
            if (step.Fluid is { } fluid && OneBuffering.Clash(first, fluid)) return true;
        }

        return false;
    }

    private static Message Kind(IGrouping<Buffering, ReviewStep> kind) =>
        (kind.Key == Buffering.None ? Unbuffered : Buffered).With(("buffering", BufferWords.Of(kind.Key)), Argument.Ids("steps", kind.Select(s => s.Id)));
}
