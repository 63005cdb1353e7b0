using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>What is drawn from the shelf, what has to be bought, and the books of every material. Complete when the pass is over.</summary>
internal sealed class MaterialBooks
{
    private readonly StockDay day;
    private readonly List<Finding> findings;
    private readonly ImmutableArray<PlannedPurchase>.Builder purchases = ImmutableArray.CreateBuilder<PlannedPurchase>(4);
    private readonly ImmutableArray<PlannedMaterial>.Builder materials;
    private readonly List<(StockMaterial Material, long CostMinor, long Used)> drawn;

    private MaterialBooks(StockDay day, int capacity, List<(StockMaterial Material, long CostMinor, long Used)> drawn, List<Finding> findings)
    {
        materials = ImmutableArray.CreateBuilder<PlannedMaterial>(capacity);
        (this.day, this.drawn, this.findings, Stored) = (day, drawn, findings, day.Stock.Stored);
    }

    /// <summary>Whether anything is bought.</summary>
    public bool BuyNothing => purchases.Count == 0;

    /// <summary>How many of the purchases and of the books are of vessels: the last ones.</summary>
    private int Vessels { get; set; }

    /// <summary>What to buy.</summary>
    public ImmutableArray<PlannedPurchase> Purchases => purchases.ToImmutable();

    /// <summary>The books: fluids and salts by name, then things in the order of their first use, then vessels.</summary>
    public ImmutableArray<PlannedMaterial> Materials => materials.ToImmutable();

    /// <summary>The bottle that a material is first drawn from; of one that is bought, the line of the bench that it is bought for.</summary>
    public string BottleOf(StockMaterial material)
    {
        foreach (var book in materials)
        {
            if (book.Id != material.Id) continue;
            foreach (var draw in book.Draws)
            {
                if (draw.Stock.Length > 0) return draw.Stock;
            }
        }

        return (material.Items.FirstOrDefault(i => i.Packs.Length > 0) ?? material.Items[0]).Id;
    }

    /// <summary>To spend now, in smallest coins.</summary>
    public long CashMinor { get; private set; }

    /// <summary>Worth of what is used, in smallest coins.</summary>
    public long CostOfUsedMinor { get; private set; }

    /// <summary>Worth of what stays on the shelf, in smallest coins.</summary>
    public long WorthOfLeftMinor { get; private set; }

    /// <summary>What hazardous fluid stands about once all is bought.</summary>
    public StoredTotals Stored { get; private set; }

    /// <summary>Books what the recipes take.</summary>
    /// <param name="choice">The recipes, and what is bought.</param>
    /// <param name="day">The bench on the day of use.</param>
    /// <param name="findings">Takes <c>stock-without-worth</c> (note) and <c>two-currencies</c> (error).</param>
    public static MaterialBooks Of(RecipeChoice choice, StockDay day, List<Finding> findings)
    {
        var (first, recipes) = (findings.Count, Taken(choice));
        var books = new MaterialBooks(day, recipes.Count, new(recipes.Count), findings);
        foreach (var taken in recipes)
        {
            if (taken.Part.Material is not { } material)
            {
                books.Find(taken);
                continue;
            }

            if (taken.Amount.Units == 0) continue;
            var cost = books.Book(material, taken.Amount.Units, 0, choice.Purchases.Purchases[material.Index], taken.Steps, 0);
            books.drawn.Add((material, cost, taken.Amount.Units));
        }

        Distinct.From(findings, first);
        return books;
    }

    /// <summary>These books and what the things take and have bought for them, before the vessels.</summary>
    /// <param name="sundries">The things.</param>
    /// <param name="steps">The ids of the steps.</param>
    /// <param name="found">Takes what is to be said of things, in the same words.</param>
    public MaterialBooks With(List<SundryUse> sundries, Func<int, string> steps, List<Finding> found)
    {
        var first = found.Count;
        var books = new MaterialBooks(day, materials.Count + sundries.Count, drawn, found)
        {
            CashMinor = CashMinor,
            CostOfUsedMinor = CostOfUsedMinor,
            WorthOfLeftMinor = WorthOfLeftMinor,
            Stored = Stored,
            Vessels = Vessels,
        };
        for (var i = 0; i < materials.Count - Vessels; i++) books.materials.Add(materials[i]);
        for (var i = 0; i < purchases.Count - Vessels; i++) books.purchases.Add(purchases[i]);
        foreach (var use in sundries)
        {
            if (use.Stock is not { } stock || use.AllUses == 0) continue;
            var (usedUp, needed, ids) = (use.UsedUp, use.Needed, new string[use.Steps]);
            for (var i = 0; i < ids.Length; i++) ids[i] = steps(use[i].Step);
            found.AddRange(stock.Market.WithoutRate.AsSpan());
            var bought = Purchasing.Purchases.Of(day.Products[stock.Index], needed, found);
            books.Book(stock, usedUp, needed - usedUp, bought, ImmutableCollectionsMarshal.AsImmutableArray(ids), use.AllUses);
        }

        for (var i = Vessels; i > 0; i--) books.materials.Add(materials[materials.Count - i]);
        for (var i = Vessels; i > 0; i--) books.purchases.Add(purchases[purchases.Count - i]);
        Distinct.From(found, first);
        return books;
    }

