using System.Globalization;
using System.Text;
using Protocolist.Benches;
using Protocolist.Planning.Revising;
using Protocolist.Plans;

namespace Protocolist.Tests.Planning.Revising;

/// <summary>The account of what a revision changed, line by line.</summary>
public class ChangesTests
{
    [Fact]
    public void Every_line_of_an_account_was_read_and_kept()
    {
        var text = new StringBuilder();
        var plan = Watched.Plan;
        Tell("as planned, but for an hour", Watched.Try(Watched.InFix));
        Tell("another amount was used", Watched.Try("  - {step: dose, begun: 2027-03-01T09:00, done: 2027-03-01T09:30, used: 40 mL}\n"));
        Tell("a step left out", Watched.Try("  - {step: dose, skipped: the needle broke}\n"));
        Tell("the first and the last step left out", Watched.Try("  - {step: dose, skipped: no needle}\n  - {step: seal, skipped: no lid}\n"));
        Tell("the soak ended late", Watched.Try($"{Watched.InFix}  - {{step: fix, done: 2027-03-19T10:00}}"));
        Tell("the soak was not over when the log ends", Watched.Try($"{Watched.InFix}\nwritten: 2027-04-20T10:00"));
        Tell("the first step was late and not over when the log ends", Watched.Try("  - {step: dose, begun: 2027-03-02T09:00}\nwritten: 2027-03-02T16:00"));
        Tell("a later step has begun", Watched.Try("  - {step: ethanol-30, begun: 2027-03-12T10:00}\n"));
        Tell("a soft part, in two changes of the plan", Watched.Try($"{Watched.InFix}  - {{step: fix, at: 2027-03-08T10:00, signs: [soft]}}", Watched.Revise(Watched.InFix)));
        Tell("the soft part is taken back", Watched.Try(Watched.InFix, Watched.Revise($"{Watched.InFix}  - {{step: fix, at: 2027-03-08T10:00, signs: [soft]}}")));
        Tell("the log no longer says that it was done", Watched.Try("  - {step: dose, begun: 2027-03-01T09:00}\n", Watched.Revise("  - {step: dose, begun: 2027-03-01T09:00, done: 2027-03-01T09:30}\n")));
        Tell("the log says nothing any more", Watched.Try("  - {step: seal, skipped: no lid}\n", Watched.Revise("  - {step: dose, begun: 2027-03-01T09:00, done: 2027-03-01T09:30}\n")));
        Tell("nothing had begun when the log ends", Watched.Try("  - {step: seal, skipped: no lid}\nwritten: 2027-03-02T16:00"));
        Tell("the log says another time", Watched.Try("  - {step: dose, begun: 2027-03-01T10:00, done: 2027-03-01T10:40}\n", Watched.Revise("  - {step: dose, begun: 2027-03-01T09:00, done: 2027-03-01T09:30}\n")));
        Tell("another revision of the protocol, another bench and other clocks", new Planner(Watched.Revised(9)).Revise(plan, WorkLog.Empty(Watched.Fish.Id), new PreparedBench(SkerryPoint.BenchIn("Europe/Berlin") with { Name = "Dry laboratory" })));
        KeptText.Holds("Planning/Revising/kept/changes.txt", text.ToString());

        void Tell(string of, Protocolist.Findings.Checked<Revision> revised)
        {
            text.Append(CultureInfo.InvariantCulture, $"{of}: revision {revised.Value!.Plan.Revision}\n");
            foreach (var change in revised.Value.Changes) text.Append(CultureInfo.InvariantCulture, $"  {change}\n");
            foreach (var f in revised.Findings.Where(f => f.Id is "step-skipped" or "other-bench" or "other-zone" or "other-protocol-revision" or "not-logged"))
                text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}: {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
            text.Append('\n');
        }
    }

