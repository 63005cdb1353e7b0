using System.Collections.Immutable;
using System.Globalization;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Sheets;

/// <summary>
/// A plan as iCalendar (RFC 5545), for a person's own calendar: an event for each step and each inspection, with alarms, and the care
/// that comes after as recurring days. A revised plan has the same UIDs and higher SEQUENCE numbers where something moved, so that it
/// updates the same events, and takes back what is no longer planned.
/// </summary>
public static class CalendarSheet
{
    private const string Domain = "protocolist.invalid"; // RFC 2606: a name that is nobody's

    /// <summary>Writes the calendar.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language; English where none is given.</param>
    /// <returns>Lines that end with CR and LF, the same for the same plan: no clock is read. Steps without dates are not in it.</returns>
    public static string Write(Plan plan, Language? language = null)
    {
        WholePlan.ThrowIfIncomplete(plan);
        var calendar = new Ical.Net.Calendar { ProductId = "-//Protocolist//Calendar of a plan//EN", Method = "PUBLISH" };
        var zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(plan.Zone);
        if (zone is not null && zone.Id != DateTimeZone.Utc.Id && Span(plan) is { } span) calendar.AddTimeZone(ZoneComponent.Of(zone, span));
        var events = new EventWriter(plan, zone, Domain, language ?? Language.English);
        foreach (var step in plan.Steps)
        {
            foreach (var one in events.OfStep(step)) calendar.Events.Add(one);
        }

        foreach (var gone in plan.Withdrawn)
        {
            foreach (var one in events.OfWithdrawn(gone)) calendar.Events.Add(one);
        }

        foreach (var care in plan.Care)
        {
            if (events.OfCare(care) is { } one) calendar.Events.Add(one);
        }

        return ContentLines.Folded(new CalendarSerializer().SerializeToString(calendar) ?? "");
    }

    /// <summary>From the first of the moments that the events name to the last, a day more at either end.</summary>
    private static Interval? Span(Plan plan)
    {
        List<Instant> moments =
        [
            .. plan.Steps
                .SelectMany(s => ((OffsetDateTime?[])[s.Start, s.End, .. s.Inspections, .. s.ChangesAt]).OfType<OffsetDateTime>())
                .Concat(plan.Withdrawn.Select(w => w.Start).OfType<OffsetDateTime>())
                .Select(t => t.ToInstant()),
        ];
        return moments.Count == 0 ? null : new(moments.Min() - NodaTime.Duration.FromDays(1), moments.Max() + NodaTime.Duration.FromDays(1));
    }
}

/// <summary>The events of one plan.</summary>
internal sealed class EventWriter(Plan plan, DateTimeZone? zone, string domain, Language language)
{
    private static readonly Phrase LookAtIt = new("calendar.look", "Look at it: {title}");
    private static readonly Phrase ChangeIt = new("calendar.change", "Change the fluid: {title}");
    private static readonly Phrase Mixed = new("calendar.change.mixed", "{volume} of {fluid}, mixed in {batches} {batches|batch|batches} of {each:mix}:");
    private static readonly Phrase Fresh = new("calendar.change.fresh", "{volume} of {fluid}.");
    private static readonly Phrase Material = new("calendar.material", "{what}: {amount}");

    private const int AlarmMinutes = 30;

    /// <summary>When the plan was made, as far as the plan knows: the same plan gives the same stamp.</summary>
    private readonly CalDateTime _stamp = UtcOf((plan.LoggedUntil ?? plan.EarliestStart ?? plan.Start)?.ToInstant() ?? Instant.FromUtc(2000, 1, 1, 0, 0));

