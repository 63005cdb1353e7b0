using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Quantities;

namespace Protocolist.Properties.Provisioning.Purchasing;

public class PurchasesProperties
{
    /// <summary>For each need its ways, for each way what it takes of each product; for each product what is on hand and its packs; and what is wanted in any case.</summary>
    public sealed record Case(int[][][] Needs, (int OnHand, (int Size, int Price)[] Packs)[] Shelf, int[] Wanted)
    {
        internal Need[] Asked => [.. Needs.Select(ways => new Need([.. ways.Select(takes => takes.Select((units, product) => new Demand(product, units)).ToImmutableArray())]))];

        internal Product[] Products => [.. Shelf.Select((s, i) => new Product(Message.Text($"p{i}"), Amount.Of(s.OnHand), Market.Of(
            Message.Text($"p{i}"), AmountKind.Count, s.Packs.Select(p => new Pack(Amount.Of(p.Size), Money.Of(p.Price, "EUR"))), ExchangeRates.None("EUR"))))];

        internal (PurchasePlan Plan, List<Finding> Findings) Chosen
        {
            get
            {
                var findings = new List<Finding>();
                return (Purchases.Choose(Asked, [.. Wanted.Select(w => (long)w)], Products, findings), findings);
            }
        }
    }

    /// <summary>Three products, up to three needs of up to three ways; a pack or a stock may be missing.</summary>
    public static Arbitrary<Case> Cases() => (
        from shelf in Shelf().ArrayOf(3)
        from needs in Need().ArrayOf(3)
        from n in Gen.Choose(1, 3)
        from wanted in Gen.Frequency((3, Gen.Constant(0)), (1, Gen.Choose(0, 5))).ArrayOf(3)
        select new Case([.. needs.Take(n)], shelf, wanted)).ToArbitrary();

    private static Gen<(int OnHand, (int Size, int Price)[] Packs)> Shelf() =>
        from packs in Gen.Choose(0, 2)
        from onHand in Gen.Choose(0, 6)
        from sizes in Gen.Choose(1, 7).ArrayOf(packs)
        from prices in Gen.Choose(1, 9).ArrayOf(packs)
        select (onHand, sizes.Zip(prices).ToArray());

    private static Gen<int[][]> Need() =>
        from ways in Gen.Choose(1, 3)
        from demands in Gen.Choose(0, 9).ArrayOf(3).ArrayOf(ways)
        select demands;

    [Property(Arbitrary = [typeof(PurchasesProperties)], MaxTest = 2000)]
    public bool The_choice_is_the_cheapest_of_all_combinations(Case c)
    {
        var (plan, findings) = c.Chosen;
        var shortfalls = findings.Count(f => f.Id == "lacking-and-not-for-sale");
        return Combinations(c.Needs).Min(ways => Outlay(ways, c)) == (shortfalls, plan.CostMinor);
    }

    [Property(Arbitrary = [typeof(PurchasesProperties)])]
    public bool What_is_chosen_is_what_is_bought(Case c)
    {
        var plan = c.Chosen.Plan;
        var ways = c.Needs.Select((n, i) => n[plan.Ways[i]]).ToArray();
        return Enumerable.Range(0, 3).All(p =>
        {
            var (wanted, bought) = (c.Wanted[p] + ways.Sum(w => w[p]), plan.Purchases[p]);
            return plan.Wanted[p] == wanted && (bought is null
                ? wanted <= c.Shelf[p].OnHand || c.Shelf[p].Packs.Length == 0
                : bought.Bought == bought.Packs.Sum(k => k.Count * k.Pack.Size.Units)
                    && bought.CostMinor == bought.Packs.Sum(k => k.Count * k.Pack.Price!.Minor)
                    && bought.CostMinor == bought.Packs.Sum(k => k.Cost.Minor)
                    && bought.Bought >= wanted - c.Shelf[p].OnHand);
        });
    }

    private static IEnumerable<ImmutableArray<int[]>> Combinations(int[][][] needs) =>
        needs.Aggregate((IEnumerable<ImmutableArray<int[]>>)[[]], (sets, need) => sets.SelectMany(s => need.Select(s.Add)));

    private static (int Shortfalls, long Cost) Outlay(ImmutableArray<int[]> ways, Case c)
    {
        var (shortfalls, cost) = (0, 0L);
        for (var product = 0; product < 3; product++)
        {
            var (onHand, packs) = c.Shelf[product];
            var lacking = c.Wanted[product] + ways.Sum(w => w[product]) - onHand;
            if (lacking <= 0) continue;
            var cheapest = new long[lacking + 1];
            for (var d = 1; d <= lacking && packs.Length > 0; d++) cheapest[d] = packs.Min(p => (p.Price * 100) + cheapest[Math.Max(0, d - p.Size)]);
            if (packs.Length == 0) shortfalls++;
            cost += cheapest[lacking];
        }

        return (shortfalls, cost);
    }
}
