using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Reading;

namespace Protocolist.Checks.Fluids;

/// <summary>The same buffering from the first injection to the last top-up.</summary>
internal static class MixedBuffering
{
    public static PlanCheck Check { get; } = new(
        "mixed-buffering",
        "the specimen: two bufferings in one body leave its acidity unknown, and salts fall out",
        "common practice; white precipitate on topping up old formalin with neutral (Conservation DistList, 2007)",
        Find)
    {
        Speaks = [new(Severity.Error, "formalin of two bufferings or more meets the body, from the first injection to the last top-up")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Formalin.IsEmpty) yield break;
        var kinds = plan.Formalin.Concat(plan.Care.Where(c => c.Fluid is { HasFormaldehyde: true })).GroupBy(s => s.Fluid!.Buffering).ToList();
        if (kinds.Count < 2) yield break;
        var said = string.Join("; ", kinds.Select(k => $"{Name(k.Key)} in {string.Join(", ", k.Select(s => $"'{s.Id}'"))}"));
        yield return Finding.Error("mixed-buffering", $"formalin of {kinds.Count} bufferings meets this body: {said}", "use one buffering from the first injection to the last top-up").ByEach(kinds.SelectMany(k => k), "fluid") with { Subject = kinds[1].First().Id };
    }

    private static string Name(Buffering buffering) => buffering == Buffering.None ? "unbuffered" : $"{EnumWords<Buffering>.Of(buffering).Replace('-', ' ')} buffered";
}
