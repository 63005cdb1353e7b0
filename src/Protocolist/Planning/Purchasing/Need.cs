using System.Collections.Immutable;
using Protocolist.Benches.Stock;

namespace Protocolist.Planning.Purchasing;

/// <summary>A material that can be drawn from the shelf and bought: one substance of one strength (and, of a salt, one hydrate).</summary>
/// <param name="Id">The name by which demands call it.</param>
/// <param name="OnHand">What is usable of it on the shelf; its kind is the kind of all amounts of this product.</param>
/// <param name="Packs">The sizes it can be bought in; those without a price, empty, or measured otherwise are passed over.</param>
public sealed record Product(string Id, Amount OnHand, ImmutableArray<Pack> Packs);

/// <summary>So much of one product, reserve included, before anything is taken from the shelf.</summary>
/// <param name="ProductId">The product.</param>
/// <param name="Amount">How much; 0 or more.</param>
public sealed record Demand(string ProductId, Amount Amount);

/// <summary>One way to meet a need, its recipe solved: 4 L of 70 % from 96 %, say, or ready-made.</summary>
/// <param name="Id">A name for it, for explanations.</param>
/// <param name="Demands">What it takes of each product.</param>
public sealed record Way(string Id, ImmutableArray<Demand> Demands);

/// <summary>Something the plan must have, and the ways to have it. One is chosen.</summary>
/// <param name="Id">The name of it.</param>
/// <param name="Ways">One or more; among equals the earlier is chosen.</param>
public sealed record Need(string Id, ImmutableArray<Way> Ways);
