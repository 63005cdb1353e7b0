using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;

namespace Protocolist.Planning;

/// <summary>What the recipes draw from the shelf, what has to be bought, and the books of every material.</summary>
internal sealed record MaterialBook(ImmutableArray<PlannedPurchase> Purchases, ImmutableArray<MaterialLine> Lines, ImmutableArray<Finding> Findings)
{
    public static MaterialBook Of(ImmutableArray<SolvedRecipe> recipes, StockBook stock, Bench bench, LocalDate on)
    {
        var purchases = ImmutableArray.CreateBuilder<PlannedPurchase>();
        var lines = ImmutableArray.CreateBuilder<MaterialLine>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var rates = bench.Currency is { } currency ? ExchangeRates.None(currency) : null;
        foreach (var part in recipes.SelectMany(r => r.Recipe.Parts).GroupBy(p => p.Name, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var amount = part.Select(AmountOf).Aggregate((a, b) => a + b);
            if (amount.Units == 0) continue;
            if (stock.Find(part.First()) is not { } material)
            {
                // Water comes from the tap or the still; anything else has to be found.
                if (!part.First().IsDiluent) purchases.Add(new(part.Key, amount.ToString(), 1, null, 0));
                continue;
            }

            var bought = rates is null ? null : Buy(material, amount, rates, on, findings);
            if (rates is null && material.Usable(on) < amount) purchases.Add(new(part.Key, (amount - material.Usable(on)).ToString(), 1, null, 0));
            foreach (var pack in bought?.Packs ?? [])
                purchases.Add(new(material.Name, pack.Pack.Size.ToString(), (int)Math.Min(pack.Count, int.MaxValue), pack.Cost, pack.Pack.LeadDays));
            if (rates is null) continue;
            var line = MaterialLine.Of(material.Name, material.Items, amount, Amount.Zero(amount.Kind), bought, on, rates);
            findings.AddRange(line.Findings);
            if (line.Value is not null) lines.Add(line.Value);
        }

        return new(purchases.DrainToImmutable(), lines.DrainToImmutable(), [.. findings.DistinctBy(f => (f.Id, f.Message))]);
    }

    private static Purchase? Buy(StockBook.Material material, Amount amount, ExchangeRates rates, LocalDate on, ImmutableArray<Finding>.Builder findings)
    {
        var choice = Purchasing.Purchases.Choose(new Product(material.Name, material.Usable(on), material.Packs), amount, rates);
        findings.AddRange(choice.Findings.Select(f => f.Id == "lacking-and-not-for-sale" ? f with { Severity = Severity.Warning } : f));
        return choice.Value?.Purchases.FirstOrDefault();
    }

    private static Amount AmountOf(Fluids.Mixing.RecipePart part) => part.Volume is { } volume ? Amount.Of(volume) : Amount.Of(part.Mass);
}
