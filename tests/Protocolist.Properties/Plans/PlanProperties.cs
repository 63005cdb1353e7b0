using FsCheck;
using FsCheck.Fluent;
using Protocolist.Testing;

namespace Protocolist.Properties.Plans;

/// <summary>Every invariant over the bundled protocols, and over protocols that nobody would write.</summary>
public class PlanProperties
{
    private static readonly Shelf Bundled = Shelf.Bundled();

    public static TheoryData<string> Invariants => [.. PlanInvariants.All.Select(i => i.Id)];

    /// <summary>Generated protocols, each alone on its shelf.</summary>
    private static readonly Arbitrary<PlanCase> Generated = Arb.From(
        ProtocolGenerator.Valid.Generator.SelectMany(p => PlanCases.Over(Shelf.Of([[p.Source]])).Generator),
        c => PlanCases.Over(c.Planner.Shelf).Shrinker(c));

    [Theory]
    [MemberData(nameof(Invariants))]
    public void Bundled_protocols_keep(string invariant) =>
        PlanInvariants.Find(invariant).Over(Bundled).Try(150);

    [Theory]
    [MemberData(nameof(Invariants))]
    public void Generated_protocols_keep(string invariant) =>
        PlanInvariants.Find(invariant).Over(Generated).Try(100);

    [Fact]
    public void Invariants_have_names_of_their_own()
    {
        Assert.True(PlanInvariants.All.Length >= 15);
        Assert.Equal(PlanInvariants.All.Length, PlanInvariants.All.DistinctBy(i => i.Id).Count());
    }
}
