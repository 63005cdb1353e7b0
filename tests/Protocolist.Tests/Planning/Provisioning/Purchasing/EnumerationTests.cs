using Protocolist.Benches;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Quantities;
using static Protocolist.Tests.Planning.Provisioning.Purchasing.Shop;

namespace Protocolist.Tests.Planning.Provisioning.Purchasing;

/// <summary>The searches beside the plainest way to the same answer: every combination written out, and the best one taken.</summary>
public class EnumerationTests
{
    /// <summary>Three sizes from 1 to 13 units at costs that run through all remainders, for demands up to 60 units.</summary>
    [Fact]
    public void The_cover_is_the_cheapest_of_all_then_the_least_then_of_the_fewest_packs()
    {
        for (var seed = 0; seed < 400; seed++)
        {
            SizeAndCost[] sizes = [new(1 + (seed * 7 % 13), 1 + (seed * 11 % 37)), new(1 + (seed * 5 % 11), 1 + (seed * 17 % 29)), new(1 + (seed * 3 % 7), 1 + (seed * 23 % 31))];
            var demand = 1 + (seed * 41 % 60);
            var cover = PackCover.Cheapest(sizes, demand)!;
            Assert.Equal(Cheapest(sizes, demand), ((long)cover.Cost, (long)cover.Total, cover.Counts.Sum()));
            Assert.Equal(((long)cover.Cost, (long)cover.Total), (cover.Counts.Select((n, i) => n * sizes[i].Cost).Sum(), cover.Counts.Select((n, i) => n * sizes[i].Size).Sum()));
        }
    }

    /// <summary>Demands many times the largest pack, where packs of the best unit price are taken off ahead of the search.</summary>
    [Fact]
    public void A_long_demand_has_the_same_cheapest_cover_as_unit_by_unit()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            SizeAndCost[] sizes = [new(5 + (seed * 7 % 43), 20 + (seed * 13 % 97)), new(3 + (seed * 11 % 37), 10 + (seed * 29 % 89)), new(2 + (seed * 3 % 23), 5 + (seed * 31 % 83)), new(60, 150 + (seed % 60))];
            var demand = 700 + (seed * 97 % 900);
            var cover = PackCover.Cheapest(sizes, demand)!;
            var (cost, total, packs) = UnitByUnit(sizes, demand);
            Assert.Equal((cost, total, packs, 1L), ((long)cover.Cost, (long)cover.Total, cover.Counts.Sum(), cover.Step));
        }
    }

    /// <summary>Three needs with two or three ways each from three products that are partly on the shelf, against all combinations.</summary>
    [Fact]
    public void The_ways_are_the_best_of_all_combinations()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            Product[] products =
            [
                Product("a", Units(seed % 9), Pack(3 + (seed % 5), 7 + (seed * 5 % 11)), Pack(10, 15 + (seed * 3 % 17))),
                Product("b", Units(seed * 3 % 7), Pack(4, 6 + (seed * 7 % 13)), Pack(9 + (seed % 4), 16)),
                Product("c", Units(seed * 5 % 6), seed % 4 == 0 ? [] : [Pack(2, 3 + (seed % 6))]),
            ];
            Want[] needs =
            [
                new("n1", Take("w1", ("a", 2 + (seed % 7))), Take("w2", ("b", 3 + (seed % 5)))),
                new("n2", Take("w1", ("b", 1 + (seed % 6)), ("a", 2)), Take("w2", ("c", 2 + (seed % 4))), Take("w3", ("a", 4), ("a", seed % 5))),
                new("n3", Take("w1", ("c", seed % 3)), Take("w2", ("a", 1 + (seed % 3)), ("c", 1))),
            ];
            Assert.Equal(Best(needs, products), string.Join(' ', Choose(needs, products).Ways));
        }
    }

    /// <summary>All combinations in order; the first of the least by what is lacking, cash, worth of surplus, packs.</summary>
    private static string Best(Want[] needs, Product[] products)
    {
        (int Short, long Cost, decimal Surplus, long Packs)? least = null;
        var best = "";
        foreach (var one in needs[0].Ways)
        {
            foreach (var two in needs[1].Ways)
            {
                foreach (var three in needs[2].Ways)
                {
                    var all = new[] { one, two, three };
                    var (missing, cost, surplus, packs) = (0, 0L, 0m, 0L);
                    foreach (var product in products)
                    {
                        var wanted = all.SelectMany(w => w.Takes).Where(d => d.Product == product.Name.ToString()).Sum(d => d.Amount.Units);
                        var lacking = Math.Max(0, wanted - product.OnHand.Units);
                        if (lacking == 0) continue;
                        if (product.Market.Offers.IsEmpty) missing++;
                        if (product.Market.Offers.IsEmpty) continue;
                        var cover = UnitByUnit([.. product.Market.Offers.Select(o => new SizeAndCost(o.Pack.Size.Units, o.Price.Minor))], (int)lacking);
                        (cost, surplus, packs) = (cost + cover.Cost, surplus + ((decimal)cover.Cost * (cover.Total - lacking) / cover.Total), packs + cover.Packs);
                    }

                    if (least is { } known && (missing, cost, surplus, packs).CompareTo(known) >= 0) continue;
                    (least, best) = ((missing, cost, surplus, packs), $"{one.Id} {two.Id} {three.Id}");
                }
            }
        }

        return best;
    }

    private static Amount Units(long units) => new(AmountKind.Volume, units);

    private static Pack Pack(long size, int cents) => new(Units(size), Money.Of(cents / 100m, "EUR"));

    private static Way Take(string id, params (string Product, long Units)[] demands) => new(id, [.. demands.Select(d => (d.Product, Units(d.Units)))]);

    private static (long Cost, long Total, long Packs) Cheapest(SizeAndCost[] s, int demand)
    {
        var best = (Cost: long.MaxValue, Total: 0L, Packs: 0L);
        for (long a = 0; a <= 1 + (demand / s[0].Size); a++)
        {
            for (long b = 0; b <= 1 + (demand / s[1].Size); b++)
            {
                for (long c = 0; c <= 1 + (demand / s[2].Size); c++)
                {
                    var here = (Cost: (a * s[0].Cost) + (b * s[1].Cost) + (c * s[2].Cost), Total: (a * s[0].Size) + (b * s[1].Size) + (c * s[2].Size), Packs: a + b + c);
                    if (here.Total >= demand && here.CompareTo(best) < 0) best = here;
                }
            }
        }

        return best;
    }

    private static (long Cost, long Total, long Packs) UnitByUnit(SizeAndCost[] sizes, int demand)
    {
        var best = new (long Cost, long Total, long Packs)[demand + 1];
        for (var d = 1; d <= demand; d++)
            best[d] = sizes.Select(s => best[Math.Max(0, d - s.Size)] is var rest ? (rest.Cost + s.Cost, rest.Total + s.Size, rest.Packs + 1) : default).Min();
        return best[demand];
    }
}
