using Protocolist.Fluids;
using Protocolist.Fluids.Densities;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Densities and strengths worked apart from this code: OIML R 22, Lebo's and Walker's tables through the same points.</summary>
public class DensityTests
{
    // kg/m³ and °C to %vol, % by mass, g in 100 mL: OIML R 22.
    [Theory]
    [InlineData(885.562, 20, 69.99981, 62.38591, 55.24659)]
    [InlineData(900, 0, 70.71835, 63.15407, 55.81369)]
    [InlineData(820, 35, 88.75574, 84.06941, 70.04950)]
    [InlineData(998, 20, 0.13214, 0.10450, 0.10429)]
    [InlineData(950, -5, 48.99622, 41.48687, 38.66973)]
    [InlineData(823.1202, -20, 100, 100, 78.92391)]
    [InlineData(992.21349, 40, 0, 0, 0)]
    public void Ethanol_has_the_worked_strength(double density, double celsius, double volume, double mass, double grams)
    {
        var strength = Strength(Substance.Ethanol, density, celsius);
        Assert.Equal(volume, strength.VolumePercent, 0.0001);
        Assert.Equal(mass, strength.MassPercent, 0.0001);
        Assert.Equal(grams, strength.GramsPer100Millilitres, 0.0001);
        Assert.Equal(0.1, strength.VolumePercentDoubt);
        Assert.Equal(Substance.Ethanol, strength.Alcohol);
    }

    // Lebo's table, and the strengths at 1.5 kg/m³ (and 15 % of the expansion) more and less.
    [Theory]
    [InlineData(875.7, 20, 70.01636, 62.80924, 55.00205, 0.59750)]
    [InlineData(800, 20, 95.53572, 93.81130, 75.04904, 0.44576)]
    [InlineData(950, 0, 44.43518, 37.24221, 34.90650, 1.92413)]
    [InlineData(900, 40, 54.26241, 46.56732, 42.62638, 1.46093)]
    [InlineData(997, 20, 0.87465, 0.68916, 0.68709, 1.09826)]
    [InlineData(786, 20, 99.85640, 99.80050, 78.44319, 0.48494)]
    public void Isopropanol_has_the_worked_strength_and_doubt(double density, double celsius, double volume, double mass, double grams, double doubt)
    {
        var strength = Strength(Substance.Isopropanol, density, celsius);
        Assert.Equal(volume, strength.VolumePercent, 0.0001);
        Assert.Equal(mass, strength.MassPercent, 0.0001);
        Assert.Equal(grams, strength.GramsPer100Millilitres, 0.0001);
        Assert.Equal(doubt, strength.VolumePercentDoubt, 0.0001);
        Assert.Equal(Substance.Isopropanol, strength.Alcohol);
    }

    // The density of the marked strength at 20 °C, the glass smaller or larger by 25e-6 per K, then OIML R 22 backwards.
    [Theory]
    [InlineData(70, 28, 67.34716)]
    [InlineData(70, 12, 72.56310)]
    [InlineData(96, 30, 93.79106)]
    [InlineData(10, 0, 11.95224)]
    [InlineData(40, 25, 37.99300)]
    [InlineData(0, 20, 0)]
    [InlineData(100, 20, 100)]
    public void An_alcoholometer_away_from_20_degrees_is_corrected_as_worked(double reading, double celsius, double strength)
    {
        Assert.Equal(strength, AlcoholStrength.FromAlcoholometer(reading, Temperature.FromDegreesCelsius(celsius)).Value!.VolumePercent, 0.0001);
        Assert.Equal(strength, 100 * EthanolWater.VolumeFraction(Hydrometer.EthanolMassFraction(reading / 100, celsius)), 0.0001);
    }

    // 900 kg/m³ read at 30 °C on a scale for 15: the bulb is larger by 15 · 25e-6.
    [Fact]
    public void A_hydrometer_with_another_scale_is_corrected_from_there()
    {
        var read = Density.FromKilogramsPerCubicMeter(900);
        Assert.Equal(899.6625, AlcoholStrength.HydrometerDensity(read, Temperature.FromDegreesCelsius(30), Temperature.FromDegreesCelsius(15)).KilogramsPerCubicMeter, 1e-9);
        Assert.Equal(900 / 0.999625, Hydrometer.Reading(900, 30, 15), 1e-9);
    }

