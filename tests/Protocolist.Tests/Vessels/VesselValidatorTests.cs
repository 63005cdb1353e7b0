using Protocolist.Fluids;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Tests.Vessels;

public class VesselValidatorTests
{
    private static readonly Vessel s_jar =
        new("jar-1-l", "jar", new VesselShape.Cylinder(Length.FromMillimeters(95), Length.FromMillimeters(160)), VesselMaterial.Glass, 3);

    [Fact]
    public void A_sound_vessel_passes() => Assert.Empty((s_jar with { Capacity = Volume.FromLiters(1) }).Validate());

    [Fact]
    public void Every_fault_has_an_id_its_numbers_and_a_remedy()
    {
        (Vessel Vessel, string Id, string Part)[] cases =
        [
            (s_jar with { Id = " " }, "vessel-without-id", "no id"),
            (s_jar with { Count = -2 }, "vessel-count-negative", "-2"),
            (s_jar with { Shape = null! }, "vessel-without-dimensions", "jar-1-l"),
            (s_jar with { Shape = new VesselShape.Cylinder(Length.FromMillimeters(-95), Length.FromMillimeters(160)) }, "vessel-dimension-absurd", "-95 mm"),
            (s_jar with { Shape = new VesselShape.Box(Length.FromMeters(60), Length.FromMeters(1), Length.FromMeters(1)) }, "vessel-dimension-absurd", "60000"),
            (s_jar with { Capacity = Volume.FromMilliliters(250) }, "vessel-capacity-contradicts-dimensions", "250 mL"),
            (s_jar with { EmptyMass = Mass.FromKilograms(-1) }, "vessel-mass-absurd", "-1 kg"),
            (s_jar with { LossPerYear = Volume.FromLiters(-1) }, "vessel-loss-absurd", "does not lose"),
            (s_jar with { LossPerYear = Volume.FromCubicMeters(1e15) }, "vessel-loss-absurd", "does not lose"),
            (s_jar with { Count = 100_001 }, "vessel-count-absurd", "100001"),
            (s_jar with { LeadDays = -1 }, "absurd-time", "-1 days"),
            (s_jar with { LeadDays = int.MaxValue }, "absurd-time", "2147483647"),
            (s_jar with { Price = Protocolist.Quantities.Money.Of(-1, "EUR") }, "negative-price", "-1.00 EUR"),
            (s_jar with { Price = Protocolist.Quantities.Money.Of(10_000_001, "EUR") }, "absurd-price", "10000001.00 EUR"),
            (s_jar with { Wall = (VesselMaterial)99 }, "unknown-word", "no word"),
            (s_jar with { Name = "a\nb" }, "not-one-line", "'name'"),
        ];
        foreach (var (vessel, id, part) in cases)
        {
            var fault = Assert.Single(vessel.Validate());
            Assert.Equal(id, fault.Id);
            Assert.Contains(part, fault.Message.ToString(), StringComparison.Ordinal);
            Assert.False(fault.Remedy.IsEmpty);
        }
    }
}
