using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Tests.Specimens;

public class SpecimenReaderTests
{
    private const string Head = "format: 1\nspecimen: X-1\ngroup: mammal\n";

    private static Checked<Specimen> Read(string yaml) => SpecimenReader.Read(new("s.yaml", yaml));

    [Fact]
    public void Everything_that_can_be_said_is_read()
    {
        var read = Read(Head + """
            count: 2
            scientific-name: Lutra lutra
            mass: 7.2 kg
            lot-mass: 14 kg
            head-body-length: 75 cm ± 1 cm
            girth: 44 cm
            sex: female
            life-stage: adult
            condition: chilled
            died-at: 2027-02-28T16:00+02:00
            found-on: 2027-02-28
            permits: [A 1, B 2]
            intended-use: tissue-for-dna-first
            x-own: whatever
            """);

        Assert.True(read.IsSound, string.Join('\n', read.Findings));
        var s = read.Value;
        Assert.Equal((2, 7200.0, 14_000.0, 750.0, 440.0), (s.Count, Math.Round(s.Mass!.Value.Grams, 6), Math.Round(s.LotMass!.Value.Grams, 6), Math.Round(s.HeadBodyLength!.Value.Millimeters, 6), Math.Round(s.Girth!.Value.Millimeters, 6)));
        Assert.Equal((Sex.Female, LifeStage.Adult, Condition.Chilled, IntendedUse.TissueForDnaFirst), (s.Sex, s.LifeStage, s.Condition, s.IntendedUse));
        Assert.Equal(NodaTime.Instant.FromUtc(2027, 2, 28, 14, 0), s.DiedAt);
        Assert.Equal(["A 1", "B 2"], s.Permits);
    }

    [Theory]
    [InlineData("mass: 7 kgg", 4, "unknown-unit")]
    [InlineData("mass: seven kg", 4, null)]
    [InlineData("mass: 7", 4, "wrong-dimension")]
    [InlineData("mass: 75 cm", 4, "wrong-dimension")]
    [InlineData("mass: 7 kg\nlenght: 75 cm", 5, "unknown-key")]
    [InlineData("mass: 7 kg\nmass: 8 kg", 5, "duplicate-key")]
    [InlineData("mass: 7 kg\ncount: 0", 5, "count-below-one")]
    [InlineData("mass: 7 kg\nsex: both", 5, "unknown-word")]
    [InlineData("mass: 7 kg\ndied-at: yesterday", 5, "bad-time")]
    [InlineData("mass: 7 kg\ndied-at: 2027-02-28T16:00", 5, "bad-time")]
    [InlineData("mass: 7 kg\nfound-on: 2027-02-30", 5, "bad-date")]
    [InlineData("mass: 7 kg\ndied-at: 2027-03-09T16:00+00:00\nfound-on: 2027-02-28", null, "died-after-found")]
    [InlineData("notes: no size at all", null, "no-measurement")]
    public void Wrong_line_is_an_error_at_its_place(string rest, int? line, string? id)
    {
        var read = Read(Head + rest + "\n");

        var error = read.Findings.First(f => f.Severity == Severity.Error);
        if (id is not null) Assert.Equal(id, error.Id);
        if (line is not null) Assert.Equal(line, error.Where.Line);
        Assert.NotEmpty(error.Remedy.ToString());
        Assert.Equal("s.yaml", error.Where.File);
    }

    [Fact]
    public void All_errors_of_a_file_come_at_once_in_order()
    {
        var read = Read("format: 1\nspecimen: X-1\ngroup: mamal\nmass: 7 kgg\nsexx: male\n");

        Assert.Equal([3, 4, 5], read.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Where.Line));
        Assert.True(read.Findings.Where(f => f.Where.IsKnown).Select(f => f.Where.Line).SequenceEqual(read.Findings.Where(f => f.Where.IsKnown).Select(f => f.Where.Line).Order()));
    }

    [Theory]
    [InlineData("specimen: X\ngroup: mammal\nmass: 1 kg\n", "missing-key")]
    [InlineData("format: 2\nspecimen: X\n", "later-format")]
    [InlineData("format: one\nspecimen: X\n", "bad-format")]
    [InlineData("format: 1\ngroup: mammal\nmass: 1 kg\n", "missing-key")]
    [InlineData("- a\n- list\n", "not-a-mapping")]
    public void File_that_is_no_specimen_gives_none(string yaml, string id)
    {
        var read = Read(yaml);

        Assert.Null(read.Value);
        Assert.Contains(read.Findings, f => f.Id == id && f.Severity == Severity.Error);
    }
}
