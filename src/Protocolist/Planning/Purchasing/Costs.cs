using System.Collections.Immutable;
using Protocolist.Fluids.Safety;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>What a plan costs. Every part is rounded once to the smallest coin, halves away from zero; the sums are exact sums of the rounded parts.</summary>
public sealed record Costs
{
    /// <summary>Cash to spend now on materials.</summary>
    public required Money CashNow { get; init; }

    /// <summary>What the materials used up are worth.</summary>
    public required Money Materials { get; init; }

    /// <summary>What stays on the shelf is worth.</summary>
    public required Money LeftOnShelf { get; init; }

    /// <summary>What tools and goggles lose by being used.</summary>
    public required Money Wear { get; init; }

    /// <summary>Hands-on time at the bench's rate.</summary>
    public required Money Labour { get; init; }

    /// <summary>What the waste costs to be rid of, by class.</summary>
    public required ImmutableSortedDictionary<WasteClass, Money> DisposalByClass { get; init; }

    /// <summary>The work of a year of care after sealing.</summary>
    public required Money CareLabourByYear { get; init; }

    /// <summary>The fluid that is topped up in a year.</summary>
    public required Money CareFluidByYear { get; init; }

    /// <summary>What a year of care after sealing costs: work and fluid.</summary>
    public Money CareByYear => CareLabourByYear + CareFluidByYear;

    /// <summary>All disposal.</summary>
    public Money Disposal => Money.Sum(DisposalByClass.Values, CashNow.Currency);

    /// <summary>What the plan costs: materials used, wear, labour, disposal. What stays on the shelf is not in it, nor is care.</summary>
    public Money Total => Materials + Wear + Labour + Disposal;

    /// <summary>The total shared over a lot of alike specimens, no coin lost: the first ones bear the odd coins.</summary>
    /// <param name="specimens">How many; 1 or more.</param>
    /// <returns>One share each.</returns>
    public ImmutableArray<Money> BySpecimen(int specimens) => Total.Allocate([.. Enumerable.Repeat(1m, specimens)]);

    /// <summary>The total and so many years of care.</summary>
    /// <param name="years">Years, 0 or more.</param>
    /// <returns>The sum.</returns>
    public Money Over(int years) => Total + CareByYear * years;
}
