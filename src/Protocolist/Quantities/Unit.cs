namespace Protocolist.Quantities;

/// <summary>One unit as people write it. The factor to SI is kept as two exact numbers, so that 10 mL is the double nearest to 1e-5 m3.</summary>
/// <param name="Symbol">As written, case and all.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Numerator">SI = value × Numerator / Denominator + Offset.</param>
/// <param name="Denominator">See <paramref name="Numerator"/>.</param>
/// <param name="Offset">Only for temperatures.</param>
internal readonly record struct Unit(string Symbol, Dimension Dimension, double Numerator, double Denominator = 1, double Offset = 0)
{
    public double ToSi(double value) => (value * Numerator / Denominator) + Offset;

    public double FromSi(double si) => (si - Offset) * Denominator / Numerator;

    /// <summary>This unit for each one of another: mL/kg. Temperatures with an offset cannot be part of a ratio.</summary>
    public Unit Per(Unit other)
    {
        var (numerator, denominator) = Reduced(Numerator * other.Denominator, Denominator * other.Numerator);
        return new($"{Symbol}/{other.Symbol}", Dimension / other.Dimension, numerator, denominator);
    }

    /// <summary>The same fraction in lowest terms where both are whole, so that g/L is kg/m3 to the last bit.</summary>
    private static (double Numerator, double Denominator) Reduced(double numerator, double denominator)
    {
        var (a, b) = (numerator, denominator);
        while (b > 0) (a, b) = (b, a % b);
        return a > 1 && numerator % a == 0 && denominator % a == 0 ? (numerator / a, denominator / a) : (numerator, denominator);
    }
}
