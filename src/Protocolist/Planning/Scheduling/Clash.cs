using System.Globalization;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Why no dates fit, and what would free them.</summary>
internal static class Clash
{
    /// <summary>Enough for the plans of the bundled protocols, and less than a second where it is not: the project's choice.</summary>
    private const int MostTries = 1000;

    public static Finding Explain(JobGraph graph, Horizon horizon)
    {
        var (clashing, isProven) = Smallest(graph, horizon);
        var ways = Reliefs(graph, horizon, clashing).ToList();
        var remedy = ways.Count > 0
            ? $"it would fit if {string.Join("; or if ", ways)}"
            : clashing.Exists(l => l.NeedsSomebody)
                ? "one opening more is not enough: look at 'hours' and 'closed' in the bench file, and let it open on the days that the work needs ('also-open')"
                : "no single change is enough: ease several of these limits";
        var these = isProven ? "these cannot all hold" : "these cannot all hold (there may be fewer that clash)";
        return Finding.Error("no-dates-fit", $"no dates fit from {Wording.Of(horizon.From, horizon.Hours.Zone)} ({horizon.Hours.Zone.Id}) on, because {these}: {Words(clashing, graph)}", remedy);
    }

    /// <summary>A smallest set of limits that cannot all hold, and whether that is proven: within the tries it always is for a plan of some dozen steps, and not always for long rows of alike steps.</summary>
    internal static (List<Limit> Limits, bool IsProven) Smallest(JobGraph graph, Horizon horizon)
    {
        var all = Limit.AllOf(graph, horizon.Hours.Zone).ToList();
        var smallest = SmallestConflict.Of(all.Count, Fit, MostTries);
        return ([.. smallest.Members.Select(i => all[i])], smallest.IsProven);

        bool Fit(bool[] held) => horizon.Earliest(all.Where((_, i) => !held[i]).Aggregate(graph, (g, limit) => limit.Without(g))) is not null;
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
