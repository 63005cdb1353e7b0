using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>The packs that one material is sold in, with their prices in the plan's currency. Made once of a bench. Immutable.</summary>
internal sealed class Market
{
    private readonly SizeAndCost[] sizes;

    private Market(ImmutableArray<Offer> offers, ImmutableArray<Finding> withoutRate)
    {
        (Offers, WithoutRate) = (offers, withoutRate);
        sizes = [.. offers.Select(o => new SizeAndCost(o.Pack.Size.Units, o.Price.Minor))];
    }

    /// <summary>One size and what one pack of it costs.</summary>
    public readonly record struct Offer(Pack Pack, Money Price);

    /// <summary>What can be bought, in the order of the bench file.</summary>
    public ImmutableArray<Offer> Offers { get; }

    /// <summary>An error for each currency that cannot be converted.</summary>
    public ImmutableArray<Finding> WithoutRate { get; }

    /// <summary>The packs of a material; those without a price, empty, or measured otherwise are passed over.</summary>
    public static Market Of(Message name, AmountKind kind, IEnumerable<Pack> packs, ExchangeRates rates)
    {
        var (offers, foreign) = (ImmutableArray.CreateBuilder<Offer>(), new List<string>());
        foreach (var pack in packs.Where(p => p.CanBeBought))
        {
            if (rates.Convert(pack.Price!) is not { } price) foreign.Add(pack.Price!.Currency);
            else if (pack.Size.Kind == kind) offers.Add(new(pack, price));
        }

        return new(offers.ToImmutable(), [.. foreign.Distinct(StringComparer.Ordinal).Select(c => rates.LackingOf(c, name))]);
    }

    /// <summary>The cheapest packs that hold so much, in units of the material; null where none do, or where they cost more than money holds.</summary>
    public Cover? Cheapest(long lacking) => PackCover.Cheapest(sizes, lacking) is { } cover && cover.Cost <= Money.MostMinor ? cover : null;
}
