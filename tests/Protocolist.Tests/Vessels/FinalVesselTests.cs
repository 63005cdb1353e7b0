using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using Protocolist.Specimens;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Tests.Vessels;

public class FinalVesselTests
{
    [Theory]
    [InlineData(Bearing.Sinks, false, MountMethod.None)]
    [InlineData(Bearing.Sinks, true, MountMethod.TiedToPlate)]
    [InlineData(Bearing.Floats, false, MountMethod.Weighted)]
    [InlineData(Bearing.Floats, true, MountMethod.TiedToPlate)]
    [InlineData(Bearing.Sags, false, MountMethod.Hung)]
    [InlineData(Bearing.Sags, true, MountMethod.TiedToPlate)]
    public void The_mount_follows_what_the_body_does(Enum bearing, bool showsOneSide, Enum method)
    {
        var mount = Mounting.Choose(BodyKind.Whole, (Bearing)bearing, showsOneSide, Fluid.Ethanol(70), Length.FromMillimeters(150), Length.FromMillimeters(250));
        Assert.Equal((MountMethod)method, mount.Method);
        Assert.Equal((MountMethod)method == MountMethod.None, mount.Steps.IsEmpty);
        Assert.DoesNotContain(mount.Materials, m => m.ToString().Contains("acrylic", StringComparison.Ordinal));
    }

    [Fact]
    public void A_body_longer_than_the_vessel_is_tied_not_hung() => Assert.Equal(
        MountMethod.TiedToPlate,
        Mounting.Choose(BodyKind.Whole, Bearing.Sags, false, Fluid.Formalin(10), Length.FromMillimeters(300), Length.FromMillimeters(250)).Method);

    [Fact]
    public void Filling_is_told_with_this_vessels_numbers()
    {
        var steps = Mounting.FillingSteps(Fitted(Closure.SealedPlate), BodyKind.Whole);
        Assert.Equal("Fill in about half of the fluid, 17 L (142 mm deep).", steps[0].ToString());
        Assert.Equal("Top up to 285 mm, with 34 L of fluid in all; 1.8 L stay empty.", steps[^1].ToString());
    }

    [Theory]
    [InlineData(Closure.SealedPlate, true, ClosingMethod.Tape, 0, 2)]
    [InlineData(Closure.SealedPlate, false, ClosingMethod.NeutralSilicone, 48, null)]
    [InlineData(Closure.GroundStopper, false, ClosingMethod.GroundStopper, 0, null)]
    [InlineData(Closure.ScrewLid, false, ClosingMethod.OwnLid, 0, 10)]
    public void The_closing_follows_the_lid_and_whether_it_is_opened_again(Closure closure, bool openedAgain, Enum method, int cureHours, int? renewed)
    {
        var closing = Closing.Choose(Fitted(closure), Fluid.Formalin(10), openedAgain);
        Assert.Equal(method, closing.Way.Method);
        Assert.Equal(cureHours, closing.Way.CuresOpen.TotalHours);
        Assert.Equal(renewed, closing.Way.RenewAfterYears);
    }

    [Fact]
    public void A_port_is_weighed_against_what_it_would_lose()
    {
        var good = Closing.Choose(Fitted(Closure.SealedPlate), Fluid.Ethanol(70), openedAgain: false).Port!;
        Assert.True(good.IsWorthwhile);
        Assert.False(Closing.Choose(Fitted(Closure.SealedPlate), Fluid.Formalin(10), openedAgain: true).Port!.IsWorthwhile);

        // Fick by hand: 28.3 mm² through 6 mm at 20 °C, ethanol 3.4 kPa and water 1.85 kPa: some 120 g and 50 g a year.
        Assert.InRange(good.OpenPerYear.Milliliters, 150, 260);
    }

    [Fact]
    public void A_weak_jar_is_topped_up_with_stronger_alcohol_and_drawn_off_when_none_is_strong_enough()
    {
        var plain = AlcoholDrift.TopUp(Volume.FromLiters(1), Volume.FromLiters(0.9), 68, 70);
        Assert.Equal(88, plain.AddStrength, 1e-9);
        Assert.Equal(100, plain.Add.Milliliters, 1e-9);
        Assert.Equal(0, plain.DrawOff.Liters);

        var weak = AlcoholDrift.TopUp(Volume.FromLiters(1), Volume.FromLiters(0.95), 60, 70);
        Assert.Equal(96, weak.AddStrength);
        var alcohol = (0.95 - weak.DrawOff.Liters) * 60 + weak.Add.Liters * 96;
        Assert.Equal(70, alcohol, 1e-9);
        Assert.Equal(1, 0.95 - weak.DrawOff.Liters + weak.Add.Liters, 1e-12);

        var strong = AlcoholDrift.TopUp(Volume.FromLiters(1), Volume.FromLiters(0.95), 90, 70);
        Assert.Equal(0, strong.AddStrength);
        Assert.Equal(70, (0.95 - strong.DrawOff.Liters) * 90, 1e-9);
    }

    [Theory]
    [InlineData(VesselMaterial.Metal, VesselPart.Lid, "formalin 10 %", MaterialGrade.Unfit)]
    [InlineData(VesselMaterial.Bakelite, VesselPart.Lid, "ethanol 50 %vol", MaterialGrade.Unfit)]
    [InlineData(VesselMaterial.Acrylic, VesselPart.Wall, "ethanol 70 %vol", MaterialGrade.Unfit)]
    [InlineData(VesselMaterial.Acrylic, VesselPart.Wall, "formalin 10 %", MaterialGrade.Lasting)]
    [InlineData(VesselMaterial.NaturalRubber, VesselPart.Seal, "ethanol 70 %vol", MaterialGrade.Unfit)]
    [InlineData(VesselMaterial.AcetoxySilicone, VesselPart.Seal, "formalin 10 %", MaterialGrade.Unfit)]
    [InlineData(VesselMaterial.NeutralSilicone, VesselPart.Seal, "ethanol 70 %vol", MaterialGrade.Lasting)]
    [InlineData(VesselMaterial.Polyethylene, VesselPart.Wall, "formalin 10 %", MaterialGrade.ForAWhile)]
    [InlineData(VesselMaterial.Polyethylene, VesselPart.Seal, "ethanol 70 %vol", MaterialGrade.Lasting)]
    [InlineData(VesselMaterial.Glass, VesselPart.Wall, "ethanol 70 %vol", MaterialGrade.Lasting)]
    public void A_material_is_judged_by_part_and_fluid(VesselMaterial material, Enum part, string fluid, Enum grade) =>
        Assert.Equal((MaterialGrade)grade, MaterialFitness.Judge(material, (VesselPart)part, Fluid.Read(fluid).Value!)!.Grade);

    private static FittedVessel Fitted(Closure closure)
    {
        var vessel = new Vessel("tank", "tank", new VesselShape.Box(Length.FromMillimeters(400), Length.FromMillimeters(300), Length.FromMillimeters(300)), VesselMaterial.Glass, 1) { Closure = closure };
        return new(
            vessel, Arrangement.Lying, Volume.FromLiters(34), Length.FromMillimeters(284.2), Length.FromMillimeters(285), Length.FromMillimeters(284),
            Length.FromMillimeters(290), Length.FromMillimeters(100), Volume.FromLiters(1.8), 341, Mass.FromKilograms(35), Pressure.FromKilopascals(36), []);
    }
}
