using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>Animals of protected groups have their papers.</summary>
internal static class ProtectedGroup
{
    private static readonly Phrase NoPaper = new("protected-group", "{group:a}, {obtained}{place}, and no paper is noted: {caution}");
    private static readonly Phrase Obtained = new("protected-group.obtained", "'{how}'");
    private static readonly Phrase NobodySays = new("protected-group.nobody-says", "obtained nobody says how");
    private static readonly Phrase Ask = new(
        "protected-group.remedy", "ask the authority of that place before work begins; note the number or the answer under 'permits:'");

    public static PlanCheck Check { get; } = new(
        "protected-group",
        "the law: possession without papers may be an offence, found dead or not",
        "Migratory Bird Treaty Act, EU Birds Directive, CITES appendices, marine mammal laws, all from memory; the authority of the place decides",
        Find)
    {
        Severities = [new(Severity.Warning, "the group is protected in many places, and no paper is noted")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var specimen = plan.Specimen;
        if (!specimen.Permits.IsEmpty) return [];
        foreach (var caution in plan.Group.Cautions)
        {
            if (caution is not { IsLegal: true, Id: "protected" or "cites" }) continue;
            Message obtained = string.IsNullOrWhiteSpace(specimen.HowObtained) ? NobodySays : Obtained.With(("how", specimen.HowObtained));
            var message = NoPaper.With(("group", plan.Group.Name), ("obtained", obtained), ("place", specimen.Place()), ("caution", caution.Text));
            return [Finding.Warning("protected-group", message, Ask) with { Source = caution.Source }];
        }

        return [];
    }
}
