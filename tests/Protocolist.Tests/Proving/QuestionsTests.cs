using System.Text;

namespace Protocolist.Tests.Proving;

/// <summary>What is asked of every value, at its limit and just past it.</summary>
public class QuestionsTests
{
    /// <summary>The project's own limits against slips, each as it stands in the source: at the limit silent, a little past it an error.</summary>
    [Theory]
    [InlineData("- {stage: task, id: x, last: 10 y}", "- {stage: task, id: x, last: 10.01 y}")]
    [InlineData("- {stage: wash, id: x, fluid: tap water, last: 1 d, ratio: 200}", "- {stage: wash, id: x, fluid: tap water, last: 1 d, ratio: 200.1}")]
    [InlineData("- {stage: wash, id: x, fluid: tap water, last: 1 d, changes: 50}", "- {stage: wash, id: x, fluid: tap water, last: 1 d, changes: 51}")]
    [InlineData("- {stage: slit, id: x, count: 1000}", "- {stage: slit, id: x, count: 1001}")]
    [InlineData("- {stage: task, id: x, hands-on: 24 h}", "- {stage: task, id: x, hands-on: 24.1 h}")]
    [InlineData("- {stage: task, id: x, wait: 1 y}", "- {stage: task, id: x, wait: 1.01 y}")]
    [InlineData("- {stage: task, id: x, within: 1 y}", "- {stage: task, id: x, within: 1.01 y}")]
    [InlineData("- {stage: inspect, id: x, every: 10 y}", "- {stage: inspect, id: x, every: 10.01 y}")]
    [InlineData("- {stage: inspect, id: x, after: 10 y}", "- {stage: inspect, id: x, after: 10.01 y}")]
    [InlineData("- {stage: seal, id: x, renew: 100 y}", "- {stage: seal, id: x, renew: 100.1 y}")]
    [InlineData("- {stage: hold, id: x, last: 1 h, temperature: 60 degC}", "- {stage: hold, id: x, last: 1 h, temperature: 60.1 degC}")]
    [InlineData("- {stage: hold, id: x, last: 1 h, temperature: -90 degC}", "- {stage: hold, id: x, last: 1 h, temperature: -90.1 degC}")]
    [InlineData("- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, dose: 500 mL/kg * specimen.mass}", "- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, dose: 501 mL/kg * specimen.mass}")]
    [InlineData("- {stage: slit, id: x, length: specimen.length}", "- {stage: slit, id: x, length: 2 * specimen.length}")]
    [InlineData("- {stage: slit, id: x, depth: specimen.length}", "- {stage: slit, id: x, depth: 2 * specimen.length}")]
    [InlineData("- {stage: slit, id: x, spacing: specimen.length}", "- {stage: slit, id: x, spacing: 2 * specimen.length}")]
    [InlineData("- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, sites: {abdomen: 0.9 * specimen.volume}}", "- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, sites: {abdomen: 1.3 * specimen.volume}}")]
    public void What_goes_beyond_every_handbook_is_taken_for_a_slip(string at, string past)
    {
        Assert.Equal("", Faulty.Ids(Faulty.Check(Faulty.Fish(at))));
        Assert.Equal("absurd-amount", Faulty.Ids(Faulty.Check(Faulty.Fish(past))));
    }

    [Theory]
    [InlineData("over-specimen")]
    [InlineData("below-brim")]
    public void More_than_a_metre_of_fluid_over_a_specimen_or_of_air_over_the_fluid_is_a_slip(string key)
    {
        string House(string height) => Faulty.Fish("", house: $"{{stage: house, id: house, fluid: neutral buffered formalin 10 %, ratio: 3, {key}: {height}}}");
        Assert.Equal("", Faulty.Ids(Faulty.Check(House("1 m"))));
        Assert.Equal("absurd-amount", Faulty.Ids(Faulty.Check(House("1.01 m"))));
    }

    [Fact]
    public void Looking_less_than_once_a_year_is_a_slip()
    {
        string Watched(string every) => Faulty.Fish($"- {{stage: immerse, id: x, fluid: neutral buffered formalin 10 %, ratio: 10, last: 10 d, watch: {{every: {every}, signs: {{soft: re-inject}}}}}}");
        Assert.Equal("", Faulty.Ids(Faulty.Check(Watched("1 y"))));
        Assert.Equal("absurd-amount", Faulty.Ids(Faulty.Check(Watched("1.01 y"))));
        Assert.Equal("nothing-of-it", Faulty.Ids(Faulty.Check(Watched("0 h"))));
    }

