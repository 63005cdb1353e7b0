using System.Text.Json.Nodes;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Plans;

public class PlanFaultsTests
{
    private static readonly Planner Bundled = new(Shelf.Bundled());

    private static readonly PreparedBench SkerryPoint = new(BenchReader.Read(new("b.yaml", File.ReadAllText(Repository.SkerryPoint)), DateTimeZoneProviders.Tzdb).Value!);

    private static readonly Plan Sound = Bundled.Plan(new(SpecimenReader.Read(new("s.yaml", File.ReadAllText(Repository.Otter))).Value!, SkerryPoint, new LocalDateTime(2027, 3, 1, 9, 0))).Value!;

    private static Plan First(Func<Step, Step> change) => Sound with { Steps = [change(Sound.Steps[0]), .. Sound.Steps.Skip(1)] };

    public static TheoryData<string, string, Plan> Faults() => new()
    {
        { "plan-impossible", "'steps[0].volumeMl' cannot be -7 mL", First(s => s with { Volume = Volume.FromMilliliters(-7) }) },
        { "plan-impossible", "'steps[0].volumeMl'", First(s => s with { Volume = Volume.FromCubicMeters(1e9) }) },
        { "plan-impossible", "'steps[0].leastHours' cannot be -60 min", First(s => s with { Least = NodaTime.Duration.FromHours(-1) }) },
        { "plan-impossible", "'steps[0].mostHours'", First(s => s with { Most = NodaTime.Duration.FromDays(1_000_000) }) },
        { "plan-impossible", "'steps[0].changes' cannot be -1", First(s => s with { Changes = -1 }) },
        { "plan-impossible", "'steps[0]' ends before it begins", First(s => s with { Start = s.End, End = s.Start }) },
        { "plan-impossible", "'steps[0].end' lies in the year 9999", First(s => s with { End = new(new LocalDateTime(9999, 1, 1, 0, 0), Offset.Zero) }) },
        { "plan-incomplete", "'steps[0].sites' is missing", First(s => s with { Sites = default }) },
        { "plan-incomplete", "'steps[0].id' is missing", First(s => s with { Id = " " }) },
        { "plan-incomplete", "'steps[1]' is missing", Sound with { Steps = [Sound.Steps[0], null!] } },
        { "plan-incomplete", "'steps' is missing", Sound with { Steps = default } },
        { "plan-impossible", $"'steps[1].id' is '{Sound.Steps[0].Id}', as another one is", Sound with { Steps = [Sound.Steps[0], Sound.Steps[0]] } },
        { "plan-incomplete", "'specimen' is missing", Sound with { Specimen = null! } },
        { "plan-incomplete", "'costs' is missing", Sound with { Costs = null! } },
        { "plan-incomplete", "'zone' is missing", Sound with { Zone = "" } },
        { "plan-impossible", "'by' lies in the year 1", Sound with { By = new LocalDate(1, 1, 1) } },
        { "plan-impossible", "'revision' cannot be -1", Sound with { Revision = -1 } },
        { "plan-impossible", "'costs.cash' cannot be -1.00 EUR", Sound with { Costs = new PlanCosts(Money.Of(-1, "EUR"), null, null, null), Purchases = [] } },
        { "plan-impossible", "'costs.wear' is in USD, and other sums are in EUR", Sound with { Costs = new PlanCosts(Money.Of(1, "EUR"), null, null, null) { Wear = Money.Of(1, "USD") }, Purchases = [] } },
        { "plan-impossible", "'purchases[0].count' cannot be -3", Sound with { Purchases = [new(Message.Text("x"), Amount.Of(1), -3, null, 0)] } },
        { "plan-impossible", "'care[0].everyMonths' cannot be 0", Sound with { Care = [new(Message.Text("look"), null, 0, "") { Id = "look" }] } },
        { "plan-impossible", "'waste[0].amount'", Sound with { Waste = [Sound.Waste[0] with { Amount = Amount.Of(Volume.FromMilliliters(-1)) }] } },
        { "plan-impossible", "'fluids[0].volumeMl'", Sound with { Fluids = [Sound.Fluids[0] with { Volume = Volume.FromMilliliters(-1) }] } },
        { "plan-impossible", "'specimen.found-on'", Sound with { Specimen = Sound.Specimen with { FoundOn = LocalDate.MaxIsoValue } } },
        { "plan-incomplete", "'steps' is missing", Sound with { Steps = [] } },
        { "plan-incomplete", "'steps[0].end' is missing", First(s => s with { End = null }) },
        { "plan-incomplete", "'steps[0].title' is missing", First(s => s with { Title = default }) },
        { "plan-incomplete", "'protocol.files' is missing", Sound with { Protocol = Sound.Protocol with { Files = [] } } },
        { "plan-impossible", "'protocol.revision' cannot be -1", Sound with { Protocol = Sound.Protocol with { Revision = -1 } } },
        { "plan-impossible", "'specimen.id': the specimen has no id", Sound with { Specimen = Sound.Specimen with { Id = " " } } },
        { "plan-impossible", "'specimen.mass': mass is -1 kg", Sound with { Specimen = Sound.Specimen with { Mass = Mass.FromKilograms(-1) } } },
        { "plan-impossible", "'waste[0].uses' cannot be -1", Sound with { Waste = [Sound.Waste[0] with { Uses = -1 }] } },
        { "plan-impossible", "the books of 'materials[0]' do not add up", Sound with { Materials = [Sound.Materials[0] with { Left = Sound.Materials[0].Used }] } },
        { "plan-impossible", "'materials[0].unusable' cannot be -1", Sound with { Materials = [Sound.Materials[0] with { Unusable = new(Sound.Materials[0].Unusable.Kind, -1000) }] } },
        { "plan-impossible", "'recipes[0].parts[0].massG' cannot be", Sound with { Recipes = [Sound.Recipes[0] with { Parts = [Sound.Recipes[0].Parts[0] with { Mass = Mass.FromGrams(1e300) }] }] } },
        { "plan-impossible", "'steps[0].figures[0]' names 'none', which the plan does not have", First(s => s with { Figures = ["none"] }) },
        { "plan-impossible", "'waste[0].step' names 'none', which the plan does not have", Sound with { Waste = [Sound.Waste[0] with { Step = "none" }] } },
    };

