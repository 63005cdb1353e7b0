using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Tests.Proving;

/// <summary>What <c>check</c> says of a protocol by itself: its fluids, regions, sources and worked examples.</summary>
public class ProtocolCheckTests
{
    private const string Head = "format: 1\nprotocol: p\nrevision: 1\ntitle: P\nfor: {group: mammal, mass: 1 kg to 2 kg}\n";

    private static string[] Check(string text, bool strict = false, params string[] ids) =>
        [.. FileCheck.Over([], [new SourceText("p.yaml", Head + text)], DateTimeZoneProviders.Tzdb, strict).Where(f => ids.Contains(f.Id)).Select(f => f.ToString())];

    private const string Stages = "stages:\n  - stage: immerse\n    id: fix\n    fluid: formalin 10 %\n    ratio: 10\n    last: 24 h\n    source: common practice\n";

    [Fact]
    public void Place_that_the_group_does_not_have_is_told_where_it_stands()
    {
        Assert.Equal(
            ["p.yaml:9:5: warning unknown-region: 'cut' names 'mantle', which a mammal does not have; known here: abdomen, forelimbs, head, hindlimbs, neck, tail, thorax"],
            Check("stages:\n  - stage: slit\n    id: cut\n    places: [belly, mantle]\n    source: common practice\n" + Stages[8..], ids: "unknown-region"));
        Assert.Equal(
            ["p.yaml:10:5: warning unknown-region: 'in' names 'mantle', which a mammal does not have; known here: abdomen, forelimbs, head, hindlimbs, neck, tail, thorax"],
            Check("stages:\n  - stage: inject\n    id: in\n    fluid: formalin 10 %\n    sites: {mantle: 1 mL, other: 2 mL}\n    source: common practice\n", ids: "unknown-region"));
        Assert.Empty(Check("stages:\n  - stage: slit\n    id: cut\n    places: [belly]\n    source: common practice\n", ids: "unknown-region"));
    }

    [Fact]
    public void Number_without_a_source_is_told_when_asked_strictly()
    {
        const string Text = "values:\n  a: 24 h\n  b: specimen.mass\n  c: {value: 2 * specimen.mass, source: from memory}\n  d: 3 * specimen.mass\nstages:\n  - stage: immerse\n    id: fix\n    fluid: formalin 10 %\n    ratio: 10\n    last: a\n  - {stage: task, id: t, last: a}\n  - {stage: task, id: u, last: 1 h, source: from memory}\n";

        Assert.Equal(
            [
                "p.yaml:7:3: warning unsourced: the value 'a' has no source; add 'source:', be it 'common practice' or 'from memory'",
                "p.yaml:10:3: warning unsourced: the value 'd' has no source; add 'source:', be it 'common practice' or 'from memory'",
                "p.yaml:12:12: warning unsourced: the stage 'fix' has no source; add 'source:', be it 'common practice' or 'from memory'",
            ],
            Check(Text, strict: true, "unsourced"));
        Assert.Empty(Check(Text, strict: false, "unsourced"));
    }

    [Theory]
    [InlineData("fluid: formalin 10 %", 0)]
    [InlineData("fluid: choice.f", 1)]
    [InlineData("fluid: {by: choice.g, a: ethanol 70 %vol, b: brandy 40 %}", 1)]
    public void Every_fluid_that_a_choice_can_lead_to_is_read(string fluid, int faults)
    {
        var text = "choices:\n  f: [formalin 10 %, brandy 40 %]\n  g: [a, b]\nstages:\n  - stage: immerse\n    id: fix\n    ratio: 10\n    last: 24 h\n    source: common practice\n    " + fluid + "\n";
        var told = FileCheck.Over([], [new SourceText("p.yaml", Head + text)], DateTimeZoneProviders.Tzdb, false).Where(f => f.Severity == Severity.Error && f.Message.ToString().Contains("brandy", StringComparison.Ordinal)).ToList();

        Assert.Equal(faults, told.Count);
        Assert.All(told, f => Assert.Equal(15, f.Where.Line));
    }

    private static string[] Example(string specimen, string expect, string choose = "", string text = "values:\n  soak: {value: 24 h + 1 h/kg * specimen.mass, source: from memory}\n  word: {value: choice.keeping, source: from memory}\n") => [..
        FileCheck.Over([], [new SourceText("p.yaml", Head + "choices:\n  keeping: [formalin, ethanol]\n" + text + "stages:\n  - stage: immerse\n    id: fix\n    fluid: formalin 10 %\n    ratio: 10 to 20\n    last: soak\n    source: common practice\n  - {stage: wash, id: wash, fluid: tap water, last: 24 h, when: choice.keeping is ethanol, source: common practice}\n  - {stage: task, id: cold, last: 1 h, when: specimen.condition is frozen, source: common practice}\nexamples:\n  - specimen: " + specimen + "\n" + choose + "    expect: " + expect + "\n    source: common practice\n")], DateTimeZoneProviders.Tzdb, false)
            .Where(f => f.Id is "example-fails" or "example-outside-class" or "wrong-dimension" or "no-measurement").Select(f => f.ToString())];

