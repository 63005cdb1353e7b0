using System.Text;

namespace Protocolist.Tests.Proving;

/// <summary>What is said of the order of stages, of choices, and of classes beside each other.</summary>
public class ClaimsTests
{
    private const string Snail = "group: gastropod, length: 10 mm to 60 mm";
    private const string Jelly = "group: jellyfish, mass: 10 g to 900 g";
    private const string Cucumber = "group: sea-cucumber, mass: 10 g to 900 g";
    private const string Coral = "group: octocoral, mass: 10 g to 900 g";
    private const string Fish = "group: bony-fish, mass: 20 g to 500 g";

    private static string Fix(string fluid, string rest = "") => $"  - {{stage: immerse, id: fix, fluid: {fluid}, ratio: 10, last: 30 d{rest}}}\n";

    private static string Bath(string id, string fluid, string rest = "") => $"  - {{stage: bath, id: {id}, fluid: {fluid}, ratio: 10, last: 2 d{rest}}}\n";

    private static string House(string fluid, string rest = "") => $"  - {{stage: house, id: house, fluid: {fluid}, ratio: 3{rest}}}\n";

    private const string Nbf = "neutral buffered formalin 10 %";

    [Fact]
    public void What_the_order_of_stages_gets_wrong_is_said_with_its_stage()
    {
        var text = new StringBuilder();
        Tell("plain formalin on a shell", Snail, Fix("formalin 10 %") + House("ethanol 50 %vol"));
        Tell("plain formalin twice on a shell", Snail, Fix("formalin 10 %") + House("formalin 10 %"));
        Tell("buffered formalin on a shell", Snail, Fix(Nbf) + House("ethanol 50 %vol"));
        Tell("plain formalin on ossicles", Cucumber, Fix("formalin 10 %") + House("ethanol 50 %vol"));
        Tell("buffered formalin on ossicles", Cucumber, Fix(Nbf) + House("ethanol 50 %vol"));
        Tell("buffered formalin on ossicles, explained", Cucumber, Fix(Nbf, ", note: for a day only") + House("ethanol 50 %vol"));
        Tell("buffered formalin on a soft coral", Coral, Fix(Nbf) + House("ethanol 50 %vol"));
        Tell("plain formalin on a soft coral", Coral, Fix("formalin 10 %") + House("ethanol 50 %vol"));
        Tell("alcohol on jelly", Jelly, Fix(Nbf) + Bath("b", "ethanol 30 %vol") + House("ethanol 50 %vol"));
        Tell("alcohol on jelly, explained at its first stage", Jelly, Fix(Nbf) + Bath("b", "ethanol 30 %vol", ", note: for molecular work") + House("ethanol 50 %vol"));
        Tell("plain formalin on a fish", Fish, Fix("formalin 10 %") + House("formalin 10 %"));
        Tell("from fixative to 50 %", Fish, Fix(Nbf) + House("ethanol 50 %vol"));
        Tell("from fixative to 51 %", Fish, Fix(Nbf) + House("ethanol 51 %vol"));
        Tell("from fixative to 60 %, explained", Fish, Fix(Nbf) + House("ethanol 60 %vol", ", note: small and lean"));
        Tell("from 40 to 70 %", Fish, Fix(Nbf) + Bath("b", "ethanol 40 %vol") + House("ethanol 70 %vol"));
        Tell("from 40 to 71 %", Fish, Fix(Nbf) + Bath("b", "ethanol 40 %vol") + House("ethanol 71 %vol"));
        Tell("strong alcohol before any fixative", Fish, Bath("b", "ethanol 70 %vol", ", note: dip") + Fix(Nbf) + House("ethanol 50 %vol"));
        Tell("fixed in alcohol", Fish, Fix("ethanol 70 %vol") + House("ethanol 75 %vol"));
        Tell("down and up again", Fish, Fix("ethanol 80 %vol") + Bath("b", "ethanol 20 %vol") + House("ethanol 60 %vol"));
        Tell("two bufferings", Fish, Fix(Nbf) + House("borax-buffered formalin 10 %"));
        Tell("three fluids, the last of another buffering", Fish, Fix(Nbf) + Bath("b", Nbf) + House("borax-buffered formalin 4 %"));
        Tell("too short", Fish, Short(""));
        Tell("too short, explained", Fish, Short(", note: fixed on board for a week before"));
        Tell("too short, but kept in formalin", Fish, Short("", Nbf));
        Tell("too short, but slit", Fish, "  - {stage: slit, id: cut, length: 1 cm}\n" + Short(""));
        Tell("too short, but injected", Fish, $"  - {{stage: inject, id: dose, fluid: {Nbf}, dose: 50 mL/kg * specimen.mass}}\n" + Short(""));
        Tell("no immersion at all", Fish, House("ethanol 70 %vol"));
        Tell("a fluid that nobody can make", Fish, Fix("ethanol 120 %vol") + House("ethanol 50 %vol"));
        KeptText.Holds("Proving/kept/routes.txt", text.ToString());

        string Short(string note, string last = "ethanol 50 %vol") => $"  - {{stage: immerse, id: fix, fluid: {Nbf}, ratio: 10, last: 12 h{note}}}\n" + House(last);
        void Tell(string of, string @class, string stages) => Faulty.Tell(text, of, Faulty.Check(Faulty.Of(@class, stages)));
    }

