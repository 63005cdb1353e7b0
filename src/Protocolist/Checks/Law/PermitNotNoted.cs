using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks.Law;

/// <summary>Whether a permit is needed was asked.</summary>
internal static class PermitNotNoted
{
    private static readonly Phrase NoPermit = new("permit-not-noted", "no permit is noted for {group:a}{history}");
    private static readonly Phrase History = new("permit-not-noted.history", " ({parts})");
    private static readonly Phrase Obtained = new("permit-not-noted.obtained", "'{how}'");
    private static readonly Phrase FoundAt = new("permit-not-noted.found-at", "found at '{place}'");
    private static readonly Phrase Ask = new(
        "permit-not-noted.remedy", "ask the authority of that place whether one is needed, and note its number or its answer under 'permits:'");

    public static PlanCheck Check { get; } = new(
        "permit-not-noted",
        "the law and the specimen: what may not be kept is lost",
        "CITES and national law, from memory; whether and which, the authority of the place decides",
        Find)
    {
        Severities = [new(Severity.Note, "the group may need a permit in some places, and none is noted")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (!plan.Specimen.Permits.IsEmpty) return [];
        var isLegal = false;
        foreach (var caution in plan.Group.Cautions)
        {
            isLegal |= caution.IsLegal;
            if (caution is { IsLegal: true, Id: "protected" or "cites" }) return [];
        }

        if (!isLegal) return [];
        return [Finding.Note("permit-not-noted", NoPermit.With(("group", plan.Group.Name), ("history", HistoryOf(plan.Specimen))), Ask)];
    }

    private static Message HistoryOf(Specimen specimen)
    {
        ImmutableArray<Message> parts = [];
        if (!string.IsNullOrWhiteSpace(specimen.HowObtained)) parts = parts.Add(Obtained.With(("how", specimen.HowObtained)));
        if (!string.IsNullOrWhiteSpace(specimen.Where)) parts = parts.Add(FoundAt.With(("place", specimen.Where)));
        return parts.IsEmpty ? default : History.With(Argument.Messages("parts", parts));
    }
}
