using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks;

/// <summary>Checks that are made while planning, where the vessel, the recipe or the calendar is worked out; listed here with what they protect.</summary>
internal static class PlanningChecks
{
    private static readonly Phrase OneOfSeveral = new("inspection-gap.one-of-several", "{gap}; that is one of {n} such gaps in '{step}'");
    private static readonly Phrase InSeveral = new("vessel-too-heavy-to-lift.in-several", "{heaviest}; so in {steps:'}");

    public static ImmutableArray<PlanCheck> All { get; } =
    [
        PlanCheck.OfPlanning(
            "ambiguous-formalin-strength",
            "the specimen: '4 % formalin' means 1.5 % formaldehyde to one handbook and 4 % to another",
            "Dawson, The Scyphozoan (parts of stock); nematode fixing practice (4 % formaldehyde)") with
        {
            Severities = [new(Severity.Warning, "a formalin is named by a percentage that may be of stock or of formaldehyde")],
        },
        PlanCheck.OfPlanning("armour-closed", "the specimen: nothing goes through a closed shell", "common practice; Michonneau 2017") with
        {
            Severities = [new(Severity.Warning, "a shell or armour is left closed, and nothing is injected behind it")],
        },
        PlanCheck.OfPlanning(
            "closure-not-for-keeping",
            "the specimen: a vessel without a sealing lid dries out",
            "Conserve O Gram 11/4, 1999; survey of 2596 jars, Natural History Museum London, 2025") with
        {
            Severities = [new(Severity.Warning, "the final vessel has no lid that seals, or a wire bail over alcohol")],
        },
        PlanCheck.OfPlanning("lacking-and-not-for-sale", "the specimen: work begun without its fluid cannot be ended", "the bench's own stock") with
        {
            Severities = [new(Severity.Warning, "there is too little of something on the shelf, and no pack of it can be bought")],
        },
        PlanCheck.OfPlanning("no-dates-fit", "the specimen: a window missed is missed for good", "the protocol's own times and the bench's open hours") with
        {
            Severities = [new(Severity.Error, "no dates satisfy the protocol's times, the open hours and the deliveries together")],
        },
        PlanCheck.OfPlanning(
            "ratio-too-high",
            "the budget: fluid that does nothing for the body is bought, kept and disposed of",
            "common practice: fix in 10 to 20 volumes") with
        {
            Severities = [new(Severity.Note, "more than 100 mL of fluid are more than twenty times the body, or more than the protocol asks for")],
            Find = plan => Once(plan.Found("ratio-too-high"), (_, _) => true, Fullest),
        },
        PlanCheck.OfPlanning(
            "sealed-vessel-builds-pressure",
            "people and the specimen: a jar closed tight bursts or leaks on a hot day",
            "ideal gas law and vapour pressures; OIML R 22 for the growth of ethanol") with
        {
            Severities = [new(Severity.Warning, "a vessel closed tight comes under too much pressure on the hottest day, or is full to the brim then")],
            ProtectsPeople = true,
        },
        PlanCheck.OfPlanning(
            "step-runs-over",
            "the specimen: it is fixed in time, and a later step runs over instead",
            "common practice: 12 h uncooled, 24 h thawed and 3 d chilled as the most that a body waits") with
        {
            Severities = [new(Severity.Warning, "a bath, a wash or a soak outlasts its most because the bench is closed when it should end")],
        },
        PlanCheck.OfPlanning("stock-missing", "the specimen: work begun without its fluid cannot be ended", "the bench's own stock") with
        {
            Severities = [new(Severity.Warning, "nothing on the shelf is a stock of which a fluid of the plan can be made")],
        },
        PlanCheck.OfPlanning(
            "vessel-material-not-for-keeping",
            "the specimen: plastics that craze and lids that corrode let the fluid escape",
            "Conserve O Gram 11/4, 1999; SPNHC best-practices wiki") with
        {
            Severities = [new(Severity.Warning, "wall or lid of the final vessel lasts for a while only in this fluid")],
        },
        PlanCheck.OfPlanning("vessel-too-heavy-for-shelf", "people and the specimen: a shelf that gives way", "what the bench says its shelf bears") with
        {
            Severities = [new(Severity.Warning, "the final vessel weighs more, full, than one place on the shelf bears")],
            ProtectsPeople = true,
        },
        PlanCheck.OfPlanning(
            "change-while-closed",
            "the specimen: a fluid that is not changed in time does not do its work",
            "the protocol's own changes and the bench's open hours") with
        {
            Severities = [new(Severity.Warning, "the bench is not open for every change of a fluid while the step lasts")],
        },
        PlanCheck.OfPlanning(
            "waits-for-delivery", "the specimen: it waits for what is not yet there", "the bench's own stock and its suppliers' times") with
        {
            Severities = [new(Severity.Note, "a step, or a change of its fluid, waits for something that is bought")],
        },
        PlanCheck.OfPlanning(
            "inspection-gap",
            "the specimen: what goes wrong on a closed day is found too late",
            "the protocol's own rhythm and the bench's open hours") with
        {
            Severities = [new(Severity.Warning, "between two looks lies more time than the protocol allows")],
            Find = plan => OnceAStep(plan.Found("inspection-gap")),
        },
        PlanCheck.OfPlanning(
            "vessel-too-heavy-to-lift",
            "people: backs and feet",
            "revised NIOSH lifting equation (Waters and others 1993, from memory); guidance L23 (from memory)") with
        {
            Severities = [new(Severity.Warning, "a vessel weighs more, full, than 23 kg for one person, or than two people may lift")],
            ProtectsPeople = true,
            Find = plan => OnceAVessel(plan.Found("vessel-too-heavy-to-lift")),
        },
    ];

