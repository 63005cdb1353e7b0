using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>Half-thickness and displacement against worked figures of plain solid geometry at 1.05 g/mL.</summary>
public class BodyGeometryReferenceTests
{
    // R = ½·(4V/(πn))^(1/3) for a cylinder n times as long as thick; fish ellipsoid 1 : 0.22 : 0.11, flatfish 1 : 0.45 : 0.06.
    [Theory]
    [InlineData(1, 4.2, 3.7, 3.1, 2.5, 1.7, 2.3, 1.2)]
    [InlineData(5, 7.2, 6.3, 5.3, 4.2, 2.9, 4.0, 2.1)]
    [InlineData(25, 12.4, 10.8, 9.1, 7.2, 5.0, 6.8, 3.6)]
    [InlineData(100, 19.6, 17.2, 14.5, 11.5, 8.0, 10.8, 5.7)]
    [InlineData(300, 28.3, 24.7, 20.9, 16.6, 11.5, 15.5, 8.2)]
    [InlineData(1000, 42, 37, 31, 25, 17, 23, 12)]
    [InlineData(4000, 67, 59, 50, 39, 27, 37, 19)]
    [InlineData(7000, 81, 71, 60, 47, 33, 44, 23)]
    [InlineData(20000, 115, 100, 85, 67, 47, 63, 33)]
    public void Half_thickness_from_mass(
        double massG, double two, double three, double five, double ten, double thirty, double fish, double flatfish)
    {
        var ml = massG / 1.05;
        double Cylinder(double n) => BodyShape.Cylinder(n, 1.2, "geometry").HalfThicknessMm(ml);
        var printed = massG < 1000 ? 0.06 : 0.6; // rounded as printed
        Assert.Equal(two, Cylinder(2), printed);
        Assert.Equal(three, Cylinder(3), printed);
        Assert.Equal(five, Cylinder(5), printed);
        Assert.Equal(ten, Cylinder(10), printed);
        Assert.Equal(thirty, Cylinder(30), printed);
        Assert.Equal(fish, BodyShape.Ellipsoid(0.22, 0.11, 1.2, "geometry").HalfThicknessMm(ml), printed);
        Assert.Equal(flatfish, BodyShape.Ellipsoid(0.45, 0.06, 1.2, "geometry").HalfThicknessMm(ml), printed);
    }

    // The mammal shape, given against head-body length, is the cylinder three times as long as thick.
    [Fact]
    public void Mammal_of_7_kg_is_a_cylinder_three_times_as_long_as_thick() =>
        Assert.Equal(71, Kinds.Bundled.Find("mammal")!.Shape.HalfThicknessMm(7000 / 1.05), 0.5);

    // Trout 30 cm long, 6.6 cm high, 3.3 cm wide: the ellipsoid holds 342 mL.
    [Fact]
    public void Ellipsoid_of_a_30_cm_trout_holds_342_mL() =>
        Assert.Equal(342, BodyShape.Ellipsoid(0.22, 0.11, 1.2, "geometry").VolumeMl(300), 0.5);

    // A round body: girth over half-thickness is 2π; a body twice as high as wide: Ramanujan's 9.688.
    [Fact]
    public void Girth_goes_round_the_section()
    {
        Assert.Equal(2 * Math.PI, BodyShape.Cylinder(3, 1.2, "geometry").GirthPerHalfThickness, 9);
        Assert.Equal(9.688, BodyShape.Ellipsoid(0.22, 0.11, 1.2, "geometry").GirthPerHalfThickness, 0.001);
    }

    // Volume of the specimen and the water in it, worked at the densities and water contents in the row.
    [Theory]
    [InlineData("bony-fish", 300, 285.7, 225)]
    [InlineData("frog", 40, 38.8, 32.1)]
    [InlineData("mammal", 300, 291.3, 204)]
    [InlineData("lizard", 15, 14.6, 11.0)]
    public void Volume_and_water_from_mass(string group, double massG, double volumeMl, double waterMl)
    {
        var body = BodyMeasure.Of(new Specimen { Id = "r", Group = group, Mass = Mass.FromGrams(massG) }).Value!;
        Assert.Equal(volumeMl, body.Volume.Nominal.Milliliters, 0.06); // rounded as printed
        var water = body.Group.WaterFraction;
        Assert.InRange(waterMl, massG * water.Low * 0.99, massG * water.High * 1.02);
    }
}
