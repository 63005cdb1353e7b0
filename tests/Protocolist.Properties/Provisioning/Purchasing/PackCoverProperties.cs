using FsCheck;
using FsCheck.Fluent;
using Protocolist.Planning.Provisioning.Purchasing;

namespace Protocolist.Properties.Provisioning.Purchasing;

public class PackCoverProperties
{
    public sealed record Case(SizeAndCostList Sizes, int Demand);

    public sealed record SizeAndCostList(int[] Sizes, int[] Costs)
    {
        internal SizeAndCost[] Packs => [.. Sizes.Zip(Costs, (s, c) => new SizeAndCost(s, c))];
    }

    /// <summary>Few sizes, few prices and small numbers, so that ties are common; in a third of the cases all have one unit price, so that only packs and sizes decide.</summary>
    public static Arbitrary<Case> Cases() => (
        from n in Gen.Choose(1, 4)
        from sizes in Gen.Choose(1, 12).ArrayOf(n)
        from costs in Gen.OneOf(Gen.Choose(0, 20), Gen.Choose(1, 2000), Gen.Choose(1, 5).Select(c => c * 100)).ArrayOf(n)
        from oneUnitPrice in Gen.Elements(true, false, false)
        from demand in Gen.Choose(0, 40)
        select new Case(new(sizes, oneUnitPrice ? [.. sizes.Select(s => s * costs[0])] : costs), demand)).ToArbitrary();

    [Property(Arbitrary = [typeof(PackCoverProperties)], MaxTest = 5000)]
    public bool Cover_equals_brute_force(Case c)
    {
        var cover = PackCover.Cheapest(c.Sizes.Packs, c.Demand)!;
        return cover.Counts.SequenceEqual(BruteForce(c.Sizes.Packs, c.Demand)) && cover.Step == 1;
    }

    [Property(Arbitrary = [typeof(PackCoverProperties)])]
    public bool More_demand_is_never_cheaper(Case c) =>
        PackCover.Cheapest(c.Sizes.Packs, c.Demand + 1)!.Cost >= PackCover.Cheapest(c.Sizes.Packs, c.Demand)!.Cost;

    [Property(Arbitrary = [typeof(PackCoverProperties)])]
    public bool One_more_size_is_never_dearer(Case c, PositiveInt size, NonNegativeInt cost) =>
        PackCover.Cheapest([.. c.Sizes.Packs, new(size.Get, cost.Get)], c.Demand)!.Cost <= PackCover.Cheapest(c.Sizes.Packs, c.Demand)!.Cost;

    /// <summary>Taking the best unit price off a long demand first must not change the answer: compared with the plain recurrence over the whole demand.</summary>
    [Property(Arbitrary = [typeof(PackCoverProperties)], MaxTest = 500)]
    public bool A_long_demand_costs_what_the_plain_recurrence_says(Case c, PositiveInt longer)
    {
        var demand = (c.Demand + 1) * (longer.Get % 200 + 1);
        var cheapest = new long[demand + 1];
        for (var d = 1; d <= demand; d++)
            cheapest[d] = c.Sizes.Packs.Min(p => p.Cost + cheapest[Math.Max(0, d - p.Size)]);
        var cover = PackCover.Cheapest(c.Sizes.Packs, demand)!;
        return cover.Cost == cheapest[demand] && cover.Total >= demand;
    }

    /// <summary>All combinations, up to the first of each size that covers alone; the order wanted is written out.</summary>
    private static long[] BruteForce(SizeAndCost[] packs, int demand)
    {
        var bySize = Enumerable.Range(0, packs.Length).OrderByDescending(i => packs[i].Size).ToArray();
        long[]? best = null;
        Visit(new long[packs.Length], 0, demand);
        return best!;

        void Visit(long[] counts, int at, long left)
        {
            if (at == packs.Length)
            {
                if (left <= 0 && (best is null || Compare(counts, best) < 0)) best = [.. counts];
                return;
            }

            for (long n = 0; n == 0 || left - ((n - 1) * packs[at].Size) > 0; n++)
            {
                counts[at] = n;
                Visit(counts, at + 1, left - (n * packs[at].Size));
            }

            counts[at] = 0;
        }

        int Compare(long[] a, long[] b)
        {
            foreach (Func<long[], long> measure in new Func<long[], long>[] { x => Sum(x, i => packs[i].Cost), x => Sum(x, i => packs[i].Size), x => x.Sum() })
                if (measure(a).CompareTo(measure(b)) is not 0 and var order) return order;
            // More of the largest; of the same size and price, more of the one given first.
            foreach (var i in bySize)
                if (b[i].CompareTo(a[i]) is not 0 and var order) return order;
            return 0;
        }

        static long Sum(long[] counts, Func<int, long> of) => counts.Select((n, i) => n * of(i)).Sum();
    }
}
