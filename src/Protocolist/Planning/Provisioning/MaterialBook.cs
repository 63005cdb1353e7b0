using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>What is drawn from the shelf, what has to be bought, and the books of every material.</summary>
internal sealed record MaterialBook(ImmutableArray<PlannedPurchase> Purchases, ImmutableArray<MaterialLine> Lines, ImmutableArray<PlannedMaterial> Materials, ImmutableArray<Finding> Findings)
{
    private const string FromTheTap = "tap or source";

    public static MaterialBook Of(RecipeBook recipes, ImmutableArray<Thing> things, StockBook stock, ExchangeRates rates, LocalDate on)
    {
        var purchases = ImmutableArray.CreateBuilder<PlannedPurchase>();
        var lines = ImmutableArray.CreateBuilder<MaterialLine>();
        var materials = ImmutableArray.CreateBuilder<PlannedMaterial>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var (name, steps, amount) in Taken(recipes))
        {
            var bought = recipes.Purchases.Purchases.FirstOrDefault(p => p.ProductId == name);
            var material = stock.Materials.FirstOrDefault(m => m.Name == name);
            if (material is null) Unlisted(name, amount, steps);
            else if (amount.Units > 0) Book(name, KindOf(material), material.Items, amount, Amount.Zero(amount.Kind), bought, steps, 0);
        }

        foreach (var thing in things.Where(t => t.IsListed && t.AllUses > 0))
        {
            var bought = recipes.Purchases.Purchases.FirstOrDefault(p => p.ProductId == thing.Id);
            var used = Amount.Of(thing.UsedUp);
            Book(thing.Id, thing.Items[0].Kind == StockKind.Tool ? "tool" : "consumable", thing.Items, used, Amount.Of(thing.Needed) - used, bought, [.. thing.Uses.Select(u => u.Step)], thing.AllUses);
        }

        return new(purchases.DrainToImmutable(), lines.DrainToImmutable(), materials.DrainToImmutable(), [.. findings.DistinctBy(f => (f.Id, f.Message))]);

        void Unlisted(string name, Amount amount, ImmutableArray<string> steps)
        {
            // Water comes from the tap or the still; anything else has to be found.
            var isWater = Fluids.Fluid.Read(name).Value is { IsWater: true };
            if (!isWater) purchases.Add(new(name, amount.ToString(), 1, null, 0) { For = steps });
            materials.Add(new(Slug.Of(name), name, isWater ? "water" : amount.Kind == AmountKind.Mass ? "salt" : "fluid", UnitOf(amount.Kind), 0, InUnits(amount), InUnits(amount), 0)
            {
                Draws = [new(isWater ? FromTheTap : "to be found: the bench does not list it", InUnits(amount))],
                For = steps,
            });
        }

        void Book(string name, string kind, ImmutableArray<StockItem> items, Amount used, Amount reserve, Purchase? bought, ImmutableArray<string> steps, long uses)
        {
            foreach (var pack in bought?.Packs ?? [])
                purchases.Add(new(items[0].Kind is StockKind.Consumable or StockKind.Tool ? items[0].Substance : name, pack.Pack.Size.ToString(), (int)Math.Min(pack.Count, int.MaxValue), pack.Cost, pack.Pack.LeadDays) { For = steps });
            var line = MaterialLine.Of(name, items, used, reserve, bought, on, rates);
            findings.AddRange(line.Findings);
            lines.Add(line.Value!);
            materials.Add(Written(line.Value!, kind, items, steps, uses));
        }
    }

    /// <summary>What the recipes take, by material, with the steps that it is for.</summary>
    private static IEnumerable<(string Name, ImmutableArray<string> Steps, Amount Amount)> Taken(RecipeBook recipes) =>
        recipes.Recipes.SelectMany(r => r.Recipe.Parts.Select(p => (p.Name, r.Use, Amount: FluidWay.AmountOf(p))))
            .GroupBy(p => p.Name, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => (g.Key, g.SelectMany(p => p.Use.Steps.Select(s => s.Step)).Distinct(StringComparer.Ordinal).ToImmutableArray(), g.Select(p => p.Amount).Aggregate((a, b) => a + b)));

    private static PlannedMaterial Written(MaterialLine line, string kind, ImmutableArray<StockItem> items, ImmutableArray<string> steps, long uses)
    {
        var drawn = line.Draws.Aggregate(Amount.Zero(line.Used.Kind), (sum, d) => sum + d.Amount);
        var fromPacks = line.Used - drawn;
        return new(Slug.Of(line.Id), kind is "tool" or "consumable" ? items[0].Substance : line.Id, kind, UnitOf(line.Used.Kind), InUnits(line.OnHand), InUnits(line.Bought), InUnits(line.Used), InUnits(line.Left))
        {
            Unusable = InUnits(line.Unusable),
            Reserve = InUnits(line.SpillReserve),
            Uses = uses,
            For = steps,
            Draws =
            [
                .. line.Draws.Select(d => new MaterialDraw(d.Item.Id, InUnits(d.Amount))),
                .. fromPacks.Units > 0 ? [new MaterialDraw(line.Bought.Units > 0 ? "bought" : "lacking", InUnits(fromPacks))] : (MaterialDraw[])[],
            ],
        };
    }

    private static string KindOf(StockBook.Material material) => material.Salt is not null || material.Items[0].Kind == StockKind.Salt ? "salt" : material.Fluid is { IsWater: true } ? "water" : "fluid";

    private static string UnitOf(AmountKind kind) => kind switch { AmountKind.Volume => "mL", AmountKind.Mass => "g", _ => "pieces" };

    /// <summary>Exact: a decimal holds thousandths without rounding.</summary>
    private static decimal InUnits(Amount amount) => amount.Kind == AmountKind.Count ? amount.Units : amount.Units / 1000m;
}
