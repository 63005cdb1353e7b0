namespace Protocolist.Specimens;

/// <summary>m = a · L^b for one kind of animal: what one of that length usually weighs.</summary>
/// <param name="Length">Which length the relation takes.</param>
/// <param name="A">Mass in g at a length of 1 cm.</param>
/// <param name="B">The exponent.</param>
/// <param name="Accept">How far a sound animal may be off, as a factor either way; above 1. Beyond it is a slip of the scale or the rule.</param>
/// <param name="Source">Where it was published, or which data it was fitted to.</param>
public sealed record LengthMassRelation(LengthKind Length, double A, double B, double Accept, string Source)
{
    // An accept factor holds 99 of 100; of a spread that is even on a logarithmic scale 90 of 100 lie within this power of it: 1.645 / 2.576.
    private const double NinetyOfNinetyNine = 0.64;

    /// <summary>How many animals or species it rests on; null where that is not known.</summary>
    public int? Count { get; init; }

    /// <summary>The factor either way within which nine tenths of the animals lie.</summary>
    public double Within90 { get; init; } = Math.Pow(Accept, NinetyOfNinetyNine);

    /// <summary>The mass in g of an average animal. Grows with the length.</summary>
    /// <param name="lengthMm">Length in mm, above 0.</param>
    /// <returns>Mass in g.</returns>
    public double MassG(double lengthMm) => A * Math.Pow(lengthMm / 10, B);

    /// <summary>The length in mm at which an average animal weighs <paramref name="massG"/>. Grows with the mass.</summary>
    /// <param name="massG">Mass in g, above 0.</param>
    /// <returns>Length in mm.</returns>
    public double LengthMm(double massG) => 10 * Math.Pow(massG / A, 1 / B);
}
