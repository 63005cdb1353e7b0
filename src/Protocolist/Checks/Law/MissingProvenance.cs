using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>How, where, when and by whom the animal was obtained is known.</summary>
internal static class MissingProvenance
{
    public static PlanCheck Check { get; } = new(
        "missing-provenance",
        "the law and the specimen's worth: without its history it may not be kept, and is of no use to anybody",
        "common practice; Museum of Vertebrate Zoology, Berkeley, prep lab notes (salvage slip); permits differ by country",
        Find)
    {
        Speaks = [new(Severity.Error, "date, place, finder or the way it was obtained is missing")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        var specimen = plan.Specimen;
        string[] missing =
        [
            .. specimen.FoundOn is null && specimen.DiedAt is null ? ["when it was found (found-on)"] : (string[])[],
            .. string.IsNullOrWhiteSpace(specimen.Where) ? ["where it was found (where)"] : (string[])[],
            .. string.IsNullOrWhiteSpace(specimen.CollectedBy) ? ["who collected it (collected-by)"] : (string[])[],
            .. string.IsNullOrWhiteSpace(specimen.HowObtained) ? ["how it was obtained (how-obtained)"] : (string[])[],
        ];
        if (missing.Length > 0)
        {
            yield return Finding.Error("missing-provenance", $"nothing says {string.Join(", ", missing)}", "find it out and write it down before work begins; ask the local authority where a permit may be needed");
        }
    }
}
