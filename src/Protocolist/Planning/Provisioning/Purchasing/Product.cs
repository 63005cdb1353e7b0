using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>
/// A material that can be drawn from the shelf and bought: one substance of one strength (and, of a salt, one hydrate), or one sort of thing.
/// </summary>
/// <param name="Name">What people call it.</param>
/// <param name="OnHand">What is usable of it on the shelf; its kind is the kind of all amounts of this product.</param>
/// <param name="Market">What it can be bought in.</param>
internal sealed record Product(Message Name, Amount OnHand, Market Market)
{
    /// <summary>Of so much, what the shelf does not give.</summary>
    public long LackingOf(long wanted) => Math.Max(0, wanted - Math.Max(0, OnHand.Units));
}

/// <summary>So much of one product, reserve included, before anything is taken from the shelf.</summary>
/// <param name="Product">Its place among the products.</param>
/// <param name="Units">How much, in units of the product; 0 or more.</param>
internal readonly record struct Demand(int Product, long Units);

/// <summary>Something the plan must have, and the ways to have it: what each takes, its recipe solved. One is chosen, among equals the earlier.</summary>
/// <param name="Ways">One or more, each naming a product once.</param>
internal readonly record struct Need(ImmutableArray<ImmutableArray<Demand>> Ways)
{
    /// <summary>Of each product, the most that one of the ways takes.</summary>
    /// <param name="most">Takes it, by product.</param>
    public void MostOf(Span<long> most)
    {
        foreach (var way in Ways)
        {
            foreach (var (product, units) in way) most[product] = Math.Max(most[product], units);
        }
    }
}
