using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Tests.Protocols;

public sealed class WholeRangeTests
{
    private const string Frame = """
        format: 1
        protocol: frame
        revision: 1
        title: Frame
        for: {group: bony-fish, mass: 20 g to 500 g}
        VALUES
        stages:
          - stage: immerse
            id: fix
            fluid: neutral buffered formalin 10 %
            ratio: RATIO
            last: LAST
            source: common practice
          - stage: house
            id: house
            fluid: neutral buffered formalin 10 %
            ratio: 3
            source: common practice
        """;

    [Theory]
    [InlineData("480 h - specimen.mass * 1 h/g", "negative-amount", "mass 495 g")]
    [InlineData("greatest(1 h, 480 h - specimen.mass * 1 h/g)", null, null)]
    [InlineData("24 h / (specimen.count - 1)", "amount-without-limit", "mass 20 g")]
    [InlineData("24 h / specimen.count", null, null)]
    [InlineData("specimen.mass * 5 h/g to 1000 h", "reversed-range", "mass 495 g")]
    [InlineData("specimen.mass * 1 y/g", "absurd-amount", "mass 20 g")]
    [InlineData("0 * specimen.mass * 1 h/g", "nothing-of-it", "mass 20 g")]
    [InlineData("at most 24 h", null, null)]
    public void A_fault_is_claimed_with_a_specimen_that_shows_it(string last, string? id, string? witness)
    {
        var findings = Check(Frame.Replace("LAST", last).Replace("RATIO", "10").Replace("VALUES", ""));

        if (id is null)
        {
            Assert.Empty(findings);
            return;
        }

        var finding = Assert.Single(findings);
        Assert.Equal(id, finding.Id);
        Assert.Contains(witness!, finding.Message.ToString());
    }

    [Fact]
    public void A_narrow_fault_between_the_ends_is_found_by_halving_the_class()
    {
        // Negative only between 60 and 80 g; the first look, at 20, 100 and 495 g, misses it.
        const string narrow = "values:\n  dip: choose(specimen.mass > 60 g and specimen.mass < 80 g, specimen.mass * 0 h/g - 5 h, 24 h)";

        var findings = Check(Frame.Replace("LAST", "greatest(24 h, dip)").Replace("RATIO", "10").Replace("VALUES", narrow));

        var finding = Assert.Single(findings);
        Assert.Equal("negative-amount", finding.Id);
        Assert.Equal(Severity.Warning, finding.Severity);
        var mass = double.Parse(finding.Message.ToString().Split("mass ")[1].Split(" g")[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(mass, 60, 80);
    }

    [Fact]
    public void What_stays_open_is_a_note_and_only_in_strict()
    {
        // Never negative, but two uses of one name hide that from bounds: x - x is 0, and bounds see the width of x.
        const string values = "values: {odd: {value: specimen.mass * 1 h/g - specimen.mass * 1 h/g, source: common practice}}";
        var text = Frame.Replace("LAST", "24 h + odd").Replace("RATIO", "10").Replace("VALUES", values);

        Assert.Empty(Check(text));
        var notes = Check(text, strict: true);
        Assert.NotEmpty(notes);
        Assert.All(notes, note => Assert.Equal(("undecided", Severity.Note), (note.Id, note.Severity)));
    }

    [Theory]
    [InlineData("2", true)]
    [InlineData("3", false)]
    [InlineData("at least 2.5", true)]
    [InlineData("specimen.mass / 100 g to 10", true)]
    public void A_ratio_below_three_is_warned_of(string ratio, bool warned) =>
        Assert.Equal(warned, Check(Frame.Replace("LAST", "24 h").Replace("RATIO", ratio).Replace("VALUES", "")).Any(f => f.Id == "ratio-too-low"));

    [Fact]
    public void A_ratio_with_changes_counts_all_of_them() =>
        Assert.Empty(Check(Frame.Replace("LAST", "24 h\n    changes: 1").Replace("RATIO", "2").Replace("VALUES", "")));

    [Fact]
    public void Two_neighbours_that_touch_share_no_animal_and_leave_none_out()
    {
        var small = Frame.Replace("LAST", "24 h").Replace("RATIO", "10").Replace("VALUES", "");
        var large = small.Replace("protocol: frame", "protocol: larger").Replace("20 g to 500 g", "500 g to 2 kg");

        Assert.Empty(Check(small, large));
        Assert.Equal(["overlapping-classes"], Check(small, large.Replace("500 g to 2 kg", "499 g to 2 kg")).Select(f => f.Id));
        Assert.Equal(["gap-between-classes"], Check(small, large.Replace("500 g to 2 kg", "501 g to 2 kg")).Select(f => f.Id));
    }

    [Fact]
    public void A_nearer_group_and_a_narrower_class_are_no_overlap()
    {
        var all = Frame.Replace("LAST", "24 h").Replace("RATIO", "10").Replace("VALUES", "");
        var young = all.Replace("protocol: frame", "protocol: young").Replace("mass: 20 g to 500 g", "mass: 20 g to 500 g, life-stage: [juvenile]");

        Assert.Empty(Check(all, young));
    }

    private static System.Collections.Immutable.ImmutableArray<Finding> Check(string text, bool strict = false) =>
        FileCheck.Over([], [new SourceText("frame.yaml", text)], DateTimeZoneProviders.Tzdb, strict);

    private static System.Collections.Immutable.ImmutableArray<Finding> Check(string one, string other) =>
        FileCheck.Over([], [new SourceText("one.yaml", one), new SourceText("other.yaml", other)], DateTimeZoneProviders.Tzdb, strict: false);
}
