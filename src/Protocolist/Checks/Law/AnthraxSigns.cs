using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>A carcass with signs of anthrax is not opened.</summary>
internal static class AnthraxSigns
{
    private static readonly Phrase FitsAnthrax = new("anthrax-signs", "what is told of this {group} ('{history:; }') fits anthrax");
    private static readonly Phrase DoNotOpen = new(
        "anthrax-signs.remedy",
        "do not open, slit or inject it; plug the openings, cover the head, keep people and animals away, call the veterinary authority");

    public static PlanCheck Check { get; } = new(
        "anthrax-signs",
        "people: air turns the germ into spores that outlive fixative",
        "Canadian Food Inspection Agency, anthrax carcasses",
        Find)
    {
        Severities = [new(Severity.Error, "what is told of a mammal fits anthrax")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsA("mammal") || !plan.HistoryHas(HistoryWords.Anthrax)) return [];
        return [Finding.Error("anthrax-signs", FitsAnthrax.With(("group", plan.Group.Name), plan.Specimen.History()), DoNotOpen)];
    }
}
