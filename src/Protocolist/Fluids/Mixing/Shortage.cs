using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>Says what is missing for a recipe that cannot be made.</summary>
internal static class Shortage
{
    private static readonly Phrase NoStock = new("stock-missing", "nothing given holds what {target} is made of");
    private static readonly Phrase GiveStock = new("stock-missing.remedy", "give a stock such as '{stock}'");
    private static readonly Phrase TooStrong = new("target-too-strong", "{target} is stronger than any stock; the strongest is {stock}");
    private static readonly Phrase GetStronger = new("target-too-strong.remedy", "get a stronger stock, or keep at a lower strength");
    private static readonly Phrase CannotUseUp = new("use-up-out-of-reach", "with all of {stocks: and } in it, {volume:mix} of {target} cannot be reached");
    private static readonly Phrase LargerVolume = new("use-up-out-of-reach.remedy", "mix a larger volume, use a part of it, or give a stronger stock");
    private static readonly Phrase TooLittle = new("stock-short", "{volume:mix} of {target} needs {more:mix} more of {stock} than there is");
    private static readonly Phrase GetMore = new("stock-short.remedy", "get more of it, or mix less");
    private static readonly Phrase MakesLess = new("stock-short.all", "all that is given makes {makes:mix}, and {volume:mix} are wanted");
    private static readonly Phrase GetMoreOfAll = new("stock-short.all.remedy", "get more, or mix less");
    private static readonly Phrase TooLittleWater = new("water-short", "there is not water enough to bring the stocks down to {target}");
    private static readonly Phrase GiveWater = new("water-short.remedy", "give more water");
    private static readonly Phrase NotExactly = new("stock-short.exactly", "the amounts given do not meet {target} exactly");
    private static readonly Phrase GiveAnyMore = new("stock-short.exactly.remedy", "give more of any one of them");

    /// <summary>What goes in in a fixed amount and is there in a smaller one; null where there is enough.</summary>
    public static Finding? OfAdded(MixRequest request, FitStocks shelf, double addedLitres)
    {
        foreach (var (stock, perLitre) in shelf.Added)
        {
            var needed = Volume.FromCubicMeters(perLitre * addedLitres / stock.Fluid.DensityAt(request.At.DegreesCelsius));
            if (stock.OnHand is not { } onHand || onHand.CubicMeters >= needed.CubicMeters * (1 - 1e-9)) continue;
            Argument target = ("target", request.Target.Name), volume = ("volume", request.Volume);
            return Finding.Error("stock-short", TooLittle.With(volume, target, ("more", needed - onHand), ("stock", stock.Name)), GetMore);
        }

        return null;
    }

    public static Finding Of(MixRequest request, FitStocks shelf, double addedLitres)
    {
        var (target, celsius) = (request.Target, request.At.DegreesCelsius);
        Argument fluid = ("target", target.Name), volume = ("volume", request.Volume);
        if (shelf.Missing is { } missing) return Finding.Error("stock-missing", NoStock.With(fluid), GiveStock.With(("stock", missing.Name)));
        if (OfAdded(request, shelf, addedLitres) is { } added) return added;
        var mass = request.Volume.CubicMeters * target.DensityAt(celsius);
        var wanted = mass * target.Composition[target.Substance.Active!];
        var stocks = Enumerable.Range(0, shelf.Stocks.Length).Where(i => shelf.Blendables[i].Share > 0 && shelf.Blendables[i].Most > 0).ToArray();
        if (stocks.Length == 0)
            return Finding.Error("stock-missing", NoStock.With(fluid), GiveStock.With(("stock", (target.Substance.UsualStock ?? target).Name)));

        var strongest = stocks.MaxBy(i => shelf.Blendables[i].Share);
        Argument strongestName = ("stock", shelf.Stocks[strongest].Name);
        var share = shelf.Blendables[strongest].Share;
        if (share * mass < wanted * (1 - 1e-9)) return Finding.Error("target-too-strong", TooStrong.With(fluid, strongestName), GetStronger);

        if (shelf.UsedUp.Sum() > 0)
        {
            var used = Argument.Texts("stocks", shelf.Stocks.Where((_, i) => shelf.UsedUp[i] > 0).Select(s => s.Name));
            return Finding.Error("use-up-out-of-reach", CannotUseUp.With(used, volume, fluid), LargerVolume);
        }

        var (least, most) = BlendSolver.Reach(shelf.Blendables, mass);
        if (most < wanted)
        {
            // What is taken away for each litre more of the strongest is what fills up now, the weakest.
            var weakest = shelf.Blendables.Where(b => b.Most > 0).Min(b => b.Share);
            var more = Volume.FromCubicMeters((wanted - most) / (share - weakest) / shelf.DensityOf(strongest));
            return Finding.Error("stock-short", TooLittle.With(volume, fluid, ("more", more), strongestName), GetMore);
        }

        if (double.IsNaN(most))
        {
            var onHand = stocks.Sum(i => shelf.Blendables[i].Most) + shelf.Stocks.Select((s, i) => s.Fluid.IsWater ? shelf.Blendables[i].Most : 0).Sum();
            return Finding.Error("stock-short", MakesLess.With(("makes", Volume.FromCubicMeters(onHand / target.DensityAt(celsius))), volume), GetMoreOfAll);
        }

        return wanted < least
            ? Finding.Error("water-short", TooLittleWater.With(fluid), GiveWater)
            : Finding.Error("stock-short", NotExactly.With(fluid), GiveAnyMore);
    }
}
