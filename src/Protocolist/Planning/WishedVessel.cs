using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Vessels;

namespace Protocolist.Planning;

/// <summary>A vessel that a person insists on, and why it cannot be.</summary>
internal static class WishedVessel
{
    private static readonly Phrase NoVesselWanted = new("no-vessel-wanted", "'{step}' is no step of this plan that uses a vessel");
    private static readonly Phrase UnknownVessel = new("unknown-vessel", "the bench lists no vessel '{id}'");
    private static readonly Phrase WishedVesselNotFree = new("wished-vessel-not-free", "no '{id}' is free, and none can be bought");
    private static readonly Phrase WishedVesselNotFreeRemedy = new(
        "wished-vessel-not-free.remedy",
        "take another, start later, or give it a price in the bench file");
    private static readonly Phrase WishedVesselDoesNotFit = new("wished-vessel-does-not-fit", "'{id}' does not do for '{step}': {why:; }");
    private static readonly Phrase WishedVesselDoesNotFitRemedy = new(
        "wished-vessel-does-not-fit.remedy",
        "leave the choice to the planner, or see which ones do with 'compare'");

    /// <summary>The step's wished vessel and how it is filled; null where nothing is wished, or it cannot be.</summary>
    public static FittedVessel? For(DraftStep step, PlanWishes wishes, Draft draft, Bench bench, IReadOnlyList<Vessel> toBeHad) =>
        wishes.Vessels.TryGetValue(step.Id, out var id) && toBeHad.FirstOrDefault(v => v.Id == id) is { } vessel
            ? VesselChoice.Try(step, draft.Body, bench, vessel).Fitted
            : null;

    /// <summary>Wishes that come to nothing, each with the reason: the planner's own choice stands in their place, and the plan must not start unseen.</summary>
    public static IEnumerable<Finding> Unmet(PlanWishes wishes, ImmutableArray<DraftStep> steps, Draft draft, Bench bench, IReadOnlyList<Vessel> toBeHad)
    {
        foreach (var (stepId, id) in wishes.Vessels)
        {
            var step = steps.FirstOrDefault(s => s.Id == stepId);
            if (step is null || (step.Vessel is null && step.NoVessel is null))
                yield return Finding.Error("no-vessel-wanted", NoVesselWanted.With(("step", stepId)), Suggestion.For(stepId, [.. steps.Where(s => s.Vessel is not null || s.NoVessel is not null).Select(s => s.Id)]));
            else if (bench.Vessels.All(v => v.Id != id))
                yield return Finding.Error("unknown-vessel", UnknownVessel.With(("id", id)), Suggestion.For(id, [.. bench.Vessels.Select(v => v.Id)])) with { Subject = stepId };
            else if (toBeHad.FirstOrDefault(v => v.Id == id) is not { } vessel)
                yield return Finding.Error("wished-vessel-not-free", WishedVesselNotFree.With(("id", id)), WishedVesselNotFreeRemedy) with { Subject = stepId };
            else if (step.Vessel?.Vessel.Id != id)
            {
                var why = VesselChoice.Try(step, draft.Body, bench, vessel).Reasons.Select(r => r.Message);
                yield return Finding.Error("wished-vessel-does-not-fit", WishedVesselDoesNotFit.With(("id", id), ("step", stepId), Argument.ListOf("why", why.Select(w => (Argument)("", w)))), WishedVesselDoesNotFitRemedy) with { Subject = stepId };
            }
        }
    }
}
