using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Reading;

namespace Protocolist.Tests.Benches.Disposal;

public class WasteTests
{
    /// <summary>24 % by volume: 40 CFR 261.21; 0.1 % by mass: Regulation (EU) No 1357/2014, HP 7.</summary>
    [Theory]
    [InlineData(3.7, 0, WasteClass.Formaldehyde)]
    [InlineData(0.1, 5, WasteClass.Formaldehyde)]
    [InlineData(0.1, 70, WasteClass.FormaldehydeAndAlcohol)]
    [InlineData(0.09, 70, WasteClass.FlammableAlcohol)]
    [InlineData(0, 24, WasteClass.FlammableAlcohol)]
    [InlineData(0, 23.9, WasteClass.DiluteAlcohol)]
    [InlineData(0.01, 0.5, WasteClass.RinseWater)]
    public void Class_follows_the_composition(double formaldehyde, double alcohol, WasteClass expected) =>
        Assert.Equal(expected, WasteClasses.Of(formaldehyde, alcohol));

    [Fact]
    public void Without_a_permit_nothing_is_drained_and_every_lot_has_a_named_place()
    {
        foreach (var @class in Enum.GetValues<WasteClass>())
        {
            var route = WasteRules.CollectAll.RouteOf(@class);
            Assert.False(route.IsNamed);
            Assert.True(route.Way is WasteWay.CollectedAsHazardous or WasteWay.CollectedAsClinical);
            Assert.Equal($"a closed container labelled '{Waste.Words(@class)} waste'", route.Destination.ToString());
        }

        Assert.Null(WasteRules.CollectAll.RouteOfKept);
    }

    [Fact]
    public void Named_containers_permits_and_reuse_are_followed()
    {
        var rules = new WasteRules(
            WasteRules.CollectAll.Containers.Add(WasteClass.Formaldehyde, "drum F1"),
            WasteRules.CollectAll.DrainPermits.Add(WasteClass.RinseWater, "letter of 2026-05-02").Add(WasteClass.Sharps, " "))
        { FixativeKeptIn = "jar R2" };
        Assert.Equal(new(WasteWay.CollectedAsHazardous, Message.Text("drum F1")), rules.RouteOf(WasteClass.Formaldehyde));
        Assert.Equal(new(WasteWay.KeptForReuse, Message.Text("jar R2")), rules.RouteOfKept);
        Assert.Equal(new(WasteWay.DrainedWhereAllowed, Message.Text("letter of 2026-05-02")), rules.RouteOf(WasteClass.RinseWater));
        Assert.Equal((WasteWay.CollectedAsClinical, false), (rules.RouteOf(WasteClass.Sharps).Way, rules.RouteOf(WasteClass.Sharps).IsNamed));
        Assert.Null((rules with { FixativeKeptIn = " " }).RouteOfKept);
    }

    /// <summary>The words are those of the bench file, spaced.</summary>
    [Fact]
    public void Every_class_and_way_has_its_words()
    {
        Assert.All(Enum.GetValues<WasteClass>(), c => Assert.Equal(EnumWords<WasteClass>.Of(c).Replace('-', ' '), Waste.Words(c).ToString()));
        Assert.All(Enum.GetValues<WasteWay>(), w => Assert.Equal(EnumWords<WasteWay>.Of(w).Replace('-', ' '), Waste.Words(w).ToString()));
        Assert.Equal(Enum.GetValues<WasteClass>().Length, Waste.ByWord.Length);
    }
}
