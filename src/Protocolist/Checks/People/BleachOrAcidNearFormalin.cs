using System.Buffers;
using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.People;

/// <summary>Formaldehyde meets neither bleach nor hydrochloric acid.</summary>
internal static class BleachOrAcidNearFormalin
{
    private const string Id = "bleach-or-acid-near-formalin";
    private static readonly Phrase Stands = new(Id, "'{stock}', {substance}, stands on a bench where '{step}' uses {fluid}");
    private static readonly Phrase KeepApart = new("bleach-or-acid-near-formalin.remedy", "keep them in different rooms, and never clean formalin up with it");

    private static readonly SearchValues<string> Never =
        SearchValues.Create(["bleach", "hypochlorite", "hydrochloric", "muriatic", "permanganate"], StringComparison.OrdinalIgnoreCase);

    public static PlanCheck Check { get; } = new(
        Id,
        "people: bleach frees choking gas, and hydrochloric acid makes a strong carcinogen of formaldehyde",
        "bis-chloromethyl ether, from memory; common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "bleach or hydrochloric acid is on the shelf of a bench whose plan uses formalin")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Formalin.IsEmpty) return found;
        var first = plan.Formalin[0];
        foreach (var item in plan.Bench.Stock)
        {
            if (!item.Substance.AsSpan().ContainsAny(Never)) continue;
            var message = Stands.With(
                Argument.Id("stock", item.Id),
                ("substance", item.Substance),
                Argument.Id("step", first.Id),
                ("fluid", first.Fluid!.Name));
            found = found.Add(Finding.Warning(Id, message, KeepApart, item.Where).By($"{first.Id}.fluid"));
        }

        return found;
    }
}
