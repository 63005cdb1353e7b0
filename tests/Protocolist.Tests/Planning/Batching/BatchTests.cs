using Protocolist.Findings;
using Protocolist.Planning.Batching;
using Protocolist.Tests.Planning.Provisioning;

namespace Protocolist.Tests.Planning.Batching;

public class BatchTests
{
    private static readonly Protocolist.Benches.Bench Bench = Station.With("""
        stock:
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 0 L, packs: [{size: 1 L, price: 12 EUR}, {size: 20 L, price: 100 EUR}]}
          - {consumable: nitrile gloves, id: gloves, on-hand: 0, packs: [{size: 100, price: 8 EUR}]}
        """);

    private static Checked<Batch> Open(string csv) => Batch.Open(new StringReader(csv), "finds.csv", new(new Planner(Station.Bundled), new PreparedBench(Bench), Station.Start));

    private static List<BatchRow> Rows(string csv, int skip = 0)
    {
        var opened = Open(csv);
        Assert.True(opened.Value is not null, string.Join('\n', opened.Findings));
        if (skip > 0) Assert.Null(opened.Value!.PassOver(Rows(csv).Take(skip).Select(r => r.Digest)));
        return [.. opened.Value!.Rows()];
    }

    [Fact]
    public void Rows_that_are_asked_for_again_are_no_empty_table()
    {
        var batch = Open("specimen,group,mass (g),length (mm)\nA,gastropod,14,38\n").Value!;
        Assert.Single(batch.Rows());
        Assert.Throws<InvalidOperationException>(() => batch.Rows());
    }

    [Fact]
    public void Terms_of_Darwin_Core_are_understood()
    {
        var row = Assert.Single(Rows("catalogNumber,class,scientificName,eventDate,locality,recordedBy,sex,lifeStage,individualCount,measuredMassInGrams,measuredLengthInMillimeters\nA-1,Gastropoda,Nucella lapillus,2027-02-27T10:00/2027-02-28,\"mole, seaward\",I. Varga,Unknown,Adult,2,14,38\n"));
        var specimen = row.Plan!.Specimen;
        Assert.Equal(("A-1", "Gastropoda", "Nucella lapillus", "mole, seaward", "I. Varga", 2), (specimen.Id, specimen.HigherTaxon, specimen.ScientificName, specimen.Where, specimen.CollectedBy, specimen.Count));
        Assert.Equal(14, specimen.Mass!.Value.Grams, 9);
        Assert.Equal(38, specimen.Length!.Value.Millimeters, 9);
        Assert.Equal(new NodaTime.LocalDate(2027, 2, 27), specimen.FoundOn);
        Assert.Equal("gastropod-marine", row.Plan.Protocol.Id);
    }

    [Fact]
    public void A_faulty_row_says_line_and_column_and_the_good_rows_are_planned()
    {
        var rows = Rows("specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,heavy,38\nC,gastropod,-3,38\nD,gastropod,12,36\n");
        Assert.Equal([true, false, false, true], rows.Select(r => r.Plan is not null));
        var fault = rows[1].Findings.First(f => f.Severity == Severity.Error);
        Assert.Equal((3, 13), (fault.Where.Line, fault.Where.Column));
        Assert.Contains(rows[2].Findings, f => f.Severity == Severity.Error && f.Where.Line == 4);
    }

    [Theory]
    [InlineData("group,mass (g)\ngastropod,1\n")]
    [InlineData("specimen,mass (g)\nA,1\n")]
    [InlineData("specimen,group\nA,gastropod\n")]
    public void A_missing_column_is_one_finding_and_nothing_is_planned(string csv)
    {
        var opened = Open(csv);
        Assert.Null(opened.Value);
        Assert.Equal("missing-column", Assert.Single(opened.Findings, f => f.Severity == Severity.Error).Id);
    }

    [Fact]
    public void Mixed_decimal_signs_are_found_in_their_row()
    {
        var rows = Rows("specimen;group;mass (g);length (mm)\nA;gastropod;14,5;38\nB;gastropod;14.5;38\nC;gastropod;9,5;31\n");
        Assert.Equal([true, false, true], rows.Select(r => r.Plan is not null));
        Assert.Contains(rows[1].Findings, f => f.Id == "mixed-decimal-signs" && f.Where.Line == 3 && f.Where.Column == 13);
        Assert.Equal(14.5, rows[0].Plan!.Specimen.Mass!.Value.Grams, 9);
    }

    [Fact]
    public void A_quoted_newline_is_one_cell_and_the_next_row_keeps_its_line()
    {
        var rows = Rows("specimen,group,mass (g),length (mm),notes\nA,gastropod,14,38,\"two\nlines\"\nB,gastropod,x,38,\n");
        Assert.Equal("two\nlines", rows[0].Plan!.Specimen.Notes);
        Assert.Equal(4, rows[1].Findings.First(f => f.Severity == Severity.Error).Where.Line);
    }

