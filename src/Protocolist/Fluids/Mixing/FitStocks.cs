using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids.Mixing;

/// <summary>The stocks of a request that may go into its target, with water added where none is listed; and those that may not, each with the reason.</summary>
internal sealed class FitStocks
{
    private static readonly Phrase Cloudy = new("stock-cloudy", "{stock} is cloudy, so that its strength is unknown");
    private static readonly Phrase FindOutWhy = new("stock-cloudy.remedy", "find out why; do not use it for specimens");
    private static readonly Phrase WarmIt = new("stock-cloudy.remedy-formaldehyde", "warm it gently until clear, else dispose of it as your local rules say");
    private static readonly Phrase LeftOut = new("stocks-left-out", "{count} stocks fit; the {tried} largest were tried");
    private static readonly Phrase PourTogether = new("stocks-left-out.remedy", "pour part bottles of one strength together");

    private readonly double[] _density;

    private FitStocks(
        ImmutableArray<StockFluid> stocks, ImmutableArray<(StockFluid Stock, double KilogramsPerLitre)> added, ImmutableArray<Finding> unfit,
        MixRequest request)
    {
        (Stocks, Added, Unfit) = (stocks, added, unfit);
        var celsius = request.At.DegreesCelsius;
        var active = request.Target.Substance.Active!;
        var count = stocks.Length;
        (_density, Compositions, Blendables, UsedUp) = (new double[count], new Composition[count], new Blendable[count], new double[count]);
        Free = new Blendable[count];
        for (var i = 0; i < count; i++)
        {
            var stock = stocks[i];
            var density = _density[i] = stock.Fluid.DensityAt(celsius);
            Compositions[i] = stock.Fluid.Composition;
            Blendables[i] = Free[i] = new(
                stock.Fluid.Composition[active],
                stock.OnHand is { } onHand ? Math.Max(0, onHand.CubicMeters) * density : double.PositiveInfinity,
                stock.CostPerLitre * 1000 / density);
            if (stock is not { UseUp: true, OnHand: not null }) continue;
            UsedUp[i] = Blendables[i].Most;
            if (UsedUp[i] > 0) Free[i] = Free[i] with { Most = 0 };
        }
    }

    /// <summary>Stocks that may go in, in the order given, water last where it was added.</summary>
    public ImmutableArray<StockFluid> Stocks { get; }

    /// <summary>What goes in beside them in fixed amounts, for a litre at 20 °C.</summary>
    public ImmutableArray<(StockFluid Stock, double KilogramsPerLitre)> Added { get; }

    /// <summary>The first of what goes in in fixed amounts that no stock serves for.</summary>
    public Fluid? Missing { get; private init; }

    /// <summary>Warnings about stocks that may not go in.</summary>
    public ImmutableArray<Finding> Unfit { get; }

    public Composition[] Compositions { get; }

    /// <summary>All stocks, for what they are and hold.</summary>
    public Blendable[] Blendables { get; }

    /// <summary>Mass of each that goes in whatever else does, kg.</summary>
    public double[] UsedUp { get; }

    /// <summary>What is left to choose from.</summary>
    public Blendable[] Free { get; }

    /// <summary>Density of a stock at the temperature of the request, kg/m³.</summary>
    public double DensityOf(int stock) => _density[stock];

    /// <summary>Whether a finding is about a cloudy stock, which is spoken of in any case.</summary>
    public static bool IsAboutCloudy(Finding finding) => finding.Message.Phrase == Cloudy;

