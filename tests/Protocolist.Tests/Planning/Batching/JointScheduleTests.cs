using NodaTime;
using Protocolist.Benches;
using Protocolist.Planning.Batching;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Batching;

/// <summary>Plans beside one another: two pairs of hands or one, one tub or two.</summary>
public class JointScheduleTests
{
    private const string Header = "specimen,group,mass (g),where,how-obtained,collected-by,found-on\n";

    private static readonly (string, string, string) Fixed = ("fixed", "{group: mammal}", "stages:\n  - {stage: task, id: look, hands-on: 1 h}\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 5, last: 24 h to 30 d, within: 30 d}\n  - {stage: house, id: house, fluid: formalin 10 %, ratio: 1}\n");

    private static Bench Place(int people, int tubs) => Bench($"zone: UTC\npeople: {people}\nstock:\n  - {{fluid: formalin 10 %, id: f, on-hand: 900 L}}\nvessels:\n  - {{id: tub, name: tub, inside: {{length: 60 cm, width: 30 cm, height: 30 cm}}, wall: polypropylene, lid: polypropylene, closure: loose-lid, count: {tubs}}}\n");

    private static List<List<(string Step, LocalDateTime From)>> Dates(Bench bench, int animals, params (string, string, string)[] protocols)
    {
        var shelf = Shelf(protocols.Length > 0 ? protocols : [Fixed]);
        var csv = Header + string.Concat(Enumerable.Range(1, animals).Select(i => $"A{i},mammal,1030,shore,found,A. Nobody,2027-02-28\n"));
        var joint = new JointSchedule(bench, Monday);
        return [.. Batch.Open(new StringReader(csv), "a.csv", new(new Planner(shelf), new PreparedBench(bench), Monday)).Value!.Rows().Select(r => joint.Add(r).Value!.Select(s => (s.StepId, s.Start.LocalDateTime)).ToList())];
    }

    [Fact]
    public void One_pair_of_hands_looks_at_one_after_the_other()
    {
        var dates = Dates(Place(1, 5), 3);
        Assert.Equal([new LocalTime(9, 0), new(10, 15), new(11, 30)], dates.Select(d => d[0].From.TimeOfDay).Order());
    }

    [Fact]
    public void Two_pairs_of_hands_look_at_two_at_once()
    {
        var dates = Dates(Place(2, 5), 2);
        Assert.Equal([new LocalTime(9, 0), new LocalTime(9, 0)], dates.Select(d => d[0].From.TimeOfDay));
    }

    [Fact]
    public void One_tub_is_free_again_when_the_soak_is_over()
    {
        var dates = Dates(Place(2, 1), 2);
        Assert.True(dates[1].Single(s => s.Step == "fix").From >= dates[0].Single(s => s.Step == "house").From, $"{dates[1][1]}");
        var two = Dates(Place(2, 2), 2);
        Assert.Equal(two[0].Single(s => s.Step == "fix").From, two[1].Single(s => s.Step == "fix").From);
    }

    [Fact]
    public void Titles_numbers_and_times_of_each_step_are_told()
    {
        var bench = Place(1, 2);
        var joint = new JointSchedule(bench, Monday);
        var row = Assert.Single(Batch.Open(new StringReader(Header + "A1,mammal,1030,shore,found,A. Nobody,2027-02-28\n"), "a.csv", new(new Planner(Shelf(Fixed)), new PreparedBench(bench), Monday)).Value!.Rows());

        var steps = joint.Add(row).Value!;

        Assert.Equal(["look", "fix", "house"], steps.Select(s => s.StepId));
        Assert.All(steps, s => Assert.Equal("A1", s.SpecimenId));
        Assert.Equal(row.Plan!.Steps.Select(s => s.Title.ToString()), steps.Select(s => s.Title));
        Assert.Equal(new LocalDateTime(2027, 3, 1, 10, 0), steps[0].End.LocalDateTime);
    }

    [Fact]
    public void Row_without_a_plan_is_passed_over()
    {
        var made = new JointSchedule(Place(1, 1), Monday).Add(new(1, 2, "X", null, []));

        Assert.Null(made.Value);
        Assert.Empty(made.Findings);
    }

    [Fact]
    public void Plan_without_dated_work_is_passed_over()
    {
        var bench = Place(1, 1);
        var row = Assert.Single(Batch.Open(new StringReader(Header + "A1,mammal,1030,shore,found,A. Nobody,2027-02-28\n"), "a.csv", new(new Planner(Shelf(("care", "{group: mammal}", "stages:\n  - {stage: inspect, id: look, every: 90 d}\n"))), new PreparedBench(bench), Monday)).Value!.Rows());
        var made = new JointSchedule(bench, Monday).Add(row);

        Assert.Null(made.Value);
        Assert.Empty(made.Findings);
    }

    [Fact]
    public void Five_hundred_plans_are_dated_and_the_next_is_told_once()
    {
        var bench = Place(2, 2);
        var shelf = Shelf(("quick", "{group: mammal}", "stages:\n  - {stage: task, id: look, hands-on: 1 min}\n"));
        var row = Assert.Single(Batch.Open(new StringReader(Header + "A1,mammal,1030,shore,found,A. Nobody,2027-02-28\n"), "a.csv", new(new Planner(shelf), new PreparedBench(bench), Monday)).Value!.Rows());
        var joint = new JointSchedule(bench, Monday);
        for (var i = 0; i < 500; i++) Assert.NotNull(joint.Add(row).Value);

        var full = joint.Add(row);
        Assert.Null(full.Value);
        Assert.Equal("warning schedule-full: the joint schedule holds 500 plans; the rest is not dated together; split the table by season or by urgency", Assert.Single(full.Findings).ToString());
        Assert.Empty(joint.Add(row).Findings);
        Assert.Null(joint.Add(row).Value);
    }
}
