using Protocolist.Findings;

namespace Protocolist.Checks.People;

/// <summary>Formaldehyde meets neither bleach nor hydrochloric acid.</summary>
internal static class BleachOrAcidNearFormalin
{
    private static readonly string[] Never = ["bleach", "hypochlorite", "hydrochloric", "muriatic", "permanganate"];

    public static PlanCheck Check { get; } = new(
        "bleach-or-acid-near-formalin",
        "people: bleach frees choking gas, and hydrochloric acid makes a strong carcinogen of formaldehyde",
        "bis-chloromethyl ether, from memory; common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "bleach or hydrochloric acid is on the shelf of a bench whose plan uses formalin")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Formalin.IsEmpty) yield break;
        foreach (var item in plan.Bench.Stock)
        {
            if (Array.Exists(Never, w => item.Substance.Contains(w, StringComparison.OrdinalIgnoreCase)))
                yield return Finding.Warning("bleach-or-acid-near-formalin", $"'{item.Id}', {item.Substance}, stands on a bench where '{plan.Formalin[0].Id}' uses {plan.Formalin[0].Fluid!.Name}", "keep them in different rooms, and never clean formalin up with it", item.Where).By($"{plan.Formalin[0].Id}.fluid");
        }
    }
}
