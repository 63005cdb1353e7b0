using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks.Law;

/// <summary>What lived on the animal leaves it when it cools, or lives on in it.</summary>
internal static class Parasites
{
    private static readonly string[] Named = ["parasit*", "flea*", "tick", "ticks", "lice", "louse", "mite", "mites", "tapeworm*"];

    public static PlanCheck Check { get; } = new(
        "parasites-on-body",
        "people: ticks, fleas and lice leave a cooling body, and tapeworm eggs of carnivores infect people",
        "common practice; echinococcosis: WHO and OIE manual 2001, from memory (eggs die at -80 degC, not in a household freezer)",
        Find)
    {
        Speaks =
        [
            new(Severity.Warning, "a carnivore, and no step speaks of parasites"),
            new(Severity.Note, "another mammal or a bird that was never frozen, and no step speaks of parasites"),
        ],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsA("mammal") && !plan.Group.IsA("bird")) yield break;
        if (plan.Specimen.Condition is Condition.Frozen or Condition.Thawed && !plan.Group.IsA("carnivore")) yield break;
        foreach (var step in plan.Steps)
        {
            if (Speaks(step)) yield break;
        }

        yield return plan.Group.IsA("carnivore")
            ? Finding.Warning("parasites-on-body", $"{plan.Group.One()}, and no step speaks of parasites: its gut may shed tapeworm eggs that infect people, and ticks and fleas leave the cold body", "gloves, sleeves and mask; no dry brushing; bag it at once and look into the bag; ask a veterinarian where fox tapeworm occurs").By("specimen.condition")
            : Finding.Note("parasites-on-body", $"{plan.Group.One()}, and no step speaks of parasites: ticks, fleas and lice leave the cold body", "bag it at once, keep it cold, comb it over a white tray, and put what falls into ethanol with the number of the specimen").By("specimen.condition");
    }

    private static bool Speaks(ReviewStep step)
    {
        foreach (var sentence in step.Step.Instructions.Select(m => m.ToString()))
        {
            if (HistoryWords.In(sentence, Named)) return true;
        }

        foreach (var sentence in step.Step.Cautions.Select(m => m.ToString()))
        {
            if (HistoryWords.In(sentence, Named)) return true;
        }

        return false;
    }
}
