using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>How, where, when and by whom the animal was obtained is known.</summary>
internal static class MissingProvenance
{
    private static readonly Phrase NothingSays = new("missing-provenance", "nothing says {missing}");
    private static readonly Phrase When = new("missing-provenance.when", "when it was found (found-on)");
    private static readonly Phrase Where = new("missing-provenance.where", "where it was found (where)");
    private static readonly Phrase Who = new("missing-provenance.who", "who collected it (collected-by)");
    private static readonly Phrase How = new("missing-provenance.how", "how it was obtained (how-obtained)");
    private static readonly Phrase FindOut = new(
        "missing-provenance.remedy", "find it out and write it down before work begins; ask the local authority where a permit may be needed");

    public static PlanCheck Check { get; } = new(
        "missing-provenance",
        "the law and the specimen's worth: without its history it may not be kept, and is of no use to anybody",
        "common practice; Museum of Vertebrate Zoology, Berkeley, prep lab notes (salvage slip); permits differ by country",
        Find)
    {
        Severities = [new(Severity.Error, "date, place, finder or the way it was obtained is missing")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var specimen = plan.Specimen;
        ImmutableArray<Message> missing = [];
        if (specimen.FoundOn is null && specimen.DiedAt is null) missing = missing.Add(When);
        if (string.IsNullOrWhiteSpace(specimen.Where)) missing = missing.Add(Where);
        if (string.IsNullOrWhiteSpace(specimen.CollectedBy)) missing = missing.Add(Who);
        if (string.IsNullOrWhiteSpace(specimen.HowObtained)) missing = missing.Add(How);
        if (missing.IsEmpty) return [];
        return [Finding.Error("missing-provenance", NothingSays.With(Argument.Messages("missing", missing)), FindOut)];
    }
}
