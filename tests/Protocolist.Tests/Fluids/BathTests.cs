using System.Globalization;
using System.Text;
using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Fluids;

/// <summary>Baths of alcohol: mass balances worked apart from this code with OIML R 22 and Lebo's table.</summary>
public class BathTests
{
    private static readonly Volume Hundred = Volume.FromMilliliters(100);
    private static readonly Volume ThreeHundred = Volume.FromMilliliters(300);

    [Theory]
    [InlineData("ethanol", 20, new[] { 50.0, 70 }, new[] { 42.622, 63.268 })]
    [InlineData("isopropanol", 0, new[] { 70.0, 70 }, new[] { 53.180, 65.784 })]
    [InlineData("isopropanol", 20, new[] { 70.0, 70 }, new[] { 57.848, 66.960 })]
    public void Strengths_start_from_what_is_inside(string alcohol, double start, double[] baths, double[] after)
    {
        var result = AlcoholBaths.Strengths(Hundred, baths.Select(b => new AlcoholBath(Of(alcohol, b), ThreeHundred)), start);
        Assert.Equal(after.Length, result.Length);
        for (var i = 0; i < after.Length; i++) Assert.Equal(after[i], result[i], 0.001);
    }

    // After the first, second, third bath: 53.087, 65.814, 68.956 %vol of ethanol.
    [Theory]
    [InlineData(53.086, 1)]
    [InlineData(53.088, 2)]
    [InlineData(65.813, 2)]
    [InlineData(65.815, 3)]
    [InlineData(68.956, 3)]
    [InlineData(68.957, 4)]
    public void One_bath_more_is_needed_past_each_strength(double keeping, int baths) =>
        Assert.Equal(baths, AlcoholBaths.Needed(Hundred, new(Fluid.Ethanol(70), ThreeHundred), keeping));

    // A hundredth of the body's water a time: 50 baths leave (1/1.01)^50, 0.61, of the water.
    [Fact]
    public void Fifty_baths_are_counted_and_not_one_more()
    {
        var bath = new AlcoholBath(Fluid.Ethanol(70), Volume.FromMilliliters(10));
        var strengths = AlcoholBaths.Strengths(Hundred, Enumerable.Repeat(bath, 50));
        Assert.Equal(50, AlcoholBaths.Needed(Hundred, bath, strengths[49] - 1e-6));
        Assert.Null(AlcoholBaths.Needed(Hundred, bath, strengths[49] + 1e-6));
        Assert.Equal(1, AlcoholBaths.Needed(Hundred, bath, strengths[0] - 1e-6));
    }

    [Theory]
    [InlineData("ethanol", 0, 91.457)]
    [InlineData("ethanol", 50, 76.515)]
    [InlineData("isopropanol", 0, 91.636)]
    [InlineData("isopropanol", 50, 76.607)]
    public void The_last_bath_ends_on_seventy(string alcohol, double start, double strength) =>
        Assert.Equal(strength, AlcoholBaths.LastBath(Of(alcohol, 30), Hundred, ThreeHundred, 70, start)!.Value, 0.001);

    // 100 mL of water and 209.773 mL of pure ethanol make 70 %vol, of isopropanol 214.438 mL.
    [Theory]
    [InlineData("ethanol", 209.76, 209.79)]
    [InlineData("isopropanol", 214.42, 214.46)]
    public void Even_pure_alcohol_does_not_do_in_a_smaller_bath(string alcohol, double small, double large)
    {
        Assert.Null(AlcoholBaths.LastBath(Of(alcohol, 30), Hundred, Volume.FromMilliliters(small), 70));
        Assert.Equal(100, AlcoholBaths.LastBath(Of(alcohol, 30), Hundred, Volume.FromMilliliters(large), 70)!.Value, 0.02);
    }