    [Fact]
    public void Rows_done_before_are_passed_over_and_none_is_lost()
    {
        const string Csv = "specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,13,37\nC,gastropod,12,36\n";
        Assert.Equal(["A", "B", "C"], Rows(Csv).Select(r => r.SpecimenId));
        Assert.Equal(["C"], Rows(Csv, skip: 2).Select(r => r.SpecimenId));
        Assert.Equal(3, Rows(Csv, skip: 2)[0].Number);
    }

    [Fact]
    public void Buying_together_is_cheaper_and_a_stopped_list_goes_on_as_if_it_had_not_stopped()
    {
        var rows = Rows("specimen,group,mass (g),length (mm)\n" + string.Concat(Enumerable.Range(1, 12).Select(n => $"S{n},gastropod,{10 + n},{30 + n}\n")));
        var (whole, half) = (new JointNeeds(), new JointNeeds());
        foreach (var row in rows) whole.Add(row.Plan!);
        foreach (var row in rows.Take(5)) half.Add(row.Plan!);
        var resumed = new JointNeeds(half.State);
        foreach (var row in rows.Skip(5)) resumed.Add(row.Plan!);
        var (list, again) = (whole.List(Bench, new(2027, 3, 1)), resumed.List(Bench, new(2027, 3, 1)));
        Assert.True(list.Cost! < list.ApartAtLeast!, $"{list.Cost} together, {list.ApartAtLeast} apart");
        Assert.Equal(list.Purchases.Select(p => (p.Item, p.Pack, p.Count, p.Price)), again.Purchases.Select(p => (p.Item, p.Pack, p.Count, p.Price)));
        Assert.Contains(list.Findings, f => f.Id == "not-enough-vessels");
    }

