using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Vessels;

namespace Protocolist.Planning.Provisioning;

/// <summary>
/// Vessels of the catalogue that steps use: bought once each, for cash; the one that the specimen stays in is used up, a tub stays on the shelf.
/// </summary>
internal static class VesselPurchases
{
    public static void Book(MaterialBooks books, ImmutableArray<DraftStep> steps, StockDay day, List<Finding> findings)
    {
        if (day.VesselsForSale.Count == 0) return;
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i].Vessel is not { } fitted || IndexOf(steps, fitted.Vessel) != i) continue;
            if (IsForSale(fitted.Vessel, day)) Book(books, fitted.Vessel, UsersOf(fitted.Vessel, steps), day, findings);
        }
    }

    public static bool IsForSale(Vessel vessel, StockDay day) => day.VesselsForSale.Any(v => v.Vessel.Id == vessel.Id);

    private static ImmutableArray<DraftStep> UsersOf(Vessel vessel, ImmutableArray<DraftStep> steps) => [.. steps.Where(s => s.Vessel?.Vessel.Id == vessel.Id)];

    /// <summary>The first step that uses a vessel.</summary>
    private static int IndexOf(ImmutableArray<DraftStep> steps, Vessel vessel)
    {
        var at = 0;
        while (steps[at].Vessel?.Vessel.Id != vessel.Id) at++;
        return at;
    }

    private static void Book(MaterialBooks books, Vessel vessel, ImmutableArray<DraftStep> steps, StockDay day, List<Finding> findings)
    {
        var price = day.Stock.Rates.Convert(vessel.Price!);
        if (price is null) findings.Add(day.Stock.Rates.LackingOf(vessel.Price!.Currency, Message.Text(vessel.Id)));
        var stays = steps.Any(s => s.Kind == StageKind.House);
        ImmutableArray<string> ids = [.. steps.Select(s => s.Id)];
        var (one, none) = (Amount.Of(1), Amount.Zero(AmountKind.Count));
        var material = new PlannedMaterial(vessel.Id, Message.Text(vessel.Name), MaterialKind.Vessel, none, one, stays ? one : none, stays ? none : one)
        {
            Draws = stays ? [new(MaterialOrigin.Purchase, "", one)] : [],
            For = ids,
        };
        books.Buy(new(material.Name, one, 1, price, vessel.LeadDays) { Id = vessel.Id, For = ids }, material, price?.Minor ?? 0, stays);
    }
}
