using NodaTime;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Logs;

public class WorkLogValidatorTests
{
    private static readonly Instant Nine = Instant.FromUtc(2027, 3, 1, 9, 0);

    private static readonly LogEntry Fix = new("fix") { Begun = Nine, Done = Nine + NodaTime.Duration.FromHours(2), Used = Volume.FromLiters(4), Signs = ["soft"] };

    public static TheoryData<string, LogEntry> Faults() => new()
    {
        { "impossible-amount", Fix with { Used = Volume.FromLiters(-4) } },
        { "impossible-amount", Fix with { Used = Volume.FromCubicMeters(1e9) } },
        { "done-before-begun", Fix with { Done = Nine - NodaTime.Duration.FromHours(2) } },
        { "absurd-date", new LogEntry("fix") { Done = Instant.MaxValue } },
        { "absurd-date", new LogEntry("fix") { Begun = Instant.MinValue } },
        { "unknown-word", Fix with { Signs = ["hungry"] } },
        { "reading-impossible", Fix with { Readings = [new(ReadingKind.Ph, QuantityRange.Point(15, Dimension.None), default)] } },
        { "reading-impossible", Fix with { Readings = [new(ReadingKind.Ph, QuantityRange.Point(7, Dimension.OfMass), default)] } },
        { "not-one-line", Fix with { Place = "left\nright" } },
        { "unreadable-character", Fix with { Note = "\u001B[2J" } },
        { "entry-says-nothing", new LogEntry("fix") },
        { "missing-key", Fix with { Step = " " } },
    };

    [Fact]
    public void A_sound_log_has_no_findings()
    {
        Assert.Empty(new WorkLog("A", [Fix]).Validate(DateTimeZone.Utc));
        Assert.Empty(new WorkLog("A", default).Validate(DateTimeZone.Utc));
        Assert.Empty(new WorkLog("A", [Fix with { Signs = default, Readings = default }]).Validate(DateTimeZone.Utc));
    }

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void Each_fault_is_one_finding(string id, LogEntry entry)
    {
        var finding = Assert.Single(new WorkLog("A", [entry]).Validate(DateTimeZone.Utc));
        Assert.Equal(id, finding.Id);
        Assert.False(finding.Remedy.IsEmpty);
    }

    [Theory]
    [InlineData("used: -4 L", "l.yaml:5:5: error impossible-amount: 'fix' cannot have used -4 L")]
    [InlineData("place: \"a\\nb\"", "l.yaml:5:12: error not-one-line")]
    [InlineData("at: 9999-12-31T23:00", "l.yaml:5:9: error absurd-date: the year 9999 lies outside 1600 to 2500")]
    [InlineData("at: 0001-01-01T00:00+10:00", "l.yaml:5:9: error absurd-date")]
    public void A_log_file_is_told_the_same_at_its_place(string line, string says)
    {
        var read = LogReader.Read(new("l.yaml", $"format: 1\nlog: A\nentries:\n  - step: fix\n    {line}\n    note: n\n    done: 2027-03-01T09:00\n"), DateTimeZone.Utc);

        Assert.StartsWith(says, Assert.Single(read.Findings, f => f.Id is not "looked-outside-step").ToString(), StringComparison.Ordinal);
    }
}
