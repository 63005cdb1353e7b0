using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>How the air of the room is replaced is known.</summary>
internal static class VentilationUnknown
{
    private const string Id = "ventilation-unknown";

    /// <summary>Common practice: a pan of fixative and not a vial.</summary>
    private static readonly Volume Much = Volume.FromLiters(1);

    private static readonly Phrase Unknown = new(
        Id,
        "'{step}' opens {volume} of {fluid}, and the bench says nothing of hood, room and change of air; from {much} on that has to be known");

    private static readonly Phrase GiveAir = new("ventilation-unknown.remedy", "work in a hood or outdoors; give 'air:' in the bench file");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: nobody smells formaldehyde before it harms",
        "29 CFR 1910.1048; common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "1 L of formalin or more is opened, and the bench says nothing of its air")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Air is not null) return [];
        var (open, volume) = (default(ReviewStep), Volume.Zero);
        foreach (var step in plan.Formalin)
        {
            if (step.Volume is { } opened && opened >= Much && opened > volume) (open, volume) = (step, opened);
        }

        if (open is null) return [];
        var message = Unknown.With(Argument.Id("step", open.Id), ("volume", volume), ("fluid", open.Fluid!.Name), ("much", Much));
        return [Finding.Warning(Id, message, GiveAir).At(open, "fluid", "volume")];
    }
}