    public static FitStocks For(MixRequest request)
    {
        var fit = ImmutableArray.CreateBuilder<StockFluid>();
        var unfit = ImmutableArray.CreateBuilder<Finding>();
        var diluent = request.Target.Substance.DiluentOf(request.Target);
        var additions = request.Target.Substance.AdditionsTo(request.Target);
        var added = ImmutableArray.CreateBuilder<(StockFluid, double)>(additions.Length);
        Fluid? missing = null;
        foreach (var addition in additions)
        {
            if (ForAddition(addition, request.Stocks) is { } stock) added.Add((stock, addition.KilogramsPerLitre(stock.Fluid)));
            else missing ??= addition.Liquid;
        }

        var hasWater = false;
        foreach (var stock in request.Stocks.IsDefault ? [] : request.Stocks)
        {
            if (IsForAddition(stock, additions)) continue;
            if (Objection(request.Target, stock) is { } finding)
            {
                unfit.Add(finding);
            }
            else if (!stock.Fluid.IsWater || IsSalt(stock.Fluid) == IsSalt(diluent))
            {
                // Waters that this target has no use for are passed over, without harm in their being listed.
                fit.Add(stock);
                hasWater |= stock.Fluid.IsWater;
            }
        }

        if (fit.Count >= BlendSolver.MostLiquids)
        {
            LeaveOut(fit, unfit);
            hasWater = fit.Any(s => s.Fluid.IsWater);
        }

        if (!hasWater) fit.Add(new(diluent));
        return new(fit.DrainToImmutable(), added.DrainToImmutable(), unfit.DrainToImmutable(), request) { Missing = missing };
    }

    /// <summary>A stock that is the target itself, and enough of it: the masses, or null.</summary>
    public double[]? Ready(Fluid target, double mass)
    {
        foreach (var used in UsedUp)
        {
            if (used > 0) return null;
        }

        for (var i = 0; i < Stocks.Length; i++)
        {
            if (Stocks[i].Fluid != target || Blendables[i].Most < mass * (1 - 1e-12)) continue;
            var masses = new double[Stocks.Length];
            masses[i] = mass;
            return masses;
        }

        return null;
    }

    private static bool IsForAddition(StockFluid stock, ImmutableArray<Addition> additions)
    {
        foreach (var addition in additions)
        {
            if (addition.Liquid.Substance.Active == stock.Fluid.Substance.Active) return true;
        }

        return false;
    }

    /// <summary>The liquid itself where it is among the stocks, else the first that serves in its place.</summary>
    private static StockFluid? ForAddition(Addition addition, ImmutableArray<StockFluid> stocks)
    {
        StockFluid? other = null;
        foreach (var stock in stocks.IsDefault ? [] : stocks)
        {
            if (stock.Fluid == addition.Liquid) return stock;
            if (stock.Fluid.Substance.Active == addition.Liquid.Substance.Active && Objection(addition.Liquid, stock) is null) other ??= stock;
        }

        return other;
    }

    private static bool IsSalt(Fluid water) => water.Salinity > 0;

    /// <summary>The largest amounts stay; a search through more part bottles than the solver takes helps nobody at a bench.</summary>
    private static void LeaveOut(ImmutableArray<StockFluid>.Builder fit, ImmutableArray<Finding>.Builder unfit)
    {
        var kept = fit.OrderByDescending(s => s.OnHand?.Liters ?? double.PositiveInfinity).Take(BlendSolver.MostLiquids - 1).ToHashSet();
        unfit.Add(Finding.Note("stocks-left-out", LeftOut.With(("count", fit.Count), ("tried", kept.Count)), PourTogether));
        var order = fit.Where(kept.Contains).ToArray();
        fit.Clear();
        fit.AddRange(order);
    }

    private static Finding? Objection(Fluid target, StockFluid stock)
    {
        var refusal = target.Substance.Refuses(target, stock.Fluid, stock.Name);
        if (refusal is not { IsForeign: true } && stock.Condition is StockCondition.Cloudy)
            return Finding.Warning("stock-cloudy", Cloudy.With(("stock", stock.Name)), stock.Fluid.HasFormaldehyde ? WarmIt : FindOutWhy);
        return refusal is null ? null : Finding.Warning(refusal.Id, refusal.Message, refusal.Remedy);
    }
}