    /// <summary>Gaps of one step as one finding: the first of them, and how many there are.</summary>
    private static ImmutableArray<Finding> OnceAStep(ImmutableArray<Finding> all) => Once(all, (a, b) => a.Subject == b.Subject, gaps =>
        gaps[0] with { Message = OneOfSeveral.With(("gap", gaps[0].Message), ("n", gaps.Count), Argument.Id("step", gaps[0].Subject)) });

    /// <summary>One vessel that is too heavy in several steps as one finding: its heaviest, the steps named.</summary>
    private static ImmutableArray<Finding> OnceAVessel(ImmutableArray<Finding> all) =>
        Once(all, (a, b) => a.Message.Find("vessel") == b.Message.Find("vessel"), Heaviest);

    private static Finding Heaviest(List<Finding> loads) => WorstOf(loads, "mass");

    private static Finding Fullest(List<Finding> fillings) => WorstOf(fillings, "ratio");

    /// <summary>The one with the most of something, with all steps that the same is said of.</summary>
    private static Finding WorstOf(List<Finding> alike, string by)
    {
        var heaviest = alike.MaxBy(f => f.Message.Find(by)?.Number)!;
        string[] steps = [.. alike.Select(f => f.Subject).Distinct().Order(StringComparer.Ordinal)];
        return steps.Length == 1 ? heaviest : heaviest with { Message = InSeveral.With(("heaviest", heaviest.Message), Argument.Ids("steps", steps)) };
    }

    /// <summary>Findings of one severity about one thing as one.</summary>
    private static ImmutableArray<Finding> Once(ImmutableArray<Finding> all, Func<Finding, Finding, bool> areOfOne, Func<List<Finding>, Finding> asOne)
    {
        if (all.Length < 2) return all;
        ImmutableArray<Finding> found = [];
        var rest = all.ToList();
        while (rest.Count > 0)
        {
            var first = rest[0];
            var alike = rest.FindAll(IsAlike);
            rest.RemoveAll(IsAlike);
            found = found.Add(alike.Count == 1 ? first : asOne(alike));

            bool IsAlike(Finding other) => other.Severity == first.Severity && areOfOne(other, first);
        }

        return found;
    }
}
