using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Quantities;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>So many packs of one size.</summary>
/// <param name="Pack">The size.</param>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Cost">What they cost together, in the plan's currency.</param>
internal readonly record struct PackCount(Pack Pack, long Count, Money Cost);

/// <summary>What is bought of one product.</summary>
/// <param name="Packs">The packs, the largest first.</param>
/// <param name="Bought">What they hold, in units of the product.</param>
/// <param name="CostMinor">What they cost, in smallest coins of the plan's currency.</param>
internal sealed record Purchase(ImmutableArray<PackCount> Packs, long Bought, long CostMinor);

/// <summary>The cheapest purchases that meet all needs together.</summary>
/// <param name="Ways">The way chosen for each need, in the order of the needs.</param>
/// <param name="Wanted">What all of it together wants of each product.</param>
/// <param name="Purchases">Of each product, what is bought; null where nothing is.</param>
internal sealed record PurchasePlan(ImmutableArray<int> Ways, ImmutableArray<long> Wanted, ImmutableArray<Purchase?> Purchases)
{
    /// <summary>Cash to spend now, in smallest coins.</summary>
    public long CostMinor => Purchases.Sum(p => p?.CostMinor ?? 0);
}
