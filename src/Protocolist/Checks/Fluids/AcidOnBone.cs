using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;

namespace Protocolist.Checks.Fluids;

/// <summary>Animals with bone are fixed in buffered formalin.</summary>
internal static class AcidOnBone
{
    /// <summary>A brief fixation does little harm; the project's choice.</summary>
    private static readonly Duration Brief = Duration.FromDays(7);

    public static PlanCheck Check { get; } = new(
        "acid-on-bone",
        "the specimen: formalin without a buffer is acid from the start, and takes lime out of bone and teeth",
        "Nagorsen and Peterson 1980; stock at pH 2.8 to 4.6 (Atkins 1922); the week is the project's choice",
        Find)
    {
        Speaks = [new(Severity.Warning, "a vertebrate lies more than 7 d in formalin without a buffer, all baths counted")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsA("vertebrate")) yield break;
        var steps = plan.Formalin.Where(s => s.Fluid!.Buffering == Buffering.None && s.Kind is StageKind.Immerse).ToList();
        var acid = steps.Aggregate(Duration.Zero, (sum, s) => sum + s.Lasts);
        if (acid > Brief)
            yield return Finding.Warning("acid-on-bone", $"the bones of {plan.Group.One()} lie {acid.Past(Brief)} in {steps[0].Fluid!.Name}, which is acid; {Brief.Text()} is the most", "use neutral buffered formalin").At(steps[0], "fluid", "last").ByEach(steps, "last");
    }
}
