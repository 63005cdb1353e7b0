using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>Animals of protected groups have their papers.</summary>
internal static class ProtectedGroup
{
    public static PlanCheck Check { get; } = new(
        "protected-group",
        "the law: possession without papers may be an offence, found dead or not",
        "Migratory Bird Treaty Act, EU Birds Directive, CITES appendices, marine mammal laws, all from memory; the authority of the place decides",
        Find)
    {
        Speaks = [new(Severity.Warning, "the group is protected in many places, and no paper is noted")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Specimen.Permits.IsEmpty) yield break;
        foreach (var caution in plan.Group.Cautions.Where(c => c is { IsLegal: true, Id: "protected" or "cites" }).Take(1))
        {
            var where = string.IsNullOrWhiteSpace(plan.Specimen.Where) ? "" : $" at '{plan.Specimen.Where}'";
            yield return Finding.Warning("protected-group", $"{plan.Group.One()}, {(string.IsNullOrWhiteSpace(plan.Specimen.HowObtained) ? "obtained nobody says how" : $"'{plan.Specimen.HowObtained}'")}{where}, and no paper is noted: {caution.Text}", "ask the authority of that place before work begins; note the number or the answer under 'permits:'") with { Source = caution.Source };
        }
    }
}
