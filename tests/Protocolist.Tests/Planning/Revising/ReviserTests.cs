using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Tests.Planning.Revising;

public class ReviserTests
{
    private const string Begun = """
          - {step: keep-cold, begun: 2027-03-01T09:00, done: 2027-03-01T09:20}
          - {step: record, done: 2027-03-01T10:05}
          - {step: slits, done: 2027-03-01T11:00}
          - {step: inject-fixative, begun: 2027-03-01T11:00, done: 2027-03-01T13:10, used: 800 mL}
          - {step: pose, done: 2027-03-01T13:30}
          - {step: fix, begun: 2027-03-01T13:45}
        """;

    [Fact]
    public void A_soft_part_is_injected_again_at_once_and_the_body_soaks_on()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var seen = $"{Begun}\n  - {{step: fix, at: 2027-03-13T16:00, signs: [soft], place: left hindlimbs}}";
        var revised = SkerryPoint.Revise(plan, seen).Plan;
        var remedy = Assert.Single(revised.Steps, s => s.Id == "fix-re-inject-1");
        Assert.Equal(StageKind.Inject, remedy.Kind);
        Assert.Equal(plan.Step("fix")!.Fluid, remedy.Fluid);

        // Saturday afternoon is closed: Monday is the first that somebody is there.
        Assert.Equal(new LocalDateTime(2027, 3, 15, 8, 30), remedy.Start!.Value.LocalDateTime);
        Assert.True(revised.Step("fix")!.End!.Value.ToInstant() >= remedy.End!.Value.ToInstant() + Duration.FromHours(48));
        Assert.True(revised.End!.Value.ToInstant() > plan.End!.Value.ToInstant());
        Assert.Contains("soft (left hindlimbs)", remedy.Because.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_that_is_wished_for_later_keeps_the_body_in_alcohol_and_not_out_of_fixative()
    {
        var house = new LocalDate(2027, 12, 7);
        var wishes = PlanWishes.None with { Dates = PlanWishes.None.Dates.Add("house", house) };
        var plan = SkerryPoint.Read(new Planner(Watched.Shelf).Plan(new(Watched.Fish, SkerryPoint.Bench, PlanFixture.Monday) { Wishes = wishes }));
        var revised = Watched.Revise("  - {step: dose, begun: 2027-03-01T09:00, done: 2027-03-01T09:30}", plan);
        Assert.Equal(new LocalDate(2027, 3, 1), revised.Step("fix")!.Start!.Value.Date);
        Assert.Equal(house, revised.Step("house")!.Start!.Value.Date);
        Assert.DoesNotContain(revised.Findings, f => f.Id == "overdue");
        var told = Assert.Single(revised.Findings, f => f.Id == "step-runs-over");
        Assert.Equal("ethanol-50", told.Subject);
        Assert.StartsWith("give 'house' a day no later than", told.Remedy.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Sizes whose last bit a conversion of units changes, so that a plan from its file and one just made would differ where nobody sees it.</summary>
    [Theory]
    [InlineData("0.1958 g", "27.31 mm")]
    [InlineData("82.3 g", "15.57 cm")]
    [InlineData("0.0421 kg", "0.1293 m")]
    [InlineData("71.07 g", "147.9 mm")]
    public void The_same_log_again_changes_nothing(string mass, string length)
    {
        var fish = SpecimenReader.Read(new("fish.yaml", $"format: 1\nspecimen: SKP-2027-014\ngroup: bony-fish\nmass: {mass}\nlength: {length}\ncondition: chilled\n")).Value!;
        const string Seen = "  - {step: keep-cold, done: 2027-03-01T09:10}\n  - {step: record, begun: 2027-03-01T10:16}";
        var once = SkerryPoint.Revise(SkerryPoint.Plan(fish), Seen).Plan;
        var again = SkerryPoint.Revise(once, Seen);
        Assert.Empty(again.Changes);
        Assert.Equal(once.Revision, again.Plan.Revision);
        Assert.Equal(once.Steps.Select(s => (s.Id, s.Sequence)), again.Plan.Steps.Select(s => (s.Id, s.Sequence)));
    }

    [Fact]
    public void A_round_of_care_in_the_log_moves_no_work_and_is_ticked_off()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var round = plan.Care.Single(c => c.Id == "round");
        var after = round.On!.Value.PlusDays(3);

        var revised = SkerryPoint.Revise(plan, FormattableString.Invariant($"  - {{step: first-check, done: {round.On:uuuu-MM-dd}T10:00}}\n  - {{step: round, done: {after:uuuu-MM-dd}T10:00}}"));

        Assert.Equal((plan.Start, plan.End), (revised.Plan.Start, revised.Plan.End));
        Assert.DoesNotContain(revised.Plan.Care, c => c.Id == "first-check");
        Assert.True(revised.Plan.Care.Single(c => c.Id == "round").On > after);
        Assert.Contains(revised.Changes, c => c.ToString().StartsWith("first-check: is done", StringComparison.Ordinal));
    }

    [Fact]
    public void Gas_is_let_out_and_a_part_that_is_soft_too_is_injected_once()
    {
        var revised = Watched.Revise($"{Watched.InFix}  - {{step: fix, at: 2027-03-04T10:00, signs: [soft, bloated], place: abdomen}}");

        Assert.NotNull(revised.Step("fix-slit-and-inject-1"));
        Assert.Null(revised.Step("fix-re-inject-1"));
    }

    [Fact]
    public void What_is_done_stays_at_the_times_and_amounts_of_the_log()
    {
        var revised = SkerryPoint.Revise(SkerryPoint.Plan(SkerryPoint.Otter), Begun).Plan;
        var injected = revised.Step("inject-fixative")!;
        Assert.Equal(StepState.Done, injected.State);
        Assert.Equal(new LocalDateTime(2027, 3, 1, 13, 10), injected.End!.Value.LocalDateTime);
        Assert.Equal(800, injected.Volume!.Value.Milliliters, 3);
        Assert.Equal(StepState.Begun, revised.Step("fix")!.State);
        Assert.Equal(new LocalDateTime(2027, 3, 1, 13, 45), revised.Step("fix")!.Start!.Value.LocalDateTime);
    }

    [Fact]
    public void A_weak_bath_gets_another_change_and_lasts_on()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Wrasse);
        const string Baths = """
              - {step: wash, done: 2027-03-06T10:00}
              - {step: ethanol-30, begun: 2027-03-06T10:10, done: 2027-03-08T10:00}
              - {step: ethanol-50, begun: 2027-03-08T10:05, done: 2027-03-10T10:00}
              - {step: ethanol-75, begun: 2027-03-10T10:05}
              - {step: ethanol-75, at: 2027-03-11T10:00, readings: {strength: STRENGTH}}
            """;
        var weak = SkerryPoint.Revise(plan, Baths.Replace("STRENGTH", "58 %vol", StringComparison.Ordinal));
        var right = SkerryPoint.Revise(plan, Baths.Replace("STRENGTH", "74 %vol", StringComparison.Ordinal));
        Assert.Equal(plan.Step("ethanol-75")!.Changes + 1, weak.Plan.Step("ethanol-75")!.Changes);
        Assert.Equal(plan.Step("ethanol-75")!.Changes, right.Plan.Step("ethanol-75")!.Changes);
        Assert.True(weak.Plan.End!.Value.ToInstant() > right.Plan.End!.Value.ToInstant());
        Assert.Contains(weak.Changes, c => c.Step == "ethanol-75" && c.Why.ToString().Contains("58 %vol", StringComparison.Ordinal));
        Assert.True(weak.Plan.Recipes.First(r => r.For.Contains("ethanol-75")).Volume > right.Plan.Recipes.First(r => r.For.Contains("ethanol-75")).Volume);
    }

