using Protocolist.Checks;
using Protocolist.Findings;

namespace Protocolist.Tests.Checks;

/// <summary>One limit of one check: just past it the check speaks with that severity and those words, just short of it it does not.</summary>
internal sealed record Edge(string Id, Severity Severity, string[] Says, Func<ReviewCase> Past, Func<ReviewCase> Short)
{
    public static Edge[] All { get; } = [.. FluidEdges.All, .. BodyEdges.All, .. VesselAndTimeEdges.All, .. StockAndLawEdges.All, .. PeopleAndLabelEdges.All, .. SeverityEdges.All];

    public static Edge Warns(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Warning, says, past, before);

    public static Edge Fails(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Error, says, past, before);

    public static Edge Notes(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Note, says, past, before);

    /// <summary>Whether a finding is this one: of its severity, with all its words in what is the case or what to do.</summary>
    public bool Is(Finding finding) => finding.Severity == Severity && Says.All(w => $"{finding.Message.ToString()}\n{finding.Remedy.ToString()}".Contains(w, StringComparison.Ordinal));
}

public class EdgeTests
{
    public static TheoryData<int, string> Edges
    {
        get
        {
            var rows = new TheoryData<int, string>();
            for (var i = 0; i < Edge.All.Length; i++) rows.Add(i, $"{Edge.All[i].Id}: {string.Join(", ", Edge.All[i].Says)}");
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Edges))]
    public void Check_speaks_just_past_its_limit_with_the_numbers_of_the_case(int edge, string name)
    {
        var row = Edge.All[edge];
        var found = Of(row.Id, row.Past());
        Assert.True(found.Exists(row.Is), $"{name}: {string.Join(" | ", found)}");
        Assert.All(found, f => Assert.NotEqual("", f.Remedy.ToString()));
    }

    [Theory]
    [MemberData(nameof(Edges))]
    public void Check_does_not_say_so_at_its_limit(int edge, string name)
    {
        var row = Edge.All[edge];
        var found = Of(row.Id, row.Short());
        Assert.False(found.Exists(row.Is), $"{name}: {string.Join(" | ", found)}");
    }

    private static List<Finding> Of(string id, ReviewCase plan) => [.. AllChecks.All.Single(c => c.Id == id).Find(plan)];
}
