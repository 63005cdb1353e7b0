using Protocolist.Specimens;

namespace Protocolist.Checks;

/// <summary>Whether a body that has to wait may go into the freezer, and at what price.</summary>
/// <remarks>Not for bristle worms: Australian Museum, Methods of polychaete fixation; nor twice: Bishop Museum, Invertebrate Specimen Handling; the rest is common practice.</remarks>
internal static class Freezing
{
    /// <summary>The advice as part of a remedy.</summary>
    public static string Advice(ReviewCase plan) => plan switch
    {
        { Specimen.Condition: Condition.Frozen } => "or keep it frozen until then",
        { Specimen.Condition: Condition.Thawed } => "do not freeze it again",
        { Group.IsGelatinous: true } => "do not freeze it: ice tears a body of jelly apart",
        _ when plan.Group.IsA("polychaete") => "do not freeze it: bristle worms break up in ice",
        _ => "or freeze it now and thaw it in the cold for fixing: ice bursts cells, so that histology is lost, soft parts slump and colours fade, and it can be done once only",
    };
}
