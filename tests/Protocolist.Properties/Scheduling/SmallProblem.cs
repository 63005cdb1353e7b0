using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Properties.Scheduling;

/// <summary>A problem small enough to try out every minute for every date.</summary>
public sealed class SmallProblem
{
    public const int Length = 13;
    private static readonly LocalDate Day = new(2027, 3, 1);
    private static readonly Instant Zero = Day.AtMidnight().InUtc().ToInstant();

    internal SmallProblem(JobGraph graph, (int From, int To)[] openings, (string Resource, int From, int To, int Amount)[] taken) =>
        (Graph, Openings, Taken) = (graph, openings, taken);

    internal JobGraph Graph { get; }

    internal (int From, int To)[] Openings { get; }

    internal (string Resource, int From, int To, int Amount)[] Taken { get; }

    internal Horizon Horizon => new(
        IsPrepared ? OpenMinutes.Of(Hours, Day, Day.PlusDays(1)) : OpenMinutes.Of(Hours),
        Bookings.Of(("tub", 2), ("person", 1)) with { Taken = [.. Taken.Select(t => new Booking(t.Resource, At(t.From), At(t.To), t.Amount))] },
        new(Minutes.Ceiling(Zero), Minutes.Floor(At(Length))));

    internal OpeningHours Hours =>
        OpeningHours.Create(DateTimeZone.Utc, [], extra: Openings.Select(o => new ExtraOpening(Day, new LocalTime(0, o.From), new LocalTime(0, o.To)))).Value!;

    /// <summary>Whether the hours are worked out beforehand for more than the problem: it must make no difference.</summary>
    private bool IsPrepared => Openings.Length % 2 == 0;

    internal SmallProblem WithGraph(JobGraph graph) => new(graph, Openings, Taken);

    internal SmallProblem WithOpenings((int From, int To)[] openings) => new(Graph, openings, Taken);

    internal static Instant At(int minute) => Zero + Duration.FromMinutes(minute);

    internal static int[]? Flat(Schedule? schedule) =>
        schedule is null ? null : [.. schedule.SelectMany(j => new[] { (int)(j.Start - Zero).TotalMinutes, (int)(j.End - Zero).TotalMinutes })];

    public override string ToString() =>
        $"open {string.Join(' ', Openings)}; taken {string.Join(' ', Taken)}; {string.Join(" | ", Graph.Jobs)}; {string.Join(" | ", Graph.Links)}";

    /// <summary>Every assignment of minutes that keeps every limit, tried one by one from the definitions alone.</summary>
    internal IEnumerable<int[]> AllSchedules()
    {
        var at = new int[Graph.Jobs.Length * 2];
        return From(0);

        IEnumerable<int[]> From(int i)
        {
            if (i == Graph.Jobs.Length)
            {
                yield return [.. at];
                yield break;
            }

            var job = Graph.Jobs[i];
            for (var start = 0; start <= Length; start++)
            {
                at[2 * i] = start;
                if (!LinksHold(i) || !StartHolds(job, start)) continue;
                for (var end = start; end <= Length; end++)
                {
                    at[2 * i + 1] = end;
                    if (!EndHolds(job, start, end)) continue;
                    foreach (var found in From(i + 1)) yield return found;
                }
            }
        }

        bool LinksHold(int i) => Graph.Links.Where(l => l.After == i).All(l => Within(at[2 * i] - at[2 * l.Before + (l.From == Anchor.End ? 1 : 0)], l.Lag));
    }

    private bool StartHolds(Job job, int start) =>
        IsBetween(start, job.Starts) && WorkHolds(job, job.FirstWork, start, atEnd: false);

    private bool EndHolds(Job job, int start, int end) =>
        Within(end - start, job.Lasts)
        && end - start >= (job.FirstWork ?? 0) + (job.LastWork ?? 0)
        && IsBetween(end, job.Ends)
        && WorkHolds(job, job.LastWork, end, atEnd: true)
        && job.Needs.Where(n => n.Throughout).All(n => IsFree(n, start, end));

    private static bool IsBetween(int minute, Stretch bounds) => Minutes.Floor(At(minute)) is var at && bounds.From <= at && at <= bounds.To;

    private bool WorkHolds(Job job, long? work, int at, bool atEnd)
    {
        if (work is not { } handsOn) return true;
        var (from, to) = atEnd ? (at - (int)handsOn, at) : (at, at + (int)handsOn);
        return Openings.Any(o => o.From <= from && to <= o.To) && job.Needs.Where(n => !n.Throughout).All(n => IsFree(n, from, to));
    }

    // A moment is free when the minute before it or the minute after it is.
    private bool IsFree(Need need, int from, int to) => from == to
        ? Room(need, from - 1) || Room(need, from)
        : Enumerable.Range(from, to - from).All(minute => Room(need, minute));

    private bool Room(Need need, int minute) =>
        Taken.Where(t => t.Resource == need.Resource && t.From <= minute && minute < t.To).Sum(t => t.Amount) + need.Amount <= (need.Resource == "tub" ? 2 : 1);

    private static bool Within(int minutes, Window window) => minutes >= window.Least && minutes <= window.Greatest;
}
