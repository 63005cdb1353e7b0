using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Tests.Reference;

/// <summary>Penetration, warmth and depots against measured rates and worked tables.</summary>
public class PenetrationReferenceTests
{
    // d = K·√t worked for the rates of Medawar 1941, Baker 1958, Steicke et al. 2018 and Tellyesniczky 1926.
    [Theory]
    [InlineData(5.5, 5.5, 11.0, 26.9, 71.3, 100.8)]
    [InlineData(3.6, 3.6, 7.2, 17.6, 46.7, 66.0)]
    [InlineData(2.153, 2.2, 4.3, 10.5, 27.9, 39.5)]
    [InlineData(2.0, 2.0, 4.0, 9.8, 25.9, 36.7)]
    [InlineData(1.801, 1.8, 3.6, 8.8, 23.3, 33.0)]
    [InlineData(1.0, 1.0, 2.0, 4.9, 13.0, 18.3)]
    [InlineData(0.78, 0.8, 1.6, 3.8, 10.1, 14.3)]
    public void Depth_after_1_h_4_h_1_d_7_d_14_d(double k, double h1, double h4, double d1, double d7, double d14)
    {
        Assert.Equal(h1, Penetration.DepthMm(1, k), 0.06);
        Assert.Equal(h4, Penetration.DepthMm(4, k), 0.06);
        Assert.Equal(d1, Penetration.DepthMm(24, k), 0.06);
        Assert.Equal(d7, Penetration.DepthMm(7 * 24, k), 0.06);
        Assert.Equal(d14, Penetration.DepthMm(14 * 24, k), 0.06);
    }

    // t = (d/K)², hours, for the same rates.
    [Theory]
    [InlineData(5.5, 0.8, 3.3, 13.2, 3.4 * 24, 7.7 * 24, 13.8 * 24)]
    [InlineData(3.6, 1.9, 7.7, 30.9, 8.0 * 24, 18.1 * 24, 32.2 * 24)]
    [InlineData(2.153, 5.4, 21.6, 3.6 * 24, 22.5 * 24, 50.6 * 24, 89.9 * 24)]
    [InlineData(2.0, 6.25, 25, 4.2 * 24, 26.0 * 24, 58.6 * 24, 104.2 * 24)]
    [InlineData(1.801, 7.7, 30.8, 5.1 * 24, 32.1 * 24, 72.3 * 24, 128.5 * 24)]
    [InlineData(1.0, 25, 4.2 * 24, 16.7 * 24, 104 * 24, 234 * 24, 417 * 24)]
    [InlineData(0.78, 41, 6.8 * 24, 27.4 * 24, 171 * 24, 385 * 24, 685 * 24)]
    public void Time_to_5_10_20_50_75_100_mm(double k, double d5, double d10, double d20, double d50, double d75, double d100)
    {
        (double Mm, double Hours)[] printed = [(5, d5), (10, d10), (20, d20), (50, d50), (75, d75), (100, d100)];
        Assert.All(printed, p => Assert.Equal(p.Hours, Penetration.HoursToReach(p.Mm, k), Math.Max(0.06, p.Hours * 0.015)));
    }

    // Diffusion goes as T/η; viscosity of water from the CRC Handbook. 37 °C is printed as 1.24 and 0.65.
    [Theory]
    [InlineData(0, 0.72, 1.91)]
    [InlineData(4, 0.78, 1.65)]
    [InlineData(10, 0.86, 1.35)]
    [InlineData(15, 0.93, 1.16)]
    [InlineData(20, 1.00, 1.00)]
    [InlineData(25, 1.07, 0.87)]
    [InlineData(30, 1.14, 0.77)]
    [InlineData(37, 1.24, 0.65)]
    [InlineData(40, 1.28, 0.61)]
    public void Rate_and_time_factor_of_temperature(double celsius, double rate, double time)
    {
        var factor = Warmth.RateFactor(celsius);
        Assert.Equal(rate, factor, 0.0051);
        Assert.Equal(time, 1 / (factor * factor), 0.0085);
    }

    // Shrinking core with diffusion through the product layer (Levenspiel): a half and a third of the plane time.
    [Fact]
    public void Cylinder_takes_half_and_ball_a_third_of_the_plane_time()
    {
        Assert.Equal(27 * 24, Penetration.HoursToReach(71, 2, Penetration.Cylinder), 20.0); // 7 kg mammal as a cylinder: 27 d
        Assert.Equal(Penetration.HoursToReach(30, 2) / 3, Penetration.HoursToReach(30, 2, Penetration.Sphere), 9);
    }

    // Fox et al. 1985 (24 h at 22 °C, 18 h at 37 °C), Buesa and Peshkov (48 h at 20 to 22 °C is the optimum for blocks).
    [Theory]
    [InlineData(4, 48, 48)]
    [InlineData(15, 48, 48)]
    [InlineData(22, 24, 48)]
    [InlineData(25, 24, 48)]
    [InlineData(37, 18, 18)]
    public void Binding_takes_a_day_or_two(double celsius, double low, double high)
    {
        var binding = Warmth.Binding(Fixative.Formaldehyde, celsius);
        Assert.Equal((low, high), (binding.LowHours, binding.HighHours));
    }

