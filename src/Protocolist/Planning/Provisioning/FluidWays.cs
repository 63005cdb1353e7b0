using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>
/// The ways in which a fluid can be made from a shelf on a day, each with its recipe solved: used fixative restored, ready-made, from each stock, from part
/// bottles together, with each hydrate of its salts. Immutable.
/// </summary>
/// <remarks>Where two ways cost the same the earlier is taken, so the order is: what would be thrown away, what needs no mixing, what needs the fewest
/// bottles.</remarks>
internal sealed class FluidWays
{
    /// <summary>Hydrates are tried in so many combinations at most.</summary>
    private const int MostSaltChoices = 6;

    private static readonly Volume Litre = Volume.FromLiters(1);

    private readonly Fluid fluid;
    private readonly StockDay day;
    private readonly ImmutableArray<Plan> plans;
    private readonly ImmutableArray<FluidWay> solved;

    private FluidWays(Fluid fluid, StockDay day, ImmutableArray<Plan> plans)
    {
        (this.fluid, this.day, this.plans) = (fluid, day, plans);
        solved = plans.All(p => p.Solved is not null) ? [.. plans.Select(p => p.Solved!)] : default;
    }

    /// <summary>A way to be tried: solved for a litre, or with what is there of some stock only when the volume is known.</summary>
    private readonly record struct Plan(Supply Supply, ImmutableArray<Salt> Salts, FluidWay? Solved);

    /// <summary>The recipe from the stock that is usually at hand, for a litre; null where there is none.</summary>
    public FluidWay? Usual { get; private init; }

    /// <summary>Why there is none.</summary>
    public ImmutableArray<Finding> UsualFaults { get; private init; } = [];

    /// <summary>Works out the ways of one fluid.</summary>
    public static FluidWays Of(Fluid fluid, StockDay day)
    {
        if (fluid.IsWater) return new(fluid, day, OwnWater(fluid, day));
        var plans = Plans(fluid, day);
        if (!plans.IsEmpty && plans.All(p => p.Solved is not null)) return new(fluid, day, plans); // nothing else is ever asked for
        var usual = RecipeSolver.Solve(new(fluid, Litre, [.. fluid.UsualStocks.Select(s => new StockFluid(s))]) { At = day.Stock.At });
        return new(fluid, day, plans)
        {
            Usual = usual.Value is { } recipe ? new(new(SupplyKind.Usual), Supplied(recipe, [], day), Litre, []) : null,
            UsualFaults = usual.Value is null ? [.. usual.Findings.Where(f => f.Severity == Severity.Error)] : [],
        };
    }

    /// <summary>Every way to make so much, in order; none where the bench has nothing for it.</summary>
    /// <param name="volume">How much.</param>
    /// <param name="forImmersion">Whether used fixative may be restored for it.</param>
    public ImmutableArray<FluidWay> For(Volume volume, bool forImmersion)
    {
        if (!solved.IsDefault) return solved;
        var ways = new List<FluidWay>(plans.Length);
        foreach (var plan in plans)
        {
            if (plan.Supply.Kind == SupplyKind.Restored && !forImmersion) continue;
            if ((plan.Solved ?? Solved(fluid, day, plan.Supply, plan.Salts, volume)) is { } way) ways.Add(way);
        }

        return [.. ways];
    }

    /// <summary>What the shelf lacks for so much of it.</summary>
    public ImmutableArray<Finding> ShortFor(Volume volume)
    {
        ImmutableArray<StockFluid> shelf = [.. day.Fluids.Where(m => !m.Material.IsSpent).Select(Limited)];
        return RecipeSolver.Solve(new(fluid, volume, shelf) { At = day.Stock.At, Salts = day.Salts }).Findings;
    }

    /// <summary>Water that stands on the shelf is drawn from there; tap water that is not listed comes from the tap.</summary>
    private static ImmutableArray<Plan> OwnWater(Fluid water, StockDay day)
    {
        foreach (var one in day.Waters)
        {
            if (one.Material.Fluid != water) continue;
            var supply = new Supply(SupplyKind.OwnWater, one.Material);
            var recipe = RecipeSolver.Solve(new(water, Litre, []) { At = day.Stock.At }).Value;
            return recipe is null ? [] : [new(supply, [], new(supply, Supplied(recipe, [], day), Litre, []))];
        }

        return [];
    }

    private static ImmutableArray<Plan> Plans(Fluid fluid, StockDay day)
    {
        var plans = ImmutableArray.CreateBuilder<Plan>();
        var fluids = day.Fluids.Select(m => m.Material).ToList();
        List<StockMaterial> fresh = [.. fluids.Where(m => !m.Fluid!.IsWater && !m.IsSpent).OrderByDescending(m => m.Fluid == fluid)];
        foreach (var (salts, first, second) in SaltChoices(fluid, day))
        {
            if (fluid.HasFormaldehyde)
            {
                foreach (var spent in fluids.Where(m => m.Restores(fluid)))
                {
                    foreach (var strong in fresh.Where(m => m.Fluid!.Substance == Substance.FormaldehydeStock))
                        plans.Add(new(new(SupplyKind.Restored, strong, spent, first, second), salts, null));
                }
            }

            foreach (var one in fresh.Where(m => m.Fluid!.Substance == fluid.Substance || (fluid.HasFormaldehyde && m.Fluid!.HasFormaldehyde)))
            {
                Solve(new(SupplyKind.Stock, one, null, first, second));

                // Tap water serves for formalin, never for alcohol, which it clouds (S. Moore, natural-history collections list, 2018).
                if (fluid.HasFormaldehyde && !day.Waters.IsEmpty) Solve(new(SupplyKind.StockAndTap, one, null, first, second));
            }

            if (fresh.Exists(m => !m.CanBeBought)) plans.Add(new(new(SupplyKind.Together, null, null, first, second), salts, null));

            void Solve(Supply supply)
            {
                if (Solved(fluid, day, supply, salts, Litre) is { } way) plans.Add(new(supply, salts, way));
            }
        }

        return plans.ToImmutable();
    }

