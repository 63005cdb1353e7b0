using System.Globalization;
using System.Text;
using Protocolist.Planning.Revising;
using Protocolist.Plans;

namespace Protocolist.Tests.Planning.Revising;

/// <summary>What a revision says and does about signs and readings.</summary>
public class RemediesTests
{
    [Fact]
    public void What_each_sign_calls_for_was_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var sign in new[] { "soft", "bloated", "floating", "dry", "cloudy", "oily", "smelling", "slipping", "bloody" })
            Watched.Tell(text, $"{sign}, seen in the fixative", $"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, signs: [{sign}], place: abdomen}}");
        foreach (var sign in new[] { "soft", "cloudy", "smelling", "bloody" })
            Watched.Tell(text, $"{sign}, seen when it is taken out of the fixative", $"{Watched.InFix}  - {{step: fix, done: 2027-03-10T10:00, signs: [{sign}]}}");
        foreach (var sign in new[] { "weak", "shrunken", "smelling", "soft" })
            Watched.Tell(text, $"{sign}, seen in the second bath", $"{Watched.InBath}  - {{step: ethanol-50, at: 2027-03-11T16:00, signs: [{sign}]}}");
        Watched.Tell(text, "shrunken, seen when it is taken out of the second bath", $"{Watched.InBath}  - {{step: ethanol-50, done: 2027-03-12T16:00, signs: [shrunken]}}");
        Watched.Tell(text, "shrunken, in isopropanol", $"{Watched.InBath}  - {{step: ethanol-50, at: 2027-03-11T16:00, signs: [shrunken]}}", Watched.Made(("alcohol", "isopropanol")));
        Watched.Tell(text, "cloudy twice", $"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, signs: [cloudy]}}\n  - {{step: fix, at: 2027-03-05T10:00, signs: [cloudy]}}");
        Watched.Tell(text, "soft and cloudy at once", $"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, signs: [soft, cloudy]}}");
        KeptText.Holds("Planning/Revising/kept/signs.txt", text.ToString());
    }

    [Fact]
    public void What_each_reading_calls_for_was_read_and_kept()
    {
        var text = new StringBuilder();
        InFix("acid", "ph: 5.2");
        InFix("cold", "temperature: 8 degC");
        InFix("low", "level: 5 cm");
        InBath("weak", "at: 2027-03-11T16:00", "strength: 31 %vol");
        InBath("weak by mass", "at: 2027-03-11T16:00", "strength: 25 %mass");
        InBath("weak by density, at 15 °C", "at: 2027-03-11T16:00", "density: 960 kg/m3, temperature: 15 degC");
        InBath("weak by density, at the bench's own temperature", "at: 2027-03-11T16:00", "density: 960 kg/m3");
        InBath("strong enough", "at: 2027-03-11T16:00", "strength: 48 %vol");
        InBath("weak when it was taken out", "done: 2027-03-12T16:00", "strength: 31 %vol");
        InBath("a low level when it was taken out", "done: 2027-03-12T16:00", "level: 2 cm");
        Watched.Tell(text, "weak in isopropanol, by mass", $"{Watched.InBath}  - {{step: ethanol-50, at: 2027-03-11T16:00, readings: {{strength: 25 %mass}}}}", Watched.Made(("alcohol", "isopropanol")));
        Watched.Tell(text, "weak in the jar", $"{Watched.InBath}  - {{step: ethanol-50, done: 2027-03-12T16:00}}\n  - {{step: house, begun: 2027-03-15T09:00, done: 2027-03-15T09:30, readings: {{strength: 60 %vol}}}}");
        KeptText.Holds("Planning/Revising/kept/readings.txt", text.ToString());

        void InFix(string of, string reading) => Watched.Tell(text, $"{of}: {reading}", $"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, readings: {{{reading}}}}}");
        void InBath(string of, string at, string reading) => Watched.Tell(text, $"{of}: {reading}", $"{Watched.InBath}  - {{step: ethanol-50, {at}, readings: {{{reading}}}}}");
    }

    /// <summary>Formalin of pH 6 does, below it does not; a jar of 70 %vol does at 67, three points below, and not at less.</summary>
    [Theory]
    [InlineData("ph: 6", false)]
    [InlineData("ph: 5.99", true)]
    public void Formalin_is_changed_below_ph_6(string reading, bool isRemedied) =>
        Assert.Equal(isRemedied, Watched.Revise($"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, readings: {{{reading}}}}}").Step("fix-skim-and-change-1") is not null);

    [Theory]
    [InlineData("67 %vol", false)]
    [InlineData("66.9 %vol", true)]
    public void A_jar_is_brought_back_to_strength_where_it_reads_more_than_three_points_too_weak(string strength, bool isRemedied) => Assert.Equal(
        isRemedied,
        Watched.Revise($"{Watched.InBath}  - {{step: ethanol-50, done: 2027-03-12T16:00}}\n  - {{step: house, begun: 2027-03-15T09:00, done: 2027-03-15T09:30, readings: {{strength: {strength}}}}}").Step("house-restore-strength-1") is not null);

    /// <summary>
    /// A bath of 50 %vol on a fish that comes from 30 %vol: the fish's water at 30 and the bath's volume at 50 add up. 300 g of fish at the density and water share
    /// of its group; the bath may read three points less than that.
    /// </summary>
    [Fact]
    public void A_bath_is_weak_where_the_water_of_the_body_does_not_explain_its_reading()
    {
        var group = Protocolist.Specimens.Kinds.Bundled.Find("bony-fish")!;
        var water = 300 / group.DensityKgPerM3.Nominal / 1e3 * group.WaterFraction.Nominal;
        var bath = Watched.Plan.Step("ethanol-50")!.Volume!.Value.CubicMeters;
        var limit = (((50 * bath) + (30 * water)) / (bath + water)) - 3;
        Assert.Equal(0, Changes(limit + 0.01));
        Assert.Equal(1, Changes(limit - 0.01));

        static int Changes(double strength) =>
            Watched.Revise(string.Create(CultureInfo.InvariantCulture, $"{Watched.InBath}  - {{step: ethanol-50, at: 2027-03-11T16:00, readings: {{strength: {strength:0.0000} %vol}}}}")).Step("ethanol-50")!.Changes;
    }

    /// <summary>Missing is what stands between two levels in a tub of 130 by 40 cm: 5200 cm2, so 520 mL for each millimetre; half a centimetre is not seen.</summary>
    [Fact]
    public void A_low_level_is_filled_up_by_what_is_missing()
    {
        var low = Top(50)!;
        var level = double.Parse(low.Because.Text().Split("where ")[1].Split(" mm")[0], CultureInfo.InvariantCulture);
        Assert.Equal((level - 50) * 520, low.Volume!.Value.Milliliters, 0.5 * 520);
        Assert.Equal(10 * 520, low.Volume.Value.Milliliters - Top(60)!.Volume!.Value.Milliliters, 6);
        Assert.Null(Top(level - 4.4));
        Assert.NotNull(Top(level - 5.6));

        static Step? Top(double mm) => Watched.Revise(string.Create(CultureInfo.InvariantCulture, $"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, readings: {{level: {mm:0.0} mm}}}}")).Step("fix-top-up-1");
    }

    [Fact]
    public void A_warm_reading_shortens_nothing_and_a_cold_one_lengthens()
    {
        var plain = Watched.Revise(Watched.InFix).Step("fix")!;
        var (warm, cold) = (Read("30 degC"), Read("8 degC"));
        Assert.Equal((plain.End, ""), (warm.End, warm.Because.Text()));
        Assert.True(cold.End!.Value.ToInstant() > plain.End!.Value.ToInstant());
        Assert.Equal("the fluid read 8 °C 2027-03-04 10:00, and fixes more slowly in the cold", cold.Because.Text());

        static Step Read(string temperature) => Watched.Revise($"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, readings: {{temperature: {temperature}}}}}").Step("fix")!;
    }

    /// <summary>For a part without a figure a fifth of the whole dose; for one that the plan dosed, its own.</summary>
    [Fact]
    public void What_is_injected_again_is_the_parts_own_dose_or_a_fifth_of_all()
    {
        var dose = Watched.Plan.Step("dose")!;
        Assert.Equal(dose.Volume!.Value.Milliliters / 5, Again("nowhere in particular"), 0.001);
        Assert.Equal(dose.Volume.Value.Milliliters / 5, Again(""), 0.001);
        foreach (var site in dose.Sites) Assert.Equal(dose.Sites.First(s => s.Region == site.Region).Total.Milliliters, Again($"left {site.Region}"), 0.002);

        static double Again(string place) =>
            Watched.Revise($"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, signs: [soft]{(place.Length > 0 ? $", place: {place}" : "")}}}").Step("fix-re-inject-1")!.Volume!.Value.Milliliters;
    }

    /// <summary>Two days at the least after something was put right, or the protocol's rhythm where that is longer: here three days.</summary>
    [Fact]
    public void A_soak_goes_on_for_the_rhythm_of_looking_after_it_was_put_right()
    {
        var revised = Watched.Revise($"{Watched.InFix}  - {{step: fix, at: 2027-03-10T10:00, signs: [soft]}}");
        Assert.Equal(revised.Step("fix-re-inject-1")!.End!.Value.ToInstant() + NodaTime.Duration.FromDays(3), revised.Step("fix")!.End!.Value.ToInstant());
        var bath = Watched.Revise($"{Watched.InBath}  - {{step: ethanol-50, at: 2027-03-11T16:00, signs: [soft]}}");
        Assert.True(bath.Step("ethanol-50")!.End!.Value.ToInstant() >= bath.Step("ethanol-50-re-inject-1")!.End!.Value.ToInstant() + NodaTime.Duration.FromHours(48));
    }

    [Fact]
    public void Later_of_two_moments()
    {
        var (early, late) = (NodaTime.Instant.FromUnixTimeSeconds(0), NodaTime.Instant.FromUnixTimeSeconds(60));
        Assert.Equal((late, late, late), (SignRules.Later(early, late), SignRules.Later(late, early), SignRules.Later(null, late)));
    }
}
