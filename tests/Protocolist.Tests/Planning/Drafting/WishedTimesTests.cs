using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Drafting;

/// <summary>Soaks and days that somebody insists on, and what they cost. Work may start on Monday the first of March.</summary>
public class WishedTimesTests
{
    private const string Stages = "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h to 20 d}\n  - {stage: wash, id: wash, fluid: tap water, ratio: 3, last: 24 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

    private static Plan Of(PlanWishes wishes) =>
        new Planner(Shelf(("one", "{group: mammal}", Stages))).Plan(new(Mammal("60 g"), Bench("zone: UTC\n"), Monday) { Wishes = wishes }).Value!;

    private static PlanWishes Soak(string step, int hours) =>
        PlanWishes.None with { Soaks = ImmutableSortedDictionary<string, Duration>.Empty.Add(step, Duration.FromHours(hours)) };

    private static PlanWishes Day(string step, LocalDate day) => PlanWishes.None with { Dates = ImmutableSortedDictionary<string, LocalDate>.Empty.Add(step, day) };

    /// <summary>The planner soaks for as long as the core needs; a day is shorter, and its price is told.</summary>
    [Fact]
    public void A_pinned_soak_stays_and_its_price_is_told()
    {
        var (free, pinned) = (Of(PlanWishes.None), Of(Soak("fix", 24)));

        Assert.DoesNotContain(free.Findings, f => f.Id == "fixation-too-short");
        Assert.True(free.Step("fix")!.Least > Duration.FromDays(2));
        Assert.NotNull(free.Figure("decided.fix.last"));
        Assert.Equal(Duration.FromHours(24), pinned.Step("fix")!.Least);
        Assert.Contains(pinned.Findings, f => f.Id == "fixation-too-short");
        var price = string.Join('\n', pinned.Findings);
        Assert.Contains("it keeps the specimen less well", price, StringComparison.Ordinal);
        Assert.Equal(pinned, PlanJson.Read(new("plan.json", PlanJson.Write(pinned))).Value);
    }

    [Fact]
    public void A_soak_outside_the_protocol_is_told()
    {
        Assert.Contains(Of(Soak("fix", 12)).Findings, f => f is { Id: "soak-outside-protocol", Severity: Severity.Warning, Subject: "fix" });
        Assert.Contains(Of(Soak("fix", 600)).Findings, f => f.Id == "soak-outside-protocol");
        Assert.Equal(Duration.FromHours(600), Of(Soak("fix", 600)).Step("fix")!.Least);
        Assert.DoesNotContain(Of(Soak("fix", 120)).Findings, f => f.Id is "soak-outside-protocol" or "wishes-cost");
    }

    [Fact]
    public void A_pinned_day_is_kept_to()
    {
        var plan = Of(Day("fix", new(2027, 3, 4)));

        Assert.Equal(new LocalDate(2027, 3, 4), plan.Step("fix")!.Start!.Value.Date);
        Assert.Contains(plan.Findings, f => f.Id == "wishes-cost");
        Assert.Equal(new LocalDate(2027, 3, 1), Of(PlanWishes.None).Step("fix")!.Start!.Value.Date);
        Assert.Contains(Of(Day("fix", new(2027, 2, 4))).Findings, f => f is { Id: "no-dates-fit", Severity: Severity.Error });
    }

    /// <summary>A file that was changed by hand is held to what the request is held to.</summary>
    [Theory]
    [InlineData("\"fix\":24", "\"fix\":-5", "wishes.soakHours.fix")]
    [InlineData("\"fix\":24", "\"fix\":0", "wishes.soakHours.fix")]
    [InlineData("\"fix\":\"2027-03-04\"", "\"fix\":\"9999-12-31\"", "wishes.dates.fix")]
    public void A_plan_file_cannot_wish_what_nobody_can(string written, string instead, string path)
    {
        var plan = Of(Soak("fix", 24) with { Dates = Day("fix", new(2027, 3, 4)).Dates });
        var text = PlanJson.Write(plan).Replace(": ", ":", StringComparison.Ordinal);
        Assert.Contains(written, text, StringComparison.Ordinal);

        var read = PlanJson.Read(new("plan.json", text.Replace(written, instead, StringComparison.Ordinal)));

        Assert.Null(read.Value);
        Assert.Contains(read.Findings, f => f.Message.ToString().Contains(path, StringComparison.Ordinal));
    }

    [Fact]
    public void What_there_is_none_of_is_an_error()
    {
        Assert.Contains(Of(Soak("fx", 24)).Findings, f => f is { Id: "no-soak-wanted", Severity: Severity.Error });
        Assert.Contains(Of(Soak("house", 24)).Findings, f => f.Id == "no-soak-wanted");
        Assert.Contains(Of(Day("fx", new(2027, 3, 4))).Findings, f => f is { Id: "no-date-wanted", Severity: Severity.Error });
        Assert.Null(new Planner(Shelf(("one", "{group: mammal}", Stages))).Plan(new(Mammal("60 g"), Bench("zone: UTC\n"), Monday) { Wishes = Soak("fix", 0) }).Value);
    }
}
