using System.Buffers;
using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>One size to choose from, in whole units.</summary>
/// <param name="Size">Units in one pack; above 0.</param>
/// <param name="Cost">Its cost in smallest coins; 0 or more.</param>
internal readonly record struct SizeAndCost(long Size, long Cost);

/// <summary>The cheapest way to cover a demand with packs.</summary>
/// <param name="Counts">Packs of each size, in the order the sizes were given.</param>
/// <param name="Cost">Their cost.</param>
/// <param name="Total">What they hold together.</param>
/// <param name="Step">The unit in which it was solved: 1 means exactly; else sizes were rounded down and the demand up to whole steps.</param>
internal sealed record Cover(ImmutableArray<long> Counts, Int128 Cost, Int128 Total, long Step);

/// <summary>
/// The unbounded covering problem: least sum of cost with the sum of sizes at least the demand; among equals the least total, then the fewest
/// packs, then more of the largest. Solved by dynamic programming over the demand, f(d) = least over sizes of (its cost + f(d - its size)).
/// </summary>
/// <remarks>
/// Cost, total and number of packs are packed into one integer key with the cost on top; adding keys adds all three, so the order of keys is the
/// order wanted. Going back from the demand, the largest size that fits the table at each step gives more of the largest.
/// Time is sizes × cells, memory 8 bytes a cell. Three things keep the cells few:
/// <list type="bullet">
/// <item>all is divided by the greatest common divisor of the sizes;</item>
/// <item>a long demand is periodic: beyond <see cref="OthersAtMost"/> it is met with packs of the best unit price, which are taken off first;</item>
/// <item>what would still need more than <see cref="MostCells"/> is solved in steps of 10, 100, ... units, sizes rounded down and the demand up:
/// the purchase always covers, and <see cref="Cover.Step"/> says that it was so.</item>
/// </list>
/// </remarks>
internal static class PackCover
{
    /// <summary>16 MB of table; some milliseconds.</summary>
    internal const long MostCells = 1 << 21;

    /// <summary>So many sizes are worked on without taking memory.</summary>
    private const int FewSizes = 16;

    /// <summary>Solves it.</summary>
    /// <param name="sizes">The sizes; an empty list covers nothing but a demand of 0.</param>
    /// <param name="demand">Units wanted; 0 or less needs nothing.</param>
    /// <returns>The cheapest cover, or null when there is a demand and no size.</returns>
    public static Cover? Cheapest(ReadOnlySpan<SizeAndCost> sizes, long demand)
    {
        var counts = new long[sizes.Length];
        if (demand <= 0) return new(ImmutableCollectionsMarshal.AsImmutableArray(counts), 0, 0, 1);
        if (sizes.Length == 0) return null;

        long step = 1;
        if (sizes.Length == 1) counts[0] = CeilingOf(demand, sizes[0].Size);
        else while (!TrySolve(sizes, demand, step, counts)) step *= 10;

        Int128 cost = 0, total = 0;
        for (var i = 0; i < counts.Length; i++)
        {
            cost += (Int128)counts[i] * sizes[i].Cost;
            total += (Int128)counts[i] * sizes[i].Size;
        }

        return new(ImmutableCollectionsMarshal.AsImmutableArray(counts), cost, total, step);
    }

    /// <summary>Solves in steps of so many units, or says that the table would be too large.</summary>
    /// <remarks>Sizes below one step are left out; at the latest when all are below ten, the period is short.</remarks>
    private static bool TrySolve(ReadOnlySpan<SizeAndCost> sizes, long demand, long step, long[] counts)
    {
        var isFew = sizes.Length <= FewSizes;
        Span<SizeAndCost> scaled = isFew ? stackalloc SizeAndCost[sizes.Length] : new SizeAndCost[sizes.Length];
        Span<int> places = isFew ? stackalloc int[sizes.Length] : new int[sizes.Length];
        var useful = Useful(sizes, step, scaled, places);
        scaled = scaled[..useful];
        places = places[..useful];
        var divisor = 0L;
        foreach (var (size, _) in scaled) divisor = Gcd(divisor, size);
        foreach (ref var one in scaled) one = one with { Size = one.Size / divisor };
        var target = CeilingOf(CeilingOf(demand, step), divisor);

        var best = BestUnitPrice(scaled);
        var ahead = (long)(Int128.Max(0, target - OthersAtMost(scaled, best)) / scaled[best].Size);
        var cells = target - ahead * scaled[best].Size + 1;
        if (cells > MostCells) return false;

        counts[places[best]] = ahead;
        Fill(scaled, (int)cells, places, counts);
        return true;
    }

    /// <summary>
    /// The sizes in steps, falling, each with its place; without those that another one beats: as large or larger and cheaper, or the same twice.
    /// </summary>
    private static int Useful(ReadOnlySpan<SizeAndCost> sizes, long step, Span<SizeAndCost> useful, Span<int> places)
    {
        var count = 0;
        for (var i = 0; i < sizes.Length; i++)
        {
            var one = sizes[i] with { Size = sizes[i].Size / step };
            if (one.Size <= 0) continue;
            var place = count++;
            for (; place > 0 && IsBefore(one, useful[place - 1]); place--) (useful[place], places[place]) = (useful[place - 1], places[place - 1]);
            (useful[place], places[place]) = (one, i);
        }

        var (kept, cheapestAbove) = (0, long.MaxValue);
        for (var at = 0; at < count; at++)
        {
            var one = useful[at];
            var sameSize = kept > 0 && useful[kept - 1].Size == one.Size;
            if (!sameSize && one.Cost <= cheapestAbove) (useful[kept], places[kept++]) = (one, places[at]);
            cheapestAbove = Math.Min(cheapestAbove, one.Cost);
        }

        return kept;
    }

