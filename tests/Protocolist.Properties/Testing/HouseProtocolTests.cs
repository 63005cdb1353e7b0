using Protocolist.Testing;

namespace Protocolist.Properties.Testing;

/// <summary>What an institution writes to try its own protocols: see the remarks of <see cref="PlanInvariants"/>.</summary>
public class HouseProtocolTests
{
    private static readonly SourceText Shrews = new("house/shrews.yaml", """
        format: 1
        protocol: shrews
        revision: 1
        title: Shrews and mice of the invented station
        extends: vertebrate
        for: {group: mammal, mass: 3 g to 40 g}
        sources: {house: an invented house rule}
        stages:
          - {stage: slit, id: belly, after: record, places: [abdomen], length: 10 mm, count: 1, side: belly, source: house}
          - {stage: immerse, id: fix, ratio: 20, last: 3 d to 7 d, source: house}
        """);

    [Fact]
    public void Every_plan_by_a_house_protocol_holds_together() =>
        PlanInvariants.Check(Shelf.BundledWith([Shrews]), Draws.Of(150));

    [Fact]
    public void A_broken_invariant_is_shown_with_its_smallest_case()
    {
        var never = new PlanInvariant("never-holds", "no plan is ever made", c => c.Made.Value is null ? [] : ["a plan was made"]);

        var fault = Assert.ThrowsAny<Exception>(() => never.Over(Shelf.BundledWith([Shrews])).Try(100));

        Assert.Contains("never-holds", fault.ToString(), StringComparison.Ordinal);
        Assert.Contains("--- specimen", fault.ToString(), StringComparison.Ordinal);
    }
}