    [Fact]
    public void A_number_that_comes_again_names_both_rows_and_both_are_planned()
    {
        const string Csv = "specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,13,37\n A ,gastropod,12,36\nB,gastropod,x,36\nC,gastropod,12,36\n";
        var rows = Rows(Csv);
        var again = rows[2].Findings.Single(f => f.Id == "repeated-number");
        Assert.Equal((Severity.Warning, 4, 1), (again.Severity, again.Where.Line, again.Where.Column));
        Assert.Contains("row 3", again.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("row 1", again.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains(rows[3].Findings, f => f.Id == "repeated-number" && f.Message.ToString().Contains("of row 2", StringComparison.Ordinal));
        Assert.Equal([true, true, true, false, true], rows.Select(r => r.Plan is not null));
        Assert.Equal(2, rows.Count(r => r.Findings.Any(f => f.Id == "repeated-number")));

        // A run that was stopped after the second row knows it all the same.
        Assert.Contains(Rows(Csv, skip: 2)[0].Findings, f => f.Id == "repeated-number" && f.Message.ToString().Contains("of row 1", StringComparison.Ordinal));
    }

    /// <summary>With stock on the shelf each plan for itself may find enough there, while all together do not.</summary>
    [Fact]
    public void The_sum_of_plans_apart_takes_the_shelf_as_untouched_each_time_and_so_is_a_lower_bound()
    {
        var stocked = Station.With("""
            stock:
              - {fluid: ethanol 96 %vol, id: e96, on-hand: 3 L, packs: [{size: 1 L, price: 12 EUR}]}
              - {consumable: nitrile gloves, id: gloves, on-hand: 90, packs: [{size: 100, price: 8 EUR}]}
            """);
        const string Csv = "specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,13,37\nC,gastropod,12,36\nD,gastropod,12,36\nE,gastropod,12,36\n";
        var needs = new JointNeeds();
        foreach (var row in Batch.Open(new StringReader(Csv), "finds.csv", new(new Planner(Station.Bundled), new PreparedBench(stocked), Station.Start)).Value!.Rows()) needs.Add(row.Plan!);
        var list = needs.List(stocked, Station.Start.Date);
        Assert.Equal(0, list.ApartAtLeast!.Minor);
        Assert.True(list.Cost!.Minor > 0);
    }

    [Fact]
    public void Jars_beyond_the_free_ones_are_on_the_joint_list_where_they_have_a_price()
    {
        var bench = Bench with { Vessels = [.. Bench.Vessels.Select(v => v.Id == "jar-1" ? v with { Count = 2, Price = Protocolist.Quantities.Money.Of(3, "EUR"), LeadDays = 5 } : v)] };
        const string Csv = "specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,13,37\nC,gastropod,12,36\nD,gastropod,12,36\nE,gastropod,12,36\n";
        var needs = new JointNeeds();
        foreach (var row in Batch.Open(new StringReader(Csv), "finds.csv", new(new Planner(Station.Bundled), new PreparedBench(bench), Station.Start)).Value!.Rows()) needs.Add(row.Plan!);
        var list = needs.List(bench, Station.Start.Date);
        var jars = Assert.Single(list.Purchases, p => p.Item.ToString() == "jar-1");
        Assert.Equal((3, 900L, 5), (jars.Count, jars.Price!.Minor, jars.LeadDays));
        Assert.DoesNotContain(list.Findings, f => f.Id == "not-enough-vessels");
    }

    [Fact]
    public void Plans_on_one_bench_never_want_more_hands_than_there_are()
    {
        var bench = Bench with { People = 1 };
        var rows = Rows("specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,13,37\nC,gastropod,12,36\n");
        var schedule = new JointSchedule(bench, Station.Start);
        var steps = rows.SelectMany(r => schedule.Add(r).Value!.Select(s => (Step: s, HandsOn: r.Plan!.Step(s.StepId)!.HandsOn))).ToList();
        var work = steps.Where(s => s.HandsOn > NodaTime.Duration.Zero).Select(s => (From: s.Step.Start.ToInstant(), To: s.Step.Start.ToInstant() + s.HandsOn)).OrderBy(w => w.From).ToList();
        Assert.All(work.Zip(work.Skip(1)), w => Assert.True(w.First.To <= w.Second.From, $"{w.First} and {w.Second}"));
    }

    /// <summary>A choice is made in each plan whose protocol leaves it with that option, and in no other.</summary>
    [Fact]
    public void Choices_of_a_batch_are_made_where_a_protocol_leaves_them()
    {
        var shelf = PlanFixture.Shelf(
            ("snails", "{group: gastropod}", "choices:\n  keeping: [formalin, ethanol]\n  other: [a, b]\nstages:\n  - {stage: task, id: t, last: 1 h}\n"),
            ("slugs", "{group: slug}", "choices:\n  keeping: [formalin, isopropanol]\nstages:\n  - {stage: task, id: t, last: 1 h}\n"),
            ("mammals", "{group: mammal}", "stages:\n  - {stage: task, id: t, last: 1 h}\n"));
        BatchRequest asked = new(new Planner(shelf), new PreparedBench(Bench), Station.Start) { Choices = System.Collections.Immutable.ImmutableSortedDictionary<string, string>.Empty.Add("keeping", "ethanol") };
        const string Csv = "specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,slug,14,38\nC,mammal,30,90\n";

        List<BatchRow> rows = [.. Batch.Open(new StringReader(Csv), "finds.csv", asked).Value!.Rows()];

        Assert.Equal(["ethanol", "formalin", null], rows.Select(r => r.Plan!.Choices.GetValueOrDefault("keeping")));
        Assert.Equal("a", rows[0].Plan!.Choices["other"]);
        Assert.Equal("formalin", Batch.Open(new StringReader(Csv), "finds.csv", asked with { Choices = System.Collections.Immutable.ImmutableSortedDictionary<string, string>.Empty }).Value!.Rows().First().Plan!.Choices["keeping"]);
    }

    [Fact]
    public void What_a_plan_says_of_a_specimen_stands_at_its_row_and_what_has_a_place_keeps_it()
    {
        var shelf = PlanFixture.Shelf(("snails", "{group: gastropod}", "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: \"24 h - 10 h/g * specimen.mass\"}\n"));

        var row = Assert.Single(Batch.Open(new StringReader("specimen,group,mass (g),length (mm)\nA,gastropod,14,38\n"), "finds.csv", new(new Planner(shelf), new PreparedBench(Bench), Station.Start)).Value!.Rows());

        Assert.Equal("snails.yaml", Assert.Single(row.Findings, f => f.Id == "impossible-amount").Where.File);
        var selected = Assert.Single(row.Findings, f => f.Id == "protocol-selected").Where;
        Assert.Equal(("finds.csv", 2, 1), (selected.File, selected.Line, selected.Column));
    }

    [Fact]
    public void Number_that_comes_again_says_what_to_do() => Assert.Equal(
        "if it is one animal, strike out one row; if there are two, give each a number of its own before anything is labelled",
        Rows("specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nA,gastropod,13,37\n")[1].Findings.Single(f => f.Id == "repeated-number").Remedy.ToString());

    [Fact]
    public void An_unforeseen_fault_costs_its_row_only()
    {
        var batch = Batch.Open(
            new StringReader("specimen,group,mass (g),length (mm)\nA,gastropod,14,38\nB,gastropod,15,38\nC,gastropod,12,36\n"),
            "finds.csv",
            new(new Planner(Station.Bundled), new PreparedBench(Bench), Station.Start),
            request => request.Specimen.Id == "B" ? throw new InvalidCastException("a fault of ours") : (new Planner(Station.Bundled).Plan(request), null)).Value!;

        List<BatchRow> rows = [.. batch.Rows()];

        Assert.Equal([true, false, true], rows.Select(r => r.Plan is not null));
        var told = Assert.Single(rows[1].Findings, f => f.Id == "unforeseen-fault");
        Assert.Equal("finds.csv:3:1", told.Where.ToString());
        Assert.IsType<InvalidCastException>(rows[1].Fault);
    }
}