    [Fact]
    public void Two_alcohols_in_a_series_and_what_is_no_alcohol_are_the_callers_bug()
    {
        AlcoholBath ethanol = new(Fluid.Ethanol(70), Hundred), isopropanol = new(Fluid.Isopropanol(70), Hundred), water = new(Fluid.Water, Hundred);
        var body = new SoakingBody(DiffusionShape.Slab, Length.FromMillimeters(5), Hundred);
        var day = Duration.FromDays(1);
        Assert.StartsWith("Ethanol and isopropanol are not mixed.", Assert.Throws<ArgumentException>(() => AlcoholBaths.Strengths(Hundred, [ethanol, isopropanol])).Message.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("Ethanol and isopropanol are not mixed.", Assert.Throws<ArgumentException>(() => TimedBaths.Follow(body, [(isopropanol, day), (ethanol, day)])).Message.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("water is no alcohol.", Assert.Throws<ArgumentException>(() => AlcoholBaths.Strengths(Hundred, [water])).Message.ToString(), StringComparison.Ordinal);
        Assert.Empty(AlcoholBaths.Strengths(Hundred, []));
        Assert.Empty(TimedBaths.Follow(body, []));
    }

    // A slab of 5 mm half-thickness, 12 hours each: Fo 0.5184 and 0.864, averages 0.774428 and 0.903851.
    [Fact]
    public void Timed_baths_come_as_far_as_worked()
    {
        var body = new SoakingBody(DiffusionShape.Slab, Length.FromMillimeters(5), Hundred);
        var half = Duration.FromHours(12);
        var outcomes = TimedBaths.Follow(body, [(new(Fluid.Ethanol(50), ThreeHundred), half), (new(Fluid.Ethanol(70), ThreeHundred), half)]);
        double[][] worked = [[0.774428, 0.903851, 29.5208, 34.2344, 37.6785, 37.6785], [0.774428, 0.903851, 53.6705, 58.8356, 60.1402, 61.2581]];
        Assert.Equal(worked.Length, outcomes.Length);
        for (var i = 0; i < worked.Length; i++)
        {
            var o = outcomes[i];
            double[] got = [o.ReachedSlow, o.ReachedFast, o.InsideSlow, o.InsideFast, o.JarSlow, o.JarFast];
            for (var k = 0; k < got.Length; k++) Assert.Equal(worked[i][k], got[k], k < 2 ? 0.000001 : 0.0002);
            Assert.Equal(half, o.Lasts);
        }
    }

    [Fact]
    public void A_series_too_short_for_its_body_is_told_as_read_and_kept()
    {
        var body = new SoakingBody(DiffusionShape.Slab, Length.FromMillimeters(5), Hundred);
        var half = Duration.FromHours(12);
        var text = new StringBuilder();
        foreach (var f in TimedBaths.Judge(body, TimedBaths.Follow(body, [(new(Fluid.Ethanol(50), ThreeHundred), half), (new(Fluid.Ethanol(70), ThreeHundred), half)])))
            text.Append(CultureInfo.InvariantCulture, $"{f.Severity.ToString().ToLowerInvariant()} {f.Id}\n  {f.Message.ToString()}\n  remedy: {f.Remedy.ToString()}\n");
        KeptText.Holds("Fluids/kept/bath-too-short.txt", text.ToString());
    }

    // At the slowest, 0.3e-9 m²/s, nine tenths of a 5 mm slab take 19.6316 h.
    [Theory]
    [InlineData(19.62, 1)]
    [InlineData(19.64, 0)]
    public void A_bath_is_too_short_up_to_nine_tenths_at_the_slowest(double hours, int findings)
    {
        var body = new SoakingBody(DiffusionShape.Slab, Length.FromMillimeters(5), Hundred);
        Assert.Equal(findings, TimedBaths.Judge(body, TimedBaths.Follow(body, [(new(Fluid.Ethanol(70), ThreeHundred), Duration.FromSeconds(hours * 3600))])).Length);
        Assert.Empty(TimedBaths.Judge(body, []));
        Assert.Empty(TimedBaths.Judge(body, default));
    }

    // 998.2067 g/L is water at 20 °C (CIPM).
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.75, 751.347)]
    [InlineData(1, 1001.796)]
    public void Tissue_water_is_a_share_of_the_mass(double share, double millilitres)
    {
        Assert.Equal(millilitres, TissueWater.Of(Mass.FromKilograms(1), share).Milliliters, 0.001);
        Assert.Equal(millilitres * 1.05, TissueWater.Of(Volume.FromLiters(1), Density.FromGramsPerMilliliter(1.05), share).Milliliters, 0.001);
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(1.001)]
    [InlineData(double.NaN)]
    public void A_body_is_not_more_than_all_water(double share) =>
        Assert.StartsWith("A share is 0 to 1.", Assert.Throws<ArgumentOutOfRangeException>(() => TissueWater.Of(Mass.FromKilograms(1), share)).Message.ToString(), StringComparison.Ordinal);

    // Equal volumes halve what is free: 1/2, 1/4, 1/8.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0.5)]
    [InlineData(3, 0.125)]
    public void Each_change_of_an_equal_volume_halves(int changes, double left) => Assert.Equal(left, Washout.Left(Hundred, Hundred, changes), 1e-12);

    [Theory]
    [InlineData(0.9, 1)]
    [InlineData(0.5, 1)]
    [InlineData(0.499, 2)]
    [InlineData(0.25, 2)]
    [InlineData(0.125, 3)]
    [InlineData(0.1249, 4)]
    public void Changes_are_as_many_as_halvings(double share, int changes) => Assert.Equal(changes, Washout.Changes(Hundred, Hundred, share));

    [Fact]
    public void A_wash_that_cannot_be_is_the_callers_bug()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Washout.Left(Hundred, Hundred, -1));
        foreach (var share in (double[])[0, 1, double.NaN])
            Assert.StartsWith("A share is between 0 and 1.", Assert.Throws<ArgumentOutOfRangeException>(() => Washout.Changes(Hundred, Hundred, share)).Message.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("A wash takes water.", Assert.Throws<ArgumentOutOfRangeException>(() => Washout.Changes(Hundred, Volume.Zero, 0.5)).Message.ToString(), StringComparison.Ordinal);
    }

    private static Fluid Of(string alcohol, double percent) => alcohol == "ethanol" ? Fluid.Ethanol(percent) : Fluid.Isopropanol(percent);
}