    [Theory]
    [InlineData(Begun)]
    [InlineData(Begun + "\n  - {step: fix, at: 2027-03-06T10:00, signs: [soft, bloated, floating, bloody, weak], readings: {ph: 5.2, temperature: 8 degC, level: 10 cm}}")]
    [InlineData(Begun + "\n  - {step: fix, done: 2027-03-12T10:00, signs: [soft]}")]
    [InlineData("  - {step: pose, skipped: it lay straight}")]
    public void The_same_log_twice_changes_nothing(string entries)
    {
        var once = SkerryPoint.Revise(SkerryPoint.Plan(SkerryPoint.Otter), entries);
        var read = SkerryPoint.Read(PlanJson.Read(new SourceText("plan.json", PlanJson.Write(once.Plan))));
        var twice = SkerryPoint.Revise(read, entries);
        Assert.NotEmpty(once.Changes);
        Assert.Empty(twice.Changes);
        Assert.Equal(PlanJson.Write(once.Plan), PlanJson.Write(twice.Plan));
    }

    [Fact]
    public void A_log_in_two_parts_ends_in_the_same_steps_as_the_whole_at_once()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var whole = $"{Begun}\n  - {{step: fix, at: 2027-03-06T10:00, signs: [soft]}}";
        var parts = SkerryPoint.Revise(SkerryPoint.Revise(plan, Begun).Plan, whole).Plan;
        var once = SkerryPoint.Revise(plan, whole).Plan;
        Assert.Equal(once.Steps.Select(s => (s.Id, s.Start, s.End, s.State)), parts.Steps.Select(s => (s.Id, s.Start, s.End, s.State)));
        Assert.Equal(2, parts.Revision);
    }

    [Fact]
    public void An_empty_log_leaves_the_plan_as_it_is()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var revised = SkerryPoint.Read(new Planner(SkerryPoint.Shelf).Revise(plan, WorkLog.Empty(plan.Specimen.Id), new PreparedBench(SkerryPoint.Bench)));
        Assert.Empty(revised.Changes);
        Assert.Same(plan, revised.Plan);
    }

    [Fact]
    public void A_step_left_out_stays_on_the_plan_as_left_out()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var revised = SkerryPoint.Revise(plan, "  - {step: pose, skipped: it lay straight}").Plan;
        Assert.Equal(plan.Steps.Select(s => s.Id), revised.Steps.Select(s => s.Id));
        Assert.Equal((StepState.Skipped, "it lay straight"), (revised.Step("pose")!.State, revised.Step("pose")!.Because.Text()));
    }

    [Fact]
    public void An_unknown_step_is_named_with_its_place_and_the_near_one()
    {
        var revised = new Planner(SkerryPoint.Shelf).Revise(SkerryPoint.Plan(SkerryPoint.Otter), SkerryPoint.Read(SkerryPoint.Log("  - {step: slts, done: 2027-03-01T11:00}")), new PreparedBench(SkerryPoint.Bench));
        Assert.Null(revised.Value);
        var finding = Assert.Single(revised.Findings, f => f.Id == "unknown-step");
        Assert.Equal((4, 12), (finding.Where.Line, finding.Where.Column));
        Assert.Equal("did you mean 'slits'?", finding.Remedy.ToString());
    }

    [Fact]
    public void A_plan_keeps_to_its_own_protocol_whatever_the_shelf_has_now()
    {
        var newer = Watched.Revised(2);
        var plan = PlanJson.Read(new("plan.json", PlanJson.Write(Watched.Plan))).Value!;
        var (byOwn, byNewer) = (new Planner(Watched.Shelf).Revise(plan, Watched.LogOf(Watched.InFix), new PreparedBench(SkerryPoint.Bench)), new Planner(newer).Revise(plan, Watched.LogOf(Watched.InFix), new PreparedBench(SkerryPoint.Bench)));
        Assert.Equal(PlanJson.Write(byOwn.Value!.Plan), PlanJson.Write(byNewer.Value!.Plan));
        Assert.DoesNotContain(byOwn.Findings, f => f.Id == "other-protocol-revision");
        Assert.Equal(Severity.Note, Assert.Single(byNewer.Findings, f => f.Id == "other-protocol-revision").Severity);

        // A shelf that has it no more is no hindrance either.
        var gone = new Planner(Shelf.Of()).Revise(plan, Watched.LogOf(Watched.InFix), new PreparedBench(SkerryPoint.Bench));
        Assert.Equal(PlanJson.Write(byOwn.Value!.Plan), PlanJson.Write(gone.Value!.Plan));
    }

    [Fact]
    public void A_protocol_that_this_version_cannot_read_is_not_followed_by_guess()
    {
        var plan = Watched.Plan with { Protocol = Watched.Plan.Protocol with { Files = [.. Watched.Plan.Protocol.Files.Select(f => f with { Text = f.Text.Replace("stage: immerse", "stage: perfuse-slowly") })] } };
        var revised = new Planner(Watched.Shelf).Revise(plan, Watched.LogOf(Watched.InFix), new PreparedBench(SkerryPoint.Bench));
        Assert.Null(revised.Value);
        Assert.Equal(["plan-protocol-unreadable", "unknown-stage-kind"], revised.Findings.Select(f => f.Id));
        Assert.True(revised.Findings[1].Where.IsKnown);
    }

    [Fact]
    public void A_delay_that_was_made_up_for_is_not_blamed_for_a_later_one()
    {
        // Cold an hour late; the rest of the morning on time again; then the body is posed late and lies in the fixative late.
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var (record, slits, pose) = (plan.Step("record")!, plan.Step("slits")!, plan.Step("pose")!);
        var revised = SkerryPoint.Revise(plan, $"""
              - {"{"}step: keep-cold, begun: 2027-03-01T09:05, done: {Clock(record.Start)}{"}"}
              - {"{"}step: record, done: {Clock(record.End)}{"}"}
              - {"{"}step: slits, done: {Clock(slits.End)}{"}"}
              - {"{"}step: inject-fixative, done: {Clock(pose.Start)}{"}"}
              - {"{"}step: pose, begun: {Clock(pose.Start)}, done: 2027-03-01T17:00{"}"}
            """);

        var moved = Assert.Single(revised.Changes, c => c.Step == "fix" && c.What.ToString().StartsWith("begins", StringComparison.Ordinal));
        Assert.Equal("'pose' was over 2027-03-01 17:00", moved.Why.ToString());
    }

    [Fact]
    public void A_cause_of_an_earlier_revision_is_not_named_again_for_a_later_one()
    {
        var soft = $"{Begun}\n  - {{step: fix, at: 2027-03-13T16:00, signs: [soft]}}\n  - {{step: fix-re-inject-1, done: 2027-03-15T09:00}}";
        var first = SkerryPoint.Revise(SkerryPoint.Plan(SkerryPoint.Otter), soft).Plan;
        var later = SkerryPoint.Revise(first, $"{soft}\n  - {{step: fix, done: 2027-03-20T09:00}}");

        Assert.Contains(first.Changes, c => c.Step == "seal" && c.Why.ToString().Contains("soft", StringComparison.Ordinal));
        Assert.DoesNotContain(later.Changes, c => c.Why.ToString().Contains("soft", StringComparison.Ordinal));
        Assert.Contains(later.Changes, c => c.Step == "seal" && c.Why.ToString() == "'fix' was over 2027-03-20 09:00");
    }

    [Fact]
    public void A_step_that_had_not_begun_when_the_log_ends_says_so()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var revised = SkerryPoint.Revise(plan, "  - {step: keep-cold, begun: 2027-03-01T09:00, done: 2027-03-01T09:10}\nwritten: 2027-03-01T14:00");

        Assert.All(revised.Changes.Where(c => c.Step == "record"), c => Assert.Equal("it had not begun by 2027-03-01 14:00, when the log ends", c.Why.ToString()));
    }

    [Fact]
    public void A_step_that_the_log_passes_over_counts_as_done_and_says_why()
    {
        var revised = SkerryPoint.Revise(SkerryPoint.Plan(SkerryPoint.Otter), "  - {step: slits, begun: 2027-03-01T10:10, done: 2027-03-01T11:00}");
        var record = revised.Plan.Step("record")!;

        Assert.Equal(StepState.Done, record.State);
        Assert.Contains(revised.Changes, c => c.Step == "record" && c.Why.ToString() == "a later step has begun, and the log does not say when this one was over");
        Assert.Contains(revised.Plan.Findings, f => f.Id == "not-logged" && f.Subject == "record");
    }

    [Fact]
    public void A_remedy_that_was_called_for_and_not_logged_is_due_after_the_log_and_taken_as_done_when_the_soak_is_over()
    {
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var seen = $"{Begun}\n  - {{step: fix, at: 2027-03-04T10:00, signs: [soft]}}";
        var open = SkerryPoint.Revise(plan, $"{seen}\n  - {{step: fix, at: 2027-03-09T10:00}}").Plan.Step("fix-re-inject-1")!;
        var over = SkerryPoint.Revise(plan, $"{seen}\n  - {{step: fix, done: 2027-03-15T09:00}}").Plan;

        Assert.Equal((StepState.Planned, new LocalDateTime(2027, 3, 9, 10, 0)), (open.State, open.Start!.Value.LocalDateTime));
        Assert.Equal(StepState.Done, over.Step("fix-re-inject-1")!.State);
        Assert.Contains(over.Findings, f => f.Id == "not-logged" && f.Subject == "fix-re-inject-1");
    }

    [Fact]
    public void Work_that_has_begun_at_night_goes_on_in_the_morning_with_a_warning()
    {
        var revised = SkerryPoint.Revise(SkerryPoint.Plan(SkerryPoint.Otter), "  - {step: pose, begun: 2027-03-03T05:10}").Plan;

        Assert.Equal(new LocalDateTime(2027, 3, 3, 8, 30), revised.Step("fix")!.Start!.Value.LocalDateTime);
        Assert.Contains(revised.Findings, f => f.Id == "overdue" && f.Subject == "pose" && f.Message.ToString().Contains("1 h 20 min after it began", StringComparison.Ordinal));
    }

    private static string Clock(OffsetDateTime? at) => at!.Value.LocalDateTime.ToString("uuuu-MM-dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
