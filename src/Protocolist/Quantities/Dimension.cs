using System.Globalization;
using System.Text;

namespace Protocolist.Quantities;

/// <summary>What kind of thing a number measures, as powers of a few base kinds. <c>default</c> is a bare number.</summary>
/// <remarks>
/// The two kinds of percent that an alcoholmeter knows are base kinds of their own, so that 70 % by volume
/// is never added to, or compared with, 70 % by mass.
/// </remarks>
/// <param name="Length">Power of length (m).</param>
/// <param name="Mass">Power of mass (kg).</param>
/// <param name="Time">Power of time (s).</param>
/// <param name="Temperature">Power of temperature (K, read and written as degC or degF).</param>
/// <param name="Amount">Power of amount of substance (mol).</param>
/// <param name="ShareOfVolume">Power of a share by volume (%vol).</param>
/// <param name="ShareOfMass">Power of a share by mass (%mass).</param>
public readonly record struct Dimension(
    sbyte Length = 0,
    sbyte Mass = 0,
    sbyte Time = 0,
    sbyte Temperature = 0,
    sbyte Amount = 0,
    sbyte ShareOfVolume = 0,
    sbyte ShareOfMass = 0)
{
    /// <summary>A bare number.</summary>
    public static Dimension None => default;

    /// <summary>A length.</summary>
    public static Dimension OfLength => new(Length: 1);

    /// <summary>An area.</summary>
    public static Dimension OfArea => new(Length: 2);

    /// <summary>A volume.</summary>
    public static Dimension OfVolume => new(Length: 3);

    /// <summary>A mass.</summary>
    public static Dimension OfMass => new(Mass: 1);

    /// <summary>A span of time.</summary>
    public static Dimension OfTime => new(Time: 1);

    /// <summary>A temperature.</summary>
    public static Dimension OfTemperature => new(Temperature: 1);

    /// <summary>A mass in a volume: density, g/L, % w/v.</summary>
    public static Dimension OfDensity => new(Length: -3, Mass: 1);

    /// <summary>A volume for a mass: mL/kg.</summary>
    public static Dimension OfSpecificVolume => new(Length: 3, Mass: -1);

    /// <summary>A share by volume, %vol.</summary>
    public static Dimension OfShareByVolume => new(ShareOfVolume: 1);

    /// <summary>A share by mass, %mass.</summary>
    public static Dimension OfShareByMass => new(ShareOfMass: 1);

    private static readonly (Dimension Dimension, string Name)[] Names =
    [
        (None, "a bare number"),
        (OfLength, "a length"),
        (OfArea, "an area"),
        (OfVolume, "a volume"),
        (OfMass, "a mass"),
        (OfTime, "a time"),
        (OfTemperature, "a temperature"),
        (OfDensity, "a mass per volume"),
        (OfSpecificVolume, "a volume per mass"),
        (OfShareByVolume, "a share by volume (%vol)"),
        (OfShareByMass, "a share by mass (%mass)"),
        (new(Amount: 1), "an amount of substance"),
        (new(Amount: 1, Length: -3), "an amount per volume"),
        (new(Time: -1), "a rate"),
        (new(Mass: 1, Length: -1, Time: -2), "a pressure"),
        (new(Mass: 1, Length: 1, Time: -2), "a force"),
    ];

    /// <summary>The dimension of a product.</summary>
    /// <param name="a">One factor's.</param>
    /// <param name="b">The other's.</param>
    /// <returns>The powers added.</returns>
    public static Dimension operator *(Dimension a, Dimension b) => unchecked(new(
        (sbyte)(a.Length + b.Length),
        (sbyte)(a.Mass + b.Mass),
        (sbyte)(a.Time + b.Time),
        (sbyte)(a.Temperature + b.Temperature),
        (sbyte)(a.Amount + b.Amount),
        (sbyte)(a.ShareOfVolume + b.ShareOfVolume),
        (sbyte)(a.ShareOfMass + b.ShareOfMass)));

    /// <summary>The dimension of a quotient.</summary>
    /// <param name="a">The dividend's.</param>
    /// <param name="b">The divisor's.</param>
    /// <returns>The powers subtracted.</returns>
    public static Dimension operator /(Dimension a, Dimension b) => unchecked(new(
        (sbyte)(a.Length - b.Length),
        (sbyte)(a.Mass - b.Mass),
        (sbyte)(a.Time - b.Time),
        (sbyte)(a.Temperature - b.Temperature),
        (sbyte)(a.Amount - b.Amount),
        (sbyte)(a.ShareOfVolume - b.ShareOfVolume),
        (sbyte)(a.ShareOfMass - b.ShareOfMass)));

    /// <summary>The dimension whose <paramref name="degree"/>th power this is, or null where a power does not divide evenly.</summary>
    internal Dimension? Root(sbyte degree)
    {
        sbyte[] powers = [Length, Mass, Time, Temperature, Amount, ShareOfVolume, ShareOfMass];
        if (Array.Exists(powers, p => p % degree != 0)) return null;
        return new(
            (sbyte)(Length / degree),
            (sbyte)(Mass / degree),
            (sbyte)(Time / degree),
            (sbyte)(Temperature / degree),
            (sbyte)(Amount / degree),
            (sbyte)(ShareOfVolume / degree),
            (sbyte)(ShareOfMass / degree));
    }

    /// <summary>What a person would call it: "a volume", or its powers where no name is usual.</summary>
    /// <returns>Text with an article.</returns>
    public override string ToString()
    {
        var self = this;
        var named = Array.Find(Names, n => n.Dimension == self).Name;
        if (named is not null) return named;
        return $"a quantity in {Symbols}";
    }

    /// <summary>The powers of SI units: <c>kg m^-1</c>.</summary>
    internal string Symbols
    {
        get
        {
            var text = new StringBuilder();
            (sbyte Power, string Symbol)[] parts =
            [
                (Mass, "kg"), (Length, "m"), (Time, "s"), (Temperature, "K"), (Amount, "mol"), (ShareOfVolume, "%vol"), (ShareOfMass, "%mass"),
            ];
            foreach (var (power, symbol) in parts)
            {
                if (power is 0) continue;
                if (text.Length > 0) text.Append(' ');
                text.Append(symbol);
                if (power is not 1) text.Append(CultureInfo.InvariantCulture, $"^{power}");
            }

            return text.ToString();
        }
    }

    /// <summary>No honest quantity has a power near this; beyond it a product of many factors would run over.</summary>
    internal const int HighestPower = 24;

    /// <summary>Whether every power is within <see cref="HighestPower"/> to either side.</summary>
    internal bool IsWithinReason =>
        Array.TrueForAll(
            (sbyte[])[Length, Mass, Time, Temperature, Amount, ShareOfVolume, ShareOfMass],
            power => power is >= -HighestPower and <= HighestPower);
}