    [Fact]
    public void Where_a_specimen_ends_in_nothing_and_what_a_choice_does_not_change_is_said()
    {
        const string Keeping = "choices: {keeping: [ethanol, formalin]}";
        var text = new StringBuilder();
        Tell("no stage that keeps", Fix(Nbf));
        Tell("kept with one option only", Fix(Nbf) + House(Nbf, ", when: choice.keeping is formalin"), Keeping);
        Tell("kept with one option only of two choices", Fix(Nbf) + Bath("b", Nbf, ", when: choice.look is glass") + House(Nbf, ", when: choice.keeping is formalin"), "choices: {look: [glass, jar], keeping: [ethanol, formalin]}");
        Tell("kept if small", Fix(Nbf) + House(Nbf, ", when: specimen.mass < 100 g"));
        Tell("kept if small or with one option", Fix(Nbf) + House(Nbf, ", when: specimen.mass < 100 g or choice.keeping is formalin"), Keeping);
        Tell("kept with neither option", Fix(Nbf, ", when: choice.keeping is formalin"), Keeping);
        Tell("a stage that never runs", Fix(Nbf) + Bath("b", Nbf, ", when: specimen.mass > 600 g") + House(Nbf));
        Tell("a stage that runs for the very largest", Fix(Nbf) + Bath("b", Nbf, ", when: specimen.mass > 490 g") + House(Nbf));
        Tell("a choice that nothing rests on", Fix(Nbf) + House(Nbf), Keeping);
        Tell("a choice of one option", Fix(Nbf) + House(Nbf), "choices: {keeping: [formalin]}");
        Tell("two options alike", Fix(Nbf) + House("{by: choice.keeping, ethanol: ethanol 50 %vol, spirit: ethanol 50 %vol, formalin: neutral buffered formalin 10 %}"), "choices: {keeping: [ethanol, spirit, formalin]}");
        Tell("three options alike", Fix(Nbf) + House("{by: choice.keeping, a: ethanol 50 %vol, b: ethanol 50 %vol, c: ethanol 50 %vol}"), "choices: {keeping: [a, b, c]}");
        Tell("options that differ in whether a stage runs", Fix(Nbf) + Bath("b", Nbf, ", when: choice.keeping is ethanol") + House(Nbf), Keeping);
        Tell("options that differ in a stage that runs for neither", Fix(Nbf) + Bath("b", "{by: choice.keeping, ethanol: ethanol 50 %vol, formalin: ethanol 40 %vol}", ", when: choice.look is jar") + House(Nbf), "choices: {look: [glass, jar], keeping: [ethanol, formalin]}");
        Tell("a choice that works by way of a value", $"  - {{stage: immerse, id: fix, fluid: {Nbf}, ratio: 10, last: soak}}\n" + House(Nbf), Keeping + "\nvalues: {soak: {by: choice.keeping, ethanol: 20 d, formalin: 30 d}}");
        KeptText.Holds("Proving/kept/choices.txt", text.ToString());

        void Tell(string of, string stages, string head = "") => Faulty.Tell(text, of, Faulty.Check(Faulty.Of(Fish, stages, head)));
    }

