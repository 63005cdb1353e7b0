using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning;

namespace Protocolist.Planning.Dating;

/// <summary>When something that a step needs is there.</summary>
internal sealed record Delivery(string Item, int LeadDays, Instant At, string Step)
{
    private static readonly Phrase TooLate = new(
        "delivery-comes-too-late",
        "{item} is bought with {days} {days|day|days} of waiting, until {at}; the body cannot wait so long for '{step}' within the protocol's windows, "
        + "and the dates take it as there in time");
    private static readonly Phrase BorrowIt = new(
        "delivery-comes-too-late.remedy",
        "borrow it or fetch it sooner; else keep the body on ice for a day or two at most, or freeze it now and thaw it when the delivery is there "
        + "(freezing spoils tissue); do not cut it before all is at hand");

    public Finding ComesTooLate(DateTimeZone zone) => Finding.Warning(
        TooLate.Id,
        TooLate.With(("item", Item), ("days", LeadDays), Argument.At("at", At, zone), Argument.Id("step", Step)),
        BorrowIt) with
    { Subject = Step };
}

/// <summary>What must be bought first: a step that uses it cannot begin before it is there.</summary>
internal static class Deliveries
{
    /// <summary>
    /// For each open step the last delivery that it waits for; empty where none waits. What is on the shelf goes to the first steps; the step at which
    /// it runs out waits. Lead times are calendar days from the start of the plan; what comes is there in the morning.
    /// </summary>
    public static ImmutableArray<Delivery?> Of(Provisioned provisioned, List<DraftStep> open, LocalDate ordered, Bench bench)
    {
        if (!provisioned.Purchases.Any(p => p.LeadDays > 0)) return [];
        var deliveries = new Delivery?[open.Count];
        var stock = StockBook.Of(bench.Stock);
        foreach (var bought in provisioned.Purchases.Where(p => p.LeadDays > 0).GroupBy(p => p.Item, StringComparer.Ordinal))
        {
            var days = bought.Max(p => p.LeadDays);
            var at = ordered.PlusDays(days).AtStartOfDayInZone(bench.Opening.Zone).ToInstant();
            var left = stock.OnHand(bought.Key, ordered);
            foreach (var step in provisioned.Draft.Steps)
            {
                var part = IsVessel(step, bought) ? 1 : Share(step, provisioned.Recipes, bought.Key);
                if (part <= 0) continue;
                left -= part;
                if (left >= 0 || open.FindIndex(s => s.Id == step.Id && s.Progress is null) is not (>= 0 and var i)) continue;
                if (deliveries[i] is not { } other || other.At < at) deliveries[i] = new(bought.Key, days, at, step.Id);
            }
        }

        return Array.TrueForAll(deliveries, d => d is null) ? [] : [.. deliveries];
    }

    /// <summary>Whether it is the step's vessel that is bought.</summary>
    private static bool IsVessel(DraftStep step, IGrouping<string, Plans.PlannedPurchase> bought) =>
        step.Vessel?.Vessel.Name == bought.Key && bought.Any(p => p.For.Contains(step.Id));

    /// <summary>How much of a material goes into the fluid of a step, in m3 or kg.</summary>
    private static double Share(DraftStep step, ImmutableArray<Plans.Recipe> recipes, string material)
    {
        if (step.Volume is not { } volume || recipes.FirstOrDefault(r => r.For.Contains(step.Id)) is not { } recipe || recipe.Volume.CubicMeters <= 0) return 0;
        var whole = recipe.Parts.Where(p => p.Name == material).Sum(p => p.Volume?.CubicMeters ?? p.Mass?.Kilograms ?? 0);
        return whole * volume.CubicMeters * (1 + step.Changes) / recipe.Volume.CubicMeters;
    }
}
