using System.Globalization;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Why no dates fit, and what would free them.</summary>
internal static class Clash
{
    public static Finding Explain(JobGraph graph, Horizon horizon)
    {
        var clashing = Smallest(graph, horizon);
        var ways = Reliefs(graph, horizon, clashing).ToList();
        var remedy = ways.Count > 0
            ? $"it would fit if {string.Join("; or if ", ways)}"
            : "no single change is enough: ease several of these limits";
        return Finding.Error("no-dates-fit", $"no dates fit from {Wording.Of(horizon.From, horizon.Hours.Zone)} ({horizon.Hours.Zone.Id}) on, because these cannot all hold: {Words(clashing, graph)}", remedy);
    }

    /// <summary>A set of limits that cannot all hold, none of which can be left out: whatever is not needed for the clash is dropped, in halves and then one by one. Begun from the first limit and from the last; the smaller set is taken.</summary>
    internal static List<Limit> Smallest(JobGraph graph, Horizon horizon)
    {
        var all = Limit.AllOf(graph, horizon.Hours.Zone).ToList();
        var kept = all;
        Drop(all);
        var late = kept;
        kept = all;
        Drop([.. all.AsEnumerable().Reverse()]);
        return kept.Count <= late.Count ? kept : late;

        void Drop(List<Limit> some)
        {
            var rest = kept.Except(some).ToList();
            if (!Fit(rest)) kept = rest;
            else if (some.Count > 1)
            {
                Drop(some[..(some.Count / 2)]);
                Drop(some[(some.Count / 2)..]);
            }
        }

        bool Fit(List<Limit> holding) => horizon.Earliest(all.Except(holding).Aggregate(graph, (g, limit) => limit.Without(g))) is not null;
    }

    private static IEnumerable<string> Reliefs(JobGraph graph, Horizon horizon, List<Limit> clashing)
    {
        foreach (var limit in clashing)
        {
            if (limit.EasedText is { } text && LeastEasing(graph, horizon, limit) is { } more) yield return text(more);
        }

        if (clashing.Exists(l => l.NeedsSomebody) && FirstExtraOpening(graph, horizon) is { } opening) yield return opening;
        foreach (var limit in clashing)
        {
            if (limit.WithoutText is { } text && horizon.Earliest(limit.Without(graph)) is { } schedule && text(schedule) is { } way) yield return way;
        }
    }

    /// <summary>The shortest time by which a limit has to give way for everything to fit; null when that alone never helps.</summary>
    private static Duration? LeastEasing(JobGraph graph, Horizon horizon, Limit limit)
    {
        var (not, enough) = (0L, Minutes.Floor(horizon.Until - horizon.From));
        if (!Fits(enough)) return null;
        while (enough - not > 1)
        {
            var middle = not + (enough - not) / 2;
            if (Fits(middle)) enough = middle;
            else not = middle;
        }

        return Duration.FromMinutes(enough);

        bool Fits(long minutes) => horizon.Earliest(limit.Eased!(graph, Duration.FromMinutes(minutes))) is not null;
    }

    /// <summary>The first closed day on which the bench's usual hours would make everything fit.</summary>
    private static string? FirstExtraOpening(JobGraph graph, Horizon horizon)
    {
        var hours = horizon.Hours;
        var usual = hours.Weekly.GroupBy(o => o.Day).OrderByDescending(day => day.Sum(Length)).ThenBy(day => day.Key).FirstOrDefault()?.ToList();
        if (usual is null) return null;
        var first = horizon.From.InZone(hours.Zone).Date;
        // No further than two months past the work itself: a proposal later than that helps nobody.
        var last = (horizon.From + graph.LeastTotal + Duration.FromDays(60)).InZone(hours.Zone).Date;
        for (var date = first; date <= last; date = date.PlusDays(1))
        {
            if (hours.OpensOn(date)) continue;
            var day = date;
            if (horizon.With(usual.Select(o => new ExtraOpening(day, o.From, o.To))).Earliest(graph) is null) continue;
            return $"the bench opened on {Wording.Of(date)}, {Wording.List([.. usual.Select(o => $"{Wording.Of(o.From)} to {Wording.Of(o.To)}")])}";
        }

        return null;

        static long Length(WeeklyOpening o) => (o.To == LocalTime.Midnight ? NodaConstants.TicksPerDay : o.To.TickOfDay) - o.From.TickOfDay;
    }

    private static string Words(List<Limit> clashing, JobGraph graph)
    {
        var shortest = clashing.Where(l => l.ShortestOf is not null).ToList();
        if (shortest.Count <= 3) return string.Join("; ", clashing.Select(l => l.Text));
        var ids = shortest.Select(l => l.ShortestOf!).ToHashSet(StringComparer.Ordinal);
        var total = graph.Jobs.Where(j => ids.Contains(j.Id)).Aggregate(Duration.Zero, (sum, job) => sum + job.Lasts.Least);
        var together = string.Create(CultureInfo.InvariantCulture, $"the shortest durations of {shortest.Count} jobs from '{shortest[0].ShortestOf}' to '{shortest[^1].ShortestOf}', {Wording.Of(total)} together");
        return string.Join("; ", clashing.Except(shortest).Select(l => l.Text).Append(together));
    }
}
