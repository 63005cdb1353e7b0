using NodaTime;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Planning;

/// <summary>A step that must begin so long after death or collection. The bench opens at 08:00; the animal died on the first of March at 06:00 UTC and was found that day.</summary>
public class StartWindowTests
{
    private static readonly Instant Died = Instant.FromUtc(2027, 3, 1, 6, 0);

    private static readonly Bench Bench = BenchReader.Read(new SourceText("bench.yaml", "format: 1\nbench: b\nname: B\nzone: UTC\nhours: {mon-fri: 08:00 to 17:00}\n"), DateTimeZoneProviders.Tzdb).Value!;

    private static Plan Plan(string window, LocalDate found, int day = 1)
    {
        var text = $"format: 1\nprotocol: window\nrevision: 1\ntitle: Window\nfor:\n  group: bony-fish\nstages:\n  - stage: immerse\n    id: fix\n    fluid: ethanol 80 %vol\n    ratio: 10\n    last: 24 h\n    {window}\n  - stage: house\n    fluid: ethanol 70 %vol\n    ratio: 10\n";
        var shelf = Shelf.Of([new SourceText("window.yaml", text)]);
        Assert.Empty(shelf.Findings);
        var fish = new Specimen { Id = "W-1", Group = "bony-fish", Mass = Mass.FromGrams(20), Condition = Condition.Fresh, DiedAt = Died, FoundOn = found };
        return new Planner(shelf).Plan(new(fish, Bench, new LocalDateTime(2027, 3, day, 18, 0))).Value!;
    }

    [Theory]
    [InlineData("since-death: 26 h")]
    [InlineData("since-collection: 8 h")]
    public void Window_that_reaches_the_opening_is_kept(string window)
    {
        var plan = Plan(window, new(2027, 3, 1));

        Assert.Equal(new LocalDateTime(2027, 3, 2, 8, 0), plan.Step("fix")!.Start!.Value.LocalDateTime);
        Assert.DoesNotContain(plan.Findings, f => f.Id is "too-long-after-death" or "too-long-after-collection");
    }

    [Theory]
    [InlineData("since-death: 25 h")]
    [InlineData("since-collection: 7 h")]
    public void Window_that_ends_before_the_opening_is_a_clash(string window)
    {
        var plan = Plan(window, new(2027, 3, 1));

        Assert.Null(plan.Step("fix")!.Start);
        Assert.Contains("must start by", Assert.Single(plan.Findings, f => f.Id == "no-dates-fit").Message.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("since-death: 25 h", "too-long-after-death", "within 1 d 1 h of death")]
    [InlineData("since-collection: 7 h", "too-long-after-collection", "within 7 h of collection")]
    public void Window_that_is_over_before_the_start_is_told_and_binds_no_more(string window, string id, string says)
    {
        var plan = Plan(window, new(2027, 3, 1), day: 3);

        Assert.Equal(new LocalDateTime(2027, 3, 4, 8, 0), plan.Step("fix")!.Start!.Value.LocalDateTime);
        Assert.Contains(says, Assert.Single(plan.Findings, f => f.Id == id).Message.ToString(), StringComparison.Ordinal);
    }
}