    public IEnumerable<CalendarEvent> OfStep(Step step)
    {
        if (step is { Start: { } start, End: { } end })
        {
            var entry = Event(step.Id, Title(step.Title), start.ToInstant(), end.ToInstant(), step.Sequence);
            if (Text(step) is { Length: > 0 } text) entry.Description = text;
            if (step.State == StepState.Planned && step.HandsOn > NodaTime.Duration.Zero) entry.Alarms.Add(Before(AlarmMinutes, Said(step.Title)));
            yield return entry;
        }
        else if (step.State == StepState.Skipped && plan.Start is { } any)
        {
            yield return Cancelled(Event(step.Id, Title(step.Title), any.ToInstant(), any.ToInstant(), step.Sequence));
        }

        var lookFor = string.Join("\n", step.LookFor.Select(Said));
        foreach (var look in Events(Looks(step.Id, Said(step.Title), step.Sequence, step.MostInspections), step.Inspections, step.Look, _ => lookFor))
            yield return look;
        var changes = Changes(step.Id, Said(step.Title), step.Sequence, step.MostChanges);
        foreach (var change in Events(changes, step.ChangesAt, step.Change, i => Filling(step, i + 1))) yield return change;
    }

    public IEnumerable<CalendarEvent> OfWithdrawn(WithdrawnStep step)
    {
        if ((step.Start ?? plan.Start)?.ToInstant() is not { } at) yield break;
        yield return Cancelled(Event(step.Id, Title(step.Title), at, at, step.Sequence));
        foreach (var look in Events(Looks(step.Id, Said(step.Title), step.Sequence, step.MostInspections), [], default, _ => "")) yield return look;
        foreach (var change in Events(Changes(step.Id, Said(step.Title), step.Sequence, step.MostChanges), [], default, _ => "")) yield return change;
    }

    /// <summary>A care round as days that come again. A day that a month does not have falls on its last one.</summary>
    public CalendarEvent? OfCare(CareEvent care)
    {
        if (care.On is not { } on) return null;
        var entry = new CalendarEvent
        {
            Uid = Uid($"care-{care.Id}"),
            DtStamp = _stamp,
            Summary = Title(care.What),
            Description = string.Join("\n", ((string[])[Said(care.Amount), care.Source]).Where(t => t.Length > 0)),
            Start = new CalDateTime(new DateOnly(on.Year, on.Month, on.Day)),
            Sequence = plan.Revision,
            Transparency = "TRANSPARENT",
        };
        if (care.EveryMonths is { } months)
        {
            var rule = new RecurrenceRule(FrequencyType.Monthly, months);
            if (on.Day > 28)
            {
                rule.ByMonthDay = [.. Enumerable.Range(28, on.Day - 27)];
                rule.BySetPosition = [-1];
            }

            entry.RecurrenceRule = rule;
        }

        entry.Alarms.Add(new Alarm { Action = "DISPLAY", Description = entry.Summary, Trigger = new Trigger(Ical.Net.DataTypes.Duration.FromHours(8)) });
        return entry;
    }

    private Series Looks(string step, string title, int sequence, int most) =>
        new($"{step}-look", Title(LookAtIt.With(("title", title))), title, sequence, most);

    private Series Changes(string step, string title, int sequence, int most) =>
        new($"{step}-change", Title(ChangeIt.With(("title", title))), title, sequence, most);

    /// <summary>What is poured in at a change, and how it is mixed.</summary>
    private string Filling(Step step, int filling)
    {
        foreach (var recipe in plan.Recipes)
        {
            if (MixedBatch.Of(recipe, plan).FirstOrDefault(b => b.First.To.Step == step.Id && b.First.Filling == filling) is not { } batch) continue;
            var mixed = Mixed.With(("volume", step.Volume!.Value), ("fluid", recipe.Name), ("batches", batch.First.Batches), ("each", batch.Each));
            return string.Join("\n", [Said(mixed), .. recipe.MethodFor(batch.Each).Select(Said)]);
        }

        return step is { Volume: { } volume, Fluid: { } fluid } ? Said(Fresh.With(("volume", volume), ("fluid", fluid))) : "";
    }

