using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Animals with bone are fixed in buffered formalin.</summary>
internal static class AcidOnBone
{
    private static readonly Phrase Acid = new(BoneInAcid.Id, "the bones of {group:a} lie {time:vs most} in {fluid}, which is acid; {most} is the most");
    private static readonly Phrase Buffered = new("acid-on-bone.remedy", "use neutral buffered formalin");

    public static PlanCheck Check { get; } = new(
        BoneInAcid.Id,
        "the specimen: formalin without a buffer is acid from the start, and takes lime out of bone and teeth",
        BoneInAcid.Source,
        Find)
    {
        Severities = [new(Severity.Warning, "a vertebrate lies more than 7 d in formalin without a buffer, all baths counted")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ReviewStep? first = null;
        var time = Duration.Zero;
        foreach (var step in plan.Formalin)
        {
            if (!IsAcidBath(step)) continue;
            first ??= step;
            time += step.Lasts;
        }

        if (first is null || !BoneInAcid.Suffers(plan.Group, time)) return [];
        var message = Acid.With(("group", plan.Group.Name), ("time", time), ("fluid", first.Fluid!.Name), ("most", BoneInAcid.Most));
        return [Finding.Warning(BoneInAcid.Id, message, Buffered).At(first, "fluid", "last").ByEach(plan.Formalin.Where(IsAcidBath), "last")];
    }

    private static bool IsAcidBath(ReviewStep step) => step.Kind == StageKind.Immerse && AcidOnLime.IsAcid(step.Fluid!);
}