    [Theory]
    [InlineData("- {stage: task, id: x, last: 0 h}", true)]
    [InlineData("- {stage: wash, id: x, fluid: tap water, last: 1 d, ratio: 0}", true)]
    [InlineData("- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, dose: 0 mL}", true)]
    [InlineData("- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, sites: {abdomen: 0 mL}}", true)]
    [InlineData("- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, spacing: 0 cm}", true)]
    [InlineData("- {stage: slit, id: x, length: 0 cm}", true)]
    [InlineData("- {stage: slit, id: x, depth: 0 cm}", true)]
    [InlineData("- {stage: slit, id: x, count: 0}", true)]
    [InlineData("- {stage: inspect, id: x, every: 0 d}", true)]
    [InlineData("- {stage: inspect, id: x, after: 0 d}", true)]
    [InlineData("- {stage: seal, id: x, renew: 0 d}", true)]
    [InlineData("- {stage: wash, id: x, fluid: tap water, last: 1 d, changes: 0}", false)]
    [InlineData("- {stage: task, id: x, hands-on: 0 min}", false)]
    [InlineData("- {stage: task, id: x, wait: 0 h}", false)]
    [InlineData("- {stage: task, id: x, within: 0 h}", false)]
    [InlineData("- {stage: task, id: x, last: 0 h to 1 h}", false)]
    public void Nothing_of_what_is_meant_to_be_something_is_an_error(string stage, bool isFault) =>
        Assert.Equal(isFault ? "nothing-of-it" : "", Faulty.Ids(Faulty.Check(Faulty.Fish(stage))));

    /// <summary>3 volumes are the least; a body that lies in 1.5 of them and is changed once has had 3.</summary>
    [Theory]
    [InlineData("- {stage: bath, id: x, fluid: neutral buffered formalin 10 %, ratio: 3, last: 10 d}", false)]
    [InlineData("- {stage: bath, id: x, fluid: neutral buffered formalin 10 %, ratio: 2.9, last: 10 d}", true)]
    [InlineData("- {stage: bath, id: x, fluid: neutral buffered formalin 10 %, ratio: 1.5, changes: 1, last: 10 d}", false)]
    [InlineData("- {stage: bath, id: x, fluid: neutral buffered formalin 10 %, ratio: 1.4, changes: 1, last: 10 d}", true)]
    [InlineData("- {stage: bath, id: x, fluid: neutral buffered formalin 10 %, ratio: 1, changes: 1 to 3, last: 10 d}", true)]
    [InlineData("- {stage: bath, id: x, fluid: neutral buffered formalin 10 %, ratio: 1, changes: 2 to 3, last: 10 d}", false)]
    [InlineData("- {stage: bath, id: x, fluid: neutral buffered formalin 10 %, ratio: 2, last: 10 d, note: a narrow tube}", false)]
    [InlineData("- {stage: wash, id: x, fluid: tap water, ratio: 2, last: 1 d}", false)]
    [InlineData("- {stage: immerse, id: x, fluid: neutral buffered formalin 10 %, ratio: 2, last: 10 d}", true)]
    [InlineData("- {stage: house, id: x, fluid: neutral buffered formalin 10 %, ratio: 2}", true)]
    public void Less_than_three_volumes_of_fluid_is_warned_of(string stage, bool isFault) =>
        Assert.Equal(isFault ? "ratio-too-low" : "", Faulty.Ids(Faulty.Check(Faulty.Fish(stage))));

    /// <summary>People work with fluids at 5 to 35 °C, and in the cold at 0 to 10 °C: a fault outside of that is none.</summary>
    [Theory]
    [InlineData("bench.temperature < 5 degC", false)]
    [InlineData("bench.temperature < 5.1 degC", true)]
    [InlineData("bench.temperature > 35 degC", false)]
    [InlineData("bench.temperature > 34.9 degC", true)]
    [InlineData("bench.cold < 0 degC", false)]
    [InlineData("bench.cold < 0.1 degC", true)]
    [InlineData("bench.cold > 10 degC", false)]
    [InlineData("bench.cold > 9.9 degC", true)]
    public void A_fault_at_a_temperature_that_people_work_at_is_found(string at, bool isFault) =>
        Assert.Equal(isFault ? "nothing-of-it" : "", Faulty.Ids(Faulty.Check(Faulty.Fish($"- {{stage: task, id: x, last: \"choose({at}, 0 h, 24 h)\"}}"), strict: true)));

    /// <summary>What no bound excludes and no specimen shows is undecided: a million animals are the most in a lot; the class ends at 500 g.</summary>
    [Theory]
    [InlineData("specimen.count > 1000000", "")]
    [InlineData("specimen.count > 999999", "undecided")]
    [InlineData("specimen.count < 1", "")]
    [InlineData("specimen.mass < 20 g", "")]
    [InlineData("specimen.mass > 500 g", "")]
    [InlineData("specimen.mass > 499.9 g", "undecided")]
    [InlineData("specimen.lot-mass > 500000 kg", "")]
    [InlineData("specimen.lot-mass > 499999 kg", "undecided")]
    public void What_is_left_open_by_bounds_and_shown_by_no_specimen_is_undecided(string when, string ids) =>
        Assert.Equal(ids, Faulty.Ids(Faulty.Check(Faulty.Fish($"- {{stage: task, id: x, last: \"choose({when}, 0 h, 24 h)\"}}"), strict: true)));

