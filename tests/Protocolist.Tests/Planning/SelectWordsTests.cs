using Protocolist.Findings;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

/// <summary>The choice of a protocol in words.</summary>
public class SelectWordsTests
{
    private static Checked<Plan> Of(string animal, params (string, string, string)[] protocols) => Plan(Read($"format: 1\nspecimen: X\nfound-on: 2027-02-28\nwhere: a shore\nhow-obtained: found\ncollected-by: A. Nobody\n{animal}"), Shelf(protocols));

    [Fact]
    public void What_was_chosen_says_for_what_it_is_and_what_this_one_is() => Assert.Equal(
        "note protocol-selected: large (large, revision 1) serves mammal, mass 2 to 60 kg; this one is mammal, 7 kg, 750 mm",
        Of("group: mammal\nmass: 7 kg\nhead-body-length: 75 cm", ("large", "{group: mammal, mass: 2 kg to 60 kg}", Fix)).Findings.First(f => f.Id == "protocol-selected").ToString());

    [Fact]
    public void Tie_is_told_with_both_classes_and_the_remedy()
    {
        var tie = Assert.Single(Of("group: mammal\nmass: 7 kg\nhead-body-length: 75 cm", ("by-mass", "{group: mammal, mass: 2 kg to 60 kg}", Fix), ("by-length", "{group: mammal, length: 20 cm to 2 m}", Fix)).Findings, f => f.Severity == Severity.Error);

        Assert.Equal("'by-length' (mammal, length 0.2 to 2 m) and 'by-mass' (mammal, mass 2 to 60 kg) serve mammal, 7 kg, 750 mm equally well", tie.Message.ToString());
        Assert.Equal(("several-protocols", "narrow the class of one of them", 1), (tie.Id, tie.Remedy.ToString(), tie.Where.IsKnown ? 1 : 0));
    }

    [Fact]
    public void Words_count_as_limits()
    {
        Assert.Equal("adults", Of("group: mammal\nmass: 7 kg\nlife-stage: adult", ("any", "{group: mammal}", Fix), ("adults", "{group: mammal, life-stage: [adult, juvenile]}", Fix)).Value!.Protocol.Id);
        Assert.Null(Of("group: mammal\nmass: 7 kg\nlife-stage: adult", ("adults", "{group: mammal, life-stage: adult}", Fix), ("heavy", "{group: mammal, mass: 2 kg to 60 kg}", Fix)).Value);
    }

    [Fact]
    public void Three_nearest_are_named_the_nearest_first()
    {
        var none = Assert.Single(
            Of(
                "group: mammal\nmass: 90 kg\nlife-stage: adult",
                ("two-off", "{group: mammal, mass: 2 kg to 60 kg, life-stage: [juvenile, embryo]}", Fix),
                ("one-off", "{group: mammal, mass: 1 kg to 60 kg}", Fix),
                ("vertebrates", "{group: vertebrate, mass: 1 kg to 60 kg}", Fix),
                ("far", "{group: vertebrate, mass: 1 g to 2 g, life-stage: juvenile}", Fix)).Findings,
            f => f.Severity == Severity.Error);

        Assert.Matches(
            "^no protocol serves mammal, 90 kg, \\d+ mm; the nearest: 'one-off': mass 90 kg is outside 1 to 60 kg; 'vertebrates': mass 90 kg is outside 1 to 60 kg; 'two-off': mass 90 kg is outside 2 to 60 kg, life-stage is adult, not juvenile or embryo$",
            none.Message.ToString());
        Assert.Equal("check the measurements, or write a protocol for this class", none.Remedy.ToString());
    }

    [Fact]
    public void Nearest_groups_are_named_by_what_they_share_with_the_animal()
    {
        var none = Assert.Single(Of("group: bat\nmass: 7 g", ("a", "{group: gastropod}", Fix), ("b", "{group: rodent}", Fix), ("c", "{group: bird}", Fix), ("d", "{group: sponge}", Fix), ("e", "{group: rodent, mass: 1 g to 2 g}", Fix)).Findings, f => f.Severity == Severity.Error);

        Assert.Equal("no protocol serves the group 'bat'; the nearest are for rodent, bird, gastropod", none.Message.ToString());
        Assert.Equal("write a protocol for this group", none.Remedy.ToString());
    }

    [Fact]
    public void Protocol_that_is_for_no_specimen_serves_none() =>
        Assert.Equal("heavy", Of("group: mammal\nmass: 7 kg", ("heavy", "{group: mammal, mass: 2 kg to 60 kg}", Fix), ("light", "{group: mammal, mass: 1 g to 2 kg}", Fix)).Value!.Protocol.Id);
}
