using Protocolist.Checks;
using static Protocolist.Tests.Checks.Cases;

namespace Protocolist.Tests.Checks;

/// <summary>A finding that rests on figures of the plan names them, so that explaining it tells which figures, which limit and which source.</summary>
public class FigureTests
{
    /// <summary>What rests on words, on the bench's own lists or on the label, of which no plan has a figure; and what an earlier pass says in full.</summary>
    private static readonly string[] Figureless =
    [
        "anthrax-signs", "care-round-missing", "closure-contradicts-vessel", "colour-not-recorded", "currency-missing", "frozen-twice", "label-date-not-iso", "label-incomplete",
        "label-inside-and-outside", "label-media", "long-day", "missing-provenance", "no-time-to-cure", "permit-not-noted", "ph-drift", "price-missing", "protected-group", "rabies-prone",
        "reused-fixative-doubtful", "safety-equipment-not-on-shelf", "stock-expired", "stock-strength-unknown", "stored-flammables", "stored-formaldehyde", "supplies-late",
        "unknown-cause-of-death", "unknown-denaturant", "vessel-material-unknown",
        .. PlanningChecks.All.Select(c => c.Id),
    ];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Id).Except(Figureless)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Finding_names_figures_that_the_plan_has(string id)
    {
        var plan = Row.All.Single(r => r.Id == id).Trips();
        var found = AllChecks.Review(plan).Where(f => f.Id == id).ToList();
        Assert.NotEmpty(found);
        Assert.All(found, f => Assert.NotEmpty(f.Figures));
        Assert.All(found.SelectMany(f => f.Figures), f => Assert.NotNull(plan.Plan.Figure(f)));
    }

    [Fact]
    public void Setting_that_a_protocol_leaves_out_is_not_named()
    {
        var found = AllChecks.Review(Good.Lasts("fix", NodaTime.Duration.FromDays(32))).Single(f => f.Id == "fixative-over-its-month");
        Assert.Equal(["fix.last"], found.Figures);
    }
}
