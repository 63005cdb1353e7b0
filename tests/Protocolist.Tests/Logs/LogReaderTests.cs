using Protocolist.Tests.Planning.Revising;

namespace Protocolist.Tests.Logs;

public class LogReaderTests
{
    [Theory]
    [InlineData("  - {step: fix, begun: 2027-03-02T10:00, done: 2027-03-01T10:00}", "done-before-begun", 4, 12)]
    [InlineData("  - {step: fix, at: 2027-03-02T10:00, readings: {strength: 58}}", "reading-without-unit", 4, 60)]
    [InlineData("  - {step: fix, at: 2027-03-02T10:00, readings: {temperature: 19}}", "reading-without-unit", 4, 63)]
    [InlineData("  - {step: fix, at: 2027-03-02T10:00, readings: {ph: 19}}", "reading-impossible", 4, 54)]
    [InlineData("  - {step: fix, at: 2027-03-02T10:00, readings: {mass: 3 mL}}", "wrong-dimension", 4, 56)]
    [InlineData("  - {step: fix, at: 2027-03-02T10:00, signs: [sofft]}", "unknown-word", 4, 47)]
    [InlineData("  - {step: fix}", "entry-says-nothing", 4, 12)]
    [InlineData("  - {step: fix, skipped: no need, done: 2027-03-02T10:00}", "entry-contradicts-itself", 4, 12)]
    [InlineData("  - {step: fix, done: yesterday}", "bad-time", 4, 23)]
    [InlineData("  - {step: fix, at: 2027-03-02T10:00, sings: [soft]}", "unknown-key", 4, 39)]
    [InlineData("  - {step: fix, at: 2027-03-02T10:00}\n  - {step: fix, at: 2027-03-01T10:00}", "entries-out-of-order", 5, 12)]
    [InlineData("  - {step: fix, done: 2027-03-02T10:00}\n  - {step: fix, done: 2027-03-03T10:00}", "entry-contradicts-itself", 5, 12)]
    public void A_fault_is_found_at_its_line_and_column(string entries, string id, int line, int column)
    {
        var read = SkerryPoint.Log(entries);
        var finding = Assert.Single(read.Findings, f => f.Id == id);
        Assert.Equal((line, column), (finding.Where.Line, finding.Where.Column));
        Assert.NotEmpty(finding.Remedy.ToString());
    }

    [Fact]
    public void A_time_that_is_given_twice_is_told_with_both()
    {
        var read = SkerryPoint.Log("  - {step: fix, done: 2027-03-02T10:00}\n  - {step: fix, done: 2027-03-03T10:00}");
        var finding = Assert.Single(read.Findings, f => f.Id == "entry-contradicts-itself");
        Assert.Equal("'fix' has 'done' 2027-03-02 10:00 and again 2027-03-03 10:00", finding.Message.ToString());
    }

    [Fact]
    public void Everything_a_log_may_say_is_read()
    {
        var read = SkerryPoint.Log("  - {step: fix, begun: 2027-03-02T10:00, at: 2027-03-03T09:00+00:00, signs: [soft, oily], place: tail, used: 2 L, note: slow, readings: {strength: 58 %vol, density: 907 kg/m3, ph: 6.8, temperature: 19 degC, level: 21 cm, mass: 7.4 kg}}");
        Assert.Empty(read.Findings);
        var entry = Assert.Single(read.Value!.Entries);
        Assert.Equal(6, entry.Readings.Length);
        Assert.Equal(0.58, entry.Readings.First(r => r.What == ReadingKind.Strength).Value.Middle, 9);
        Assert.Equal(2, entry.Used!.Value.Liters, 9);
        Assert.Equal(NodaTime.Instant.FromUtc(2027, 3, 2, 11, 0), entry.Begun);
        Assert.Equal(NodaTime.Instant.FromUtc(2027, 3, 3, 9, 0), entry.Moment);
    }

    [Fact]
    public void An_hour_that_comes_twice_is_resolved_with_a_note()
    {
        // The clocks of the Azores go back from 01:00 to 00:00 on 31 October 2027 (tz database).
        var read = SkerryPoint.Log("  - {step: fix, at: 2027-10-31T00:30}");
        Assert.Single(read.Findings, f => f.Id == "clock-change-in-log");
        Assert.Equal(NodaTime.Instant.FromUtc(2027, 10, 31, 0, 30), read.Value!.Entries[0].At);
    }
}
