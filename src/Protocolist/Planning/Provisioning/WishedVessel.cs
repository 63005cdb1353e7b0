using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Vessels;

namespace Protocolist.Planning.Provisioning;

/// <summary>A vessel that a person insists on, and why it cannot be.</summary>
internal static class WishedVessel
{
    private static readonly Phrase NoSuchStep = new("no-vessel-wanted", "'{step}' is no step of this plan that uses a vessel");
    private static readonly Phrase Unknown = new("unknown-vessel", "the bench lists no vessel '{vessel}'");
    private static readonly Phrase NotFree = new("wished-vessel-not-free", "no '{vessel}' is free, and none can be bought");
    private static readonly Phrase NotFreeRemedy = new("wished-vessel-not-free.remedy", "take another, start later, or give it a price in the bench file");
    private static readonly Phrase DoesNotFit = new("wished-vessel-does-not-fit", "'{vessel}' does not do for '{step}': {why:; }");
    private static readonly Phrase DoesNotFitRemedy = new(
        "wished-vessel-does-not-fit.remedy", "leave the choice to the planner, or see which ones do with 'compare'");

    /// <summary>The step's wished vessel and how it is filled; null where nothing is wished, or it cannot be.</summary>
    public static FittedVessel? For(DraftStep step, PlanWishes wishes, Draft draft, StockDay day) =>
        wishes.Vessels.TryGetValue(step.Id, out var id) && day.Find(id) is { } vessel
            ? VesselChoice.Try(step, draft.Body, draft.Posture!.Body, day.Stock.Bench, vessel).Fitted
            : null;

    /// <summary>
    /// Wishes that come to nothing, each with the reason: the planner's own choice stands in their place, and the plan must not start unseen.
    /// </summary>
    public static void Unmet(PlanWishes wishes, ImmutableArray<DraftStep> steps, Draft draft, StockDay day, List<Finding> findings)
    {
        foreach (var (stepId, id) in wishes.Vessels)
        {
            var step = steps.FirstOrDefault(s => s.Id == stepId);
            if (step is null || (step.Vessel is null && step.NoVessel is null))
            {
                var others = steps.Where(s => s.Vessel is not null || s.NoVessel is not null).Select(s => s.Id);
                findings.Add(Finding.Error(NoSuchStep.Id, NoSuchStep.With(Argument.Id("step", stepId)), Suggestion.For(stepId, [.. others])));
            }
            else if (Fault(step, id, draft, day) is { } fault) findings.Add(fault with { Subject = stepId });
        }
    }

    private static Finding? Fault(DraftStep step, string id, Draft draft, StockDay day)
    {
        var (vessels, said) = (day.Stock.Bench.Vessels, Argument.Id("vessel", id));
        if (vessels.All(v => v.Id != id)) return Finding.Error(Unknown.Id, Unknown.With(said), Suggestion.For(id, [.. vessels.Select(v => v.Id)]));
        if (day.Find(id) is not { } vessel) return Finding.Error(NotFree.Id, NotFree.With(said), NotFreeRemedy);
        if (step.Vessel?.Vessel.Id == id) return null;
        var why = VesselChoice.Try(step, draft.Body, draft.Posture!.Body, day.Stock.Bench, vessel).Reasons.Select(r => r.Message);
        return Finding.Error(DoesNotFit.Id, DoesNotFit.With(said, Argument.Id("step", step.Id), Argument.Messages("why", why)), DoesNotFitRemedy);
    }
}
