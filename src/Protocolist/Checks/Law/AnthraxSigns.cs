using Protocolist.Findings;

namespace Protocolist.Checks.Law;

/// <summary>A carcass with signs of anthrax is not opened.</summary>
internal static class AnthraxSigns
{
    public static PlanCheck Check { get; } = new(
        "anthrax-signs",
        "people: air turns the germ into spores that outlive fixative",
        "Canadian Food Inspection Agency, anthrax carcasses",
        Find)
    {
        Speaks = [new(Severity.Error, "what is told of a mammal fits anthrax")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Group.IsA("mammal") && plan.Tells(HistoryWords.Anthrax))
            yield return Finding.Error("anthrax-signs", $"what is told of this {plan.Group.Name} ({plan.Specimen.History()}) fits anthrax", "do not open, slit or inject it; plug the openings, cover the head, keep people and animals away, call the veterinary authority");
    }
}
