using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>Whether a permit is needed was asked.</summary>
internal static class PermitNotNoted
{
    public static PlanCheck Check { get; } = new(
        "permit-not-noted",
        "the law and the specimen: what may not be kept is lost",
        "CITES and national law, from memory; whether and which, the authority of the place decides",
        Find)
    {
        Speaks = [new(Severity.Note, "the group may need a permit in some places, and none is noted")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Specimen.Permits.IsEmpty) yield break;
        var legal = plan.Group.Cautions.Where(c => c.IsLegal).ToList();
        if (legal.Count == 0 || legal.Exists(c => c.Id is "protected" or "cites")) yield break;
        string[] told = [plan.Specimen.HowObtained is { } how && !string.IsNullOrWhiteSpace(how) ? $"'{how}'" : "", string.IsNullOrWhiteSpace(plan.Specimen.Where) ? "" : $"found at '{plan.Specimen.Where}'"];
        var history = string.Join(", ", told.Where(t => t.Length > 0));
        yield return Finding.Note("permit-not-noted", $"no permit is noted for {plan.Group.One()}{(history.Length > 0 ? $" ({history})" : "")}", "ask the authority of that place whether one is needed, and note its number or its answer under 'permits:'");
    }
}
