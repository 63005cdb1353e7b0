using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Benches.Opening;

/// <summary>Sorts usable entries of opening hours from unusable ones and keeps what there is to say.</summary>
internal sealed class OpeningCheck
{
    private readonly List<Finding> _findings = [];

    public ImmutableArray<Finding> Findings => [.. _findings];

    public ImmutableArray<WeeklyOpening> Weekly(IEnumerable<WeeklyOpening> entries)
    {
        var good = Ordered(entries, "weekly", o => o.Day.ToString(), o => o.From, o => o.To);
        Overlaps(good, o => o.Item.Day);
        return [.. good.Select(o => o.Item).OrderBy(o => o.Day).ThenBy(o => o.From)];
    }

    public ImmutableArray<ExtraOpening> Extra(IEnumerable<ExtraOpening> entries)
    {
        var good = Ordered(entries, "extra", o => Text(o.Date), o => o.From, o => o.To);
        Overlaps(good, o => o.Item.Date);
        return [.. good.Select(o => o.Item).OrderBy(o => o.Date).ThenBy(o => o.From)];
    }

    public ImmutableArray<ClosedDays> Closed(IEnumerable<ClosedDays> entries)
    {
        var good = ImmutableArray.CreateBuilder<ClosedDays>();
        foreach (var (index, days) in entries.Index())
        {
            if (days.First <= days.Last) good.Add(days);
            else _findings.Add(Finding.Error("closed-days-reversed", $"the closed days {Text(days.First)} to {Text(days.Last)} end before they begin", "give the first date first") with { Subject = Subject("closed", index) });
        }

        return good.DrainToImmutable();
    }

    public void NeverOpens() => _findings.Add(Finding.Error(
        "bench-never-opens", "the bench has no opening hours at all, so no step that needs hands can be dated", "list weekly hours or at least one extra opening"));

    private List<Entry<T>> Ordered<T>(IEnumerable<T> entries, string list, Func<T, string> day, Func<T, LocalTime> from, Func<T, LocalTime> to)
    {
        var good = new List<Entry<T>>();
        foreach (var (index, item) in entries.Index())
        {
            var entry = new Entry<T>(item, Subject(list, index), day(item), from(item), to(item));
            if (entry.From < entry.To || entry.To == LocalTime.Midnight) good.Add(entry);
            else _findings.Add(Finding.Error("opening-ends-before-it-begins", $"the opening on {entry} ends before it begins", "give the earlier time first; split an opening that runs past midnight into two days") with { Subject = entry.Subject });
        }

        return good;
    }

    private void Overlaps<T, TDay>(List<Entry<T>> entries, Func<Entry<T>, TDay> day)
    {
        foreach (var sameDay in entries.GroupBy(day))
        {
            var inOrder = sameDay.OrderBy(o => o.From).ToList();
            foreach (var (early, late) in inOrder.Zip(inOrder.Skip(1)))
            {
                if (early.To == LocalTime.Midnight || late.From < early.To)
                    _findings.Add(Finding.Warning("opening-hours-overlap", $"the openings on {early} and {late} overlap; they count as one", "join them, or correct the times") with { Subject = late.Subject });
            }
        }
    }

    private static string Subject(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");

    private static string Text(LocalDate date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private sealed record Entry<T>(T Item, string Subject, string Day, LocalTime From, LocalTime To)
    {
        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Day} {From:HH:mm} to {(To == LocalTime.Midnight ? "24:00" : To.ToString("HH:mm", CultureInfo.InvariantCulture))}");
    }
}
