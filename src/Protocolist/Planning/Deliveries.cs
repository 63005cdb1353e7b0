using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning;

/// <summary>When something that a step needs is there.</summary>
internal sealed record Delivery(string Item, int LeadDays, Instant At, string Step)
{
    public Finding ComesTooLate(DateTimeZone zone) => Finding.Warning(
        "delivery-comes-too-late",
        $"{Item} is bought with {LeadDays} {(LeadDays == 1 ? "day" : "days")} of waiting, until {Wording.Of(At, zone)}; the body cannot wait so long for '{Step}' within the protocol's windows, and the dates take it as there in time",
        "borrow it or fetch it sooner; else keep the body on ice for a day or two at most, or freeze it now and thaw it when the delivery is there (freezing spoils tissue); do not cut it before all is at hand") with
    { Subject = Step };
}

/// <summary>What must be bought first: a step that uses it cannot begin before it is there.</summary>
internal static class Deliveries
{
    /// <summary>
    /// For each open step the last delivery that it waits for. What is on the shelf goes to the first steps; the step at which it runs
    /// out waits. Lead times are calendar days from the start of the plan; what comes is there in the morning.
    /// </summary>
    public static ImmutableDictionary<string, Delivery> Of(Provisioned provisioned, IEnumerable<DraftStep> open, LocalDate ordered, Bench bench)
    {
        var deliveries = ImmutableDictionary.CreateBuilder<string, Delivery>(StringComparer.Ordinal);
        var waiting = open.Where(s => s.Progress is null).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var bought in provisioned.Purchases.Where(p => p.LeadDays > 0).GroupBy(p => p.Id, StringComparer.Ordinal))
        {
            var days = bought.Max(p => p.LeadDays);
            var at = ordered.PlusDays(days).AtStartOfDayInZone(bench.Opening.Zone).ToInstant();
            var left = provisioned.Materials.FirstOrDefault(m => m.Id == bought.Key) is { OnHand: var onHand } ? InSi(onHand) : 0;
            foreach (var (step, part) in provisioned.Draft.Steps.Select(s => (s.Id, s.Vessel?.Vessel.Id == bought.Key ? 1 : Share(s, provisioned.Choice, bought.Key))).Where(s => s.Item2 > 0))
            {
                left -= part;
                if (left < 0 && waiting.Contains(step) && (!deliveries.TryGetValue(step, out var other) || other.At < at)) deliveries[step] = new(bought.First().Item.ToString(), days, at, step);
            }
        }

        return deliveries.ToImmutable();
    }

    /// <summary>How much of a material goes into the fluid of a step, in m3 or kg.</summary>
    private static double Share(DraftStep step, RecipeChoice choice, string material)
    {
        if (step.Volume is not { } volume || choice.Recipes.FirstOrDefault(r => r.Need.Steps.Contains(step.Id)) is not { Need.Made.CubicMeters: > 0 } recipe) return 0;
        var whole = recipe.Way.Parts.Where(p => p.Material?.Id == material).Sum(p => InSi(recipe.AmountOf(p.Part)));
        return whole * volume.CubicMeters * (1 + step.Changes) / recipe.Need.Made.CubicMeters;
    }

    private static double InSi(Amount amount) => amount.Kind switch
    {
        AmountKind.Volume => amount.Volume.CubicMeters,
        AmountKind.Mass => amount.Mass.Kilograms,
        _ => 0,
    };
}
