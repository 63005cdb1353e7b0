using NodaTime;
using NodaTime.Text;
using Protocolist.Plans;
using Protocolist.Sheets;
using Protocolist.Tests.Planning.Revising;

namespace Protocolist.Tests.Sheets;

public class CalendarSheetTests
{
    private static readonly Plan Plan = SkerryPoint.Plan(SkerryPoint.Otter, "2027-03-22T09:00");

    [Fact]
    public void Every_step_is_read_back_at_the_same_instants()
    {
        var events = Events(CalendarSheet.Write(Plan));
        foreach (var step in Plan.Steps.Where(s => s.Start is not null))
        {
            var one = Assert.Single(events, e => Value(e, "UID") == $"SKP-2027-014.{step.Id}@protocolist.invalid");
            Assert.Equal(step.Start!.Value.ToInstant(), Moment(one, "DTSTART"));

            // RFC 5545, 3.6.1: a moment without length has no DTEND.
            Assert.Equal(step.End!.Value.ToInstant(), one.Any(l => l.StartsWith("DTEND", StringComparison.Ordinal)) ? Moment(one, "DTEND") : Moment(one, "DTSTART"));
        }
    }

    [Fact]
    public void Inspections_are_events_and_all_uids_differ()
    {
        var events = Events(CalendarSheet.Write(Plan));
        Assert.Equal(Plan.Steps.Sum(s => s.Inspections.Length), events.Count(e => Value(e, "UID").Contains("-look-", StringComparison.Ordinal)));
        Assert.Equal(events.Count, events.Select(e => Value(e, "UID")).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_zone_is_in_the_file_and_the_stamp_is_the_plans()
    {
        var text = CalendarSheet.Write(Plan);
        Assert.Contains("BEGIN:VTIMEZONE\r\nTZID:Atlantic/Azores\r\n", text, StringComparison.Ordinal);
        Assert.All(Events(text), e => Assert.Equal("20270322T100000Z", Value(e, "DTSTAMP")));
        Assert.Equal(text, CalendarSheet.Write(Plan));
        Assert.All(text.Split("\r\n"), line => Assert.True(System.Text.Encoding.UTF8.GetByteCount(line) <= 75, line));
    }

    [Fact]
    public void A_revised_plan_updates_the_same_events_with_higher_sequence_numbers()
    {
        var before = SkerryPoint.Plan(SkerryPoint.Otter);
        var after = SkerryPoint.Revise(before, "  - {step: keep-cold, begun: 2027-03-01T09:00, done: 2027-03-01T12:00}").Plan;
        var (old, now) = (Events(CalendarSheet.Write(before)), Events(CalendarSheet.Write(after)));
        foreach (var step in after.Steps.Where(s => s.Start != before.Step(s.Id)!.Start))
        {
            var uid = $"SKP-2027-014.{step.Id}@protocolist.invalid";
            Assert.Equal("0", Value(old.Single(e => Value(e, "UID") == uid), "SEQUENCE"));
            Assert.Equal("1", Value(now.Single(e => Value(e, "UID") == uid), "SEQUENCE"));
        }
    }

    [Fact]
    public void Care_rounds_come_again()
    {
        var rounds = Events(CalendarSheet.Write(Plan)).Where(e => Value(e, "UID").Contains(".care-", StringComparison.Ordinal)).ToList();
        Assert.Equal(Plan.Care.Length, rounds.Count);
        Assert.Contains(rounds, r => Value(r, "RRULE").Contains("FREQ=MONTHLY;INTERVAL=6", StringComparison.Ordinal));
    }

    /// <summary>A reader of its own: unfolds lines and gathers those of each event, alarms left out.</summary>
    private static List<List<string>> Events(string text)
    {
        var events = new List<List<string>>();
        List<string>? open = null;
        var alarm = false;
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n"))
        {
            if (line == "BEGIN:VEVENT") events.Add(open = []);
            else if (line == "END:VEVENT") open = null;
            else if (line.EndsWith(":VALARM", StringComparison.Ordinal)) alarm = line.StartsWith("BEGIN", StringComparison.Ordinal);
            else if (!alarm) open?.Add(line);
        }

        return events;
    }

    private static string Value(List<string> lines, string name) =>
        lines.Find(l => l.StartsWith(name + ":", StringComparison.Ordinal) || l.StartsWith(name + ";", StringComparison.Ordinal)) is { } line ? line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..] : "";

    private static Instant Moment(List<string> lines, string name)
    {
        var value = Value(lines, name);
        var local = LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss").Parse(value.TrimEnd('Z')).Value;
        return value.EndsWith('Z') ? local.InUtc().ToInstant() : local.InZoneStrictly(SkerryPoint.Zone).ToInstant();
    }
}
