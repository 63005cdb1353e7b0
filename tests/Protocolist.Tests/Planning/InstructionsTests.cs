using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

/// <summary>What a person reads at a step, of a mammal of 1 kg whose volume is 1000/1.03 = 971 mL.</summary>
public class InstructionsTests
{
    private const string Tub = "zone: UTC\nvessels:\n  - {id: tub, name: tub, inside: {length: 60 cm, width: 30 cm, height: 30 cm}, wall: polypropylene, closure: loose-lid, count: 3}\n";

    private static Step Of(string stage, string animal = "1 kg", string bench = "zone: UTC\n") =>
        Plan(Mammal(animal), Shelf(("one", "{group: mammal}", $"stages:\n  - {{{stage}, id: it}}\n")), bench).Value!.Step("it")!;

    private static string[] Says(string stage, string animal = "1 kg", string bench = "zone: UTC\n") => Of(stage, animal, bench).Instructions.Texts();

    [Fact]
    public void How_comes_first_and_the_note_last()
    {
        Assert.Equal(["Wrap it.", "Keep it cold.", "A remark."], Says("stage: hold, last: 2 h, how: Wrap it., note: A remark."));
        Assert.Equal(["Keep it at 4 degC."], Says("stage: hold, last: 2 h, temperature: 4 degC"));
        Assert.Empty(Says("stage: task, last: 2 h"));
    }

    [Theory]
    [InlineData("", ".")]
    [InlineData(", changes: 0", ".")]
    [InlineData(", changes: 1", ", changed once.")]
    [InlineData(", changes: 2", ", changed 2 times.")]
    public void Soak_tells_volume_fluid_and_changes(string changes, string end) =>
        Assert.Equal($"2.91 L of tap water{end}", Assert.Single(Says($"stage: wash, fluid: tap water, ratio: 3, last: 24 h{changes}")));

    [Fact]
    public void Running_water_says_so() =>
        Assert.Equal("2.91 L of tap water, slowly running, changed once.", Assert.Single(Says("stage: wash, fluid: tap water, ratio: 3, last: 24 h, running: yes, changes: 1")));

    [Fact]
    public void Still_water_does_not() =>
        Assert.DoesNotContain("running", Assert.Single(Says("stage: wash, fluid: tap water, ratio: 3, last: 24 h, running: no")), StringComparison.Ordinal);

    [Fact]
    public void Soak_in_a_vessel_says_how_far_to_fill_and_a_wash_does_not()
    {
        var fix = Says("stage: immerse, fluid: ethanol 80 %vol, ratio: 10, last: 24 h", bench: Tub);
        Assert.Equal(3, fix.Length);
        Assert.Matches(@"^\d+(\.\d+)? L of ethanol 80 %vol in tub, .+\.$", fix[0]);
        Assert.Matches(@"^Fill to \d+ mm; with the body in, the level stands at \d+ mm\. Nothing of the body may stand out\.$", fix[2]);
        Assert.StartsWith("ethanol", fix[0][(fix[0].IndexOf(" of ", StringComparison.Ordinal) + 4)..], StringComparison.Ordinal);
        Assert.Single(Says("stage: wash, fluid: tap water, ratio: 10, last: 24 h", bench: Tub));
    }

    /// <summary>The floor of the tub is 60 by 30 cm = 1800 cm²: 1 mm of it is 180 mL. The body of 971 mL lifts the level by 5.4 mm.</summary>
    [Fact]
    public void Levels_agree_with_the_floor_of_the_tub()
    {
        var step = Of("stage: immerse, fluid: formalin 10 %, ratio: 20, last: 24 h", bench: Tub);
        var levels = System.Text.RegularExpressions.Regex.Match(step.Instructions[^1].ToString(), @"Fill to (\d+) mm; .* at (\d+) mm");
        var (before, after) = (int.Parse(levels.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), int.Parse(levels.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture));
        Assert.InRange(after - before, 4.4, 6.4);
        Assert.InRange(step.Volume!.Value.Milliliters / 180, before - 0.6, before + 0.6);
    }

    [Fact]
    public void Housing_without_a_vessel_tells_the_least_amount_and_how_to_fill()
    {
        Assert.Equal(
            [
                "At least 2.91 L of ethanol 70 %vol.",
                "Fill about half.",
                "Lower the specimen slowly, one end first.",
                "Press it gently, so that fluid takes the place of the air in its cavities.",
                "Free the bubbles on its surface with a glass, plastic or stainless steel rod, or by tapping the vessel.",
                "Top up to the level.",
            ],
            Says("stage: house, fluid: ethanol 70 %vol, ratio: 3"));
        Assert.Equal("At least 970 mL of ethanol 70 %vol.", Says("stage: house, fluid: ethanol 70 %vol")[0]); // as much as the body, where no ratio is given
    }

    [Theory]
    [InlineData("", "Close with: tape.")]
    [InlineData("", null)]
    public void Closing_without_a_vessel_says_what_the_protocol_says(string bench, string? says) =>
        Assert.Equal(says is null ? [] : [says], Says(says is null ? "stage: seal" : "stage: seal, closure: tape", bench: "zone: UTC\n" + bench));

