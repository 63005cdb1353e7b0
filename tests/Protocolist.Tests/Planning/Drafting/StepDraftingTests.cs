using NodaTime;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

/// <summary>What a stage's settings come to in its step.</summary>
public class StepDraftingTests
{
    private static Step Of(string stage, string bench = "zone: UTC\n") => Plan(Mammal("1.03 kg"), Shelf(("one", "{group: mammal}", $"stages:\n  - {{{stage}, id: it}}\n")), bench).Value!.Step("it")!;

    [Theory]
    [InlineData("last: 24 h to 48 h", 24, 48.0)]
    [InlineData("last: 24 h", 24, 24.0)]
    [InlineData("last: at least 24 h", 24, null)]
    [InlineData("last: at most 24 h", 0, 24.0)]
    public void Length_of_a_soak(string last, double least, double? most)
    {
        var step = Of($"stage: immerse, fluid: formalin 10 %, ratio: 10, {last}");

        Assert.Equal((least, most), (step.Least.TotalHours, step.Most?.TotalHours));
        Assert.Equal(15, step.HandsOn.TotalMinutes);
    }

    [Fact]
    public void Work_without_a_length_lasts_as_long_as_hands_are_on_it()
    {
        var step = Of("stage: task, hands-on: 40 min to 50 min");

        Assert.Equal((40, 40, 40), (step.HandsOn.TotalMinutes, step.Least.TotalMinutes, step.Most!.Value.TotalMinutes));
        Assert.Equal((15, 15), (Of("stage: task").HandsOn.TotalMinutes, Of("stage: task").Least.TotalMinutes));
    }

    /// <summary>A body of 1 L: the low end of the ratio is what must be there.</summary>
    [Fact]
    public void Amount_is_the_low_end_of_the_ratio_times_the_volume()
    {
        Assert.Equal(10, Of("stage: immerse, fluid: formalin 10 %, ratio: 10 to 20, last: 24 h").Volume!.Value.Liters, 9);
        Assert.Equal(3, Of("stage: wash, fluid: tap water, ratio: at least 3, last: 24 h").Volume!.Value.Liters, 9);
        Assert.Equal(30, Of("stage: immerse, fluid: formalin 10 %, ratio: 30, last: 24 h").Volume!.Value.Liters, 9);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData(", changes: 3", 3)]
    [InlineData(", changes: 2 to 3", 2)]
    [InlineData(", changes: 1 to 4", 2)]
    [InlineData(", changes: 2000", 1000)]
    public void Changes_are_whole_and_the_middle_of_a_range(string changes, int whole) => Assert.Equal(whole, Of($"stage: wash, fluid: tap water, ratio: 3, last: 24 h{changes}").Changes);

    /// <summary>Over a body that lies 10 or 40 mm under the fluid in a tub of 60 by 30 cm: 30 mm more of it are 5.4 L.</summary>
    [Fact]
    public void Fluid_over_the_body_is_a_length_of_its_own()
    {
        const string Tub = "zone: UTC\nvessels:\n  - {id: tub, name: tub, inside: {length: 60 cm, width: 30 cm, height: 40 cm}, wall: polypropylene, lid: polypropylene, closure: snap-lid, count: 3}\n";
        double Litres(string over) => Plan(Mammal("1.03 kg"), Shelf(("one", "{group: mammal}", $"stages:\n  - {{stage: task, id: first}}\n  - {{stage: immerse, id: it, fluid: formalin 10 %, ratio: 1, last: 24 h}}\n  - {{stage: house, id: house, fluid: formalin 10 %, ratio: 1{over}}}\n")), Tub).Value!.Step("house")!.Volume!.Value.Liters;

        Assert.True(Litres(", below-brim: 200 mm") < Litres(", below-brim: 50 mm"));
        Assert.Equal(150 * 1.8 / 10, Litres(", below-brim: 50 mm") - Litres(", below-brim: 200 mm"), 6);
        Assert.True(Litres("") >= Litres(", below-brim: 50 mm"));
    }

    /// <summary>A century of soaking and more is cut off where calendars end; it is still dated or told, and nothing overflows.</summary>
    [Fact]
    public void Longest_time_is_a_century()
    {
        var step = Of("stage: immerse, fluid: formalin 10 %, ratio: 10, last: 90 y to 900 y");

        Assert.Equal(90 * 365, step.Least.TotalDays, 6);
        Assert.Equal(36525, step.Most!.Value.TotalDays, 6);
    }

    [Fact]
    public void Windows_after_the_step_before_hold()
    {
        var shelf = Shelf(("wait", "{group: mammal}", "stages:\n  - {stage: task, id: a, last: 1 h}\n  - {stage: task, id: b, last: 1 h, wait: 5 h}\n  - {stage: label, id: c, within: 1 h}\n"));
        var plan = Plan(Mammal("1 kg"), shelf).Value!;

        Assert.Equal([new LocalTime(9, 0), new(15, 0), new(16, 0)], plan.Steps.Select(s => s.Start!.Value.TimeOfDay));
    }

    [Fact]
    public void Signs_are_told_with_what_each_calls_for()
    {
        var step = Of("stage: immerse, fluid: formalin 10 %, ratio: 10, last: 10 d, look-for: [turned], watch: {every: 3 d, signs: {soft: re-inject, floating: press-out-air}}");

        Assert.Equal("turned", step.LookFor[0].ToString());
        Assert.Equal(4, step.LookFor.Length);
        Assert.Equal(Protocolist.Specimens.BodyKind.Whole.Look.ToString(), step.LookFor[3].ToString());
        Assert.StartsWith("soft (a part still gives under the finger): ", step.LookFor[1].ToString(), StringComparison.Ordinal);
        Assert.StartsWith("floating (the body floats): ", step.LookFor[2].ToString(), StringComparison.Ordinal);

        // Never closed: at the rhythm, and none a day before the end; before that after an hour and after a day, because it floats.
        Assert.Equal([1, 2, 4, 7], step.Inspections.Select(i => i.Date.Day));
        Assert.Equal(Protocolist.Plans.StepState.Planned, step.State);
    }

    [Fact]
    public void Fluid_that_nobody_knows_is_told_at_its_step()
    {
        var plan = Plan(Mammal("1 kg"), Shelf(("one", "{group: mammal}", "choices:\n  f: [formalin 10 %]\nstages:\n  - {stage: immerse, id: it, fluid: choice.f, ratio: 10, last: 24 h}\n"))).Value!;
        Assert.Equal("formalin 10 %", plan.Step("it")!.Fluid);
        Assert.Contains("it.volume", plan.Step("it")!.Figures);
        Assert.Contains("it.ratio", plan.Step("it")!.Figures);
    }
}
