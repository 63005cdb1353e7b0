using Protocolist.Benches.Disposal;
using Protocolist.Benches.Stock;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Tests.Benches.Disposal;

public class WasteTests
{
    private static readonly Amount Litre = Amount.Of(Volume.FromLiters(1));

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
            var routed = WasteRules.CollectAll.Route("something", @class, Litre);
            Assert.Equal("waste-needs-a-container", Assert.Single(routed.Findings).Id);
            Assert.True(routed.Value!.Way is WasteWay.CollectedAsHazardous or WasteWay.CollectedAsClinical);
            Assert.NotEmpty(routed.Value.Destination);
        }
    }

    [Fact]
    public void Named_containers_permits_and_reuse_are_followed()
    {
        var rules = new WasteRules(
            WasteRules.CollectAll.Containers.Add(WasteClass.Formaldehyde, "drum F1"),
            WasteRules.CollectAll.DrainPermits.Add(WasteClass.RinseWater, "letter of 2026-05-02").Add(WasteClass.Sharps, " "));
        Assert.Equal("1 L fixative (formaldehyde): collected as hazardous, drum F1", rules.Route("fixative", WasteClass.Formaldehyde, Litre).Value!.ToString());
        Assert.Equal(WasteWay.KeptForReuse, rules.Route("fixative", WasteClass.Formaldehyde, Litre, "jar R2").Value!.Way);
        var drained = rules.Route("last rinse", WasteClass.RinseWater, Litre);
        Assert.Equal((WasteWay.DrainedWhereAllowed, "letter of 2026-05-02"), (drained.Value!.Way, drained.Value.Destination));
        Assert.Equal("drained-under-permit", Assert.Single(drained.Findings).Id);
        Assert.Equal(WasteWay.CollectedAsClinical, rules.Route("needles", WasteClass.Sharps, Amount.Of(2)).Value!.Way);
    }

    [Fact]
    public void A_lot_without_a_destination_cannot_be_made() =>
        Assert.Throws<ArgumentException>(() => new Waste("x", WasteClass.Formaldehyde, Litre, WasteWay.CollectedAsHazardous, " "));
}