    /// <summary>Books a vessel of the catalogue that is bought.</summary>
    public void Buy(PlannedPurchase purchase, PlannedMaterial material, long cashMinor, bool staysInUse)
    {
        purchases.Add(purchase);
        materials.Add(material);
        Vessels++;
        CashMinor += cashMinor;
        if (staysInUse) CostOfUsedMinor += cashMinor;
        else WorthOfLeftMinor += cashMinor;
    }

    /// <summary>What so much of a material costs the plan, as its own part of what it uses; 0 where the bench does not list it.</summary>
    public decimal CostOf(StockMaterial? material, Amount amount)
    {
        foreach (var (booked, cost, used) in drawn)
        {
            if (booked == material) return (decimal)cost * amount.Units / used;
        }

        return 0;
    }

    /// <summary>Books one material, and says what the used part of it costs, in smallest coins.</summary>
    private long Book(StockMaterial material, long amount, long reserve, Purchase? bought, ImmutableArray<string> steps, long uses)
    {
        var on = day.Materials[material.Index];
        foreach (var (pack, count, cost) in bought?.Packs ?? [])
            purchases.Add(new(material.Name, pack.Size, (int)Math.Min(count, int.MaxValue), cost, pack.LeadDays) { Id = material.Id, For = steps });
        var booked = on.Book(amount, reserve, bought, uses, steps);
        findings.AddRange(on.Doubts.AsSpan());
        materials.Add(booked.Material);
        CashMinor += booked.CashMinor;
        CostOfUsedMinor += booked.CostOfUsedMinor;
        WorthOfLeftMinor += booked.WorthOfLeftMinor;
        Stored = material.Hazard.AddedTo(Stored, booked.Material.Bought);
        return booked.CostOfUsedMinor;
    }

    /// <summary>What the bench does not list: tap water comes from the tap; anything else, other water too, has to be found.</summary>
    private void Find(TakenMaterial taken)
    {
        var ((part, amount, steps), nothing) = (taken, Amount.Zero(taken.Amount.Kind));
        var isWater = part.Part.Fluid is { IsWater: true };
        var isTap = isWater && (part.Part.Fluid!.Substance == Substance.TapWater || part.Part.Fluid.Substance == Substance.Water);
        if (!isTap) purchases.Add(new(part.Name, amount, 1, null, 0) { Id = part.Id, For = steps });
        var kind = isWater ? MaterialKind.Water : part.Part.Salt is not null ? MaterialKind.Salt : MaterialKind.Fluid;
        materials.Add(new(part.Id, part.Name, kind, nothing, amount, amount, nothing)
        {
            Draws = [new(isTap ? MaterialOrigin.Tap : MaterialOrigin.NotListed, "", amount)],
            For = steps,
        });
        Stored = StoredHazard.Of(part.Part.Fluid).AddedTo(Stored, amount);
    }

    /// <summary>What the recipes take, by id of the material, with the steps that it is for.</summary>
    private static List<TakenMaterial> Taken(RecipeChoice choice)
    {
        var parts = 0;
        foreach (var recipe in choice.Recipes) parts += recipe.Way.Parts.Length;
        var all = new List<TakenMaterial>(parts);
        foreach (var recipe in choice.Recipes)
        {
            foreach (var part in recipe.Way.Parts)
            {
                var (amount, place) = (recipe.AmountOf(part.Part), 0);
                while (place < all.Count && string.CompareOrdinal(all[place].Part.Id, part.Id) < 0) place++;
                if (place == all.Count || all[place].Part.Id != part.Id) all.Insert(place, new(part, amount, recipe.Need.Steps));
                else all[place] = all[place] with { Amount = all[place].Amount + amount, Steps = Both(all[place].Steps, recipe.Need.Steps) };
            }
        }

        return all;
    }

    private static ImmutableArray<string> Both(ImmutableArray<string> one, ImmutableArray<string> other) =>
        one == other ? one : [.. one, .. other.Where(s => !one.Contains(s))];

    /// <summary>What all recipes take of one material.</summary>
    private readonly record struct TakenMaterial(SuppliedPart Part, Amount Amount, ImmutableArray<string> Steps);
}
