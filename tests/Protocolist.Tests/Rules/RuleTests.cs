using Protocolist.Fluids;
using Protocolist.Planning.Measuring;
using Protocolist.Quantities;
using Protocolist.Rules;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Rules;

/// <summary>The rules by themselves, where they answer for more than a check's one point: over ranges, and step after step.</summary>
public class RuleTests
{
    private const double Day = 86400;

    [Theory]
    [InlineData(0, 50, false)]
    [InlineData(0, 50.1, true)]
    [InlineData(40, 70, false)]
    [InlineData(40, 70.1, true)]
    [InlineData(80, 20, false)]
    public void Alcohol_rises_by_fifty_points_from_water_and_by_thirty_later(double from, double to, bool isTooBig) =>
        Assert.Equal(isTooBig, new Rise(from, to).IsTooBig);

    /// <summary>Ahlander 2021 takes fishes from water by 20 and 50 to 80 %vol.</summary>
    [Fact]
    public void A_published_series_is_climbed_step_after_step()
    {
        var body = default(Ascent).In(StageKind.Immerse, 0);
        foreach (var percent in new[] { 20.0, 50, 80 })
        {
            Assert.False(body.To(StageKind.Bath, percent).IsTooBig);
            body = body.In(StageKind.Bath, percent);
        }

        Assert.Equal(new Ascent(80, true), body);
    }

    [Fact]
    public void What_alcohol_itself_fixes_starts_in_it_and_only_once()
    {
        Assert.Equal(0, default(Ascent).To(StageKind.Immerse, 80).Points);
        Assert.Equal(80, new Ascent(0, WasFixed: true).To(StageKind.Immerse, 80).Points);
        Assert.Equal(80, default(Ascent).To(StageKind.House, 80).Points);
    }

    /// <summary>Whatever may be the case within the ranges: the least ratio with the fewest changes decides.</summary>
    [Theory]
    [InlineData(3, 3, 0, 0, false)]
    [InlineData(2, 20, 0, 0, true)]
    [InlineData(1.5, 2, 1, 3, false)]
    [InlineData(1.5, 2, 0, 3, true)]
    [InlineData(2.995, 3, 0, 0, false)]
    [InlineData(1, double.PositiveInfinity, 2, 2, false)]
    public void Ratio_is_judged_by_its_least_with_the_fewest_changes(double low, double high, double fewest, double most, bool isBelow) =>
        Assert.Equal(isBelow, RatioFloor.IsBelow(RatioFloor.Least, RatioFloor.Volumes(new(low, high, Dimension.None), new(fewest, most, Dimension.None))));

    [Fact]
    public void Fixation_is_judged_by_the_least_time_and_a_film_passes_overnight()
    {
        var fish = BodyFixation.Of(MeasureOf(Mass.FromGrams(400))).Value!;
        var least = fish.Time.LowHours * 3600;
        Assert.True(FixationTime.IsTooShort(new(least * 0.99, least * 10, Dimension.OfTime), fish));
        Assert.False(FixationTime.IsTooShort(new(least * 1.01, double.PositiveInfinity, Dimension.OfTime), fish));

        var larva = BodyFixation.Of(MeasureOf(Mass.FromMilligrams(5))).Value!;
        Assert.True(larva.Slowest.DepthMm < 1 && larva.Time.LowHours > 12, "the larva is no film, or is fixed overnight anyway");
        Assert.False(FixationTime.IsTooShort(QuantityRange.Point(Day / 2, Dimension.OfTime), larva));
        Assert.True(FixationTime.IsTooShort(QuantityRange.Point(Day / 2.1, Dimension.OfTime), larva));
    }

    /// <summary>Sea squirts bear formalin for a day to a week (Lambert 2004); sponges never.</summary>
    [Theory]
    [InlineData("ascidian", 1, 7, false)]
    [InlineData("ascidian", 1, 8, true)]
    [InlineData("sponge", 1, 1, true)]
    [InlineData("bony-fish", 100, 100, false)]
    public void Spicules_suffer_if_they_may_lie_too_long(string group, double least, double most, bool suffers) =>
        Assert.Equal(suffers, SpiculesInFormalin.Suffers(Kinds.Bundled.Find(group)!, Fluid("neutral buffered formalin 10 %"), false, new(least * Day, most * Day, Dimension.OfTime)));

