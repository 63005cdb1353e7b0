using Protocolist.Fluids;
using Protocolist.Fluids.Safety;

namespace Protocolist.Tests.Fluids;

public class HazardTests
{
    [Theory]
    [InlineData("ethanol 96 %vol", 17, 2, "Danger")]
    [InlineData("ethanol 70 %vol", 21, 2, "Danger")]
    [InlineData("ethanol 40 %vol", 26, 3, "Warning")]
    [InlineData("isopropanol 70 %vol", 18, 2, "Danger")]
    [InlineData("formaldehyde stock 37 %mass, methanol 15 %mass", 50, 3, "Danger")]
    public void Flammable_fluids_have_their_class(string name, double flash, int category, string signal)
    {
        var hazards = Hazards.Of(Fluid.Read(name).Value!);
        Assert.Equal(flash, hazards.FlashPoint!.Value.DegreesCelsius, 0.5);
        Assert.Equal(category, hazards.FlammableCategory);
        Assert.Equal(signal, hazards.SignalWord);
    }

    // CLP entry 605-001-00-5: 25 % and more is corrosive, 4 % formaldehyde still sensitises and is suspected or known to cause cancer.
    [Fact]
    public void Formaldehyde_is_classed_by_its_strength()
    {
        var stock = Hazards.Of(Fluid.FormaldehydeStock(37)).Statements;
        Assert.Superset(new HashSet<string> { "H301", "H311", "H331", "H314", "H317", "H335", "H341", "H350", "H370" }, stock.ToHashSet());
        var working = Hazards.Of(Fluid.Formalin(10, Buffering.Phosphate));
        Assert.Equal(["H332", "H317", "H341", "H350"], working.Statements);
        Assert.Null(working.FlashPoint);
        Assert.Equal("Danger", working.SignalWord);
    }

    [Fact]
    public void Water_is_harmless()
    {
        var hazards = Hazards.Of(Fluid.OceanWater);
        Assert.Empty(hazards.Statements);
        Assert.Empty(hazards.Limits);
        Assert.Equal("", hazards.SignalWord);
    }

    // NIOSH Pocket Guide prints 1.23, 1.89 (rounded up) and 2.46 mg/m³ for 1 ppm.
    [Theory]
    [InlineData("formaldehyde", 1.23)]
    [InlineData("ethanol", 1.885)]
    [InlineData("isopropanol", 2.46)]
    public void Limits_convert_as_published(string substance, double perPpm)
    {
        var limit = ((Solute[])[Solute.Formaldehyde, Solute.Ethanol, Solute.Isopropanol, Solute.Methanol]).SelectMany(s => s.Limits).First(l => l.Substance == substance);
        Assert.Equal(perPpm, limit.MilligramsPerCubicMetre / limit.Ppm, 0.005);
    }

    // 29 CFR 1910.1048; NIOSH Pocket Guide 0293; Directive (EU) 2019/983.
    [Theory]
    [InlineData("OSHA", ExposureKind.WorkingDay, 0.75)]
    [InlineData("OSHA", ExposureKind.FifteenMinutes, 2)]
    [InlineData("NIOSH", ExposureKind.Ceiling, 0.1)]
    [InlineData("Directive", ExposureKind.WorkingDay, 0.3)]
    public void Formaldehyde_has_its_limits(string authority, ExposureKind kind, double ppm) =>
        Assert.Equal(ppm, ExposureLimits.Of(Fluid.Formalin(10)).Single(l => l.Authority.StartsWith(authority, StringComparison.Ordinal) && l.Kind == kind).Ppm);

    // 60 US gallons are 227.1 L, 10 are 37.9 L.
    [Fact]
    public void Storage_thresholds_are_in_litres()
    {
        Assert.Equal(227.1, StorageThreshold.All[0].Most.Liters, 0.05);
        Assert.Equal(37.9, StorageThreshold.All[^1].Most.Liters, 0.05);
    }
}
