using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Why no dates fit, and what would free them.</summary>
internal static class Clash
{
    /// <summary>Enough for the plans of the bundled protocols, and less than a second where it is not: the project's choice.</summary>
    private const int MostTries = 1000;

    private static readonly Phrase NoDates = new("no-dates-fit", "no dates fit from {from} ({zone}) on, because these cannot all hold{doubt}: {limits:; }");
    private static readonly Phrase Unproven = new("no-dates-fit.unproven", " (there may be fewer that clash)");
    private static readonly Phrase Together =
        new("no-dates-fit.together", "the shortest durations of {count} jobs from '{first}' to '{last}', {total:clock} together");
    private static readonly Phrase WouldFit = new("no-dates-fit.remedy", "it would fit if {ways:; or if }");
    private static readonly Phrase Opened = new("no-dates-fit.opened", "the bench opened on {day}, {hours:and}");
    private static readonly Phrase Span = new("no-dates-fit.hours", "{from:time} to {to:time}");
    private static readonly Phrase LookAtHours = new(
        "no-dates-fit.remedy-hours",
        "one opening more is not enough: look at 'hours' and 'closed' in the bench file, and let it open on the days that the work needs ('also-open')");
    private static readonly Phrase EaseSeveral = new("no-dates-fit.remedy-several", "no single change is enough: ease several of these limits");

    public static Finding Explain(JobGraph graph, Horizon horizon)
    {
        var (clashing, isProven) = Smallest(graph, horizon);
        var ways = Reliefs(graph, horizon, clashing).ToList();
        var zone = horizon.Hours.Zone;
        return Finding.Error(
            NoDates.Id,
            NoDates.With(
                Argument.At("from", Minutes.At(horizon.Between.From), zone),
                ("zone", zone.Id),
                ("doubt", isProven ? default(Message) : Unproven),
                Argument.Messages("limits", Texts(clashing, graph))),
            ways.Count > 0 ? WouldFit.With(Argument.Messages("ways", ways)) : clashing.Exists(l => l.NeedsSomebody) ? LookAtHours : EaseSeveral);
    }

    /// <summary>
    /// A smallest set of limits that cannot all hold, and whether that is proven: within the tries it always is for a plan of some dozen steps,
    /// and not always for long rows of alike steps.
    /// </summary>
    internal static (List<Limit> Limits, bool IsProven) Smallest(JobGraph graph, Horizon horizon)
    {
        var all = Limit.AllOf(graph, horizon.Hours.Zone).ToList();
        var smallest = SmallestConflict.Of(all.Count, Fit, MostTries);
        return ([.. smallest.Members.Select(i => all[i])], smallest.IsProven);

        bool Fit(bool[] held) => horizon.Earliest(graph.With(all.Where((_, i) => !held[i]).Select(l => l.Without))) is not null;
    }

    private static IEnumerable<Message> Reliefs(JobGraph graph, Horizon horizon, List<Limit> clashing)
    {
        foreach (var limit in clashing)
        {
            if (limit is { Eased: { } eased, EasedText: { } text } && LeastEasing(graph, horizon, eased) is { } more) yield return text(more);
        }

        if (clashing.Exists(l => l.NeedsSomebody) && FirstExtraOpening(graph, horizon) is { } opening) yield return opening;
        foreach (var limit in clashing)
        {
            if (limit.WithoutText is not { } text || horizon.Earliest(graph.With(limit.Without)) is not { } schedule) continue;
            if (text(schedule) is { IsEmpty: false } way) yield return way;
        }
    }

    /// <summary>The fewest minutes by which a limit has to give way for everything to fit; null when that alone never helps.</summary>
    private static long? LeastEasing(JobGraph graph, Horizon horizon, Func<long, Change> eased)
    {
        var (not, enough) = (0L, horizon.Between.To - horizon.Between.From);
        if (!Fits(enough)) return null;
        while (enough - not > 1)
        {
            var middle = not + (enough - not) / 2;
            if (Fits(middle)) enough = middle;
            else not = middle;
        }

        return enough;

        bool Fits(long minutes) => horizon.Earliest(graph.With(eased(minutes))) is not null;
    }

    /// <summary>The first closed day on which the bench's usual hours would make everything fit.</summary>
    private static Message? FirstExtraOpening(JobGraph graph, Horizon horizon)
    {
        var hours = horizon.Hours;
        var longestFirst = hours.Weekly.GroupBy(o => o.Day).OrderByDescending(day => day.Sum(o => (o.To.AsClosing() - o.From.SinceMidnight()).TotalMinutes));
        if (longestFirst.ThenBy(day => day.Key).FirstOrDefault()?.ToList() is not { } usual) return null;

        // No further than two months past the work itself: a proposal later than that helps nobody.
        var (first, last) = (DayOf(horizon.Between.From), DayOf(horizon.Between.From + graph.LeastTotal + (60 * 1440)));
        for (var day = first; day <= last; day = day.PlusDays(1))
        {
            if (hours.OpensOn(day) || horizon.With(usual.Select(o => new ExtraOpening(day, o.From, o.To))).Earliest(graph) is null) continue;
            var spans = usual.Select(o => Span.With(("from", o.From.SinceMidnight()), ("to", o.To.AsClosing())));
            return Opened.With(("day", day), Argument.Messages("hours", spans));
        }

        return null;

        LocalDate DayOf(long minute) => Minutes.At(minute).InZone(hours.Zone).Date;
    }

    private static IEnumerable<Message> Texts(List<Limit> clashing, JobGraph graph)
    {
        var shortest = clashing.FindAll(l => l.ShortestOf is not null).ConvertAll(l => graph.Jobs[l.ShortestOf!.Value]);
        if (shortest.Count <= 3) return clashing.Select(l => l.Text);
        return clashing.Where(l => l.ShortestOf is null).Select(l => l.Text).Append(Together.With(
            ("count", shortest.Count),
            Argument.Id("first", shortest[0].Id),
            Argument.Id("last", shortest[^1].Id),
            ("total", Duration.FromMinutes(shortest.Sum(j => j.Lasts.Least)))));
    }
}
