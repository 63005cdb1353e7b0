using System.Globalization;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>
/// Measurements of a specimen in one unit, to fifteen figures: what was typed comes back as typed, without the last bits of a conversion, from a file as
/// from a program, and measurements that are the same are equal.
/// </summary>
internal static class AsTyped
{
    public static Mass? Of(Mass? mass) => mass is { Grams: var grams } ? Mass.FromGrams(Figures(grams)) : null;

    public static Volume? Of(Volume? volume) => volume is { Milliliters: var millilitres } ? Volume.FromMilliliters(Figures(millilitres)) : null;

    public static Length? Of(Length? length) => length is { Millimeters: var millimetres } ? Length.FromMillimeters(Figures(millimetres)) : null;

    private static double Figures(double value)
    {
        Span<char> text = stackalloc char[32];
        return value.TryFormat(text, out var length, "G15", CultureInfo.InvariantCulture) ? double.Parse(text[..length], CultureInfo.InvariantCulture) : value;
    }
}