    [Fact]
    public void What_no_mixture_has_is_told_as_read_and_kept()
    {
        var text = new System.Text.StringBuilder();
        foreach (var (alcohol, density, celsius) in (ReadOnlySpan<(Substance, double, double)>)
        [
            (Substance.Ethanol, 900, -20.1), (Substance.Ethanol, 900, 40.1), (Substance.Isopropanol, 900, -0.1), (Substance.Isopropanol, 900, 40.1),
            (Substance.Ethanol, 998.21, 20), (Substance.Ethanol, 789.2, 20), (Substance.Isopropanol, 999.85, 0), (Substance.Isopropanol, 768.7, 40),
        ])
            Tell($"{char.ToUpperInvariant(alcohol.Id[0])}{alcohol.Id[1..]} {density} kg/m3 {celsius} degC", AlcoholStrength.FromDensity(alcohol, Density.FromKilogramsPerCubicMeter(density), Temperature.FromDegreesCelsius(celsius)));
        foreach (var reading in (double[])[-0.01, 100.01]) Tell($"alcoholometer {reading}", AlcoholStrength.FromAlcoholometer(reading, Temperature.FromDegreesCelsius(20)));
        KeptText.Holds("Fluids/kept/alcohol-strength-faults.txt", text.ToString());

        void Tell(FormattableString when, Protocolist.Findings.Checked<AlcoholStrength> result)
        {
            Assert.Null(result.Value);
            var f = Assert.Single(result.Findings);
            text.Append(FormattableString.Invariant($"{FormattableString.Invariant(when)}\n  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n"));
        }
    }

    [Theory]
    [InlineData("ethanol", -20)]
    [InlineData("ethanol", 40)]
    [InlineData("isopropanol", 0)]
    [InlineData("isopropanol", 40)]
    public void The_tables_hold_to_their_last_degree(string id, double celsius) =>
        Assert.Empty(AlcoholStrength.FromDensity(SubstanceCatalogue.Bundled.Find(id)!, Density.FromKilogramsPerCubicMeter(900), Temperature.FromDegreesCelsius(celsius)).Findings);

    [Fact]
    public void Water_has_no_strength_by_density() =>
        Assert.StartsWith("The strength of water is not told by a density.", Assert.Throws<ArgumentException>(() => AlcoholStrength.FromDensity(Substance.Water, Density.FromKilogramsPerCubicMeter(900), Temperature.FromDegreesCelsius(20))).Message.ToString(), StringComparison.Ordinal);

    // A hair off the end by rounding is the end; more is no mixture. 998.20123 and 789.23912 kg/m³ at 20 °C.
    [Fact]
    public void The_ends_of_ethanol_take_rounding_and_no_more()
    {
        Assert.Equal(0, EthanolWater.MassFraction(998.2012300 + 5e-7, 20));
        Assert.True(double.IsNaN(EthanolWater.MassFraction(998.2012300 + 2e-6, 20)));
        Assert.Equal(1, EthanolWater.MassFraction(EthanolWater.PureAt20 - 5e-7, 20));
        Assert.True(double.IsNaN(EthanolWater.MassFraction(EthanolWater.PureAt20 - 2e-6, 20)));
        Assert.Equal(0, EthanolWater.MassFractionOfVolume(0));
        Assert.Equal(1, EthanolWater.MassFractionOfVolume(1));
        Assert.Equal(1, EthanolWater.MassFractionOfVolume(1 + 5e-10));
        Assert.Equal(0, EthanolWater.MassFractionOfVolume(-5e-10));
        Assert.True(double.IsNaN(EthanolWater.MassFractionOfVolume(1 + 3e-9)));
        Assert.True(double.IsNaN(EthanolWater.MassFractionOfVolume(-3e-9)));
    }

    [Fact]
    public void The_ends_of_isopropanol_are_its_tables()
    {
        Assert.Equal(0, IsopropanolWater.MassFractionOfVolume(0), 1e-12);
        Assert.Equal(1, IsopropanolWater.MassFractionOfVolume(1), 1e-12);
        Assert.True(double.IsNaN(IsopropanolWater.MassFractionOfVolume(-1e-9)));
        Assert.True(double.IsNaN(IsopropanolWater.MassFractionOfVolume(1 + 1e-9)));
        foreach (var celsius in (double[])[0, 20, 40])
        {
            Assert.Equal(0, IsopropanolWater.MassFraction(WaterDensity.Of(celsius), celsius), 1e-12);
            Assert.Equal(1, IsopropanolWater.MassFraction(IsopropanolWater.Density(1, celsius), celsius), 1e-12);
            Assert.True(double.IsNaN(IsopropanolWater.MassFraction(WaterDensity.Of(celsius) + 0.001, celsius)));
            Assert.True(double.IsNaN(IsopropanolWater.MassFraction(IsopropanolWater.Density(1, celsius) - 0.001, celsius)));
        }
    }

