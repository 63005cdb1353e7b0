using Protocolist.Fluids.Contact;
using Protocolist.Reading;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Tests.Vessels;

public class VesselValidatorTests
{
    private static readonly Vessel s_jar =
        new("jar-1-l", "jar", new VesselShape.Cylinder(Length.FromMillimeters(95), Length.FromMillimeters(160)), VesselMaterial.Glass, 3);

    [Fact]
    public void A_sound_vessel_passes() => Assert.True(new VesselValidator().Validate(s_jar with { Capacity = Volume.FromLiters(1) }).IsValid);

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
        ];
        foreach (var (vessel, id, part) in cases)
        {
            var fault = ValidatorFindings.Of(Assert.Single(new VesselValidator().Validate(vessel).Errors));
            Assert.Equal(id, fault.Id);
            Assert.Contains(part, fault.Message.ToString(), StringComparison.Ordinal);
            Assert.NotEmpty(fault.Remedy.ToString());
        }
    }
}
