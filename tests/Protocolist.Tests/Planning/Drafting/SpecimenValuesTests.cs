using Protocolist.Planning.Measuring;
using Protocolist.Quantities;
using Protocolist.Specimens;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

public class SpecimenValuesTests
{
    private static BodyMeasure Body(Specimen specimen) => BodyMeasure.Of(specimen).Value!;

    /// <summary>Mammal tissue is taken at 1030 kg/m³ and two thirds of it, 0.67, as water: the figures of the group's row.</summary>
    [Fact]
    public void Measures_are_the_nominal_ones_in_base_units()
    {
        var body = Body(Mammal("2.06 kg") with { Count = 3, HeadBodyLength = UnitsNet.Length.FromCentimeters(40) });

        Assert.Equal((2.06, Dimension.OfMass), Of("specimen.mass"));
        Assert.Equal((0.002, Dimension.OfVolume), Of("specimen.volume"));
        Assert.Equal((0.006, Dimension.OfVolume), Of("specimen.lot-volume"));
        Assert.Equal((6.18, Dimension.OfMass), Of("specimen.lot-mass"));
        Assert.Equal((0.4, Dimension.OfLength), Of("specimen.length"));
        Assert.Equal((3, Dimension.None), Of("specimen.count"));
        Assert.Equal((0.67, Dimension.None), Of("specimen.water-share"));
        Assert.Equal((Math.Round(body.HalfThickness.Nominal.Meters, 9), Dimension.OfLength), Of("specimen.half-thickness"));

        (double, Dimension) Of(string name) => (Math.Round(SpecimenValues.Measure(body, name).Middle, 9), SpecimenValues.Measure(body, name).Dimension);
    }

    /// <summary>Three animals of at most 2.06 kg that weigh 5 kg together, not 6.18.</summary>
    [Fact]
    public void Mass_of_a_lot_is_the_weighed_one_where_there_is_one() =>
        Assert.Equal(5, SpecimenValues.Measure(Body(Mammal("2.06 kg") with { Count = 3, LotMass = UnitsNet.Mass.FromKilograms(5) }), "specimen.lot-mass").Middle, 9);

    [Fact]
    public void Traits_are_words_of_the_protocols_and_unknown_where_nothing_is_said()
    {
        var known = Mammal("1 kg") with { Condition = Condition.Chilled, LifeStage = LifeStage.Juvenile, IntendedUse = IntendedUse.TissueForDnaFirst };

        Assert.Equal(["chilled", "juvenile", "tissue-for-dna-first"], Words(known));
        Assert.Equal(["unknown", "unknown", "unknown"], Words(Mammal("1 kg")));

        static string[] Words(Specimen specimen) => [.. ((string[])["condition", "life-stage", "intended-use"]).Select(t => SpecimenValues.Trait(specimen, t))];
    }

    [Fact]
    public void Name_that_is_none_is_the_callers_fault()
    {
        Assert.Contains("'specimen.colour' is not a measure of a specimen.", Assert.Throws<ArgumentException>(() => SpecimenValues.Measure(Body(Mammal("1 kg")), "specimen.colour")).Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("'colour' is not a trait of a specimen.", Assert.Throws<ArgumentException>(() => SpecimenValues.Trait(Mammal("1 kg"), "colour")).Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Formulas_see_bench_choice_trait_and_earlier_values()
    {
        var shelf = Shelf(("seen", "{group: mammal}", """
            choices:
              keeping: [formalin, ethanol]
            values:
              warm: bench.temperature
              cool: bench.cold
              kept: choice.keeping
              state: specimen.condition
              twice: {value: 2 * specimen.mass, source: from memory}
              fourfold: {value: 2 * twice, source: from memory}
            stages:
              - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}
            """));

        var plan = Plan(Mammal("1.5 kg") with { Condition = Condition.Fresh }, shelf, "zone: UTC\ntemperatures: {room: 18 degC, cold: 5 degC, coldest: 4 degC, hottest: 30 degC}\n", choices: ("keeping", "ethanol")).Value!;

        Assert.Equal(["18 degC", "5 degC", "ethanol", "fresh", "3 kg", "6 kg"], ((string[])["warm", "cool", "kept", "state", "twice", "fourfold"]).Select(n => plan.Figure(n)!.Value));
    }
}
