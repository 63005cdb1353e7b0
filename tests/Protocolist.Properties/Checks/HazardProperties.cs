using FsCheck;
using FsCheck.Fluent;
using Protocolist.Checks;
using Protocolist.Findings;

namespace Protocolist.Properties.Checks;

/// <summary>Whoever puts a hazard right is not told more of it than before.</summary>
public class HazardProperties
{
    [Fact]
    public void Removing_a_hazard_never_adds_a_finding_of_it() =>
        Prop.ForAll(ReviewCases.Spoilt, plan => No(Hazard.All.SelectMany(h => Added(plan, h)))).Try(250);

    [Fact]
    public void Removing_a_hazard_wholly_leaves_no_finding_of_it() =>
        Prop.ForAll(ReviewCases.Spoilt, plan => No(Hazard.All.Where(h => h.Gone).SelectMany(h => Of(h.Remove(plan), h).Select(f => $"after '{h.Remedy.ToString()}': {f}")))).Try(250);

    /// <summary>The two properties above would hold of checks that never speak; here every hazard is met.</summary>
    [Fact]
    public void Spoilt_plans_trip_nearly_every_hazard_of_the_table()
    {
        var met = ReviewCases.Spoilt.Generator.Some(300).SelectMany(p => AllChecks.Review(p)).Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
        var wanted = Hazard.All.SelectMany(h => h.Findings).ToHashSet(StringComparer.Ordinal);
        var missed = wanted.Except(met).ToList();
        Assert.True(missed.Count <= wanted.Count / 10, $"never met: {string.Join(", ", missed)}");
    }

    [Fact]
    public void Hazards_are_of_checks_that_exist() =>
        Assert.Empty(Hazard.All.SelectMany(h => h.Findings).Except(AllChecks.All.Select(c => c.Id)));

    private static IEnumerable<string> Added(ReviewCase plan, Hazard hazard)
    {
        var before = Of(plan, hazard).GroupBy(f => f.Id).ToDictionary(g => g.Key, g => (Count: g.Count(), Gravest: g.Max(f => f.Severity)));
        foreach (var after in Of(hazard.Remove(plan), hazard).GroupBy(f => f.Id))
        {
            var (count, gravest) = before.GetValueOrDefault(after.Key);
            if (after.Count() > count || after.Max(f => f.Severity) > gravest) yield return $"'{hazard.Remedy.ToString()}' adds {after.First()}";
        }
    }

    private static IEnumerable<Finding> Of(ReviewCase plan, Hazard hazard) => AllChecks.All.Where(c => hazard.Findings.Contains(c.Id)).SelectMany(c => c.Find(plan));

    private static Property No(IEnumerable<string> faults)
    {
        var all = faults.Take(5).ToList();
        return (all.Count == 0).Label(string.Join("\n", all));
    }
}
