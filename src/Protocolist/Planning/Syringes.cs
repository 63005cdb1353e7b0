using System.Globalization;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>Which syringe and needle. Common practice: the smallest syringe that holds one site's volume, needles finer the smaller the part.</summary>
internal static class Syringes
{
    private static readonly int[] SizesMl = [1, 2, 5, 10, 20, 60];

    public static string For(Volume perSite, Volume total, Length halfThickness)
    {
        var ml = perSite.Milliliters;
        var size = Array.Find(SizesMl, s => s >= ml * 0.999);
        if (size == 0) size = SizesMl[^1];
        var fills = Math.Max(1, (int)Math.Ceiling((total.Milliliters / size) - 1e-9));
        return string.Create(CultureInfo.InvariantCulture, $"{size} mL syringe, {fills} fill{(fills == 1 ? "" : "s")}, {Gauge(halfThickness)} G needle");
    }

    private static int Gauge(Length halfThickness) => halfThickness.Millimeters switch
    {
        < 5 => 27,
        < 10 => 25,
        < 20 => 23,
        < 40 => 21,
        _ => 18,
    };
}