    /// <summary>24 h and an hour for each kilogram: 25.5 h for 1.5 kg. An expectation holds within a hundredth.</summary>
    [Theory]
    [InlineData("{soak: 25.5 h}", null)]
    [InlineData("{soak: 25.74 h}", null)]
    [InlineData("{soak: 25.26 h}", null)]
    [InlineData("{soak: 25.8 h}", "25.8 h")]
    [InlineData("{soak: 25.2 h}", "25.2 h")]
    [InlineData("{soak: 24 h to 26 h}", null)]
    [InlineData("{soak: 24 h to 25 h}", "24 h to 25 h")]
    [InlineData("{soak: at least 25 h}", null)]
    [InlineData("{soak: at least 26 h}", "at least 26 h")]
    [InlineData("{soak: at most 25 h}", "at most 25 h")]
    public void Quantity_within_a_hundredth(string expect, string? failing)
    {
        var told = Example("{mass: 1.5 kg}", expect);

        if (failing is null) Assert.Empty(told);
        else
        {
            Assert.StartsWith($"p.yaml:22:14: error example-fails: 'soak' is expected to be {failing} here, and comes out as ", Assert.Single(told), StringComparison.Ordinal);
            Assert.EndsWith("; correct the protocol, or the example if its source says so", told[0], StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("{fix.ratio: 10 to 20}", true)]
    [InlineData("{fix.ratio: 5 to 30}", true)]
    [InlineData("{fix.ratio: 12 to 20}", false)]
    [InlineData("{fix.ratio: 10 to 15}", false)]
    [InlineData("{fix.last: 25.5 h}", true)]
    [InlineData("{fix.fluid: formalin 10 %}", true)]
    [InlineData("{fix.fluid: formalin 5 %}", false)]
    [InlineData("{word: formalin}", true)]
    [InlineData("{word: ethanol}", false)]
    [InlineData("{fix: present, wash: absent, cold: absent}", true)]
    [InlineData("{wash: present}", false)]
    [InlineData("{fix: absent}", false)]
    public void Ranges_words_and_presence(string expect, bool holds) => Assert.Equal(holds ? 0 : 1, Example("{mass: 1.5 kg}", expect).Length);

    [Fact]
    public void Choice_of_an_example_is_made()
    {
        Assert.Empty(Example("{mass: 1.5 kg}", "{wash: present, word: ethanol}", "    choose: {keeping: ethanol}\n"));
        Assert.Matches("'wash' is expected to be absent here, and comes out as present", Assert.Single(Example("{mass: 1.5 kg}", "{wash: absent}", "    choose: {keeping: ethanol}\n")));
        Assert.Empty(Example("{mass: 1.5 kg, condition: fresh}", "{cold: absent}"));
        Assert.Empty(Example("{mass: 1.5 kg, condition: frozen}", "{cold: present}"));
    }

    [Fact]
    public void Dimension_that_cannot_be_is_told() =>
        Assert.Matches("^p.yaml:22:14: error wrong-dimension: 'soak' is .+, and '3 kg' is .+; give it in a fitting unit$", Assert.Single(Example("{mass: 1.5 kg}", "{soak: 3 kg}")));

    [Fact]
    public void Example_outside_the_class_is_told_with_the_limit()
    {
        Assert.Equal("p.yaml:21:5: error example-outside-class: the example's mass, 3 kg, is outside the class, 1 to 2 kg; correct the example, or widen 'for'", Assert.Single(Example("{mass: 3 kg}", "{soak: 27 h}")));
        Assert.Single(Example("{mass: 2 kg}", "{soak: 26 h}"));
        Assert.Empty(Example("{mass: 1 kg}", "{soak: 25 h}"));
        Assert.Matches("error example-outside-class: the example is an eel-shaped fish, and the class is of the group 'mammal'; correct the example, or 'for'$", Assert.Single(Example("{group: eel, mass: 1.5 kg}", "{soak: 25.5 h}")));
        Assert.Empty(Example("{group: bat, mass: 1.5 kg}", "{soak: 25.5 h}"));
    }

    [Fact]
    public void Example_without_a_size_cannot_be_judged() => Assert.Contains("no-measurement", Assert.Single(Example("{sex: female}", "{soak: 25 h}")), StringComparison.Ordinal);

    [Fact]
    public void Each_sort_of_file_is_known_by_its_key_and_findings_come_by_file_and_place()
    {
        var findings = FileCheck.Run(
            [
                new("c.yaml", "format: 1\nspecimen: X\ngroup: mammle\nmass: 3 g\n"),
                new("b.yaml", "format: 1\nbench: b\nzone: UTX\ncolour: red\n"),
                new("a.yaml", "format: 1\nlog: X\nrevision: x\n"),
                new("d.yaml", Head.Replace("protocol: p", "protocol: mine", StringComparison.Ordinal) + Stages.Replace("formalin 10 %", "brandy 40 %", StringComparison.Ordinal)),
                new("e.yaml", "colour: red\n"),
            ],
            DateTimeZoneProviders.Tzdb);

        Assert.Contains(findings, f => f.Where.File == "a.yaml");
        Assert.Contains(findings, f => f.Where.File == "b.yaml" && f.Id == "unknown-zone");
        Assert.Contains(findings, f => f.Where.File == "c.yaml" && f.Id == "unknown-group");
        Assert.Contains(findings, f => f.Where.File == "d.yaml" && f.Message.ToString().Contains("brandy", StringComparison.Ordinal));
        Assert.Contains(findings, f => f.Where.File == "e.yaml" && f.Severity == Severity.Error);
        Assert.Equal(findings.OrderBy(f => f.Where.File, StringComparer.Ordinal).ThenBy(f => f.Where.Line).ThenBy(f => f.Where.Column).Select(f => f.ToString()), findings.Select(f => f.ToString()));
        Assert.Equal(findings.Length, findings.Select(f => f.ToString()).Distinct().Count());
        Assert.DoesNotContain(findings, f => f.Where.File.StartsWith("protocols/", StringComparison.Ordinal));
        Assert.Empty(FileCheck.Run([new("c.yaml", "format: 1\nspecimen: X\ngroup: mammal\nmass: 3 g\n")], DateTimeZoneProviders.Tzdb).Where(f => f.Severity == Severity.Error));
    }
}
