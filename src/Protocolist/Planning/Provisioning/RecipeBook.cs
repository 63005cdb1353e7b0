using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids.Mixing;
using Protocolist.Planning.Purchasing;
using UnitsNet;
using FluidRecipe = Protocolist.Fluids.Mixing.Recipe;

namespace Protocolist.Planning.Provisioning;

/// <summary>A recipe chosen for a fluid.</summary>
internal sealed record SolvedRecipe(FluidUse Use, FluidRecipe Recipe, string Way);

/// <summary>One recipe for each fluid, and the purchases that come with them: all ways of all fluids are weighed together.</summary>
internal sealed record RecipeBook(ImmutableArray<SolvedRecipe> Recipes, PurchasePlan Purchases, ImmutableArray<Finding> Findings)
{
    /// <summary>Fluid → all ways to make it, whatever was wished.</summary>
    public required IReadOnlyDictionary<string, ImmutableArray<FluidWay>> Ways { get; init; }

    /// <summary>Fluid → the ways that differ in what they take; those that take the same are one, and the first of them stands for it.</summary>
    public IEnumerable<(string Fluid, ImmutableArray<string> Ways)> DifferentWays(StockBook stock) => Ways.OrderBy(w => w.Key, StringComparer.Ordinal)
        .Select(w => (w.Key, w.Value.DistinctBy(way => way.Takes(stock)).Select(way => way.Id).ToImmutableArray()));

    /// <summary>Chooses the cheapest combination.</summary>
    public static RecipeBook Choose(IReadOnlyList<FluidUse> uses, IReadOnlyList<Purchasing.Need> things, StockBook stock, IReadOnlyList<Product> thingProducts, Bench bench, ExchangeRates rates, LocalDate on, ImmutableSortedDictionary<string, string> wished)
    {
        var at = Temperature.FromDegreesCelsius(Math.Clamp(bench.Temperatures.Room.DegreesCelsius, 0, 40));
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var fallbacks = new Dictionary<string, FluidRecipe>(StringComparer.Ordinal);
        var ways = new Dictionary<string, ImmutableArray<FluidWay>>(StringComparer.Ordinal);
        var open = new Dictionary<string, ImmutableArray<FluidWay>>(StringComparer.Ordinal);
        foreach (var fluid in wished.Keys.Where(k => uses.All(u => u.Id != k)))
            findings.Add(Finding.Error("unknown-supply", $"this plan makes no '{fluid}'", Suggestion.For(fluid, [.. uses.Select(u => u.Id)])));
        foreach (var use in uses)
        {
            var all = use.Fluid.IsWater ? OwnWater(use, stock, at, on) : FluidWays.Of(use, stock, at, on);
            if (!all.IsEmpty)
            {
                open[use.Id] = all;
                ways[use.Id] = Wished(use, all, wished, findings);
            }
            else if (!use.Fluid.IsWater && Usual(use, stock, at, on, findings) is { } usual) fallbacks[use.Id] = usual;
        }

        // What is made from the usual stock is drawn from the shelf and bought like anything else, as far as the bench lists it.
        var drawn = uses.Where(u => fallbacks.ContainsKey(u.Id)).Select(u => new Purchasing.Need(u.Id, [new FluidWay(u.Id, fallbacks[u.Id], []).AsWay(stock)])).Where(n => !n.Ways[0].Demands.IsEmpty);
        var needs = uses.Where(u => ways.ContainsKey(u.Id)).Select(u => new Purchasing.Need(u.Id, [.. ways[u.Id].Select(w => w.AsWay(stock))])).Concat(drawn).Concat(things).ToList();
        var chosen = Purchasing.Purchases.Choose(needs, [.. stock.Materials.Where(IsWellMeasured).Select(m => m.AsProduct(on)), .. thingProducts], rates);
        findings.AddRange(chosen.Findings.Select(f => f.Id == "lacking-and-not-for-sale" ? f with { Severity = Severity.Warning } : f));
        var wayOf = chosen.Value!.Ways.ToDictionary(w => w.NeedId, w => w.WayId, StringComparer.Ordinal);
        var recipes = ImmutableArray.CreateBuilder<SolvedRecipe>();
        foreach (var use in uses)
        {
            if (fallbacks.TryGetValue(use.Id, out var usual)) recipes.Add(new(use, usual, "the usual stock, which the bench does not list"));
            if (!ways.TryGetValue(use.Id, out var all)) continue;
            var way = all.First(w => w.Id == wayOf[use.Id]);
            recipes.Add(new(use, way.Recipe, way.Id));
            findings.AddRange(way.Findings);
        }

        return new(recipes.DrainToImmutable(), chosen.Value, [.. findings.DistinctBy(f => (f.Id, f.Message))]) { Ways = open };
    }

    /// <summary>The one way that is insisted on; all where it is none of them, with an error.</summary>
    private static ImmutableArray<FluidWay> Wished(FluidUse use, ImmutableArray<FluidWay> all, ImmutableSortedDictionary<string, string> wished, ImmutableArray<Finding>.Builder findings)
    {
        if (!wished.TryGetValue(use.Id, out var id)) return all;
        if (all.FirstOrDefault(w => w.Id == id) is { } way) return [way];
        findings.Add(Finding.Error("unknown-supply", $"'{use.Id}' cannot be made from '{id}' on this bench", $"take one of: {string.Join("; ", all.Select(w => w.Id))}"));
        return all;
    }

    private static bool IsWellMeasured(StockBook.Material material) => material.Items.All(i => i.OnHand.Kind == material.Items[0].OnHand.Kind);

    /// <summary>Water that stands on the shelf is drawn from there; tap water that is not listed comes from the tap.</summary>
    private static ImmutableArray<FluidWay> OwnWater(FluidUse use, StockBook stock, Temperature at, LocalDate on) =>
        stock.FluidsAtHand(on).Any(m => m.Name == use.Fluid.Name) && RecipeSolver.Solve(new(use.Fluid, use.Made, []) { At = at }).Value is { } recipe
            ? [new(use.Fluid.Name, recipe, [])]
            : [];

    /// <summary>The recipe from the stock that is usually at hand, with what the shelf lacks said as a warning.</summary>
    private static FluidRecipe? Usual(FluidUse use, StockBook stock, Temperature at, LocalDate on, ImmutableArray<Finding>.Builder findings)
    {
        var usual = RecipeSolver.Solve(new(use.Fluid, use.Made, [.. use.Fluid.UsualStocks.Select(s => new StockFluid(s))]) { At = at });
        if (usual.Value is null) findings.AddRange(usual.Findings.Where(f => f.Severity == Severity.Error));
        if (stock.IsEmpty) return usual.Value;
        var shelf = RecipeSolver.Solve(new(use.Fluid, use.Made, [.. stock.FluidsAtHand(on).Where(m => !m.IsSpent).Select(m => m.AsStock(on))]) { At = at, Salts = [.. stock.SaltsAtHand(on)] });
        findings.AddRange(shelf.Findings.Where(f => f.Severity == Severity.Error).Select(f => f with { Severity = usual.Value is null ? Severity.Error : Severity.Warning }));
        return usual.Value;
    }
}
