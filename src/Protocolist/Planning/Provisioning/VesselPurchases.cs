using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Stock;
using Protocolist.Planning.Purchasing;
using Protocolist.Quantities;
using Protocolist.Vessels;

namespace Protocolist.Planning.Provisioning;

/// <summary>Vessels of the catalogue that steps use: bought once each, for cash; the one that the specimen stays in is used up, a tub stays on the shelf.</summary>
internal static class VesselPurchases
{
    public static MaterialBook With(MaterialBook book, IReadOnlyList<DraftStep> steps, Bench bench, LocalDate on, ExchangeRates rates)
    {
        var forSale = bench.VesselsForSale(on).ToDictionary(v => v.Id, StringComparer.Ordinal);
        var wanted = steps.Where(s => s.Vessel is { } v && forSale.ContainsKey(v.Vessel.Id)).GroupBy(s => s.Vessel!.Vessel.Id, StringComparer.Ordinal).ToList();
        foreach (var group in wanted) book = With(book, forSale[group.Key], [.. group], rates);
        return book;
    }

    private static MaterialBook With(MaterialBook book, Vessel vessel, ImmutableArray<DraftStep> steps, ExchangeRates rates)
    {
        var price = rates.Convert(vessel.Price!);
        var cash = price ?? Money.Zero(rates.Currency);
        var stays = steps.Any(s => s.Kind == Protocols.StageKind.House);
        ImmutableArray<string> ids = [.. steps.Select(s => s.Id)];
        var (one, none) = (Amount.Of(1), Amount.Zero(AmountKind.Count));
        var line = new MaterialLine
        {
            Id = vessel.Id,
            OnHand = none,
            Unusable = none,
            Bought = one,
            Used = stays ? one : none,
            Left = stays ? none : one,
            SpillReserve = none,
            Draws = [],
            WorthOnHand = Money.Zero(rates.Currency),
            CashNow = cash,
            CostOfUsed = stays ? cash : Money.Zero(rates.Currency),
            WorthOfLeft = stays ? Money.Zero(rates.Currency) : cash,
        };
        return book with
        {
            Purchases = book.Purchases.Add(new(vessel.Name, one.ToString(), 1, price, vessel.LeadDays) { For = ids }),
            Lines = book.Lines.Add(line),
            Materials = book.Materials.Add(new(vessel.Id, vessel.Name, "vessel", "pieces", 0, 1, line.Used.Units, line.Left.Units) { Draws = stays ? [new("bought", 1)] : [], For = ids }),
            Findings = price is null ? book.Findings.Add(rates.Lacking(vessel.Price!.Currency, $"'{vessel.Id}'")) : book.Findings,
        };
    }
}
