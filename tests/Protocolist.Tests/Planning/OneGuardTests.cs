using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Planning;

/// <summary>Whatever door it comes in by, the same fault is told by the same id in the same words, and nothing is planned with it.</summary>
public class OneGuardTests
{
    private static readonly LocalDateTime Monday = new(2027, 3, 1, 9, 0);

    private static readonly Planner Bundled = new(Shelf.Bundled());

    private static readonly Bench SkerryPoint = BenchReader.Read(new("b.yaml", File.ReadAllText(Repository.SkerryPoint)), DateTimeZoneProviders.Tzdb).Value!;

    private static readonly Specimen Wrasse = new() { Id = "W-1", Group = "bony-fish", Mass = Mass.FromGrams(82), StandardLength = Length.FromCentimeters(15.5) };

    [Fact]
    public void Of_a_specimen_a_file_a_table_and_an_object_are_told_the_same()
    {
        var specimen = Wrasse with { Mass = Mass.FromGrams(-5), StandardLength = Length.FromCentimeters(7000), Count = 1_000_001 };
        string[] Said(IEnumerable<Finding> findings) => [.. findings.Where(f => f.Severity == Severity.Error).Select(f => $"{f.Id}: {f.Message}; {f.Remedy}").Order(StringComparer.Ordinal)];

        var ofObject = Said(specimen.Validate());
        var ofFile = Said(SpecimenReader.Read(new("f.yaml", "format: 1\nspecimen: W-1\ngroup: bony-fish\nmass: -5 g\nstandard-length: 7000 cm\ncount: 1000001\n")).Findings);
        var ofTable = Said(Batch.Open(new StringReader("specimen,group,mass (g),standard length (mm),individualCount\nW-1,bony-fish,-5,70000,1000001\n"), "f.csv", new(Bundled, new(SkerryPoint), Monday)).Value!.Rows().Single().Findings);

        Assert.Contains("not-positive: mass is -5 g, and must be a number above 0; measure it, or leave it out: what is missing is estimated", ofObject);
        Assert.Equal(ofObject, ofFile);
        Assert.Equal(ofObject, ofTable);
    }

    [Fact]
    public void A_bench_that_cannot_be_is_refused_at_every_door_in_the_same_words()
    {
        var bench = new PreparedBench(SkerryPoint with { People = -2, Vessels = [SkerryPoint.Vessels[0], SkerryPoint.Vessels[0] with { Count = -4 }], Currency = "QQQ" });
        string[] meant = ["bad-number", "duplicate-vessel", "unknown-currency", "vessel-count-negative"];
        string[] Ids(IEnumerable<Finding> findings) => [.. findings.Where(f => f.Severity == Severity.Error).Select(f => f.Id).Distinct().Order(StringComparer.Ordinal)];
        var plan = Bundled.Plan(new(Wrasse, SkerryPoint, Monday)).Value!;

        var planned = Bundled.Plan(new(Wrasse, bench, Monday));
        var compared = Bundled.Compare(new(Wrasse, bench, Monday));
        var revised = Bundled.Revise(plan, WorkLog.Empty("W-1"), bench);
        var opened = Batch.Open(new StringReader("specimen,group,mass (g)\nW-1,bony-fish,82\n"), "f.csv", new(Bundled, bench, Monday));

        Assert.True(planned.Value is null && compared.Value is null && revised.Value is null && opened.Value is null);
        Assert.All([planned.Findings, compared.Findings, revised.Findings, opened.Findings], f => Assert.Equal(meant, Ids(f)));
    }

    [Fact]
    public void What_nothing_can_be_reckoned_with_gives_no_plan_and_what_only_contradicts_itself_gives_one_that_is_not_started()
    {
        Assert.Equal("absurd-date", Assert.Single(Bundled.Plan(new(Wrasse, SkerryPoint, LocalDateTime.MaxIsoValue)).Findings).Id);
        Assert.Equal("absurd-date", Assert.Single(Bundled.Plan(new(Wrasse with { DiedAt = Instant.MaxValue }, SkerryPoint, Monday)).Findings).Id);
        Assert.Equal("absurd-date", Assert.Single(Bundled.Plan(new(Wrasse, SkerryPoint, Monday) { By = LocalDate.MinIsoValue }).Findings).Id);
        var contradicts = Bundled.Plan(new(Wrasse with { TotalLength = Length.FromCentimeters(10) }, SkerryPoint, Monday));
        Assert.False(contradicts.Value!.Startable);
        Assert.Contains(contradicts.Findings, f => f.Id == "part-longer-than-whole");
    }

    [Fact]
    public void A_log_that_cannot_be_is_refused()
    {
        var plan = Bundled.Plan(new(Wrasse, SkerryPoint, Monday)).Value!;
        var begun = plan.Steps[0].Start!.Value.ToInstant();

        var revised = Bundled.Revise(plan, new("W-1", [new(plan.Steps[0].Id) { Begun = begun, Done = begun - NodaTime.Duration.FromHours(1), Used = Volume.FromLiters(-4) }]), new(SkerryPoint));

        Assert.Null(revised.Value);
        Assert.Equal(["done-before-begun", "impossible-amount"], revised.Findings.Select(f => f.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Nothing_where_something_must_be_is_the_callers_fault()
    {
        var request = new PlanRequest(Wrasse, SkerryPoint, Monday);
        Assert.Throws<ArgumentNullException>(() => Bundled.Plan(null!));
        Assert.Throws<ArgumentNullException>(() => Bundled.Compare(null!));
        Assert.Throws<ArgumentNullException>(() => Bundled.Revise(null!, WorkLog.Empty("A"), new(SkerryPoint)));
        Assert.Throws<ArgumentNullException>(() => new PreparedBench(null!));
        Assert.Throws<ArgumentNullException>(() => new Planner(null!));
        Assert.Throws<ArgumentNullException>(() => Batch.Open(null!, "f.csv", new(Bundled, request.Bench, Monday)));
        Assert.Throws<ArgumentNullException>(() => Batch.Open(new StringReader(""), "f.csv", null!));
        Assert.Throws<ArgumentNullException>(() => new BatchRequest(null!, request.Bench, Monday));
        Assert.Throws<ArgumentNullException>(() => request.Wishes with { Vessels = null! });
        Assert.Throws<ArgumentException>(() => SkerryPoint with { Stock = [null!] });
        Assert.Throws<ArgumentException>(() => new WorkLog("A", [null!]));
        Assert.NotNull(Bundled.Plan(new(Wrasse, SkerryPoint with { Stock = default, Vessels = default, VesselsInUse = default }, Monday)).Value);
        Assert.Contains(Bundled.Plan(request with { Choices = request.Choices.Add("no-such", "thing") }).Findings, f => f.Severity == Severity.Error);
    }
}
