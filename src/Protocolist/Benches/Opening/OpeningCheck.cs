using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Benches.Opening;

/// <summary>Sorts usable entries of opening hours from unusable ones and keeps what there is to say.</summary>
internal sealed class OpeningCheck
{
    private static readonly Phrase NoHours = new("bench-never-opens", "the bench has no opening hours at all, so no step that needs hands can be dated");
    private static readonly Phrase GiveHours = new("bench-never-opens.remedy", "list weekly hours or at least one extra opening");
    private static readonly Phrase Reversed = new("closed-days-reversed", "the closed days {first:day} to {last:day} end before they begin");
    private static readonly Phrase FirstDateFirst = new("closed-days-reversed.remedy", "give the first date first");
    private static readonly Phrase EndsFirst = new("opening-ends-before-it-begins", "the opening on {opening} ends before it begins");
    private static readonly Phrase EarlierFirst =
        new("opening-ends-before-it-begins.remedy", "give the earlier time first; split an opening that runs past midnight into two days");
    private static readonly Phrase Overlap = new("opening-hours-overlap", "the openings on {early} and {late} overlap; they count as one");
    private static readonly Phrase JoinThem = new("opening-hours-overlap.remedy", "join them, or correct the times");
    private static readonly Phrase Opening = new("opening", "{day:day} {from:time} to {to:time}");

    /// <summary>Numbered as <see cref="IsoDayOfWeek"/> is, from 1.</summary>
    private static readonly Phrase[] Weekdays =
    [
        new("monday", "Monday"), new("tuesday", "Tuesday"), new("wednesday", "Wednesday"), new("thursday", "Thursday"),
        new("friday", "Friday"), new("saturday", "Saturday"), new("sunday", "Sunday"),
    ];

    private readonly List<Finding> _findings = [];

    public ImmutableArray<Finding> Findings => [.. _findings];

    public ImmutableArray<WeeklyOpening> Weekly(IEnumerable<WeeklyOpening> entries)
    {
        var good = Ordered(entries, "weekly", o => ("day", Weekdays.At((int)o.Day - 1)), o => o.From, o => o.To);
        Overlaps(good, o => o.Item.Day);
        return [.. good.Select(o => o.Item).OrderBy(o => o.Day).ThenBy(o => o.From)];
    }

    public ImmutableArray<ExtraOpening> Extra(IEnumerable<ExtraOpening> entries)
    {
        var good = Ordered(entries, "extra", o => ("day", o.Date), o => o.From, o => o.To);
        Overlaps(good, o => o.Item.Date);
        return [.. good.Select(o => o.Item).OrderBy(o => o.Date).ThenBy(o => o.From)];
    }

    public ImmutableArray<ClosedDays> Closed(IEnumerable<ClosedDays> entries)
    {
        var good = ImmutableArray.CreateBuilder<ClosedDays>();
        foreach (var (index, days) in entries.Index())
        {
            if (days.First <= days.Last)
            {
                good.Add(days);
                continue;
            }

            var message = Reversed.With(("first", days.First), ("last", days.Last));
            _findings.Add(Finding.Error(Reversed.Id, message, FirstDateFirst) with { Subject = Subject("closed", index) });
        }

        return good.DrainToImmutable();
    }

    public void NeverOpens() => _findings.Add(Finding.Error(NoHours.Id, NoHours, GiveHours));

    private List<Entry<T>> Ordered<T>(IEnumerable<T> entries, string list, Func<T, Argument> day, Func<T, LocalTime> from, Func<T, LocalTime> to)
    {
        var good = new List<Entry<T>>();
        foreach (var (index, item) in entries.Index())
        {
            var entry = new Entry<T>(item, Subject(list, index), day(item), from(item), to(item));
            if (entry.From < entry.To || entry.To == LocalTime.Midnight) good.Add(entry);
            else _findings.Add(Finding.Error(EndsFirst.Id, EndsFirst.With(("opening", entry.Words)), EarlierFirst) with { Subject = entry.Subject });
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
                if (early.To != LocalTime.Midnight && late.From >= early.To) continue;
                var message = Overlap.With(("early", early.Words), ("late", late.Words));
                _findings.Add(Finding.Warning(Overlap.Id, message, JoinThem) with { Subject = late.Subject });
            }
        }
    }

    private static string Subject(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");

    private sealed record Entry<T>(T Item, string Subject, Argument Day, LocalTime From, LocalTime To)
    {
        public Message Words => Opening.With(Day, ("from", From.SinceMidnight()), ("to", To.AsClosing()));
    }
}
