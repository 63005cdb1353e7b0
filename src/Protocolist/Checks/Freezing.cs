using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks;

/// <summary>Whether a body that has to wait may go into the freezer, and at what price.</summary>
/// <remarks>
/// Not for bristle worms: Australian Museum, Methods of polychaete fixation; nor twice: Bishop Museum, Invertebrate Specimen Handling;
/// the rest is common practice.
/// </remarks>
internal static class Freezing
{
    private static readonly Phrase KeepFrozen = new("freezing.keep-frozen", "or keep it frozen until then");
    private static readonly Phrase NotAgain = new("freezing.not-again", "do not freeze it again");
    private static readonly Phrase NotJelly = new("freezing.not-jelly", "do not freeze it: ice tears a body of jelly apart");
    private static readonly Phrase NotBristleWorms = new("freezing.not-bristle-worms", "do not freeze it: bristle worms break up in ice");
    private static readonly Phrase AtAPrice = new(
        "freezing.at-a-price",
        "or freeze it now and thaw it in the cold for fixing: ice bursts cells, so that histology is lost, soft parts slump and colours fade, "
        + "and it can be done once only");

    /// <summary>The advice as part of a remedy.</summary>
    public static Phrase Advice(ReviewCase plan) => plan switch
    {
        { Specimen.Condition: Condition.Frozen } => KeepFrozen,
        { Specimen.Condition: Condition.Thawed } => NotAgain,
        { Group.IsGelatinous: true } => NotJelly,
        _ when plan.Group.IsA("polychaete") => NotBristleWorms,
        _ => AtAPrice,
    };
}
