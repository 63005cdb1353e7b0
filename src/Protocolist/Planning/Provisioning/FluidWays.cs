using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using Protocolist.Planning.Purchasing;
using UnitsNet;
using FluidRecipe = Protocolist.Fluids.Mixing.Recipe;

namespace Protocolist.Planning.Provisioning;

/// <summary>One way to make a fluid: its recipe, and what it takes of the bench's materials.</summary>
internal sealed record FluidWay(string Id, FluidRecipe Recipe, ImmutableArray<Finding> Findings)
{
    public Way AsWay(StockBook stock) => new(Id,
    [
        .. Recipe.Parts.Select(p => (Material: stock.Find(p), Amount: AmountOf(p))).Where(p => p.Material is not null)
            .GroupBy(p => p.Material!.Name, StringComparer.Ordinal)
            .Select(g => new Demand(g.Key, g.Select(p => p.Amount).Aggregate((a, b) => a + b))),
    ]);

    /// <summary>What it takes, in one line: two ways with the same line are the same way.</summary>
    public string Takes(StockBook stock) => string.Join('|',
        AsWay(stock).Demands.Select(d => $"{d.ProductId}: {d.Amount}").Order(StringComparer.Ordinal).Concat(Recipe.Parts.Where(p => stock.Find(p) is null).Select(p => p.Name)));

    public static Amount AmountOf(RecipePart part) => part.Volume is { } volume ? Amount.Of(volume) : Amount.Of(part.Mass);
}

/// <summary>The ways in which a fluid can be made from a shelf, each with its recipe solved: used fixative restored, ready-made, from each stock, from part bottles together, with each hydrate of its salts.</summary>
/// <remarks>Where two ways cost the same the earlier is taken, so the order is: what would be thrown away, what needs no mixing, what needs the fewest bottles.</remarks>
internal static class FluidWays
{
    /// <summary>Hydrates are tried in so many combinations at most.</summary>
    private const int MostSaltChoices = 6;

    public static ImmutableArray<FluidWay> Of(FluidUse use, StockBook stock, Temperature at, LocalDate on)
    {
        var fluids = stock.FluidsAtHand(on).ToList();
        var waters = fluids.Where(m => m.Fluid!.IsWater).ToList();
        var fresh = fluids.Where(m => !m.Fluid!.IsWater && !m.IsSpent).OrderByDescending(m => m.Fluid == use.Fluid).ToList();
        var ways = new List<FluidWay>();
        foreach (var salts in SaltChoices(use.Fluid, stock, on))
        {
            var suffix = salts.Label.Length > 0 ? $" with {salts.Label}" : "";
            if (use.MayBeRestored)
            {
                foreach (var spent in fluids.Where(m => m.IsSpent && m.Fluid!.Buffering == use.Fluid.Buffering && m.Fluid is { HasFormaldehyde: true, Substance.IsConcentrate: false }))
                    foreach (var strong in fresh.Where(m => m.Fluid!.Substance == Substance.FormaldehydeStock))
                        Try($"{spent.Name} restored with {strong.Name}{suffix}", [Share(spent, strong, use, on), strong.Unlimited, .. Unlimited(waters)], salts.Salts);
            }

            foreach (var one in fresh.Where(m => m.Fluid!.Substance == use.Fluid.Substance || (use.Fluid.HasFormaldehyde && m.Fluid!.HasFormaldehyde)))
            {
                Try($"{one.Name}{suffix}", [one.Unlimited, .. Unlimited(waters)], salts.Salts);

                // Tap water serves for formalin, never for alcohol, which it clouds (S. Moore, natural-history collections list, 2018).
                if (use.Fluid.HasFormaldehyde && waters.Count > 0) Try($"{one.Name}{suffix}, water from the tap", [one.Unlimited], salts.Salts);
            }

            if (fresh.Any(m => !m.CanBeBought)) Try($"the shelf together{suffix}", [.. fresh.Concat(waters).Select(m => m.AsStock(on))], salts.Salts);
        }

        return [.. ways];

        void Try(string id, ImmutableArray<StockFluid> stocks, ImmutableArray<Salt> salts)
        {
            var solved = RecipeSolver.Solve(new MixRequest(use.Fluid, use.Made, stocks) { At = at, Salts = salts });
            if (solved.Value is { } recipe) ways.Add(new(id, recipe, [.. solved.Findings.Where(f => f.Severity != Severity.Error)]));
        }
    }

    private static IEnumerable<StockFluid> Unlimited(IEnumerable<StockBook.Material> materials) => materials.Select(m => m.Unlimited);

    /// <summary>As much of a used fixative as can be restored without water: x parts of it and 1 - x of the stock give the strength, so x = (stock - target) / (stock - used).</summary>
    private static StockFluid Share(StockBook.Material spent, StockBook.Material strong, FluidUse use, LocalDate on)
    {
        // A little less than that, because masses and not volumes add up; the solver fills the rest with stock and water.
        const double Margin = 0.98;
        var (used, stock, target) = (spent.Fluid!.FormaldehydeGramsPerLitre ?? 0, strong.Fluid!.FormaldehydeGramsPerLitre ?? 0, use.Fluid.FormaldehydeGramsPerLitre ?? 0);
        var most = stock > used ? use.Made * (Math.Clamp((stock - target) / (stock - used), 0, 1) * Margin) : Volume.Zero;
        var there = spent.Usable(on).Volume;
        return spent.Unlimited with { OnHand = there < most ? there : most, UseUp = true };
    }

    /// <summary>Each hydrate on the shelf of each salt that the buffer calls for; one choice without salts where it calls for none.</summary>
    private static IEnumerable<(string Label, ImmutableArray<Salt> Salts)> SaltChoices(Fluid target, StockBook stock, LocalDate on)
    {
        var shelf = stock.SaltsAtHand(on).ToImmutableArray();
        var called = BufferRecipe.PerLitre(target.Buffering, target.FormaldehydeGramsPerLitre ?? 0);
        IEnumerable<ImmutableArray<Salt>> choices = [[]];
        var several = false;
        foreach (var (salt, _) in called)
        {
            var hydrates = shelf.Where(s => s.Anhydrous == salt.Anhydrous).OrderByDescending(s => s == salt).ToList();
            if (hydrates.Count == 0) continue;
            several |= hydrates.Count > 1;
            choices = [.. choices.SelectMany(c => hydrates.Select(h => c.Add(h))).Take(MostSaltChoices)];
        }

        // An empty list would let the solver assume salts that nobody has: the whole shelf says what is lacking.
        return choices.Select(c => (several ? string.Join(" and ", c.Select(s => s.Name)) : "", c.IsEmpty ? shelf : c));
    }
}