    [Fact]
    public void Each_fault_of_a_value_says_what_it_is_of_whom_and_what_to_do()
    {
        var text = new StringBuilder();
        Tell("negative value", "", "values: {dip: 5 h - specimen.mass * 1 h/g}");
        Tell("negative setting", "- {stage: task, id: x, hands-on: 5 h - specimen.mass * 1 h/g}");
        Tell("without a limit", "- {stage: task, id: x, last: 24 h / (specimen.count - 1)}");
        Tell("a named value without a limit", "", "values: {dip: 24 h / (specimen.count - 1)}");
        Tell("an open end with a low end that has no limit", "- {stage: task, id: x, last: at least 0 h - 24 h / (specimen.count - 1)}");
        Tell("nothing", "- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, sites: {abdomen: 0 mL}}");
        Tell("too long", "- {stage: task, id: x, last: 11 y}");
        Tell("too cold", "- {stage: hold, id: x, last: 1 h, temperature: -100 degC}");
        Tell("too large a dose", "- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, dose: 1 L}");
        Tell("a cut longer than the animal", "- {stage: slit, id: x, length: 60 cm}");
        Tell("more at a site than the animal", "- {stage: inject, id: x, fluid: neutral buffered formalin 10 %, sites: {abdomen: 1 L, other: 1 mL}}");
        Tell("without a band above", "- {stage: task, id: x, last: {by: specimen.mass, bands: {up to 100 g: 24 h, 100 g to 300 g: 48 h}}}");
        Tell("without a band below", "- {stage: task, id: x, last: {by: specimen.mass, bands: {30 g to 100 g: 24 h, over 100 g: 48 h}}}");
        Tell("bands as wide as the class", "- {stage: task, id: x, last: {by: specimen.mass, bands: {20 g to 100 g: 24 h, 100 g to 500 g: 48 h}}}");
        Tell("backwards", "- {stage: task, id: x, last: specimen.mass * 1 h/g to 400 h}");
        Tell("backwards in a band", "- {stage: task, id: x, last: {by: specimen.mass, bands: {up to 100 g: specimen.mass * 1 h/g to 40 h, over 100 g: 48 h}}}");
        Tell("too little fluid", "- {stage: immerse, id: x, fluid: neutral buffered formalin 10 %, ratio: 2, last: 10 d}");
        Tell("too long between looks", "- {stage: immerse, id: x, fluid: neutral buffered formalin 10 %, ratio: 10, last: 10 d, watch: {every: 2 y, signs: {soft: re-inject}}}");
        Tell("by a decision", "- {stage: task, id: x, last: {by: choice.keeping, ethanol: 24 h, formalin: 0 h}}", "choices: {keeping: [ethanol, formalin]}");
        Tell("by a trait", "- {stage: task, id: x, last: \"choose(specimen.condition is frozen, 0 h, 24 h)\"}");
        Tell("by a decision and a trait", "- {stage: task, id: x, when: choice.keeping is formalin, last: \"choose(specimen.condition is not frozen, 12 h, 0 h)\"}", "choices: {keeping: [ethanol, formalin]}");
        Tell("by three traits", "- {stage: task, id: x, last: \"choose(specimen.condition is frozen and specimen.life-stage is adult and specimen.intended-use is display, 0 h, 24 h)\"}");
        Tell("by a condition of its own stage", "- {stage: task, id: x, when: specimen.mass < 400 g, last: 430 h - specimen.mass * 1 h/g}");
        Tell("by way of a named value", "- {stage: task, id: x, last: dip}", "choices: {keeping: [ethanol, formalin]}\nvalues: {dip: {by: choice.keeping, ethanol: 24 h, formalin: 0 h}}");
        Tell("undecided", "- {stage: task, id: x, last: 24 h + specimen.mass * 1 h/g - specimen.mass * 1 h/g}", strict: true);
        Tell("an undecided slip is not told", "- {stage: task, id: x, last: \"choose(specimen.count > 900000, 20 y, 1 y)\"}", strict: true);
        KeptText.Holds("Proving/kept/values.txt", text.ToString());

        void Tell(string of, string stage, string head = "", bool strict = false) => Faulty.Tell(text, $"{of}: {(stage.Length > 0 ? stage[2..] : head)}", Faulty.Check(Faulty.Fish(stage, head), strict));
    }
}
