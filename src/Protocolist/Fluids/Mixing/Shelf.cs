using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids.Mixing;

/// <summary>The stocks of a request that may go into its target, with water added where none is listed; and those that may not, each with the reason.</summary>
internal sealed class Shelf
{
    /// <summary>The finding about a cloudy stock, spoken of in any case.</summary>
    public const string CloudyId = "stock-cloudy";

    private Shelf(ImmutableArray<StockFluid> stocks, ImmutableArray<Finding> unfit, double celsius)
    {
        Stocks = stocks;
        Unfit = unfit;
        Compositions = [.. stocks.Select(s => s.Fluid.Composition)];
        Blendables =
        [
            .. stocks.Select(s => new Blendable(
                Active(s.Fluid, s.Fluid.Composition),
                s.OnHand is { } onHand ? Math.Max(0, onHand.CubicMeters) * s.Fluid.DensityAt(celsius) : double.PositiveInfinity,
                s.CostPerLitre * 1000 / s.Fluid.DensityAt(celsius))),
        ];
        UsedUp = [.. stocks.Select((s, i) => s is { UseUp: true, OnHand: not null } ? Blendables[i].Most : 0)];
        Free = [.. Blendables.Select((b, i) => UsedUp[i] > 0 ? b with { Most = 0 } : b)];
    }

    /// <summary>Stocks that may go in, in the order given, water last where it was added.</summary>
    public ImmutableArray<StockFluid> Stocks { get; }

    /// <summary>Warnings about stocks that may not go in.</summary>
    public ImmutableArray<Finding> Unfit { get; }

    public Composition[] Compositions { get; }

    /// <summary>All stocks, for what they are and hold.</summary>
    public Blendable[] Blendables { get; }

    /// <summary>Mass of each that goes in whatever else does, kg.</summary>
    public double[] UsedUp { get; }

    /// <summary>What is left to choose from.</summary>
    public Blendable[] Free { get; }

    /// <summary>The component that gives a fluid its strength, as a mass fraction.</summary>
    public static double Active(Fluid fluid, Composition composition) => fluid.Kind switch
    {
        FluidKind.Ethanol => composition.Ethanol,
        FluidKind.Isopropanol => composition.Isopropanol,
        FluidKind.Formaldehyde or FluidKind.FormaldehydeStock => composition.Formaldehyde,
        _ => 0,
    };

    public static Shelf For(MixRequest request)
    {
        var fit = ImmutableArray.CreateBuilder<StockFluid>();
        var unfit = ImmutableArray.CreateBuilder<Finding>();
        foreach (var stock in request.Stocks.IsDefault ? [] : request.Stocks)
        {
            if (Objection(request.Target, stock) is { } finding) unfit.Add(finding);
            else if (!IsIdle(request.Target, stock)) fit.Add(stock);
        }

        if (fit.Count >= BlendSolver.MostLiquids)
        {
            // The largest amounts stay; a search through more part bottles than this helps nobody at a bench.
            var kept = fit.OrderByDescending(s => s.OnHand?.Liters ?? double.PositiveInfinity).Take(BlendSolver.MostLiquids - 1).ToHashSet();
            unfit.Add(Finding.Note("stocks-left-out", $"{fit.Count} stocks fit; the {kept.Count} largest were tried", "pour part bottles of one strength together"));
            var order = fit.Where(kept.Contains).ToArray();
            fit.Clear();
            fit.AddRange(order);
        }

        if (!fit.Any(s => s.Fluid.IsWater)) fit.Add(new(DiluentOf(request.Target)));
        return new(fit.ToImmutable(), unfit.ToImmutable(), request.At.DegreesCelsius);
    }

    /// <summary>The water that a target is made up with where none is listed.</summary>
    public static Fluid DiluentOf(Fluid target) => target switch
    {
        { IsAlcohol: true } => Fluid.DistilledWater,
        { Buffering: Buffering.SeaWater } => Fluid.SeaWater(target.Salinity),
        _ => Fluid.Water,
    };

    /// <summary>A stock that is the target itself, and enough of it: the masses, or null.</summary>
    public double[]? Ready(MixRequest request)
    {
        if (Array.Exists(UsedUp, m => m > 0)) return null;
        var mass = request.Volume.CubicMeters * request.Target.DensityAt(request.At.DegreesCelsius);
        for (var i = 0; i < Stocks.Length; i++)
        {
            if (Stocks[i].Fluid != request.Target || Blendables[i].Most < mass * (1 - 1e-12)) continue;
            var masses = new double[Stocks.Length];
            masses[i] = mass;
            return masses;
        }

        return null;
    }

    /// <summary>Waters that this target has no use for, without harm in their being listed.</summary>
    private static bool IsIdle(Fluid target, StockFluid stock) =>
        stock.Fluid.IsWater && stock.Fluid.Kind is FluidKind.SeaWater != (target.Buffering is Buffering.SeaWater);

    private static Finding? Objection(Fluid target, StockFluid stock)
    {
        var (fluid, name) = (stock.Fluid, stock.Name);
        if (target.IsAlcohol && fluid.IsAlcohol && fluid.Kind != target.Kind)
            return Finding.Warning("mixed-alcohols", $"{name} is not mixed into {target.Name}: two alcohols in one jar cannot be measured or corrected", $"take {(target.Kind is FluidKind.Ethanol ? "ethanol" : "isopropanol")} only");
        if (target.IsAlcohol && fluid.Kind is FluidKind.TapWater or FluidKind.SeaWater)
            return Finding.Warning("water-unfit-for-alcohol", $"{name} makes {target.Name} cloudy: its salts fall out in alcohol", "take distilled or deionised water");
        if (target.IsAlcohol && fluid.HasFormaldehyde || target.HasFormaldehyde && fluid.IsAlcohol)
            return Finding.Warning("mixed-fixative-and-alcohol", $"{name} is not mixed into {target.Name}", "keep formaldehyde and alcohol apart; wash between them");
        if (stock.Condition is StockCondition.Cloudy)
            return Finding.Warning(CloudyId, $"{name} is cloudy, so that its strength is unknown", fluid.HasFormaldehyde ? "warm it gently until clear, else dispose of it as your local rules say" : "find out why; do not use it for specimens");
        if (fluid.Kind is FluidKind.Formaldehyde && fluid.Buffering != target.Buffering)
            return Finding.Warning("mixed-buffering", $"{name} is not mixed into {target.Name}: the buffering differs, and the pH of the mixture would be unknown", "mix from the stock, or from a fluid of the same buffering");
        return null;
    }
}
