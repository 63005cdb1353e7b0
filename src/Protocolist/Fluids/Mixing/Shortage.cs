using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>Says what is lacking for a recipe that cannot be made.</summary>
internal static class Shortage
{
    public static Finding Of(MixRequest request, Shelf shelf)
    {
        var (target, celsius) = (request.Target, request.At.DegreesCelsius);
        var mass = request.Volume.CubicMeters * target.DensityAt(celsius);
        var wanted = mass * Shelf.Active(target, target.Composition);
        var stocks = Enumerable.Range(0, shelf.Stocks.Length).Where(i => shelf.Blendables[i].Share > 0 && shelf.Blendables[i].Most > 0).ToArray();
        if (stocks.Length == 0)
            return Finding.Error("stock-missing", $"nothing given holds what {target.Name} is made of", $"give a stock such as '{Usual(target).Name}'");

        var strongest = stocks.MaxBy(i => shelf.Blendables[i].Share);
        var stock = shelf.Stocks[strongest];
        var share = shelf.Blendables[strongest].Share;
        if (share * mass < wanted * (1 - 1e-9))
            return Finding.Error("target-too-strong", $"{target.Name} is stronger than any stock; the strongest is {stock.Name}", "get a stronger stock, or keep at a lower strength");

        if (shelf.UsedUp.Sum() > 0)
            return Finding.Error("use-up-out-of-reach", $"with all of {string.Join(" and ", shelf.Stocks.Where((_, i) => shelf.UsedUp[i] > 0).Select(s => s.Name))} in it, {MixText.Volume(request.Volume)} of {target.Name} cannot be reached", "mix a larger volume, use a part of it, or give a stronger stock");

        var (least, most) = BlendSolver.Reach(shelf.Blendables, mass);
        if (most < wanted)
        {
            // What is taken away for each litre more of the strongest is what fills up now, the weakest.
            var weakest = shelf.Blendables.Where(b => b.Most > 0).Min(b => b.Share);
            var lacking = (wanted - most) / (share - weakest) / stock.Fluid.DensityAt(celsius);
            return Finding.Error("stock-short", $"for {MixText.Volume(request.Volume)} of {target.Name} {MixText.Volume(Volume.FromCubicMeters(lacking))} of {stock.Name} are lacking", "get more of it, or mix less");
        }

        if (double.IsNaN(most))
        {
            var onHand = stocks.Sum(i => shelf.Blendables[i].Most) + shelf.Stocks.Select((s, i) => s.Fluid.IsWater ? shelf.Blendables[i].Most : 0).Sum();
            return Finding.Error("stock-short", $"all that is given makes {MixText.Volume(Volume.FromCubicMeters(onHand / target.DensityAt(celsius)))}, and {MixText.Volume(request.Volume)} are wanted", "get more, or mix less");
        }

        return wanted < least
            ? Finding.Error("water-short", $"there is not water enough to bring the stocks down to {target.Name}", "give more water")
            : Finding.Error("stock-short", $"the amounts given do not meet {target.Name} exactly", "give more of any one of them");
    }

    /// <summary>The stock that is usually at hand for a target.</summary>
    public static Fluid Usual(Fluid target) => target.Kind switch
    {
        FluidKind.Ethanol => Fluid.Ethanol(96),
        FluidKind.Isopropanol => Fluid.Isopropanol(99.8),
        _ => Fluid.ReferenceStock,
    };
}
