using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Benches;

/// <summary>What an <see cref="Amount"/> is counted in.</summary>
public enum AmountKind
{
    /// <summary>Liquids, in microlitres.</summary>
    Volume,

    /// <summary>Salts and other solids, in milligrams.</summary>
    Mass,

    /// <summary>Things, in pieces.</summary>
    Count,
}

/// <summary>How much of a material: a whole number of microlitres, milligrams or pieces, so that stock books balance to the last unit.</summary>
/// <remarks>Coming from a quantity it is rounded to the nearest unit, which is far below what a bench can measure; rounding up instead would buy a second
/// bottle for the noise of a sum.</remarks>
/// <param name="Kind">Volume, mass or count; two kinds in one operation are a caller's bug and throw.</param>
/// <param name="Units">Microlitres, milligrams or pieces; negative only in input that is yet to be checked.</param>
public readonly record struct Amount(AmountKind Kind, long Units) : IComparable<Amount>
{
    /// <summary>A thousand cubic metres, or a thousand tonnes: beyond it lies a mistake, and below it sums cannot overflow.</summary>
    private const double MostUnits = 1e12;

    /// <summary>Where sums stop, far beyond anything that a bench can hold.</summary>
    private const long Furthest = 1_000_000_000_000_000_000;

    /// <summary>A volume.</summary>
    /// <param name="volume">The volume.</param>
    /// <returns>It, to the microlitre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Above a thousand cubic metres.</exception>
    public static Amount Of(Volume volume) => new(AmountKind.Volume, Whole(volume.Microliters));

    /// <summary>A mass.</summary>
    /// <param name="mass">The mass.</param>
    /// <returns>It, to the milligram.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Above a thousand tonnes.</exception>
    public static Amount Of(Mass mass) => new(AmountKind.Mass, Whole(mass.Milligrams));

    /// <summary>A number of pieces.</summary>
    /// <param name="pieces">How many.</param>
    /// <returns>The amount.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Above a million million.</exception>
    public static Amount Of(long pieces) => new(AmountKind.Count, Whole(pieces));

    /// <summary>Nothing, of a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Zero.</returns>
    public static Amount Zero(AmountKind kind) => new(kind, 0);

    /// <summary>As a volume.</summary>
    /// <exception cref="InvalidOperationException">It is not one.</exception>
    public Volume Volume => Kind == AmountKind.Volume ? Volume.FromMicroliters(Units) : throw new InvalidOperationException($"{this} is not a volume.");

    /// <summary>As a mass.</summary>
    /// <exception cref="InvalidOperationException">It is not one.</exception>
    public Mass Mass => Kind == AmountKind.Mass ? Mass.FromMilligrams(Units) : throw new InvalidOperationException($"{this} is not a mass.");

    /// <summary>Adds.</summary><param name="a">One.</param><param name="b">Other, of the same kind.</param><returns>The sum.</returns>
    public static Amount operator +(Amount a, Amount b) => a.With((Int128)a.Units + b.In(a.Kind));

    /// <summary>Subtracts.</summary><param name="a">One.</param><param name="b">Other, of the same kind.</param><returns>The difference.</returns>
    public static Amount operator -(Amount a, Amount b) => a.With((Int128)a.Units - b.In(a.Kind));

    /// <summary>So many times.</summary><param name="a">An amount.</param><param name="times">How often.</param><returns>The product.</returns>
    public static Amount operator *(Amount a, long times) => a.With((Int128)a.Units * times);

    /// <summary>Less.</summary><param name="a">One.</param><param name="b">Other, of the same kind.</param><returns>Whether.</returns>
    public static bool operator <(Amount a, Amount b) => a.CompareTo(b) < 0;

    /// <summary>More.</summary><param name="a">One.</param><param name="b">Other, of the same kind.</param><returns>Whether.</returns>
    public static bool operator >(Amount a, Amount b) => a.CompareTo(b) > 0;

    /// <summary>Not more.</summary><param name="a">One.</param><param name="b">Other, of the same kind.</param><returns>Whether.</returns>
    public static bool operator <=(Amount a, Amount b) => a.CompareTo(b) <= 0;

    /// <summary>Not less.</summary><param name="a">One.</param><param name="b">Other, of the same kind.</param><returns>Whether.</returns>
    public static bool operator >=(Amount a, Amount b) => a.CompareTo(b) >= 0;

    /// <summary>The smaller of two.</summary><param name="a">One.</param><param name="b">Other, of the same kind.</param><returns>It.</returns>
    public static Amount Least(Amount a, Amount b) => a <= b ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Amount other) => Units.CompareTo(other.In(Kind));

    /// <summary>For people: <c>2.5 L</c>, <c>250 mL</c>, <c>6.5 g</c>, <c>3 pieces</c>, to four figures.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Kind switch
    {
        AmountKind.Volume => AmountText.OfMicrolitres(Units),
        AmountKind.Mass => AmountText.OfMilligrams(Units),
        _ => Pieces(Units).ToString(),
    };

    /// <summary>As a fact of a message; the place shows it with the format <c>amount</c>.</summary>
    internal Argument Fact(string name) => Kind switch
    {
        AmountKind.Volume => Argument.Of(name, Units / 1e9, Dimension.OfVolume),
        AmountKind.Mass => Argument.Of(name, Units / 1e6, Dimension.OfMass),
        _ => (name, Pieces(Units)),
    };

    private static readonly Phrase InPieces = new("amount-in-pieces", "{n} {n|piece|pieces}");

    private static Message Pieces(long n) => InPieces.With(("n", n));

    private Amount With(Int128 units) => this with { Units = (long)Int128.Clamp(units, -Furthest, Furthest) };

    private long In(AmountKind kind) => Kind == kind ? Units : throw new InvalidOperationException($"{this} is not a {kind.ToString().ToLowerInvariant()}.");

    private static long Whole(double units) => Math.Abs(units) <= MostUnits
        ? (long)Math.Round(units, MidpointRounding.AwayFromZero)
        : throw new ArgumentOutOfRangeException(
            nameof(units), units, "No bench holds more than a thousand cubic metres, a thousand tonnes or a million million pieces.");
}