    [Fact]
    public void Classes_beside_each_other_are_said_to_overlap_or_to_leave_a_gap()
    {
        var text = new StringBuilder();
        Tell("touching", "mass: 20 g to 100 g", "mass: 100 g to 500 g");
        Tell("overlapping", "mass: 20 g to 101 g", "mass: 100 g to 500 g");
        Tell("one inside the other", "mass: 20 g to 500 g", "mass: 100 g to 200 g");
        Tell("the same", "mass: 20 g to 500 g", "mass: 20 g to 500 g");
        Tell("apart", "mass: 20 g to 99 g", "mass: 100 g to 500 g");
        Tell("apart, given the other way round", "mass: 100 g to 500 g", "mass: 20 g to 50 g");
        Tell("a gap that a third one fills", "mass: 20 g to 50 g", "mass: 100 g to 500 g", "mass: 50 g to 100 g");
        Tell("a gap behind one that lies inside the first", "mass: 20 g to 100 g", "mass: 30 g to 50 g, life-stage: [juvenile]", "mass: 120 g to 500 g");
        Tell("two gaps", "mass: 20 g to 30 g", "mass: 40 g to 50 g", "mass: 60 g to 500 g");
        Tell("by unlike measures", "mass: 20 g to 100 g", "length: 5 cm to 50 cm");
        Tell("by unlike measures that no fish has together", "mass: 20 g to 100 g", "length: 90 cm to 2 m");
        Tell("by life stage, apart", "mass: 20 g to 100 g, life-stage: [juvenile]", "mass: 20 g to 100 g, life-stage: [adult]");
        Tell("by life stage, one in common", "mass: 20 g to 100 g, life-stage: [juvenile, adult]", "mass: 20 g to 100 g, life-stage: [adult]");
        Tell("by unlike traits", "mass: 20 g to 100 g, life-stage: [adult]", "mass: 20 g to 100 g, intended-use: [display]");
        Tell("the narrower serves", "mass: 20 g to 100 g", "mass: 20 g to 100 g, intended-use: [display]");
        Tell("without an end", "mass: 20 g to 100 g", "mass: at least 200 g");
        KeptText.Holds("Proving/kept/neighbours.txt", text.ToString());

        void Tell(string of, params string[] classes) => Faulty.Tell(
            text,
            $"{of}: {string.Join(" | ", classes)}",
            Faulty.Check([.. classes.Select((c, i) => Faulty.Of($"group: bony-fish, {c}", Fix(Nbf) + House(Nbf), id: $"class-{i + 1}"))]));
    }

    /// <summary>Two to the tenth is 1024 combinations, more than are told apart: each option is then tried with the first of the others.</summary>
    /// <summary>36 choices of four options have 2^72 combinations, more than a number of this machine counts, and one condition rests on all of them.</summary>
    [Fact]
    public void A_condition_may_rest_on_more_combinations_than_can_be_counted()
    {
        var choices = string.Concat(Enumerable.Range(1, 36).Select(i => $"  c{i}: [a, b, c, d]\n"));
        var values = string.Concat(Enumerable.Range(0, 6).Select(v =>
            $"  v{v}: {{value: {string.Join(" or ", Enumerable.Range((6 * v) + 1, 6).Select(i => $"choice.c{i} is b"))}, source: common practice}}\n"));
        var findings = Faulty.Check(Faulty.Of(
            Fish,
            Fix(Nbf) + Bath("never", Nbf, ", when: v0 and specimen.mass > 600 g") + Bath("b", Nbf, ", when: v0 or v1 or v2 or v3 or v4 or v5") + House(Nbf),
            $"choices:\n{choices}values:\n{values}"));

        Assert.Equal("never", Assert.Single(findings, f => f.Id == "stage-never-runs").Message.Find("stage")!.Value.Text);
    }

    [Fact]
    public void Of_very_many_choices_each_option_is_still_tried()
    {
        var choices = string.Concat(Enumerable.Range(1, 10).Select(i => $"  c{i}: [a, b]\n"));
        var stages = string.Concat(Enumerable.Range(1, 10).Select(i => $"  - {{stage: task, id: t{i}, last: {{by: choice.c{i}, a: 1 h, b: {(i == 10 ? "0 h" : "2 h")}}}}}\n"));
        var finding = Assert.Single(Faulty.Check(Faulty.Of(Fish, stages + Fix(Nbf) + House(Nbf), "choices:\n" + choices)));
        Assert.Equal(("nothing-of-it", "'last' of 't10' comes to nothing for a bony fish of mass 20 g with c10 'b': 0 s"), (finding.Id, finding.Message.ToString()));
    }
}
