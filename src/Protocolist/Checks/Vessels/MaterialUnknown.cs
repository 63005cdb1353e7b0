using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Vessels;

namespace Protocolist.Checks.Vessels;

/// <summary>What lid and seal of the final vessel are made of is known.</summary>
internal static class MaterialUnknown
{
    private const string Id = "vessel-material-unknown";
    private static readonly Phrase Unknown = new(Id, "nothing says what {parts:and} of the {vessel} {parts|is|are} made of, where '{step}' keeps it for good");
    private static readonly Phrase Wall = new("vessel-material-unknown.wall", "the wall");
    private static readonly Phrase Lid = new("vessel-material-unknown.lid", "the lid");
    private static readonly Phrase Safe = new("vessel-material-unknown.remedy", "glass with a polypropylene lid and a foam or PTFE-faced liner is safe");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: metal lids corrode, some plastics craze, and the fluid escapes",
        "Conserve O Gram 11/4, 1999; SPNHC best-practices wiki",
        Find)
    {
        Severities = [new(Severity.Note, "nothing says what the wall or the lid of the final vessel is made of")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House?.Vessel?.Vessel is not { } vessel || vessel.Closure == Closure.Open) return [];
        var (wall, lid) = (vessel.Wall == VesselMaterial.Unknown, vessel.Lid == VesselMaterial.Unknown);
        if (!wall && !lid) return [];
        Message[] parts = wall && lid ? [Wall, Lid] : [wall ? Wall : Lid];
        var message = Unknown.With(Argument.Messages("parts", parts), ("vessel", vessel.Name), Argument.Id("step", plan.House.Id));
        return [Finding.Note(Id, message, Safe).At(plan.House)];
    }
}
