using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>So many packs of one size.</summary>
/// <param name="Pack">The size.</param>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Cost">What they cost together, in the plan's currency.</param>
public sealed record PackCount(Pack Pack, long Count, Money Cost);

/// <summary>What is taken of one product, from the shelf and bought.</summary>
/// <param name="ProductId">The product.</param>
/// <param name="Wanted">What all chosen ways together want of it.</param>
/// <param name="FromShelf">What the shelf gives.</param>
/// <param name="Packs">What is bought, the largest first; none where the shelf suffices or nothing can be bought.</param>
/// <param name="Bought">What the packs hold.</param>
/// <param name="Cost">What the packs cost.</param>
public sealed record Purchase(string ProductId, Amount Wanted, Amount FromShelf, ImmutableArray<PackCount> Packs, Amount Bought, Money Cost)
{
    /// <summary>Wanted and not on the shelf.</summary>
    public Amount Lacking => Wanted - FromShelf;

    /// <summary>Bought and not wanted; negative where something stays lacking because it cannot be bought.</summary>
    public Amount Surplus => Bought - Lacking;

    /// <summary>Calendar days until the last pack is there; 0 where nothing is bought.</summary>
    public int LeadDays => Packs.IsEmpty ? 0 : Packs.Max(p => p.Pack.LeadDays);
}

/// <summary>The way chosen for a need.</summary>
/// <param name="NeedId">The need.</param>
/// <param name="WayId">The way.</param>
public sealed record ChosenWay(string NeedId, string WayId);

/// <summary>The cheapest purchases that meet all needs together.</summary>
/// <param name="Ways">The way chosen for each need, in the order of the needs.</param>
/// <param name="Purchases">A line for each product that is wanted, in the order of the products.</param>
/// <param name="Cost">Cash to spend now: the sum over the lines.</param>
public sealed record PurchasePlan(ImmutableArray<ChosenWay> Ways, ImmutableArray<Purchase> Purchases, Money Cost)
{
    /// <summary>Calendar days until everything is there.</summary>
    public int LeadDays => Purchases.IsEmpty ? 0 : Purchases.Max(p => p.LeadDays);
}
