using Protocolist.Findings;
using Protocolist.Fluids.Contact;
using Protocolist.Vessels;

namespace Protocolist.Checks.Vessels;

/// <summary>What lid and seal of the final vessel are made of is known.</summary>
internal static class MaterialUnknown
{
    public static PlanCheck Check { get; } = new(
        "vessel-material-unknown",
        "the specimen: metal lids corrode, some plastics craze, and the fluid escapes",
        "Conserve O Gram 11/4, 1999; SPNHC best-practices wiki",
        Find)
    {
        Speaks = [new(Severity.Note, "nothing says what the wall or the lid of the final vessel is made of")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House?.Vessel?.Vessel is not { } vessel || vessel.Closure == Closure.Open) yield break;
        string[] unknown = [.. vessel.Wall == VesselMaterial.Unknown ? ["wall"] : (string[])[], .. vessel.Lid == VesselMaterial.Unknown ? ["lid"] : (string[])[]];
        if (unknown.Length > 0)
            yield return Finding.Note("vessel-material-unknown", $"nothing says what the {string.Join(" and the ", unknown)} of the {vessel.Name} {(unknown.Length == 1 ? "is" : "are")} made of, where '{plan.House.Id}' keeps it for good", "glass with a polypropylene lid and a foam or PTFE-faced liner is safe").At(plan.House);
    }
}