    /// <summary>The events of a series; those that an earlier revision had and this one has not are taken back.</summary>
    private IEnumerable<CalendarEvent> Events(
        Series series, ImmutableArray<OffsetDateTime> moments, NodaTime.Duration lasts, Func<int, string> description)
    {
        for (var i = 0; i < Math.Max(series.Most, moments.Length); i++)
        {
            var at = (i < moments.Length ? moments[i] : moments.Length > 0 ? moments[^1] : plan.Start)?.ToInstant() ?? default;
            var entry = Event($"{series.Id}-{(i + 1).ToString(CultureInfo.InvariantCulture)}", series.Title, at, at + lasts, series.Sequence);
            if (i < moments.Length && description(i) is { Length: > 0 } text) entry.Description = text;
            if (i < moments.Length) entry.Alarms.Add(Before(AlarmMinutes, series.Alarm));
            yield return i < moments.Length ? entry : Cancelled(entry);
        }
    }

    /// <summary>Events of one kind within a step.</summary>
    /// <param name="Id">What their ids begin with.</param>
    /// <param name="Title">What they are called.</param>
    /// <param name="Alarm">What their alarms say.</param>
    /// <param name="Sequence">How many times a revision has changed the step.</param>
    /// <param name="Most">The most of them that any revision planned.</param>
    private readonly record struct Series(string Id, string Title, string Alarm, int Sequence, int Most);

    private CalendarEvent Event(string id, string title, Instant start, Instant end, int sequence)
    {
        // A local time that comes twice names its first occurrence only (RFC 5545, 3.3.5); such an event is written in UTC.
        var local = zone is not null && IsPlain(start) && IsPlain(end);
        return new CalendarEvent
        {
            Uid = Uid(id),
            DtStamp = _stamp,
            Summary = title,
            Start = local ? LocalOf(start) : UtcOf(start),
            End = local ? LocalOf(end) : UtcOf(end),
            Sequence = sequence,
        };
    }

    private static CalendarEvent Cancelled(CalendarEvent entry)
    {
        entry.Status = "CANCELLED";
        return entry;
    }

    private static Alarm Before(int minutes, string what) =>
        new() { Action = "DISPLAY", Description = what, Trigger = new Trigger(Ical.Net.DataTypes.Duration.FromMinutes(-minutes)) };

    private string Said(Message message) => message.ToString(language);

    private string Title(Message what) => $"{plan.Specimen.Id}: {Said(what)}";

    private string Text(Step step) => string.Join("\n",
    [
        .. step.Because.IsEmpty ? (string[])[] : [Said(SheetWords.BecauseOf(step))],
        .. step.Instructions.Select(Said),
        .. step.Materials.Select(m => Said(Material.With(("what", m.Name), ("amount", m.HowMuch)))),
        .. step.Cautions.Select(c => $"! {Said(c)}"),
    ]);

    /// <summary>Of the specimen's number and the step's id alone, so that it stays the same whatever is revised.</summary>
    private string Uid(string id)
    {
        var specimen = string.Concat(plan.Specimen.Id.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.'
            ? c.ToString()
            : ((int)c).ToString("x4", CultureInfo.InvariantCulture)));
        return $"{specimen}.{id}@{domain}";
    }

    private bool IsPlain(Instant at) => zone!.MapLocal(at.InZone(zone).LocalDateTime).Count == 1 && zone.Id != DateTimeZone.Utc.Id;

    private CalDateTime LocalOf(Instant at)
    {
        var local = at.InZone(zone!).LocalDateTime;
        return new(local.Year, local.Month, local.Day, local.Hour, local.Minute, local.Second, zone!.Id);
    }

    private static CalDateTime UtcOf(Instant at)
    {
        var utc = at.InUtc().LocalDateTime;
        return new(utc.Year, utc.Month, utc.Day, utc.Hour, utc.Minute, utc.Second, "UTC");
    }
}
