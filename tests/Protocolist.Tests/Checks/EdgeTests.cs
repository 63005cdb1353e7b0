using Protocolist.Checks;
using Protocolist.Findings;

namespace Protocolist.Tests.Checks;

/// <summary>One limit of one check: just past it the check speaks with that severity and those words, just short of it it does not.</summary>
internal sealed record Edge(string Id, Severity Severity, string[] Says, Func<ReviewCase> Past, Func<ReviewCase> Short)
{
    public static Edge[] All { get; } = [.. FluidEdges.All, .. OtherEdges.All, .. SeverityEdges.All];
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
        var (id, severity, says, past, _) = Edge.All[edge];
        var found = Of(id, past());
        Assert.True(found.Any(f => f.Severity == severity && says.All(w => f.Message.Contains(w, StringComparison.Ordinal))), $"{name}: {string.Join(" | ", found)}");
        Assert.All(found, f => Assert.NotEqual("", f.Remedy));
    }

    [Theory]
    [MemberData(nameof(Edges))]
    public void Check_does_not_say_so_at_its_limit(int edge, string name)
    {
        var (id, severity, says, _, before) = Edge.All[edge];
        var found = Of(id, before());
        Assert.False(found.Any(f => f.Severity == severity && says.All(w => f.Message.Contains(w, StringComparison.Ordinal))), $"{name}: {string.Join(" | ", found)}");
    }

    private static List<Finding> Of(string id, ReviewCase plan) => [.. AllChecks.All.Single(c => c.Id == id).Find(plan)];
}
