using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
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
    public void Changes_of_fluid_are_events_that_say_what_is_mixed_and_where()
    {
        var (fix, events) = (Plan.Step("fix")!, Events(CalendarSheet.Write(Plan)));
        var change = Assert.Single(events, e => Value(e, "UID") == "SKP-2027-014.fix-change-1@protocolist.invalid");

        Assert.Equal(Plan.Steps.Sum(s => s.ChangesAt.Length), events.Count(e => Value(e, "UID").Contains("-change-", StringComparison.Ordinal)));
        Assert.Single(fix.ChangesAt);
        Assert.StartsWith("SKP-2027-014: Change the fluid: ", Value(change, "SUMMARY"), StringComparison.Ordinal);
        Assert.Contains("formaldehyde stock 37 %mass", Value(change, "DESCRIPTION"), StringComparison.Ordinal);
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

    /// <summary>Zones with whole-hour and half-hour changes on both sides of the equator, one whose changes follow the moon, and some without any.</summary>
    [Theory]
    [InlineData("Europe/Berlin", "2027-03-22T09:00", 2)]
    [InlineData("Europe/Berlin", "2027-10-25T09:00", 2)]
    [InlineData("America/St_Johns", "2027-03-08T09:00", 2)]
    [InlineData("America/St_Johns", "2027-11-01T09:00", 2)]
    [InlineData("Australia/Lord_Howe", "2027-03-29T09:00", 2)]
    [InlineData("Australia/Lord_Howe", "2027-09-27T09:00", 2)]
    [InlineData("Africa/Casablanca", "2026-02-10T09:00", 2)]
    [InlineData("Pacific/Auckland", "2027-09-20T09:00", 2)]
    [InlineData("Pacific/Apia", "2011-12-22T09:00", 2)]
    [InlineData("Asia/Kathmandu", "2027-03-01T09:00", 1)]
    [InlineData("UTC", "2027-03-01T09:00", 0)]
    public void Every_moment_is_read_back_by_the_files_own_zone(string zone, string start, int observances)
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter with { DiedAt = null, FoundOn = null }, start, SkerryPoint.BenchIn(zone));
        var read = CalendarReader.Read(CalendarSheet.Write(plan));

        Assert.Equal(observances, read.Calendar.Parts.Where(p => p.Name == "VTIMEZONE").SelectMany(z => z.Parts).Count());
        foreach (var step in plan.Steps.Where(s => s.Start is not null))
        {
            var one = Assert.Single(read.Events, e => e["UID"] == $"SKP-2027-014.{step.Id}@protocolist.invalid");
            Assert.Equal(step.Start!.Value.ToInstant(), read.Moment(one, "DTSTART"));
            foreach (var (look, i) in step.Inspections.Select((l, i) => (l, i + 1)))
                Assert.Equal(look.ToInstant(), read.Moment(Assert.Single(read.Events, e => e["UID"] == FormattableString.Invariant($"SKP-2027-014.{step.Id}-look-{i}@protocolist.invalid")), "DTSTART"));
        }
    }

    /// <summary>The clocks of the Azores go back on 2027-10-31 from 01:00 to 00:00.</summary>
    [Fact]
    public void A_moment_in_an_hour_that_comes_twice_is_written_in_UTC()
    {
        var at = Instant.FromUtc(2027, 10, 31, 1, 30).InZone(SkerryPoint.Zone).ToOffsetDateTime();
        var plan = Plan with { Steps = [Plan.Steps[0] with { Start = at, End = at.PlusMinutes(60) }] };
        var one = Assert.Single(CalendarReader.Read(CalendarSheet.Write(plan)).Events, e => e["UID"].Contains(".keep-cold@", StringComparison.Ordinal));

        Assert.Equal("20271031T013000Z", one["DTSTART"]);
    }

    [Fact]
    public void A_remedy_that_a_corrected_log_takes_back_comes_as_cancelled_with_the_same_uid_and_a_higher_sequence()
    {
        const string Begun = "  - {step: fix, begun: 2027-03-01T13:45}\n  - {step: fix, at: 2027-03-06T10:00";
        var soft = SkerryPoint.Revise(SkerryPoint.Plan(SkerryPoint.Otter), Begun + ", signs: [soft]}").Plan;
        var firm = SkerryPoint.Revise(soft, Begun + "}").Plan;
        var (before, after) = (One(soft, "fix-re-inject-1"), One(firm, "fix-re-inject-1"));

        Assert.Equal(("", "0"), (before["STATUS"], before["SEQUENCE"]));
        Assert.Equal(("CANCELLED", "1"), (after["STATUS"], after["SEQUENCE"]));
        Assert.Equal(before["UID"], after["UID"]);
        Assert.Empty(after.Parts);

        // Once more soft: the same event comes back, above the number that took it back.
        var again = One(SkerryPoint.Revise(firm, Begun + ", signs: [soft]}").Plan, "fix-re-inject-1");
        Assert.Equal(("", "2", before["UID"]), (again["STATUS"], again["SEQUENCE"], again["UID"]));
    }

    [Fact]
    public void A_step_that_was_left_out_and_a_look_that_is_no_longer_needed_are_cancelled()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var left = SkerryPoint.Revise(plan, "  - {step: pose, skipped: it lay straight}\n  - {step: fix, begun: 2027-03-01T13:45, done: 2027-03-03T10:00}").Plan;
        var first = One(left, "fix-look-1");

        Assert.Equal(("CANCELLED", "1"), (One(left, "pose")["STATUS"], One(left, "pose")["SEQUENCE"]));
        Assert.Equal("", One(plan, "fix-look-1")["STATUS"]);
        Assert.Equal(("CANCELLED", "1"), (first["STATUS"], first["SEQUENCE"]));
    }

    [Fact]
    public void Work_ahead_rings_half_an_hour_before_and_care_in_the_morning()
    {
        var read = CalendarReader.Read(CalendarSheet.Write(Plan));
        Assert.All(Plan.Steps.Where(s => s is { State: StepState.Planned, Start: not null } && s.HandsOn > Duration.Zero), s =>
        {
            var alarm = Assert.Single(One(Plan, s.Id).Parts);
            Assert.Equal(("VALARM", "DISPLAY", "-PT30M"), (alarm.Name, alarm["ACTION"], alarm["TRIGGER"]));
        });
        Assert.All(read.Events.Where(e => e["UID"].Contains(".care-", StringComparison.Ordinal)), e => Assert.Equal("PT8H", Assert.Single(e.Parts)["TRIGGER"]));
    }

    [Fact]
    public void Done_work_rings_no_more()
    {
        var done = SkerryPoint.Revise(SkerryPoint.Plan(SkerryPoint.Otter), "  - {step: keep-cold, begun: 2027-03-01T09:00, done: 2027-03-01T09:20}").Plan;
        Assert.Empty(One(done, "keep-cold").Parts);
    }

    [Fact]
    public void Any_text_comes_back_as_it_was()
    {
        const string Title = "Wash; not too long, 5 °C \\ 3 % – Wässern: ganz langsam, damit nichts reißt, und 漂洗 兩次 🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙🐙";
        var plan = Plan with { Steps = [Plan.Steps[0] with { Title = Said.Of(Title), Instructions = [Said.Of("One line\nand another, with: colons; \"quotes\"")], Cautions = [], Materials = [] }] };
        var one = One(plan, "keep-cold");

        Assert.Equal($"SKP-2027-014: {Title}", one.Text("SUMMARY"));
        Assert.Equal("One line\nand another, with: colons; \"quotes\"", one.Text("DESCRIPTION"));
    }

    [Fact]
    public void Care_on_a_day_that_not_every_month_has_comes_on_the_last_one()
    {
        var plan = Plan with { Care = [new(Message.Text("look"), new LocalDate(2027, 8, 31), 6, "") { Id = "round" }] };

        Assert.Equal(["BYMONTHDAY=28,29,30,31", "BYSETPOS=-1", "FREQ=MONTHLY", "INTERVAL=6"], One(plan, "care-round")["RRULE"].Split(';').Order(StringComparer.Ordinal));
    }

    private static Component One(Plan plan, string id) =>
        Assert.Single(CalendarReader.Read(CalendarSheet.Write(plan)).Events, e => e["UID"] == $"SKP-2027-014.{id}@protocolist.invalid");

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
