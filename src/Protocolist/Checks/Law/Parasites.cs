using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Checks.Law;

/// <summary>What lived on the animal leaves it when it cools, or lives on in it.</summary>
internal static class Parasites
{
    private static readonly Phrase MayHaveTapeworms = new(
        "parasites-on-body",
        "{group:a}, and no step speaks of parasites: its gut may shed tapeworm eggs that infect people, and ticks and fleas leave the cold body");

    private static readonly Phrase Cover = new(
        "parasites-on-body.remedy",
        "gloves, sleeves and mask; no dry brushing; bag it at once and look into the bag; ask a veterinarian where fox tapeworm occurs");

    private static readonly Phrase MayHaveTicks = new(
        "parasites-on-body.ticks", "{group:a}, and no step speaks of parasites: ticks, fleas and lice leave the cold body");

    private static readonly Phrase WereNoted = new(
        "parasites-on-body.noted", "{group:a} whose history speaks of parasites ('{history:; }'), and no step does: ticks, fleas and lice leave the cold body");

    private static readonly Phrase BagAndComb = new(
        "parasites-on-body.remedy-ticks",
        "bag it at once, keep it cold, comb it over a white tray, and put what falls into ethanol with the number of the specimen");

    public static PlanCheck Check { get; } = new(
        "parasites-on-body",
        "people: ticks, fleas and lice leave a cooling body, and tapeworm eggs of carnivores infect people",
        "common practice; echinococcosis: WHO and OIE manual 2001, from memory (eggs die at -80 degC, not in a household freezer)",
        Find)
    {
        Severities =
        [
            new(Severity.Warning, "a carnivore, and no stage declares 'covers: parasites'"),
            new(Severity.Warning, "another mammal or a bird that was never frozen and whose history speaks of parasites, and no stage declares so"),
            new(Severity.Note, "another mammal or a bird that was never frozen, and no stage declares so"),
        ],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Covers(Coverage.Parasites)) return [];
        var (group, isCarnivore) = (("group", plan.Group.Name), plan.Group.IsA("carnivore"));
        if (!isCarnivore && !plan.Group.IsA("mammal") && !plan.Group.IsA("bird")) return [];
        if (!isCarnivore && plan.Specimen.Condition is Condition.Frozen or Condition.Thawed) return [];
        var finding = isCarnivore ? Finding.Warning("parasites-on-body", MayHaveTapeworms.With(group), Cover)
            : plan.HistoryHas(HistoryWords.Parasites) ? Finding.Warning("parasites-on-body", WereNoted.With(group, plan.Specimen.History()), BagAndComb)
            : Finding.Note("parasites-on-body", MayHaveTicks.With(group), BagAndComb);
        return [finding.By("specimen.condition")];
    }
}