    // Mass fraction, °C, kg/m³, half the band: Lebo's table by its monotone curve, water's own expansion and the pure liquid's 1.08e-3 per K.
    [Theory]
    [InlineData(0.05, 20, 989.79060, 1.5)]
    [InlineData(0.25, 20, 962.39224, 1.5)]
    [InlineData(0.3, 30, 946.14111, 2.44955)]
    [InlineData(0.5, 10, 914.04748, 2.63928)]
    [InlineData(0.7, 35, 845.88369, 3.41474)]
    [InlineData(0.02, 0, 997.13922, 1.85948)]
    [InlineData(1, 40, 768.77385, 4.01792)]
    [InlineData(0, 40, 992.21521, 2.39873)]
    public void Isopropanol_has_the_worked_density_and_band(double p, double celsius, double density, double band)
    {
        Assert.Equal(density, IsopropanolWater.Density(p, celsius), 0.00001);
        Assert.Equal(band, IsopropanolWater.DensityError(p, celsius), 0.00001);
    }

    // CH2O, methanol, °C, kg/m³: Walker's tables 8 and 4, the expansion 6e-4 per K and unit of mass beyond water's own.
    [Theory]
    [InlineData(0.37, 0.12, 20, 1082.87993)]
    [InlineData(0.04, 0.013, 20, 1008.22109)]
    [InlineData(0.2, 0.07, 30, 1040.47144)]
    [InlineData(0.5, 0, 18, 1156.99810)]
    [InlineData(0, 0.1, 20, 981.19764)]
    [InlineData(0.1, 0.2, 5, 995.02808)]
    [InlineData(0.37, 0.12, 0, 1091.03631)]
    public void Formaldehyde_has_the_worked_density(double formaldehyde, double methanol, double celsius, double density) =>
        Assert.Equal(density, FormaldehydeWater.Density(formaldehyde, methanol, celsius), 0.0001);

    [Theory]
    [InlineData(1030, 0, 0.1020578)]
    [InlineData(1030, 0.12, 0.1849191)]
    [InlineData(1082.88, 0.12, 0.3700002)]
    [InlineData(1112.8, 0, 0.3732767)]
    public void Formaldehyde_of_a_density_has_the_worked_strength(double density, double methanol, double fraction) =>
        Assert.Equal(fraction, FormaldehydeWater.MassFractionOfDensity(density, methanol, 20), 1e-7);

    [Theory]
    [InlineData(300, 0, 0.2769656)]
    [InlineData(400.6656, 0.12, 0.3700000)]
    [InlineData(550, 0.12, 0.4898055)]
    public void Formaldehyde_of_so_many_grams_has_the_worked_strength(double grams, double methanol, double fraction) =>
        Assert.Equal(fraction, FormaldehydeWater.MassFractionOfGramsPerLitre(grams, methanol, 20), 1e-7);

    // The ends of the table at 20 °C: 998.20675 and 1155.85044 kg/m³, 0 and 577.92522 g/L without methanol.
    [Fact]
    public void Beyond_the_table_formaldehyde_has_no_strength()
    {
        Assert.Equal(0, FormaldehydeWater.MassFractionOfDensity(998.20675, 0, 20), 1e-7);
        Assert.Equal(0.5, FormaldehydeWater.MassFractionOfDensity(1155.85043, 0, 20), 1e-7);
        Assert.True(double.IsNaN(FormaldehydeWater.MassFractionOfDensity(998.2067, 0, 20)));
        Assert.True(double.IsNaN(FormaldehydeWater.MassFractionOfDensity(1155.8505, 0, 20)));
        Assert.Equal(0, FormaldehydeWater.MassFractionOfGramsPerLitre(0, 0, 20), 1e-12);
        Assert.Equal(0.5, FormaldehydeWater.MassFractionOfGramsPerLitre(577.92522, 0, 20), 1e-7);
        Assert.True(double.IsNaN(FormaldehydeWater.MassFractionOfGramsPerLitre(-0.001, 0, 20)));
        Assert.True(double.IsNaN(FormaldehydeWater.MassFractionOfGramsPerLitre(577.926, 0, 20)));
        Assert.True(double.IsNaN(FormaldehydeWater.MassFractionOfGramsPerLitre(double.NaN, 0, 20)));
    }

    // 1 + 3W/1000: 37 % is 1.111 g/mL.
    [Fact]
    public void Walkers_rule_is_three_thousandths_a_percent() => Assert.Equal(1111, FormaldehydeWater.WalkersRule(0.37), 1e-9);

    private static AlcoholStrength Strength(Substance alcohol, double density, double celsius) =>
        AlcoholStrength.FromDensity(alcohol, Density.FromKilogramsPerCubicMeter(density), Temperature.FromDegreesCelsius(celsius)).Value!;
}