    /// <summary>What a bench does not list is bought in packs of just what is wanted, which differ by less than a person can weigh.</summary>
    [Fact]
    public void A_purchase_that_reads_as_before_is_none_to_tell()
    {
        static Plan Buying(long milligrams) => Watched.Plan with { Purchases = [new(Protocolist.Findings.Message.Text("borax"), new(AmountKind.Mass, milligrams), 1, null, 0)] };
        Assert.Empty(PlanDifference.Between(Buying(147_301), Buying(147_302)));
        Assert.Equal(
            ["buy 0 x 147.3 g of borax instead of 1, because the fluids needed have changed", "buy 1 x 239.3 g of borax instead of 0, because the fluids needed have changed"],
            PlanDifference.Between(Buying(147_301), Buying(239_300)).Select(c => c.ToString()));
    }

    [Fact]
    public void A_plan_without_dates_or_without_its_protocol_is_not_revised()
    {
        var dateless = new Planner(Watched.Shelf).Revise(Watched.Plan with { Start = null, EarliestStart = null }, WorkLog.Empty(Watched.Fish.Id), new PreparedBench(SkerryPoint.Bench));
        Assert.Null(dateless.Value);
        Assert.Equal(("plan-without-dates", "the plan has no start, so nothing can be moved", "make the plan again with a start"), (dateless.Findings[0].Id, dateless.Findings[0].Message.ToString(), dateless.Findings[0].Remedy.ToString()));
        Assert.Null(new Planner(Watched.Shelf).Revise(Watched.Plan with { Protocol = Watched.Plan.Protocol with { Id = "gone" } }, WorkLog.Empty(Watched.Fish.Id), new PreparedBench(SkerryPoint.Bench)).Value);
        Assert.NotNull(new Planner(Watched.Shelf).Revise(Watched.Plan with { EarliestStart = null }, WorkLog.Empty(Watched.Fish.Id), new PreparedBench(SkerryPoint.Bench)).Value);
    }

    [Fact]
    public void Steps_left_out_stand_where_they_stood()
    {
        var revised = Watched.Revise("  - {step: dose, skipped: no needle}\n  - {step: fix, skipped: fixed before}\n  - {step: seal, skipped: no lid}\n");
        Assert.Equal(Watched.Plan.Steps.Select(s => s.Id), revised.Steps.Select(s => s.Id));
        var dose = revised.Step("dose")!;
        Assert.Equal((StepState.Skipped, "no needle", null, null, null, 0), (dose.State, dose.Because.Text(), dose.Fluid, (object?)dose.Volume, dose.Vessel, dose.Changes));
    }

    /// <summary>A calendar takes an event as newer by its sequence: it rises for what moved, stays for what did not, and goes on where a step comes back.</summary>
    [Fact]
    public void Sequences_count_on_for_steps_that_changed_and_for_those_that_came_back()
    {
        var soft = $"{Watched.InFix}  - {{step: fix, at: 2027-03-08T10:00, signs: [soft]}}";
        var first = Watched.Revise(Watched.InFix);
        var second = Watched.Revise(soft, first);
        var third = Watched.Revise(Watched.InFix, second);
        var fourth = Watched.Revise(soft, third);
        Assert.Equal([1, 2, 3, 4], new[] { first, second, third, fourth }.Select(p => p.Revision));
        Assert.Equal([1, 1, 1, 1], new[] { first, second, third, fourth }.Select(p => p.Step("dose")!.Sequence));
        Assert.Equal([1, 2, 3, 4], new[] { first, second, third, fourth }.Select(p => p.Step("fix")!.Sequence));
        Assert.Equal(0, second.Step("fix-re-inject-1")!.Sequence);
        var gone = Assert.Single(third.Withdrawn);
        Assert.Equal(("fix-re-inject-1", "Inject the soft part", 1, second.Step("fix-re-inject-1")!.Start), (gone.Id, gone.Title.ToString(), gone.Sequence, gone.Start));
        Assert.Empty(fourth.Withdrawn);
        Assert.Equal(2, fourth.Step("fix-re-inject-1")!.Sequence);
        Assert.True(fourth.Step("fix")!.MostInspections >= second.Step("fix")!.MostInspections);
    }