    [Fact]
    public void A_plan_that_was_made_has_none() => Assert.Empty(PlanFaults.Of(Sound, DateTimeZoneProviders.Tzdb));

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void Each_fault_is_an_error_with_its_path(string id, string says, Plan plan)
    {
        var finding = Assert.Single(PlanFaults.Of(plan));
        Assert.Equal((id, Severity.Error), (finding.Id, finding.Severity));
        Assert.StartsWith(says, finding.Message.ToString(), StringComparison.Ordinal);
        Assert.False(finding.Remedy.IsEmpty);
    }

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void No_such_plan_is_revised(string id, string says, Plan plan)
    {
        _ = says;
        var revised = Bundled.Revise(plan, WorkLog.Empty("A"), SkerryPoint);
        Assert.Null(revised.Value);
        Assert.Contains(revised.Findings, f => f.Id == id);
    }

    [Theory]
    [InlineData("zone", "\"Mars/Olympus\"", "unknown-zone")]
    [InlineData("steps.0.volumeMl", "-7", "plan-impossible")]
    [InlineData("costs", "null", "plan-unreadable")]
    [InlineData("steps.0.cuts", null, "plan-unreadable")]
    [InlineData("steps.0.leastHours", "1e300", "plan-unreadable")]
    [InlineData("figures.0", "null", "")]
    [InlineData("steps.0", "null", "")]
    [InlineData("care.0", "null", "")]
    [InlineData("fluids.0", "null", "")]
    [InlineData("findings", "[null]", "")]
    [InlineData("label", "[null]", "")]
    public void A_file_that_says_so_is_refused(string path, string? value, string id)
    {
        var plan = JsonNode.Parse(PlanJson.Write(Sound))!;
        var parts = path.Split('.');
        var at = parts[..^1].Aggregate(plan, (node, part) => int.TryParse(part, out var i) ? node[i]! : node[part]!);
        if (value is null) at.AsObject().Remove(parts[^1]);
        else if (int.TryParse(parts[^1], out var index)) at[index] = JsonNode.Parse(value);
        else at[parts[^1]] = JsonNode.Parse(value);

        var read = PlanJson.Read(new("p.json", plan.ToJsonString()), DateTimeZoneProviders.Tzdb);

        Assert.Null(read.Value);
        if (id.Length > 0) Assert.Contains(read.Findings, f => f.Id == id);
    }
}
