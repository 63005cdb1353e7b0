using System.Collections.Immutable;
using Protocolist.Checks.Time;
using Protocolist.Findings;
using Protocolist.Rules;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>Fixative reaches the body while it is still worth fixing.</summary>
internal static class TooLateAfterDeath
{
    private static readonly Phrase TooLate = new(
        "too-late-after-death", "fixative comes with '{step}', {waited:vs most} after death; {most} is the most for a body that came {state}");

    private static readonly Phrase CameChilled = new("too-late-after-death.chilled", "chilled");
    private static readonly Phrase CameUnchilled = new("too-late-after-death.unchilled", "unchilled");
    private static readonly Phrase Remedy = new("too-late-after-death.remedy", "{all:; }");
    private static readonly Phrase JudgeIt = new(
        "too-late-after-death.remedy-lost", "judge by sight and smell; skeleton, skin or tissue may be all that is worth keeping");

    private static readonly Phrase ChillIt = new("too-late-after-death.remedy-chill", "chill it at once, open or inject the gut first, and begin sooner");
    private static readonly Phrase ChillItWhole = new("too-late-after-death.remedy-chill-whole", "chill it at once, and begin sooner");

    public static PlanCheck Check { get; } = new(
        "too-late-after-death",
        "the specimen: gut and fine tissue go first, within hours in the warm",
        "common practice: 12 h warm and 3 d chilled as the most, four times that as lost; "
        + "Neumann 2011, natural-history collections list (minutes for fishes that digest themselves)",
        Find)
    {
        Severities = [new(Severity.Warning, "fixative comes more than 12 h after death, or 3 d for a body that came chilled; frozen and thawed ones aside")],
    };

    /// <summary>
    /// Of a body that was in the freezer nobody knows how much of the time since death it was frozen: how long it waits thawed is asked elsewhere.
    /// </summary>
    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.DiedAt is not { } died || plan.Specimen.Condition is Condition.Frozen or Condition.Thawed) return [];
        if (plan.FirstFixing is not { Step.Start: { } start } first) return [];
        var most = HoursBorne.Unfixed(plan.Specimen.Condition);
        var waited = start.ToInstant() - died;
        if (waited <= most) return [];
        var state = plan.Specimen.Condition is Condition.Chilled ? CameChilled : CameUnchilled;
        var message = TooLate.With(Argument.Id("step", first.Id), ("waited", waited), ("most", most), ("state", state));
        var opens = BodyKind.Of(plan.Body).Allows(Gestures.Cut | Gestures.Inject);
        Message[] remedies = [waited > most * 4 ? JudgeIt : opens ? ChillIt : ChillItWhole, .. BodyWaits.Remedies(plan)];
        return [Finding.Warning("too-late-after-death", message, Remedy.With(Argument.Messages("all", remedies))).At(first).By("specimen.condition")];
    }
}
