using Protocolist.Notation;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>
/// The unit table against the conversion factors of UnitsNet 5.75.1, unit by unit; what UnitsNet does not have, against
/// the SI Brochure (9th edition, 2019) or NIST Special Publication 811 (2008), appendix B.
/// </summary>
public class UnitTableReferenceTests
{
    private static readonly Dictionary<string, Func<double, double>> ByUnitsNet = new(StringComparer.Ordinal)
    {
        ["µL"] = v => Volume.FromMicroliters(v).CubicMeters,
        ["mL"] = v => Volume.FromMilliliters(v).CubicMeters,
        ["cL"] = v => Volume.FromCentiliters(v).CubicMeters,
        ["dL"] = v => Volume.FromDeciliters(v).CubicMeters,
        ["L"] = v => Volume.FromLiters(v).CubicMeters,
        ["mm3"] = v => Volume.FromCubicMillimeters(v).CubicMeters,
        ["cm3"] = v => Volume.FromCubicCentimeters(v).CubicMeters,
        ["m3"] = v => Volume.FromCubicMeters(v).CubicMeters,
        ["US fl oz"] = v => Volume.FromUsOunces(v).CubicMeters,
        ["imp fl oz"] = v => Volume.FromImperialOunces(v).CubicMeters,
        ["US gal"] = v => Volume.FromUsGallons(v).CubicMeters,
        ["imp gal"] = v => Volume.FromImperialGallons(v).CubicMeters,
        ["µm"] = v => Length.FromMicrometers(v).Meters,
        ["mm"] = v => Length.FromMillimeters(v).Meters,
        ["cm"] = v => Length.FromCentimeters(v).Meters,
        ["m"] = v => Length.FromMeters(v).Meters,
        ["in"] = v => Length.FromInches(v).Meters,
        ["ft"] = v => Length.FromFeet(v).Meters,
        ["mm2"] = v => Area.FromSquareMillimeters(v).SquareMeters,
        ["cm2"] = v => Area.FromSquareCentimeters(v).SquareMeters,
        ["m2"] = v => Area.FromSquareMeters(v).SquareMeters,
        ["µg"] = v => Mass.FromMicrograms(v).Kilograms,
        ["mg"] = v => Mass.FromMilligrams(v).Kilograms,
        ["g"] = v => Mass.FromGrams(v).Kilograms,
        ["kg"] = v => Mass.FromKilograms(v).Kilograms,
        ["t"] = v => Mass.FromTonnes(v).Kilograms,
        ["lb"] = v => Mass.FromPounds(v).Kilograms,
        ["oz"] = v => Mass.FromOunces(v).Kilograms,
        ["s"] = v => Duration.FromSeconds(v).Seconds,
        ["min"] = v => Duration.FromMinutes(v).Seconds,
        ["h"] = v => Duration.FromHours(v).Seconds,
        ["d"] = v => Duration.FromDays(v).Seconds,
        ["wk"] = v => Duration.FromWeeks(v).Seconds,
        ["mo"] = v => Duration.FromMonths30(v).Seconds,
        ["y"] = v => Duration.FromYears365(v).Seconds,
        ["K"] = v => Temperature.FromKelvins(v).Kelvins,
        ["degC"] = v => Temperature.FromDegreesCelsius(v).Kelvins,
        ["°C"] = v => Temperature.FromDegreesCelsius(v).Kelvins,
        ["degF"] = v => Temperature.FromDegreesFahrenheit(v).Kelvins,
        ["°F"] = v => Temperature.FromDegreesFahrenheit(v).Kelvins,
        ["%"] = v => Ratio.FromPercent(v).DecimalFractions,
        ["%vol"] = v => VolumeConcentration.FromPercent(v).DecimalFractions,
        ["%mass"] = v => MassFraction.FromPercent(v).DecimalFractions,
        ["% w/v"] = v => MassConcentration.FromGramsPerDeciliter(v).KilogramsPerCubicMeter,
        ["mol"] = v => AmountOfSubstance.FromMoles(v).Moles,
        ["mmol"] = v => AmountOfSubstance.FromMillimoles(v).Moles,
        ["Pa"] = v => Pressure.FromPascals(v).Pascals,
        ["kPa"] = v => Pressure.FromKilopascals(v).Pascals,
        ["MPa"] = v => Pressure.FromMegapascals(v).Pascals,
        ["N"] = v => Force.FromNewtons(v).Newtons,
    };

