using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>Some of a resource is taken for a time; the end is free again.</summary>
internal readonly record struct Booking(string Resource, Instant From, Instant To, int Amount);

/// <summary>How much there is of each shared resource, and when it is taken. A resource that is not listed is not limited.</summary>
internal sealed record Bookings(ImmutableDictionary<string, int> Capacity, ImmutableList<Booking> Taken)
{
    public static Bookings None { get; } = new(ImmutableDictionary.Create<string, int>(StringComparer.Ordinal), []);

    public static Bookings Of(params IEnumerable<(string Resource, int Amount)> capacity) =>
        new(capacity.ToImmutableDictionary(c => c.Resource, c => c.Amount, StringComparer.Ordinal), []);

    /// <summary>The bookings and what a schedule takes besides.</summary>
    public Bookings With(JobGraph graph, Schedule schedule) =>
        this with { Taken = Taken.AddRange(graph.Jobs.Zip(schedule).SelectMany(pair => Of(pair.First, pair.Second)).Where(b => b.From < b.To)) };

    /// <summary>When as much as is needed is free.</summary>
    public MinuteSet Free(Need need)
    {
        if (!Capacity.TryGetValue(need.Resource, out var capacity)) return MinuteSet.Everything;
        if (need.Amount > capacity) return MinuteSet.Nothing;
        return MinuteSet.Of([.. Levels(need.Resource).Where(l => l.Taken + need.Amount <= capacity).Select(l => l.During)]);
    }

    /// <summary>A resource of which more is taken at once than there is; null when there is none.</summary>
    public string? Overbooked() => Capacity.Keys.Order(StringComparer.Ordinal).FirstOrDefault(r => Levels(r).Any(l => l.Taken > Capacity[r]));

    private static IEnumerable<Booking> Of(Job job, ScheduledJob dates)
    {
        foreach (var need in job.Needs)
        {
            if (need.Throughout)
            {
                yield return new(need.Resource, dates.Start, dates.End, need.Amount);
                continue;
            }

            if (job.FirstWork is { } first) yield return new(need.Resource, dates.Start, dates.Start + Duration.FromMinutes(first), need.Amount);
            if (job.LastWork is { } last) yield return new(need.Resource, dates.End - Duration.FromMinutes(last), dates.End, need.Amount);
        }
    }

    private IEnumerable<(Stretch During, int Taken)> Levels(string resource)
    {
        var changes = new SortedDictionary<long, int> { [-Minutes.Far] = 0, [Minutes.Far] = 0 };
        foreach (var booking in Taken.Where(b => b.Resource == resource))
        {
            var (from, to) = (Minutes.Floor(booking.From), Minutes.Ceiling(booking.To));
            changes[from] = changes.GetValueOrDefault(from) + booking.Amount;
            changes[to] = changes.GetValueOrDefault(to) - booking.Amount;
        }

        var level = 0;
        foreach (var (now, next) in changes.Zip(changes.Skip(1)))
        {
            level += now.Value;
            yield return (new Stretch(now.Key, next.Key), level);
        }
    }
}
