using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
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
        var stock = StockBook.Of(bench.Stock);
        var waiting = open.Where(s => s.Progress is null).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var bought in provisioned.Purchases.Where(p => p.LeadDays > 0).GroupBy(p => p.Item, StringComparer.Ordinal))
        {
            var days = bought.Max(p => p.LeadDays);
            var at = ordered.PlusDays(days).AtStartOfDayInZone(bench.Opening.Zone).ToInstant();
            var left = stock.OnHand(bought.Key, ordered);
            foreach (var (step, part) in provisioned.Draft.Steps.Select(s => (s.Id, IsVessel(s, bought) ? 1 : Share(s, provisioned.Recipes, bought.Key))).Where(s => s.Item2 > 0))
            {
                left -= part;
                if (left < 0 && waiting.Contains(step) && (!deliveries.TryGetValue(step, out var other) || other.At < at)) deliveries[step] = new(bought.Key, days, at, step);
            }
        }

        return deliveries.ToImmutable();
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
