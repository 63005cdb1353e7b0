namespace Protocolist.Specimens;

/// <summary>m = a · L^b for one kind of animal: what one of that length usually weighs.</summary>
/// <param name="A">Mass in g at a length of 1 cm.</param>
/// <param name="B">The exponent.</param>
/// <param name="Correction">What the printed curve is multiplied by to come to an average animal; 1 where it is not biased.</param>
/// <param name="Spread">How far a sound animal may be off, as a factor either way; above 1.</param>
/// <param name="Length">Which length the relation takes.</param>
/// <param name="Bias">What is known to be wrong with it; empty where nothing is.</param>
/// <param name="Source">Where it was published.</param>
public sealed record LengthMassRelation(
    double A, double B, double Correction, double Spread, LengthKind Length, string Bias, string Source)
{
    /// <summary>The relation as printed with the length in metres, as reptile and amphibian papers do.</summary>
    /// <param name="a">Mass in g at 1 m.</param>
    /// <param name="b">The exponent.</param>
    /// <param name="spread">Factor either way.</param>
    /// <param name="length">Which length.</param>
    /// <param name="bias">What is wrong with it.</param>
    /// <param name="source">Where it was published.</param>
    /// <returns>The same relation in cm.</returns>
    internal static LengthMassRelation InMetres(double a, double b, double spread, LengthKind length, string bias, string source) =>
        new(a * Math.Pow(0.01, b), b, 1, spread, length, bias, source);

    /// <summary>The printed curve, uncorrected, in g. Grows with the length.</summary>
    /// <param name="lengthMm">Length in mm, above 0.</param>
    /// <returns>Mass in g.</returns>
    public double PrintedMassG(double lengthMm) => A * Math.Pow(lengthMm / 10, B);

    /// <summary>The mass in g of an average animal. Grows with the length.</summary>
    /// <param name="lengthMm">Length in mm, above 0.</param>
    /// <returns>Mass in g.</returns>
    public double MassG(double lengthMm) => Correction * PrintedMassG(lengthMm);

    /// <summary>The length in mm at which an average animal weighs <paramref name="massG"/>. Grows with the mass.</summary>
    /// <param name="massG">Mass in g, above 0.</param>
    /// <returns>Length in mm.</returns>
    public double LengthMm(double massG) => 10 * Math.Pow(massG / (Correction * A), 1 / B);
}
