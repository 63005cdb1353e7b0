using System.Globalization;
using FsCheck;
using FsCheck.Fluent;

namespace Protocolist.Testing;

/// <summary>Generates quantities and ranges as people write them, and texts that are nearly so.</summary>
public static class QuantityTextGenerator
{
    private static readonly string[] Units =
    [
        "µL", "uL", "mL", "L", "mm", "cm", "m", "in", "mg", "g", "kg", "lb", "oz", "s", "min", "h", "d", "wk", "mo", "y", "%", "%vol", "%mass",
        "% w/v", "mol/L", "mL/kg", "mL/g", "g/L", "kg/m3", "US fl oz", "imp fl oz", "US gal", "imp gal", "",
    ];

    private static readonly Gen<decimal> Number = from n in Gen.Choose(0, 100_000) from scale in Gen.Elements(1m, 10m, 100m, 1000m) select n / scale;

    /// <summary>Quantities and ranges that are read: <c>7.2 kg</c>, <c>2 to 5 mL</c>, <c>at least 24 h</c>, <c>24 cm ± 1 cm</c>.</summary>
    public static Arbitrary<string> Valid { get; } = Arb.From(
        from a in Number
        from more in Number
        from unit in Gen.Elements(Units)
        from shape in Gen.Elements("{0}{2}", "{0} to {1}{2}", "{0}{2} to {1}{2}", "at least {0}{2}", "at most {0}{2}", "{1}{2} ± {0}{2}", "-{1} to {0}{2}")
        select string.Format(CultureInfo.InvariantCulture, shape, a, a + more, unit.Length == 0 ? "" : " " + unit));

    /// <summary>Texts that are a quantity but for a few characters.</summary>
    public static Arbitrary<string> NearlyValid { get; } = Arb.From(from text in Valid.Generator from damaged in Damage.Of(text) select damaged, Damage.Shrink);
}
