using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Vessels;

/// <summary>Every step that needs a vessel has one that holds the body freely with enough fluid.</summary>
internal static class VesselTooSmall
{
    private const string Id = "vessel-too-small";
    private const int MostReasons = 3;
    private static readonly Phrase NoneWillDo = new(Id, "no vessel at hand will do for {steps:'}: {reasons:; }");
    private static readonly Phrase NoneListed = new(
        "vessel-too-small.none-listed",
        "the bench lists no vessel for {steps:'}; the amounts follow from the ratio alone");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: a body forced into a vessel, or with too little fluid, is fixed bent and badly",
        "Bishop Museum, Invertebrate Specimen Handling (nothing forced in); 10 : 1 of histology guidance (PMC9292019); common practice",
        Find)
    {
        Severities =
        [
            new(Severity.Error, "no vessel at hand will do for a step"),
            new(Severity.Note, "the bench lists no vessel at all"),
        ],
    };

    /// <summary>Whether every vessel at hand fails a step by its depth alone, which is told elsewhere.</summary>
    public static bool IsOnlyTooShallow(ReviewStep step) => IsOnlyTooShallow(step.VesselReasons);

    /// <summary>Whether these reasons against every vessel are of depth alone.</summary>
    public static bool IsOnlyTooShallow(ImmutableArray<Finding> reasons)
    {
        foreach (var reason in reasons)
        {
            if (reason.Id != "vessel-too-shallow") return false;
        }

        return true;
    }

    /// <summary>Steps that lack a vessel for the same reasons are told of together.</summary>
    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        var alike = new List<(List<Message> Reasons, List<ReviewStep> Steps)>();
        foreach (var step in plan.Steps)
        {
            if (step.Vessel is null && !step.VesselAdvice.IsEmpty) Add(alike, ReasonsOf(step), step);
        }

        foreach (var (reasons, steps) in alike)
        {
            var (named, advice) = (Argument.Ids("steps", steps.Select(s => s.Id)), steps[0].VesselAdvice);
            if (plan.Bench.Vessels.IsEmpty)
                found = found.Add(Rests(Finding.Note(Id, NoneListed.With(named), advice), steps));
            else if (!IsOnlyTooShallow(steps[0]))
                found = found.Add(Rests(Finding.Error(Id, NoneWillDo.With(named, Argument.Messages("reasons", reasons)), advice), steps));
        }

        return found;
    }

    private static void Add(List<(List<Message> Reasons, List<ReviewStep> Steps)> alike, List<Message> reasons, ReviewStep step)
    {
        if (alike.Find(a => a.Reasons.SequenceEqual(reasons)) is { Steps: { } others }) others.Add(step);
        else alike.Add((reasons, [step]));
    }

    private static Finding Rests(Finding finding, List<ReviewStep> steps) =>
        finding.At(steps[0]).ByEach(steps, "volume").By("specimen.lot-volume", "specimen.length", "specimen.half-thickness");

    private static List<Message> ReasonsOf(ReviewStep step)
    {
        var reasons = new List<Message>();
        foreach (var reason in step.VesselReasons)
        {
            if (reasons.Count < MostReasons && !reasons.Contains(reason.Message)) reasons.Add(reason.Message);
        }

        return reasons;
    }
}