    [Fact]
    public void A_cause_that_stood_there_before_is_not_new()
    {
        static Step Because(params string[] because) => Watched.Plan.Step("fix")! with { Because = [.. because.Select(b => Said.Of(b))] };
        Assert.Equal("b", DateCauses.NewCauses(Because("a"), Because("a", "b")).Text());
        Assert.Equal("", DateCauses.NewCauses(Because("a"), Because("a")).Text());
        Assert.Equal("c", DateCauses.NewCauses(Because("a"), Because("c")).Text());
        Assert.Equal("a", DateCauses.NewCauses(Because(), Because("a")).Text());
        Assert.Equal("a", DateCauses.NewCauses(null, Because("a")).Text());
    }

    [Fact]
    public void What_is_bought_and_what_it_comes_to_is_compared_by_pack_and_by_sum()
    {
        var plan = Watched.Plan;
        var before = plan with { Purchases = [Bought("ethanol 96 %vol", 5, 1), Bought("formalin", 1, 2)], Costs = new(Money(100), Money(50), null, Money(7)) };
        var after = plan with { Purchases = [Bought("ethanol 96 %vol", 5, 2), Bought("ethanol 96 %vol", 5, 1), Bought("ethanol 96 %vol", 1, 1)], Costs = new(Money(120), Money(50), Money(9), null) };
        Assert.Equal(
            [
                "buy 0 x 1 L of formalin instead of 2, because the fluids needed have changed",
                "buy 1 x 1 L of ethanol 96 %vol instead of 0, because the fluids needed have changed",
                "buy 3 x 5 L of ethanol 96 %vol instead of 1, because the fluids needed have changed",
                "to spend: 1.20 EUR instead of 1.00 EUR, because the steps have changed",
                "work: 0.09 EUR instead of not known, because the steps have changed",
                "disposal: not known instead of 0.07 EUR, because the steps have changed",
            ],
            PlanDifference.Between(before, after).Select(c => c.ToString()));

        static Protocolist.Quantities.Money Money(long cents) => Protocolist.Quantities.Money.Of(cents / 100m, "EUR");
    }

    [Fact]
    public void A_step_that_is_otherwise_now_says_so_in_each_respect()
    {
        var plan = Watched.Plan;
        var fix = plan.Step("fix")!;
        string[] Of(Func<Step, Step> change) => [.. PlanDifference.Between(plan, plan with { Steps = [.. plan.Steps.Select(s => s.Id == "fix" ? change(s) : s)] }).Select(c => c.ToString())];
        Assert.Empty(Of(s => s));
        Assert.Equal(["fix: its fluid is changed once instead of never, because the fluids were shared out anew"], Of(s => s with { Changes = 1 }));
        Assert.Equal(["fix: its fluid is changed 2 times instead of never, because so it is"], Of(s => s with { Changes = 2, Because = [Said.Of("so it is")] }));
        Assert.Equal([$"fix: takes no fluid instead of {fix.Fluid}, because the fluids were shared out anew"], Of(s => s with { Fluid = null }));
        Assert.Equal(["fix: takes ethanol 70 %vol instead of neutral buffered formalin 10 %, because the fluids were shared out anew"], Of(s => s with { Fluid = "ethanol 70 %vol" }));
        Assert.Equal(["fix: takes 1 L instead of " + Litres(fix) + ", because the fluids were shared out anew"], Of(s => s with { Volume = UnitsNet.Volume.FromLiters(1) }));
        Assert.Equal(["fix: takes nothing instead of " + Litres(fix) + ", because the fluids were shared out anew"], Of(s => s with { Volume = null }));
        Assert.Equal([$"fix: is in no vessel instead of {fix.Vessel}, because the fluids were shared out anew"], Of(s => s with { Vessel = null }));
        Assert.Equal(["fix: begins at no date instead of 2027-03-01 09:30, because the plan was made anew, and the log, the bench or the protocol is not as it was"], Of(s => s with { Start = null })[..1]);

        static string Litres(Step step) => Protocolist.Quantities.Measurable.Text(step.Volume!.Value.CubicMeters, Protocolist.Quantities.Dimension.OfVolume);
    }

    private static PlannedPurchase Bought(string item, double litres, int count) =>
        new(Protocolist.Findings.Message.Text(item), Amount.Of(UnitsNet.Volume.FromLiters(litres)), count, null, 0);
}
