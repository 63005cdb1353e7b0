namespace Protocolist.Quantities;

/// <summary>The unit in which a size is written.</summary>
internal static class WrittenUnits
{
    private static readonly Unit Bare = new("", Dimension.None, 1);

    /// <summary>The units that are written, for each dimension from small to large with the least SI size that calls for it.</summary>
    private static readonly Dictionary<Dimension, (double From, Unit Unit)[]> Written = new()
    {
        [Dimension.None] = [(0, Bare)],
        [Dimension.OfVolume] = [(0, UnitTable.Get("mL")), (1e-3, UnitTable.Get("L"))],
        [Dimension.OfLength] = [(0, UnitTable.Get("mm")), (0.1, UnitTable.Get("cm")), (3, UnitTable.Get("m"))],
        [Dimension.OfArea] = [(0, UnitTable.Get("mm2")), (1e-3, UnitTable.Get("cm2")), (1, UnitTable.Get("m2"))],
        [Dimension.OfMass] = [(0, UnitTable.Get("g")), (1, UnitTable.Get("kg"))],
        [Dimension.OfTime] = [(0, UnitTable.Get("s")), (60, UnitTable.Get("min")), (3600, UnitTable.Get("h")), (259200, UnitTable.Get("d"))],
        [Dimension.OfTemperature] = [(0, UnitTable.Get("degC"))],
        [Dimension.OfShareByVolume] = [(0, UnitTable.Get("%vol"))],
        [Dimension.OfShareByMass] = [(0, UnitTable.Get("%mass"))],
        [Dimension.OfDensity] = [(0, UnitTable.Get("g").Per(UnitTable.Get("L"))), (300, UnitTable.Get("kg").Per(UnitTable.Get("m3")))],
        [Dimension.OfSpecificVolume] = [(0, UnitTable.Get("mL").Per(UnitTable.Get("kg")))],
        [new(Amount: 1)] = [(0, UnitTable.Get("mol"))],
        [new(Amount: 1, Length: -3)] = [(0, UnitTable.Get("mol").Per(UnitTable.Get("L")))],
        [new(Mass: 1, Length: -1, Time: -2)] = [(0, UnitTable.Get("Pa")), (1e3, UnitTable.Get("kPa")), (1e6, UnitTable.Get("MPa"))],
        [new(Mass: 1, Length: 1, Time: -2)] = [(0, UnitTable.Get("N"))],
    };

    /// <summary>The unit in which a size of that dimension is written; made of SI base units where none is usual.</summary>
    public static Unit Fitting(double si, Dimension dimension)
    {
        if (!Written.TryGetValue(dimension, out var units)) return new(SiOf(dimension), dimension, 1);
        var fitting = units[0].Unit;
        foreach (var (from, unit) in units)
        {
            // A bound is met a hair early, so that 1 L that was computed as 0.9999999 L is still written in litres.
            if (si >= from * (1 - 1e-9)) fitting = unit;
        }

        return fitting;
    }

    /// <summary>
    /// A unit whose factor is exactly 1, in which any size reads back exactly; where the list holds no such unit and no such ratio
    /// of two, a description that is only for reading.
    /// </summary>
    public static string SiOf(Dimension dimension)
    {
        if (dimension == Dimension.None) return "";
        if (dimension == Dimension.OfDensity) return "kg/m3";
        if (dimension == Dimension.OfSpecificVolume) return "m3/kg";
        if (dimension == new Dimension(Amount: 1, Length: -3)) return "mol/m3";
        var exact = Array.Find(UnitTable.All, u => u.Dimension == dimension && IsSi(u));
        if (exact.Symbol is not null) return exact.Symbol;
        var ratio = UnitTable.All
            .SelectMany(u => UnitTable.All.Where(per => u.Dimension / per.Dimension == dimension && u.Offset == 0 && per.Offset == 0).Select(u.Per))
            .FirstOrDefault(IsSi);
        return ratio.Symbol ?? dimension.Symbols;
    }

    private static bool IsSi(Unit unit) => unit is { Numerator: 1, Denominator: 1, Offset: 0 };
}