    // The rates that were measured lie within the bands, and near their nominal values.
    [Theory]
    [InlineData(Tissue.Muscle, Fixative.Formaldehyde, 1.994)]
    [InlineData(Tissue.Viscera, Fixative.Formaldehyde, 2.153)]
    [InlineData(Tissue.Muscle, Fixative.StrongEthanol, 1.801)]
    [InlineData(Tissue.Viscera, Fixative.StrongEthanol, 2.113)]
    public void Rates_of_Steicke_2018(Tissue tissue, Enum fixative, double k) =>
        Assert.Equal(k, PenetrationRate.Of(tissue, (Fixative)fixative).Nominal, 0.06);

    // Practice against the formula with K = 2 and 24 to 48 h of binding: USGS OFR 93-104 (fish, 2 d to 1 week), and worked sizes.
    [Theory]
    [InlineData(9, 1.8)] // fish of 15 cm
    [InlineData(17, 4.0)] // fish of 30 cm, 300 g
    [InlineData(10.8, 2.2)] // mouse of 25 g
    [InlineData(24.7, 7.4)] // rat of 300 g, uncut
    [InlineData(30, 10.4)] // mammal of 7 kg, cut and injected
    public void Fixation_time_at_best(double depthMm, double days) =>
        Assert.Equal(days, Penetration.FixationTime(depthMm, Tissue.Muscle, Fixative.Formaldehyde).LowHours / 24, 0.06);

    // The single rate that fits museum practice is 1.4; 30 cm fish with K = 1 takes 13 to 14 d.
    [Fact]
    public void Fixation_time_likely_and_safe()
    {
        var fish = Penetration.FixationTime(17, Tissue.Muscle, Fixative.Formaldehyde);
        Assert.InRange(fish.HighHours / 24, 13, 14.1);
        Assert.Equal(17 / 1.414 * (17 / 1.414) + 36, fish.NominalHours, 0.5);
    }

    // Practice fit: days = 0.5·(R/5)². 10 mm: 2 d; 25 mm: 12.5 d; 40 mm: 32 d.
    [Theory]
    [InlineData(10, 2)]
    [InlineData(25, 12.5)]
    [InlineData(40, 32)]
    [InlineData(71, 60)]
    public void Half_thickness_rule(double depthMm, double days) => Assert.Equal(days * 24, RulesOfThumb.For(depthMm)[0].Hours, 6);

    // "1 mm in the first hour, then 1 mm per 3 h" promises 57 mm in a week where K = 2 reaches 26.
    [Fact]
    public void One_then_a_third_is_said_to_over_promise_after_a_day()
    {
        Assert.Equal(7 * 24, RulesOfThumb.For(56.7)[1].Hours, 1.0);
        Assert.True(RulesOfThumb.For(26)[1].OverPromises);
        Assert.False(RulesOfThumb.For(8)[1].OverPromises);
    }

    // r = (3v/(4πφ))^(1/3), φ = 0.2.
    [Theory]
    [InlineData(1, 10.6)]
    [InlineData(2, 13.4)]
    [InlineData(5, 18.1)]
    [InlineData(10, 22.9)]
    public void Radius_of_a_depot(double siteMl, double radiusMm) => Assert.Equal(radiusMm, EffectiveDepth.DepotRadiusMm(siteMl), 0.06);

    // Wanted depth and volume a site give cubic spacing, tissue a site and dose per litre of tissue.
    [Theory]
    [InlineData(15, 2, 33, 35, 57)]
    [InlineData(15, 5, 38, 56, 89)]
    [InlineData(20, 5, 44, 85, 59)]
    [InlineData(20, 10, 49, 121, 83)]
    [InlineData(25, 10, 55, 169, 59)]
    public void Grid_of_depots(double depthMm, double siteMl, double spacingMm, double tissueMl, double dosePerLitre)
    {
        var spacing = EffectiveDepth.GridSpacingMm(depthMm, EffectiveDepth.DepotRadiusMm(siteMl));
        var tissue = Math.Pow(spacing / 10, 3);
        Assert.Equal(spacingMm, spacing, 0.5);
        Assert.Equal(tissueMl, tissue, 0.6);
        Assert.Equal(dosePerLitre, siteMl / tissue * 1000, 0.6);
        Assert.Equal(depthMm, EffectiveDepth.DepotsMm(siteMl, tissue), 6);
    }

    // T = 60, s = 30, p = 30: 30 → 15 mm. T = 140, s = 40, p = 100: 70 → 20 mm.
    [Theory]
    [InlineData(30, 30, 60, 15)]
    [InlineData(40, 100, 140, 20)]
    public void Parallel_slits(double spacingMm, double depthMm, double thicknessMm, double leftMm) =>
        Assert.Equal(leftMm, EffectiveDepth.CutsMm(spacingMm, spacingMm, depthMm, thicknessMm), 9);

    [Theory]
    [InlineData(15, 12.5)]
    [InlineData(20, 30)]
    [InlineData(5, 12.5)]
    public void Spacing_of_cuts_undoes_the_depth_they_leave(double depthMm, double cutMm) =>
        Assert.Equal(depthMm, EffectiveDepth.CutsMm(EffectiveDepth.CutSpacingMm(depthMm, cutMm), cutMm, 1000, 1000), 6);
}
