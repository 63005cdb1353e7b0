using NodaTime;
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
        OpeningHours.Create(DateTimeZone.Utc, [], extra: Openings.Select(o => new ExtraOpening(Day, new LocalTime(0, o.From), new LocalTime(0, o.To)))).Value!,
        Bookings.Of(("tub", 2), ("person", 1)) with { Taken = [.. Taken.Select(t => new Booking(t.Resource, At(t.From), At(t.To), t.Amount))] },
        Zero,
        At(Length));

    internal SmallProblem WithGraph(JobGraph graph) => new(graph, Openings, Taken);

    internal SmallProblem WithOpenings((int From, int To)[] openings) => new(Graph, openings, Taken);

    internal static Instant At(int minute) => Zero + Duration.FromMinutes(minute);

    internal static int[]? Flat(Schedule? schedule) =>
        schedule is null ? null : [.. schedule.Jobs.SelectMany(j => new[] { (int)(j.Start - Zero).TotalMinutes, (int)(j.End - Zero).TotalMinutes })];

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

        bool LinksHold(int i) => Graph.Links.Where(l => l.After == Graph.Jobs[i].Id).All(l =>
        {
            var before = Graph.Jobs.Index().First(j => j.Item.Id == l.Before).Index;
            return Within(at[2 * i] - at[2 * before + (l.From == Anchor.End ? 1 : 0)], l.Lag);
        });
    }

    private bool StartHolds(Job job, int start) =>
        (job.NotBefore is not { } a || At(start) >= a) && (job.StartBy is not { } b || At(start) <= b) && WorkHolds(job, job.HandsOnAtStart, start, atEnd: false);

    private bool EndHolds(Job job, int start, int end) =>
        Within(end - start, job.Lasts)
        && end - start >= Whole(job.HandsOnAtStart) + Whole(job.HandsOnAtEnd)
        && (job.EndNotBefore is not { } a || At(end) >= a) && (job.EndBy is not { } b || At(end) <= b)
        && WorkHolds(job, job.HandsOnAtEnd, end, atEnd: true)
        && job.Needs.Where(n => n.Throughout).All(n => IsFree(n, start, end));

    private bool WorkHolds(Job job, Duration? handsOn, int at, bool atEnd)
    {
        if (handsOn is null) return true;
        var (from, to) = atEnd ? (at - Whole(handsOn), at) : (at, at + Whole(handsOn));
        return Openings.Any(o => o.From <= from && to <= o.To) && job.Needs.Where(n => !n.Throughout).All(n => IsFree(n, from, to));
    }

    // A moment is free when the minute before it or the minute after it is.
    private bool IsFree(Need need, int from, int to) => from == to
        ? Room(need, from - 1) || Room(need, from)
        : Enumerable.Range(from, to - from).All(minute => Room(need, minute));

    private bool Room(Need need, int minute) =>
        Taken.Where(t => t.Resource == need.Resource && t.From <= minute && minute < t.To).Sum(t => t.Amount) + need.Amount <= (need.Resource == "tub" ? 2 : 1);

    private static int Whole(Duration? time) => (int)(time ?? Duration.Zero).TotalMinutes;

    private static bool Within(int minutes, Window window) => minutes >= Whole(window.Least) && (window.Greatest is null || minutes <= Whole(window.Greatest));
}
