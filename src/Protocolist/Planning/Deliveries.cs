using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
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
    /// <summary>For each open step the last delivery that it waits for. Lead times are calendar days from the start of the plan; what comes is there in the morning.</summary>
    public static ImmutableDictionary<string, Delivery> Of(Provisioned provisioned, IEnumerable<DraftStep> open, LocalDate ordered, Bench bench)
    {
        var lead = provisioned.Purchases.Where(p => p.LeadDays > 0).GroupBy(p => p.Item, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Max(p => p.LeadDays), StringComparer.Ordinal);
        var deliveries = ImmutableDictionary.CreateBuilder<string, Delivery>(StringComparer.Ordinal);
        foreach (var step in open.Where(s => s.Progress is null))
        {
            var waits = provisioned.Recipes.Where(r => r.For.Contains(step.Id)).SelectMany(r => r.Parts).Where(p => lead.ContainsKey(p.Name)).OrderByDescending(p => lead[p.Name]).ThenBy(p => p.Name, StringComparer.Ordinal).FirstOrDefault();
            if (waits is null) continue;
            var at = ordered.PlusDays(lead[waits.Name]).AtStartOfDayInZone(bench.Opening.Zone).ToInstant();
            deliveries[step.Id] = new(waits.Name, lead[waits.Name], at, step.Id);
        }

        return deliveries.ToImmutable();
    }
}
