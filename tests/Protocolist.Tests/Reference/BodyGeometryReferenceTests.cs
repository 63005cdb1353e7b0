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

    // Crabeater seal, J Zool 2003;259:103, and pigs, cattle and sheep: half of the girth's diameter is 0.55 to 0.75 of √(V/HB).
    [Fact]
    public void Mammal_of_7_kg_and_75_cm_is_as_thick_as_girths_tell()
    {
        var ml = 7000 / 1.03;
        Assert.Equal(0.65, Kinds.Bundled.Find("mammal")!.Shape.HalfThicknessMm(ml, 750) / Math.Sqrt(ml * 1000 / 750), 0.005);
    }

    // A disc is as wide as it is long, an egg is a sphere, a test keeps its height: a lighter one of the same length is thinner, or hollow.
    [Theory]
    [InlineData("jellyfish", 200, 400, 200, 200)]
    [InlineData("jellyfish", 200, 150, 200, 200)]
    [InlineData("sea-star", 160, 90, 160, 160)]
    [InlineData("sea-urchin", 55, 70, 55, 55)]
    [InlineData("ray", 220, 300, 220, 220)]
    public void Disc_is_as_wide_as_it_is_measured(string group, double lengthMm, double massG, double widthMm, double longMm)
    {
        var body = BodyMeasure.Of(new Specimen { Id = "d", Group = group, Mass = Mass.FromGrams(massG), DiscWidth = Length.FromMillimeters(lengthMm) }).Value!;
        Assert.Equal(widthMm, body.Width.Nominal.Millimeters, 6);
        Assert.Equal(longMm, body.Length.Nominal.Millimeters, 6);
    }

    [Fact]
    public void Egg_is_a_sphere()
    {
        var egg = BodyMeasure.Of(new Specimen { Id = "e", Group = "embryo", EggDiameter = Length.FromMillimeters(5) }).Value!;
        Assert.Equal(2.5, egg.HalfThickness.Nominal.Millimeters, 6);
        Assert.Equal(5, egg.Width.Nominal.Millimeters, 6);
        Assert.Equal(5, egg.TotalLength.Nominal.Millimeters, 6);
        Assert.Equal(Math.PI / 6 * 0.125, egg.Volume.Nominal.Milliliters, 0.002);
    }

    // Two species accounts: an emperor scorpion of 170 mm with its tail weighs about 32 g. Its body is half of that, and wider than the tail.
    [Fact]
    public void Tail_of_a_scorpion_is_not_its_body()
    {
        var scorpion = BodyMeasure.Of(new Specimen { Id = "s", Group = "scorpion", Mass = Mass.FromGrams(32), TotalLength = Length.FromMillimeters(170) }).Value!;
        var bare = BodyMeasure.Of(new Specimen { Id = "s", Group = "scorpion", Mass = Mass.FromGrams(32), BodyLength = Length.FromMillimeters(85) }).Value!;
        Assert.InRange(scorpion.Width.Nominal.Millimeters, 18, 30);
        Assert.Equal(scorpion.TotalLength.Nominal.Millimeters, bare.TotalLength.Nominal.Millimeters, 6);
        Assert.Equal(scorpion.Width.Nominal.Millimeters, bare.Width.Nominal.Millimeters, 6);
    }

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
