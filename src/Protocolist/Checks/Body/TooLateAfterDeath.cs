using Protocolist.Findings;
using Protocolist.Rules;
using Protocolist.Specimens;

namespace Protocolist.Checks.Body;

/// <summary>Fixative reaches the body while it is still worth fixing.</summary>
internal static class TooLateAfterDeath
{
    public static PlanCheck Check { get; } = new(
        "too-late-after-death",
        "the specimen: gut and fine tissue go first, within hours in the warm",
        "common practice: 12 h warm and 3 d chilled as the most, four times that as lost; Neumann 2011, natural-history collections list (minutes for fishes that digest themselves)",
        Find)
    {
        Speaks = [new(Severity.Warning, "fixative comes more than 12 h after death, or 3 d for a body that came chilled; frozen and thawed ones aside")],
    };

    /// <summary>Of a body that was in the freezer nobody knows how much of the time since death it was frozen: how long it waits thawed is asked elsewhere.</summary>
    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.DiedAt is not { } died || plan.Specimen.Condition is Condition.Frozen or Condition.Thawed || plan.FirstFixing?.Step.Start is not { } start) yield break;
        var most = HoursBorne.Unfixed(plan.Specimen.Condition);
        var waited = start.ToInstant() - died;
        if (waited <= most) yield break;
        var message = $"fixative comes with '{plan.FirstFixing.Id}', {waited.Past(most)} after death; {most.Text()} is the most for a body that came {(plan.Specimen.Condition is Condition.Chilled ? "chilled" : "unchilled")}";
        string[] remedies = [waited > most * 4 ? "judge by sight and smell; skeleton, skin or tissue may be all that is worth keeping" : "chill it at once, open or inject the gut first, and begin sooner", .. Time.BodyWaits.Remedies(plan)];
        yield return Finding.Warning("too-late-after-death", message, string.Join("; ", remedies)).At(plan.FirstFixing).By("specimen.condition");
    }
}
