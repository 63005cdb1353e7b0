using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Benches.Stock;
using Protocolist.Planning.Purchasing;
using Protocolist.Quantities;

namespace Protocolist.Properties.Purchasing;

public class PurchasesProperties
{
    public sealed record Case(Need[] Needs, Product[] Products);

    /// <summary>Three products, up to three needs of up to three ways; a pack or a stock may be missing.</summary>
    public static Arbitrary<Case> Cases() => (
        from first in Product(0)
        from second in Product(1)
        from third in Product(2)
        from needs in Need().ArrayOf(3)
        from n in Gen.Choose(1, 3)
        select new Case([.. needs.Take(n).Select((need, i) => need with { Id = $"n{i}" })], [first, second, third])).ToArbitrary();

    private static Gen<Product> Product(int id) =>
        from packs in Gen.Choose(0, 2)
        from onHand in Gen.Choose(0, 6)
        from sizes in Gen.Choose(1, 7).ArrayOf(packs)
        from prices in Gen.Choose(1, 9).ArrayOf(packs)
        select new Product($"p{id}", Amount.Of(onHand), [.. sizes.Zip(prices, (s, c) => new Pack(Amount.Of(s), Money.Of(c, "EUR")))]);

    private static Gen<Need> Need() =>
        from ways in Gen.Choose(1, 3)
        from demands in Gen.Choose(0, 9).ArrayOf(3).ArrayOf(ways)
        select new Need("n", [.. demands.Select((d, w) => new Way($"w{w}", [.. d.Select((units, p) => new Demand($"p{p}", Amount.Of(units)))]))]);

    [Property(Arbitrary = [typeof(PurchasesProperties)], MaxTest = 2000)]
    public bool The_choice_is_the_cheapest_of_all_combinations(Case c)
    {
        var chosen = Purchases.Choose(c.Needs, c.Products, ExchangeRates.None("EUR"));
        var shortfalls = chosen.Findings.Count(f => f.Id == "lacking-and-not-for-sale");
        return Combinations(c.Needs).Min(ways => Outlay(ways, c.Products)) == (shortfalls, chosen.Value!.Cost.Minor);
    }

    [Property(Arbitrary = [typeof(PurchasesProperties)])]
    public bool What_is_chosen_is_what_is_bought(Case c)
    {
        var plan = Purchases.Choose(c.Needs, c.Products, ExchangeRates.None("EUR")).Value!;
        var ways = c.Needs.Zip(plan.Ways, (n, w) => n.Ways.Single(x => x.Id == w.WayId)).ToArray();
        return plan.Cost.Minor == plan.Purchases.Sum(p => p.Cost.Minor)
            && plan.Purchases.All(p =>
                p.Wanted.Units == ways.Sum(w => w.Demands.Where(d => d.ProductId == p.ProductId).Sum(d => d.Amount.Units))
                && p.Bought.Units == p.Packs.Sum(k => k.Count * k.Pack.Size.Units)
                && p.Cost.Minor == p.Packs.Sum(k => k.Count * k.Pack.Price!.Minor)
                && p.FromShelf + p.Lacking == p.Wanted);
    }

    private static IEnumerable<ImmutableArray<Way>> Combinations(Need[] needs) =>
        needs.Aggregate((IEnumerable<ImmutableArray<Way>>)[[]], (sets, need) => sets.SelectMany(s => need.Ways.Select(s.Add)));

    private static (int Shortfalls, long Cost) Outlay(ImmutableArray<Way> ways, Product[] products)
    {
        var (shortfalls, cost) = (0, 0L);
        foreach (var product in products)
        {
            var lacking = ways.Sum(w => w.Demands.Where(d => d.ProductId == product.Id).Sum(d => d.Amount.Units)) - product.OnHand.Units;
            if (lacking <= 0) continue;
            var cheapest = new long[lacking + 1];
            for (var d = 1; d <= lacking && product.Packs.Length > 0; d++)
                cheapest[d] = product.Packs.Min(p => p.Price!.Minor + cheapest[Math.Max(0, d - p.Size.Units)]);
            if (product.Packs.Length == 0) shortfalls++;
            cost += cheapest[lacking];
        }

        return (shortfalls, cost);
    }
}