    private static FluidWay? Solved(Fluid fluid, StockDay day, Supply supply, ImmutableArray<Salt> salts, Volume volume)
    {
        ImmutableArray<(StockFluid Fluid, StockMaterial Material)> stocks = supply.Kind switch
        {
            SupplyKind.Restored =>
                [(Share(day, supply, fluid, volume), supply.Spent!), Unlimited(supply.Stock!), .. day.Waters.Select(w => Unlimited(w.Material))],
            SupplyKind.Stock => [Unlimited(supply.Stock!), .. day.Waters.Select(w => Unlimited(w.Material))],
            SupplyKind.StockAndTap => [Unlimited(supply.Stock!)],
            _ =>
            [
                .. day.Fluids.Where(m => !m.Material.Fluid!.IsWater && !m.Material.IsSpent).OrderByDescending(m => m.Material.Fluid == fluid)
                    .Concat(day.Waters).Select(m => (Limited(m), m.Material)),
            ],
        };
        var solved = RecipeSolver.Solve(new(fluid, volume, [.. stocks.Select(s => s.Fluid)]) { At = day.Stock.At, Salts = salts });
        return solved.Value is { } recipe
            ? new(supply, Supplied(recipe, stocks, day), volume, [.. solved.Findings.Where(f => f.Severity != Severity.Error)])
            : null;
    }

    /// <summary>The parts of a recipe with the materials that they are taken from.</summary>
    private static ImmutableArray<SuppliedPart> Supplied(Recipe recipe, ImmutableArray<(StockFluid Fluid, StockMaterial Material)> stocks, StockDay day)
    {
        var parts = new SuppliedPart[recipe.Parts.Length];
        for (var i = 0; i < parts.Length; i++) parts[i] = new(recipe.Parts[i], MaterialOf(recipe.Parts[i]));
        return ImmutableCollectionsMarshal.AsImmutableArray(parts);

        StockMaterial? MaterialOf(RecipePart part)
        {
            foreach (var (fluid, material) in stocks)
            {
                if (ReferenceEquals(fluid, part.Stock)) return material;
            }

            foreach (var material in day.Stock.Materials)
            {
                if (part.Salt is { } salt ? material.Salt == salt : material is { IsSpent: false, Fluid: { } fluid } && fluid == part.Fluid) return material;
            }

            return null;
        }
    }

    private static (StockFluid Fluid, StockMaterial Material) Unlimited(StockMaterial material) => (material.Liquid!, material);

    /// <summary>As the recipe solver sees it; limited by what is there where no more can be bought.</summary>
    private static StockFluid Limited(MaterialOnDay on) =>
        on.Material.CanBeBought ? on.Material.Liquid! : on.Material.Liquid! with { OnHand = on.Usable.Volume };

    /// <summary>
    /// As much of a used fixative as can be restored without water: x parts of it and 1 - x of the stock give the strength, so x = (stock - target) /
    /// (stock - used).
    /// </summary>
    private static StockFluid Share(StockDay day, Supply supply, Fluid target, Volume volume)
    {
        // A little less than that, because masses and not volumes add up; the solver fills the rest with stock and water.
        const double Margin = 0.98;
        var (used, stock, wanted) = (Strength(supply.Spent!.Fluid!), Strength(supply.Stock!.Fluid!), Strength(target));
        var most = stock > used ? volume * (Math.Clamp((stock - wanted) / (stock - used), 0, 1) * Margin) : Volume.Zero;
        var there = day.Materials[supply.Spent.Index].Usable.Volume;
        return supply.Spent.Liquid! with { OnHand = there < most ? there : most, UseUp = true };
    }

    private static double Strength(Fluid fluid) => fluid.FormaldehydeGramsPerLitre ?? 0;

    /// <summary>Each hydrate on the shelf of each salt that the buffer calls for; one choice without salts where it calls for none.</summary>
    private static IEnumerable<(ImmutableArray<Salt> Salts, Salt? First, Salt? Second)> SaltChoices(Fluid target, StockDay day)
    {
        IEnumerable<ImmutableArray<Salt>> choices = [[]];
        var several = false;
        foreach (var (salt, _) in BufferRecipe.PerLitre(target.Buffering, Strength(target)))
        {
            var hydrates = day.Salts.Where(s => s.Anhydrous == salt.Anhydrous).OrderByDescending(s => s == salt).ToList();
            if (hydrates.Count == 0) continue;
            several |= hydrates.Count > 1;
            choices = [.. choices.SelectMany(c => hydrates.Select(h => c.Add(h))).Take(MostSaltChoices)];
        }

        // An empty list would let the solver assume salts that nobody has: the whole shelf says what is lacking.
        return choices.Select(c => (c.IsEmpty ? day.Salts : c, several ? c[0] : null, several && c.Length > 1 ? c[1] : null));
    }
}