    [Theory]
    [InlineData("bivalve", nameof(Lime.Shell))]
    [InlineData("sea-cucumber", nameof(Lime.Spicules))]
    [InlineData("bony-fish", nameof(Lime.None))]
    public void Acid_formalin_dissolves_what_there_is_of_lime(string group, string lime)
    {
        Assert.Equal(Enum.Parse<Lime>(lime), AcidOnLime.Dissolves(Kinds.Bundled.Find(group)!, Fluid("formalin 10 %")));
        Assert.Equal(Lime.None, AcidOnLime.Dissolves(Kinds.Bundled.Find(group)!, Fluid("borax-buffered formalin 10 %")));
        Assert.Equal(Lime.None, AcidOnLime.Dissolves(Kinds.Bundled.Find(group)!, Fluid("ethanol 70 %vol")));
    }

    [Fact]
    public void Only_a_wash_in_water_takes_formalin_out()
    {
        var (formalin, water, ethanol) = (Fluid("formalin 10 %"), Fluid("tap water"), Fluid("ethanol 50 %vol"));
        Assert.True(WashBeforeAlcohol.HoldsFormalin(false, StageKind.Inject, formalin));
        Assert.True(WashBeforeAlcohol.HoldsFormalin(true, StageKind.Bath, water));
        Assert.True(WashBeforeAlcohol.HoldsFormalin(true, StageKind.Wash, ethanol));
        Assert.False(WashBeforeAlcohol.HoldsFormalin(true, StageKind.Wash, water));
        Assert.True(WashBeforeAlcohol.IsMissing(true, ethanol));
        Assert.False(WashBeforeAlcohol.IsMissing(true, water));
        Assert.False(WashBeforeAlcohol.IsMissing(false, ethanol));
    }

    /// <summary>A body of as much water as the jar holds of 80 %vol ends near 40 %vol: half and half, a little more for the contraction.</summary>
    [Fact]
    public void Jar_at_rest_shares_its_alcohol_with_the_water_of_the_body()
    {
        var jar = StrengthAtRest.Of(Length.FromMillimeters(5), Volume.FromMilliliters(100), [(new(Fluid("ethanol 80 %vol"), Volume.FromMilliliters(100)), Duration.FromDays(365))]);
        Assert.InRange(jar.Low, 40, 42);
        Assert.Equal(0, jar.InsideSlow);
        Assert.True(StrengthAtRest.IsBelow(65, jar));
        Assert.False(StrengthAtRest.IsBelow(jar.Low + 0.49, jar));
    }

    [Theory]
    [InlineData("ethanol 70 %vol", false, nameof(KeepingFault.None))]
    [InlineData("ethanol 96 %vol", false, nameof(KeepingFault.OutOfBand))]
    [InlineData("ethanol 96 %vol", true, nameof(KeepingFault.None))]
    [InlineData("ethanol 49 %vol", true, nameof(KeepingFault.DoesNotPreserve))]
    [InlineData("isopropanol 45 %vol", true, nameof(KeepingFault.None))]
    [InlineData("isopropanol 29 %vol", false, nameof(KeepingFault.DoesNotPreserve))]
    [InlineData("neutral buffered formalin 10 %", false, nameof(KeepingFault.None))]
    [InlineData("neutral buffered formalin 2 %", false, nameof(KeepingFault.MouldsOrHardens))]
    [InlineData("sea water", false, nameof(KeepingFault.Water))]
    public void Fluid_to_keep_in_has_its_fault_named(string fluid, bool isForDna, string fault) =>
        Assert.Equal(Enum.Parse<KeepingFault>(fault), KeepingStrength.Of(Fluid(fluid), isForDna));

    [Fact]
    public void Bodies_bear_hours_by_how_they_came_and_lie()
    {
        Assert.Equal([12, 12, 12, 72, 24], new Condition?[] { null, Condition.Fresh, Condition.Bloated, Condition.Chilled, Condition.Thawed }.Select(c => HoursBorne.Unfixed(c).TotalHours));
        Assert.Equal([72, 72, 24], new[] { 0, 8, 8.1 }.Select(c => HoursBorne.Held(c).TotalHours));
    }

    private static Fluid Fluid(string name) => Protocolist.Fluids.Fluid.Read(name).Value!;

    private static BodyMeasure MeasureOf(Mass mass) => MeasurePass.Run(new() { Id = "x", Group = "bony-fish", Mass = mass }, Kinds.Bundled).Value!;
}
