using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids;

/// <summary>A liquid with a composition, as it is named on a jar. Immutable, equal by value, safe to share between threads.</summary>
/// <remarks>
/// Strengths are kept to a thousandth of a percent, finer than any instrument reads, so that a fluid and the text of its
/// <see cref="Name"/> are the same thing: <c>Fluid.Read(fluid.Name)</c> gives an equal fluid. Contents and densities per volume are at 20 °C
/// unless a temperature is given. The methods that make a fluid throw <see cref="ArgumentOutOfRangeException"/> for strengths that cannot exist;
/// for text from people use <see cref="Read"/>, which answers with findings.
/// </remarks>
public sealed partial record Fluid
{
    private readonly Composition composition;

    private Fluid(FluidKind kind, double strength, StrengthBasis basis, Buffering buffering, double detail, Composition composition)
    {
        (Kind, Strength, Basis, Buffering, Detail) = (kind, strength, basis, buffering, detail);
        this.composition = composition;
        Name = FluidNameText.Of(this);
    }

    /// <summary>What it is.</summary>
    public FluidKind Kind { get; }

    /// <summary>The stated strength in percent of <see cref="Basis"/>; 0 where there is none.</summary>
    public double Strength { get; }

    /// <summary>What <see cref="Strength"/> is a percentage of.</summary>
    public StrengthBasis Basis { get; }

    /// <summary>What keeps formaldehyde from turning acid; none for every other fluid.</summary>
    public Buffering Buffering { get; }

    /// <summary>The name as the trade writes it, in canonical form, such as <c>ethanol 70 %vol</c>. <see cref="Read"/> gives the same fluid back.</summary>
    public string Name { get; }

    /// <summary>Methanol of a formaldehyde stock, percent by mass; practical salinity of sea water; 0 else.</summary>
    internal double Detail { get; }

    internal Composition Composition => composition;

    /// <summary>Whether it is ethanol or isopropanol of any strength.</summary>
    public bool IsAlcohol => Kind is FluidKind.Ethanol or FluidKind.Isopropanol;

    /// <summary>Whether it holds formaldehyde, stock or working solution.</summary>
    public bool HasFormaldehyde => Kind is FluidKind.FormaldehydeStock or FluidKind.Formaldehyde;

    /// <summary>Whether it is water of any make, sea water included.</summary>
    public bool IsWater => !IsAlcohol && !HasFormaldehyde;

    /// <summary>Ethanol, percent by volume at 20 °C; null without ethanol.</summary>
    public double? EthanolVolumePercent => Kind is FluidKind.Ethanol ? VolumePercent : null;

    /// <summary>Ethanol, percent by mass; null without ethanol.</summary>
    public double? EthanolMassPercent => Kind is FluidKind.Ethanol ? 100 * composition.Ethanol : null;

    /// <summary>Isopropanol, percent by volume at 20 °C, good to 0.3; null without isopropanol.</summary>
    public double? IsopropanolVolumePercent => Kind is FluidKind.Isopropanol ? VolumePercent : null;

    /// <summary>Isopropanol, percent by mass, good to 0.4; null without isopropanol.</summary>
    public double? IsopropanolMassPercent => Kind is FluidKind.Isopropanol ? 100 * composition.Isopropanol : null;

    /// <summary>Alcohol of either kind, percent by volume at 20 °C; 0 without alcohol.</summary>
    public double AlcoholVolumePercent => IsAlcohol ? VolumePercent : 0;

    /// <summary>Formaldehyde (CH2O), g per litre at 20 °C; null without formaldehyde.</summary>
    public double? FormaldehydeGramsPerLitre => HasFormaldehyde ? composition.Formaldehyde * composition.Density(20) : null;

    /// <summary>Formaldehyde (CH2O), percent by mass; null without formaldehyde.</summary>
    public double? FormaldehydeMassPercent => HasFormaldehyde ? 100 * composition.Formaldehyde : null;

    /// <summary>Formaldehyde (CH2O), mol per litre at 20 °C; null without formaldehyde.</summary>
    public double? FormaldehydeMolPerLitre => FormaldehydeGramsPerLitre / Formaldehyde.MolarMass;

    /// <summary>Methanol, percent by mass; 0 where there is none.</summary>
    public double MethanolMassPercent => 100 * composition.Methanol;

    /// <summary>Practical salinity of sea water or of the sea water in a sea-water formalin; 0 else.</summary>
    public double Salinity => Kind is FluidKind.SeaWater || Buffering is Buffering.SeaWater ? Detail : 0;

    /// <summary>Density at a temperature.</summary>
    /// <param name="at">0 to 40 °C (ethanol from -20 °C); beyond that the nearest temperature of the formula is taken.</param>
    /// <returns>The density; see <see cref="DensityDoubt"/> for how well it is known.</returns>
    public Density DensityAt(Temperature at) => Density.FromKilogramsPerCubicMeter(DensityAt(at.DegreesCelsius));

    /// <summary>Half the width of the band around <see cref="DensityAt(Temperature)"/>.</summary>
    /// <param name="at">The temperature.</param>
    /// <returns>About 0.1 kg/m³ for water and ethanol, 1.5 or more for isopropanol, 4 for formaldehyde.</returns>
    public Density DensityDoubt(Temperature at) => Density.FromKilogramsPerCubicMeter(Kind switch
    {
        FluidKind.Isopropanol => IsopropanolWater.DensityError(composition.Isopropanol, Within(at.DegreesCelsius)),
        FluidKind.Formaldehyde or FluidKind.FormaldehydeStock => Formaldehyde.DensityError,
        // Against the Bureau of Standards' measurements of 1913, 0.12 at most.
        FluidKind.Ethanol => 0.15,
        _ => 0.02,
    });

    /// <summary>How much a volume of it grows or shrinks: its volume at one temperature over its volume at another.</summary>
    /// <param name="from">The temperature of filling.</param>
    /// <param name="to">The temperature it comes to.</param>
    /// <returns>More than 1 where it grows.</returns>
    public double Expansion(Temperature from, Temperature to) => DensityAt(from.DegreesCelsius) / DensityAt(to.DegreesCelsius);

    /// <summary>Reads a fluid as people write it, such as <c>ethanol 70 %vol</c> or <c>neutral buffered formalin 10 %</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="where">Where it stands, for the findings.</param>
    /// <returns>The fluid, and findings where the text is unknown, incomplete or ambiguous. An ambiguous fluid is returned beside a warning.</returns>
    public static Checked<Fluid> Read(string text, SourceSpan where = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FluidName.Read(text, where);
    }

    /// <summary>Names of fluids in use, as examples of how they are written; each is read without a finding.</summary>
    public static ImmutableArray<string> Examples => FluidWords.Examples;

    /// <summary>The canonical name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;

    internal double DensityAt(double celsius) => composition.Density(Within(celsius));

    /// <summary>Whether a temperature lies within the range of this fluid's formula.</summary>
    internal bool Covers(double celsius) => Within(celsius).Equals(celsius);

    private double VolumePercent => Basis is StrengthBasis.Volume
        ? Strength
        : 100 * (Kind is FluidKind.Ethanol ? EthanolWater.VolumeFraction(composition.Ethanol) : IsopropanolWater.VolumeFraction(composition.Isopropanol));

    private double Within(double celsius) => Math.Clamp(celsius, Kind is FluidKind.Ethanol ? EthanolWater.LowestCelsius : Fluids.Water.LowestCelsius, 40);
}