    private static readonly Dictionary<string, Func<double, double>> RatiosByUnitsNet = new(StringComparer.Ordinal)
    {
        ["g/L"] = v => MassConcentration.FromGramsPerLiter(v).KilogramsPerCubicMeter,
        ["mg/mL"] = v => MassConcentration.FromMilligramsPerMilliliter(v).KilogramsPerCubicMeter,
        ["kg/m3"] = v => Density.FromKilogramsPerCubicMeter(v).KilogramsPerCubicMeter,
        ["g/mL"] = v => Density.FromGramsPerMilliliter(v).KilogramsPerCubicMeter,
        ["g/cm3"] = v => Density.FromGramsPerCubicCentimeter(v).KilogramsPerCubicMeter,
        ["mol/L"] = v => Molarity.FromMolesPerLiter(v).MolesPerCubicMeter,
        ["L/kg"] = v => SpecificVolume.FromMillicubicMetersPerKilogram(v).CubicMetersPerKilogram,
        ["m3/kg"] = v => SpecificVolume.FromCubicMetersPerKilogram(v).CubicMetersPerKilogram,
        ["L/h"] = v => VolumeFlow.FromLitersPerHour(v).CubicMetersPerSecond,
        ["mL/min"] = v => VolumeFlow.FromMillilitersPerMinute(v).CubicMetersPerSecond,
        ["mm/h"] = v => Speed.FromMillimetersPerHour(v).MetersPerSecond,
    };

    [Fact]
    public void Every_unit_of_the_table_is_compared() =>
        Assert.Equal(UnitTable.All.Select(u => u.Symbol).Order(StringComparer.Ordinal), ByUnitsNet.Keys.Order(StringComparer.Ordinal));

    public static TheoryData<string> Units => [.. ByUnitsNet.Keys];

    public static TheoryData<string> Ratios => [.. RatiosByUnitsNet.Keys];

    [Theory]
    [MemberData(nameof(Units))]
    public void A_unit_converts_as_in_UnitsNet(string symbol)
    {
        Assert.True(UnitTable.TryFind(symbol, out var unit));
        foreach (var value in (double[])[0, 1, 12.5, 250, 1e6]) AssertClose(ByUnitsNet[symbol](value), unit.ToSi(value), value * 1e-15);
        AssertClose(12.5, unit.FromSi(unit.ToSi(12.5)), 1e-12);
    }

    [Theory]
    [MemberData(nameof(Ratios))]
    public void A_ratio_of_units_converts_as_in_UnitsNet(string symbol)
    {
        Assert.Null(QuantityText.Read($"12.5 {symbol}", out var read));
        AssertClose(RatiosByUnitsNet[symbol](12.5), read.Low, 0);
    }

    // UnitsNet rounds this factor to nine figures; NIST SP 811, appendix B.8: pound per gallon (US), 1.198264 E+02.
    [Fact]
    public void A_pound_per_US_gallon_is_as_in_NIST_SP_811()
    {
        Assert.Null(QuantityText.Read("1 lb/US gal", out var read));
        Assert.Equal(1.198264e2, read.Low, 5e-5);
        AssertClose(Density.FromPoundsPerUSGallon(1).KilogramsPerCubicMeter, read.Low, 5e-7);
    }

    // UnitsNet has no millilitre for each kilogram or gram. By the SI Brochure, table 8: 1 mL = 1e-6 m3, and 1 g = 1e-3 kg.
    [Theory]
    [InlineData("mL/kg", 1e-6)]
    [InlineData("mL/g", 1e-3)]
    public void Ratios_that_UnitsNet_lacks_follow_from_the_SI_brochure(string symbol, double factor)
    {
        Assert.Null(QuantityText.Read($"1 {symbol}", out var read));
        Assert.Equal(factor, read.Low);
    }

    // NIST SP 811, appendix B.8, the factors in bold there, which are exact; gallon of the UK by the Units of Measurement Regulations 1995.
    [Theory]
    [InlineData("in", 2.54e-2)]
    [InlineData("ft", 3.048e-1)]
    [InlineData("lb", 4.5359237e-1)]
    [InlineData("oz", 2.8349523125e-2)]
    [InlineData("imp gal", 4.54609e-3)]
    [InlineData("US gal", 3.785411784e-3)]
    public void Units_outside_the_SI_have_their_legal_factors_exactly(string symbol, double factor) =>
        Assert.Equal(factor, UnitTable.Get(symbol).ToSi(1));

    private static void AssertClose(double expected, double actual, double floor) =>
        Assert.True(Math.Abs(expected - actual) <= Math.Max(Math.Abs(expected) * 5e-15, floor), $"UnitsNet {expected:R}, here {actual:R}");
}
