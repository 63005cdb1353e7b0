using Protocolist.Planning.Drafting;
using Protocolist.Protocols;

namespace Protocolist.Tests.Planning.Drafting;

/// <summary>What a step takes where its protocol is silent: common practice, so kept as a table.</summary>
public class StageDefaultsTests
{
    [Theory]
    [InlineData("sample", 30)]
    [InlineData("slit", 30)]
    [InlineData("inject", 30)]
    [InlineData("pose", 20)]
    [InlineData("rinse", 10)]
    [InlineData("immerse", 15)]
    [InlineData("wash", 15)]
    [InlineData("bath", 15)]
    [InlineData("mount", 30)]
    [InlineData("house", 30)]
    [InlineData("seal", 15)]
    [InlineData("label", 15)]
    [InlineData("hold", 10)]
    [InlineData("thaw", 10)]
    [InlineData("inspect", 10)]
    [InlineData("top-up", 10)]
    [InlineData("discard", 15)]
    [InlineData("task", 15)]
    public void Minutes_that_somebody_is_busy(string kind, int minutes) => Assert.Equal(minutes, StageDefaults.HandsOn(StageGrammar.Find(kind)!.Kind).TotalMinutes);

    [Theory]
    [InlineData("slit", 2)]
    [InlineData("inject", 2)]
    [InlineData("pose", 2)]
    [InlineData("immerse", 2)]
    [InlineData("rinse", 2)]
    [InlineData("wash", 1)]
    [InlineData("bath", 1)]
    [InlineData("mount", 1)]
    [InlineData("house", 1)]
    [InlineData("seal", 72)]
    [InlineData("label", 72)]
    [InlineData("sample", 12)]
    [InlineData("hold", null)]
    [InlineData("thaw", null)]
    [InlineData("task", null)]
    public void Hours_that_it_may_wait_after_the_step_before(string kind, int? hours) => Assert.Equal(hours, StageDefaults.Within(StageGrammar.Find(kind)!.Kind)?.TotalHours);

    [Fact]
    public void Every_kind_of_stage_keeps_somebody_busy_for_a_while_and_not_for_an_hour() =>
        Assert.All(StageGrammar.Kinds, k => Assert.InRange(StageDefaults.HandsOn(k.Kind).TotalMinutes, 10, 30));
}