    [Fact]
    public void Mount_says_what_holds_it_and_nothing_where_nothing_does()
    {
        Assert.Equal(["It is held by: glass plate."], Says("stage: mount, on: glass plate"));
        Assert.Empty(Says("stage: mount, on: nothing"));
        Assert.Empty(Says("stage: mount"));
    }

    [Fact]
    public void Labels_tell_each_field_and_where_they_go() => Assert.Equal(
        ["Label: number and name.", "Label: place.", "One label inside in the fluid, one outside; soft pencil or carbon ink on cotton-rag paper."],
        Says("stage: label, fields: [number and name, place]"));

    [Fact]
    public void Labels_tell_what_they_are_written_with_where_the_protocol_says_so() => Assert.Equal(
        ["One label inside in the fluid, one outside; carbon ink on cotton-rag paper."],
        Says("stage: label, written-with: carbon ink"));

    [Fact]
    public void Spent_fluid_says_whose_it_is_and_where_it_goes()
    {
        Assert.Equal(["The spent fluid: collected as hazardous waste."], Says("stage: discard, to: collected as hazardous waste"));
        Assert.Empty(Says("stage: discard"));
        var shelf = Shelf(("two", "{group: mammal}", "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n  - {stage: discard, id: it, of: fix, to: kept for reuse}\n"));

        // No bottle of the bench takes it back, so that it is collected after all.
        Assert.Equal(["fix: collected as hazardous, a closed container labelled 'formaldehyde waste'."], Plan(Mammal("1 kg"), shelf).Value!.Step("it")!.Instructions.Texts());
    }

    [Theory]
    [InlineData("places: [belly], count: 3, side: left", "abdomen: 3 cuts ", ", on the left side.")]
    [InlineData("places: [belly], count: 3, side: right", "abdomen: 3 cuts ", ", on the right side.")]
    [InlineData("places: [belly], count: 3, side: back", "abdomen: 3 cuts ", ", on the back.")]
    [InlineData("places: [belly], count: 3, side: any", "abdomen: 3 cuts ", " mm.")]
    public void Cut_says_count_and_side(string settings, string begins, string ends)
    {
        var says = Says($"stage: slit, length: 20 mm, depth: 2 mm, spacing: 40 mm, {settings}");
        var cut = says[0];
        Assert.Equal("Lift the wall with forceps and cut it with blunt scissors held flat, so that the organs behind it stay whole.", says[1]);
        Assert.Equal($"{begins}20 mm long, through the wall alone, about 2 mm thick here, every 40 mm{(ends == " mm." ? "." : ends)}", cut);
    }

    [Fact]
    public void One_cut_has_no_distance_to_the_next() =>
        Assert.DoesNotContain("every", Says("stage: slit, places: [belly], length: 20 mm, spacing: 40 mm, count: 1")[0], StringComparison.Ordinal);

    /// <summary>A starfish is not cut by custom: where a protocol cuts it without a number, each arm has one short cut.</summary>
    [Fact]
    public void Cut_of_which_nothing_is_known_is_short_and_one_to_a_part()
    {
        var shelf = Shelf(("one", "{group: sea-star}", "stages:\n  - {stage: slit, id: it}\n"));
        var star = Read("format: 1\nspecimen: S-1\ngroup: sea-star\nmass: 90 g\nfound-on: 2027-02-28\nwhere: a shore\nhow-obtained: found dead\ncollected-by: A. Nobody");
        Assert.StartsWith("body cavity: 5 cuts 20 mm long, through the wall alone", Plan(star, shelf).Value!.Step("it")!.Instructions.Texts().First(), StringComparison.Ordinal);
    }

    /// <summary>50 mL for 1 kg: the neck, 7 %, has 3.5 mL; the tail, 2 %, is too thin, and its 1 mL goes into chest and abdomen, 24 and 26 %: 13.52 mL in two sites.</summary>
    [Fact]
    public void Injection_tells_the_whole_then_each_region_with_its_tool_and_place()
    {
        var says = Says("stage: inject, fluid: formalin 10 %, dose: 50 mL, sites: {other: 2 mL to 20 mL}");
        Assert.Equal("50 mL in all; stop at a site when the part is firm or fluid runs back.", says[0]);
        Assert.Contains(says, s => s.StartsWith("neck: 1 site of 3.5 mL, 3.5 mL in all; ", StringComparison.Ordinal));
        Assert.Contains(says, s => s.StartsWith("abdomen: 2 sites of 6.8 mL, 13.6 mL in all; ", StringComparison.Ordinal) && s.EndsWith("; abdominal cavity and gut, fluid spread to all quarters.", StringComparison.Ordinal));
        Assert.All(says.Skip(1), s => Assert.Matches(@"; \d+ mL syringe, \d+ G needle of \d+ mm; ", s));
    }

    [Fact]
    public void Region_too_small_for_a_usual_site_gets_less_and_is_told_so()
    {
        var says = Says("stage: inject, fluid: formalin 10 %, dose: 50 mL, sites: {abdomen: 20 mL to 30 mL, other: 1 mL}");
        Assert.Contains(says, s => s.StartsWith("abdomen: 1 site of 13.5 mL (less than the usual 20 mL: the region is small), 13.5 mL in all; ", StringComparison.Ordinal));
        Assert.DoesNotContain(says, s => s.StartsWith("neck", StringComparison.Ordinal) && s.Contains("less than the usual", StringComparison.Ordinal));
    }
}