    private static bool IsBefore(SizeAndCost one, SizeAndCost other) => one.Size > other.Size || (one.Size == other.Size && one.Cost < other.Cost);

    /// <summary>The best unit price, the largest among equals, so that trading others for it never costs more nor needs more packs.</summary>
    private static int BestUnitPrice(ReadOnlySpan<SizeAndCost> sizes)
    {
        var best = 0;
        for (var i = 1; i < sizes.Length; i++)
            if ((Int128)sizes[i].Cost * sizes[best].Size < (Int128)sizes[best].Cost * sizes[i].Size) best = i;
        return best;
    }

    /// <summary>
    /// The most that all packs other than the best unit price's hold together in an optimal cover. Two bounds on each: as many of one size as
    /// make a multiple of the best pack would be traded for best packs; and the best packs alone cost less than one pack above the demand at
    /// the best unit price, which is all that the others' higher unit price may eat.
    /// </summary>
    private static Int128 OthersAtMost(ReadOnlySpan<SizeAndCost> sizes, int best)
    {
        var (s, c) = sizes[best];
        Int128 sum = 0;
        for (var i = 0; i < sizes.Length; i++)
        {
            if (i == best) continue;
            Int128 most = (s / Gcd(s, sizes[i].Size)) - 1;
            var excess = (Int128)sizes[i].Cost * s - (Int128)c * sizes[i].Size;
            if (excess > 0) most = Int128.Min(most, (Int128)c * s / excess);
            sum += most * sizes[i].Size;
        }

        return sum;
    }

    private static void Fill(ReadOnlySpan<SizeAndCost> sizes, int cells, ReadOnlySpan<int> places, long[] counts)
    {
        // Key = cost * costPlace + total * totalPlace + packs; each place is wider than the largest value below it. The sizes fall.
        var (smallest, largest, leastCost, dearest) = (sizes[^1].Size, sizes[0].Size, Int128.MaxValue, 0L);
        foreach (var (size, cost) in sizes)
        {
            leastCost = Int128.Min(leastCost, cost * ((Int128)(cells + size - 1) / size));
            dearest = Math.Max(dearest, cost);
        }

        Int128 mostPacks = (cells + smallest - 1) / smallest + 1;
        Int128 totalPlace = mostPacks + 1;
        var costPlace = ((Int128)cells + largest) * totalPlace + totalPlace;
        if ((leastCost + dearest + 1) * costPlace * 2 < long.MaxValue) Fill<long>(sizes, costPlace, totalPlace, cells, places, counts);
        else Fill<Int128>(sizes, costPlace, totalPlace, cells, places, counts);
    }

    private static void Fill<T>(ReadOnlySpan<SizeAndCost> sizes, Int128 costPlace, Int128 totalPlace, int cells, ReadOnlySpan<int> places, long[] counts)
        where T : unmanaged, IBinaryInteger<T>, IMinMaxValue<T>
    {
        Span<T> keys = sizes.Length <= FewSizes ? stackalloc T[sizes.Length] : new T[sizes.Length];
        for (var i = 0; i < keys.Length; i++) keys[i] = T.CreateChecked(sizes[i].Cost * costPlace + sizes[i].Size * totalPlace + 1);
        var rented = ArrayPool<T>.Shared.Rent(cells);
        try
        {
            var table = rented.AsSpan(0, cells);
            table.Fill(T.MaxValue);
            table[0] = T.Zero;
            var smallest = (int)Math.Min(sizes[^1].Size, cells);
            // Within a block no wider than the smallest size, every cell looks back to before the block: a whole block is one run of minima.
            for (var start = 1; start < cells; start += smallest)
            {
                var block = table[start..Math.Min(start + smallest, cells)];
                for (var i = 0; i < sizes.Length; i++) Relax(table, block, start - sizes[i].Size, keys[i]);
            }

            for (long at = cells - 1; at > 0;)
            {
                var i = 0;
                while (table[(int)at] != keys[i] + table[(int)Math.Max(0, at - sizes[i].Size)]) i++;
                counts[places[i]]++;
                at -= sizes[i].Size;
            }
        }
        finally
        {
            ArrayPool<T>.Shared.Return(rented);
        }
    }

    /// <summary>Lowers each cell of a block to key + the cell one size before it, or to the key alone where that lies at or before 0.</summary>
    private static void Relax<T>(Span<T> table, Span<T> block, long from, T key)
        where T : unmanaged, IBinaryInteger<T>
    {
        var alone = (int)Math.Clamp(-from, 0, block.Length);
        for (var j = 0; j < alone; j++) block[j] = T.Min(block[j], key);
        if (alone == block.Length) return;
        var rest = block[alone..];
        var before = table.Slice((int)(from + alone), rest.Length);
        var j0 = 0;
        if (Vector<T>.IsSupported && Vector.IsHardwareAccelerated)
        {
            var rests = MemoryMarshal.Cast<T, Vector<T>>(rest);
            var befores = MemoryMarshal.Cast<T, Vector<T>>(before);
            var keyed = new Vector<T>(key);
            for (var v = 0; v < rests.Length; v++) rests[v] = Vector.Min(rests[v], befores[v] + keyed);
            j0 = rests.Length * Vector<T>.Count;
        }

        for (var j = j0; j < rest.Length; j++) rest[j] = T.Min(rest[j], key + before[j]);
    }

    private static long CeilingOf(long a, long b) => (a / b) + (a % b == 0 ? 0 : 1);

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
