using Protocolist.Checks;
using Protocolist.Findings;

namespace Protocolist.Tests.Checks;

public class EveryCheckTests
{
    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Id)];

    [Fact]
    public void Every_check_has_a_row_and_every_row_a_check() =>
        Assert.Equal(AllChecks.All.Select(c => c.Id).Order(StringComparer.Ordinal), Row.All.Select(r => r.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void There_are_at_least_55_checks_of_distinct_ids()
    {
        Assert.True(AllChecks.All.Length >= 55);
        Assert.Equal(AllChecks.All.Length, AllChecks.All.Select(c => c.Id).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Check_says_on_its_hazard_what_is_the_case_and_what_to_do(string id)
    {
        var found = Found(id, r => r.Trips());
        Assert.NotEmpty(found);
        Assert.All(found, f => Assert.Equal(id, f.Id));
        Assert.All(found, f => Assert.True(f.Message.ToString().Length > 3 && (f.Remedy.ToString().Length > 1)));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Check_is_silent_on_a_near_miss(string id) => Assert.Empty(Found(id, r => r.NearMiss()));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Check_names_its_source_and_whom_it_protects(string id)
    {
        var check = AllChecks.All.Single(c => c.Id == id);
        Assert.True(check.Source.Length > 5);
        Assert.True(check.Protects.Length > 5);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Findings_of_a_check_have_just_the_severities_that_its_page_names(string id)
    {
        var cases = Edge.All.Where(e => e.Id == id).SelectMany(e => new[] { e.Past, e.Short }).Prepend(Row.All.Single(r => r.Id == id).Trips);
        var check = AllChecks.All.Single(c => c.Id == id);
        var heard = cases.SelectMany(c => check.Find(c())).Select(f => f.Severity).Distinct().Order();
        Assert.Equal(check.Severities.Select(s => s.Severity).Distinct().Order(), heard);
        Assert.All(check.Severities, s => Assert.True(s.When.Length > 10));
    }

    [Fact]
    public void Sound_plan_has_no_error_and_no_warning_but_the_model_s_own_doubts()
    {
        var loud = AllChecks.Review(Cases.Good).Where(f => f.Severity > Severity.Note).Select(f => f.ToString()).ToList();
        Assert.True(loud.Count == 0, string.Join("\n", loud));
    }

    private static List<Finding> Found(string id, Func<Row, ReviewCase> of) =>
        [.. AllChecks.All.Single(c => c.Id == id).Find(of(Row.All.Single(r => r.Id == id)))];
}
