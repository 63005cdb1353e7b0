using System.Collections.Immutable;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks;

/// <summary>Checks that are made where the vessel, the recipe or the calendar is worked out; listed here with what they protect.</summary>
internal static class ToldChecks
{
    public static ImmutableArray<PlanCheck> All { get; } =
    [
        PlanCheck.Told("ambiguous-formalin-strength", "the specimen: '4 % formalin' means 1.5 % formaldehyde to one handbook and 4 % to another", "Dawson, The Scyphozoan (parts of stock); nematode fixing practice (4 % formaldehyde)") with
        {
            Speaks = [new(Severity.Warning, "a formalin is named by a percentage that may be of stock or of formaldehyde")],
        },
        PlanCheck.Told("armour-closed", "the specimen: nothing goes through a closed shell", "common practice; Michonneau 2017") with
        {
            Speaks = [new(Severity.Warning, "a shell or armour is left closed, and nothing is injected behind it")],
        },
        PlanCheck.Told("closure-not-for-keeping", "the specimen: a vessel without a sealing lid dries out", "Conserve O Gram 11/4, 1999; survey of 2596 jars, Natural History Museum London, 2025") with
        {
            Speaks = [new(Severity.Warning, "the final vessel has no lid that seals, or a wire bail over alcohol")],
        },
        PlanCheck.Told("lacking-and-not-for-sale", "the specimen: work begun without its fluid cannot be ended", "the bench's own stock") with
        {
            Speaks = [new(Severity.Warning, "there is too little of something on the shelf, and no pack of it can be bought")],
        },
        PlanCheck.Told("no-dates-fit", "the specimen: a window missed is missed for good", "the protocol's own times and the bench's open hours") with
        {
            Speaks = [new(Severity.Error, "no dates satisfy the protocol's times, the open hours and the deliveries together")],
        },
        PlanCheck.Told("sealed-vessel-builds-pressure", "people and the specimen: a jar closed tight bursts or leaks on a hot day", "ideal gas law and vapour pressures; OIML R 22 for the growth of ethanol") with
        {
            Speaks = [new(Severity.Warning, "a vessel closed tight comes under too much pressure on the hottest day, or is full to the brim then")],
            ProtectsPeople = true,
        },
        PlanCheck.Told("stock-missing", "the specimen: work begun without its fluid cannot be ended", "the bench's own stock") with
        {
            Speaks = [new(Severity.Warning, "nothing on the shelf is a stock of which a fluid of the plan can be made")],
        },
        PlanCheck.Told("vessel-material-not-for-keeping", "the specimen: plastics that craze and lids that corrode let the fluid escape", "Conserve O Gram 11/4, 1999; SPNHC best-practices wiki") with
        {
            Speaks = [new(Severity.Warning, "wall or lid of the final vessel lasts for a while only in this fluid")],
        },
        PlanCheck.Told("vessel-too-heavy-for-shelf", "people and the specimen: a shelf that gives way", "what the bench says its shelf bears") with
        {
            Speaks = [new(Severity.Warning, "the final vessel weighs more, full, than one place on the shelf bears")],
            ProtectsPeople = true,
        },
        PlanCheck.Told("inspection-gap", "the specimen: what goes wrong on a closed day is found too late", "the protocol's own rhythm and the bench's open hours") with
        {
            Speaks = [new(Severity.Warning, "between two looks lies more time than the protocol allows")],
            Find = plan => OnceAStep(plan, "inspection-gap"),
        },
        PlanCheck.Told("vessel-too-heavy-to-lift", "people: backs and feet", "revised NIOSH lifting equation (Waters and others 1993, from memory); guidance L23 (from memory)") with
        {
            Speaks = [new(Severity.Warning, "a vessel weighs more, full, than 23 kg for one person, or than two people may lift")],
            ProtectsPeople = true,
            Find = plan => OnceAVessel(plan, "vessel-too-heavy-to-lift"),
        },
    ];

    /// <summary>Gaps of one step told as one: the first of them, and how many more.</summary>
    private static IEnumerable<Finding> OnceAStep(ReviewCase plan, string id)
    {
        foreach (var gaps in plan.Earlier.Where(f => f.Id == id).GroupBy(f => (f.Severity, f.Subject)))
        {
            var all = gaps.ToList();
            yield return all.Count == 1 ? all[0] : all[0] with { Message = Invariant($"{all[0].Message}; that is one of {all.Count} such gaps in '{gaps.Key.Subject}'") };
        }
    }

    /// <summary>One vessel that is too heavy in several steps: told by its heaviest, the steps named.</summary>
    private static IEnumerable<Finding> OnceAVessel(ReviewCase plan, string id)
    {
        foreach (var loads in plan.Earlier.Where(f => f.Id == id).GroupBy(f => (f.Severity, Vessel: f.Message.ToString().Split('\'').ElementAtOrDefault(1))))
        {
            var all = loads.ToList();
            var heaviest = all.MaxBy(f => plan.Steps.FirstOrDefault(s => s.Id == f.Subject)?.Vessel?.TotalMass.Kilograms ?? 0)!;
            string[] steps = [.. all.Select(f => $"'{f.Subject}'").Distinct().Order(StringComparer.Ordinal)];
            yield return steps.Length == 1 ? heaviest : heaviest with { Message = $"{heaviest.Message}; so in {string.Join(", ", steps)}" };
        }
    }
}
