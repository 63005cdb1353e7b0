using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Labels;

/// <summary>A jar of formalin says so in large letters.</summary>
internal static class FormalinFlag
{
    private static readonly Phrase NoFlag = new("formalin-flag-missing", "'{step}' keeps it in {fluid}, and the label has no line FORMALIN");
    private static readonly Phrase AddLine = new("formalin-flag-missing.remedy", "add a line FORMALIN, inside and outside");

    public static PlanCheck Check { get; } = new(
        "formalin-flag-missing",
        "people: the next to open it takes it for alcohol",
        "Michonneau 2017 (an extra FORMALIN label in the jar)",
        Find)
    {
        Severities = [new(Severity.Error, "the final jar holds formalin, and no line of the label says FORMALIN")],
        ProtectsPeople = true,
    };

    /// <summary>The line by which a jar of formalin is told from one of alcohol.</summary>
    public static Phrase Line { get; } = new("label-line.formalin", "FORMALIN");

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid: { HasFormaldehyde: true } fluid } house || IsFlagged(plan.Plan.Label)) return [];
        return [Finding.Error("formalin-flag-missing", NoFlag.With(Argument.Id("step", house.Id), ("fluid", fluid.Name)), AddLine).At(house, "fluid")];
    }

    /// <summary>The same where somebody wrote it in words of their own.</summary>
    private static readonly Message OwnLine = Message.Text(Line.English);

    private static bool IsFlagged(ImmutableArray<Message> label)
    {
        foreach (var line in label)
        {
            if (line == Line || line == OwnLine) return true;
        }

        return false;
    }
}
