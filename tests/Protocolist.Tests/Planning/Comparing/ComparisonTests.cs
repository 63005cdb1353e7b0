using System.Collections.Immutable;
using Protocolist.Planning.Comparing;
using Protocolist.Quantities;
using Protocolist.Tests.Planning.Provisioning;

namespace Protocolist.Tests.Planning.Comparing;

public class ComparisonTests
{
    private static Comparison Wrasse { get; } = Comparison.Of(new(Station.Wrasse, Station.Bundled, Station.With("""
        stock:
          - {fluid: formaldehyde stock 37 %mass, id: strong, on-hand: 1 L, packs: [{size: 1 L, price: 9.50 EUR}]}
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 1 L, packs: [{size: 5 L, price: 42 EUR}]}
          - {fluid: isopropanol 99.8 %vol, id: iso, on-hand: 1 L, packs: [{size: 5 L, price: 27 EUR}]}
          - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 900 g}
          - {salt: disodium phosphate, hydrate: anhydrous, id: base, on-hand: 900 g}
          - {salt: borax, id: borax, on-hand: 900 g}
        """), Station.Start)).Value!;

    [Fact]
    public void Every_combination_of_choices_is_planned_once()
    {
        var protocol = Station.Bundled.Protocols.Single(p => p.Id == Wrasse.Protocol.Id);
        Assert.Equal(protocol.Choices.Aggregate(1, (n, c) => n * c.Options.Length), Wrasse.Ways.Length);
        Assert.Equal(Wrasse.Ways.Length, Wrasse.Ways.Select(w => string.Join(';', w.Choices)).Distinct().Count());
    }

    [Fact]
    public void Each_way_has_its_numbers_and_remarks_with_sources()
    {
        Assert.All(Wrasse.Ways, w => Assert.True(w.Days > 2 && w.HandsOnHours > 1 && w.FormaldehydeStockLitres > 0 && w.FlammableAlcoholLitres > 0));
        Assert.All(Wrasse.Ways, w => Assert.Contains(w.Remarks, r => r.Contains("photograph", StringComparison.Ordinal)));
        Assert.All(Wrasse.Ways.Where(w => w.Choices["keeping"] == "isopropanol"), w => Assert.Contains(w.Remarks, r => r.Contains("Simmons", StringComparison.Ordinal)));
        Assert.All(Wrasse.Ways.Where(w => w.Choices["keeping"] == "ethanol"), w => Assert.Contains(w.Remarks, r => r.Contains("2.48 mm", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_dominated_way_is_worse_nowhere_better()
    {
        var choices = ImmutableSortedDictionary<string, string>.Empty;
        var a = new ComparedWay { Name = "A", Choices = choices, Days = 10, CostNow = Money.Of(5, "EUR"), OverTenYears = Money.Of(9, "EUR"), HandsOnHours = 3, Warnings = 1 };
        Assert.True((a with { Days = 11 }).IsDominatedBy(a));
        Assert.False(a.IsDominatedBy(a));
        Assert.False((a with { Days = 11, HandsOnHours = 2 }).IsDominatedBy(a));
        Assert.True((a with { Days = null }).IsDominatedBy(a));
    }

    [Fact]
    public void Nobody_is_dominated_by_a_way_that_is_dominated_by_it() =>
        Assert.All(Wrasse.Ways.Where(w => w.DominatedBy is not null), w => Assert.False(Wrasse.Ways.Single(o => o.Name == w.DominatedBy).IsDominatedBy(w)));
}
