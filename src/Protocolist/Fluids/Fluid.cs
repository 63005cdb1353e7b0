using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Names;
using Protocolist.Fluids.Safety;
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
    private readonly Composition _composition;

    internal Fluid(
        Substance substance, double strength, StrengthBasis basis, in Composition composition, Buffering buffering = Buffering.None, double detail = 0)
    {
        (Substance, Strength, Basis, Buffering, Detail) = (substance, strength, basis, buffering, detail);
        _composition = composition;
    }

    /// <summary>What it is.</summary>
    public Substance Substance { get; }

    /// <summary>The stated strength in percent of <see cref="Basis"/>; 0 where there is none.</summary>
    public double Strength { get; }

    /// <summary>What <see cref="Strength"/> is a percentage of.</summary>
    public StrengthBasis Basis { get; }

    /// <summary>What keeps formaldehyde from turning acid; none for every other fluid.</summary>
    public Buffering Buffering { get; }

    /// <summary>The name as the trade writes it, in canonical form, such as <c>ethanol 70 %vol</c>. <see cref="Read"/> gives the same fluid back.</summary>
    public string Name => field ??= Substance.NameOf(this);

    /// <summary>What its substance tells by a second number: methanol of a stock, % by mass; practical salinity of sea water; 0 else.</summary>
    internal double Detail { get; }

    internal ref readonly Composition Composition => ref _composition;

    /// <summary>Whether it is ethanol or isopropanol of any strength.</summary>
    public bool IsAlcohol => Substance.IsAlcohol;

    /// <summary>Whether it holds formaldehyde, stock or working solution.</summary>
    public bool HasFormaldehyde => _composition[Solute.Formaldehyde] > 0;

    /// <summary>Whether it is water of any make, sea water included.</summary>
    public bool IsWater => Substance.IsWater;

    /// <summary>Whether it counts as a flammable liquid: it flashes at 60 °C or below (GHS, chapter 2.6).</summary>
    public bool IsFlammable => Hazards.FlammableCategory(Substance.FlashPoint(this)) is not null;

    /// <summary>What sort of waste it becomes when it is poured off.</summary>
    public WasteClass WasteClass => Substance.WasteOf(this);

    /// <summary>What gives it its strength, percent by volume at 20 °C; null where it is not a liquid in water.</summary>
    public double? VolumePercent => Substance.Active is { } active ? Substance.VolumePercent(this, active) : null;

    /// <summary>What gives it its strength, percent by mass; null where it has none.</summary>
    public double? MassPercent => Substance.Active is { } active ? MassPercentOf(active) : null;

    /// <summary>The stocks that are usually at hand to make it from, water and salts aside; none for water.</summary>
    public ImmutableArray<Fluid> UsualStocks =>
        Substance.UsualStock is { } stock ? [stock, .. Substance.AdditionsTo(this).Select(a => a.Liquid)] : [];

    /// <summary>Ethanol, percent by volume at 20 °C; null without ethanol.</summary>
    public double? EthanolVolumePercent => Substance.VolumePercent(this, Solute.Ethanol);

    /// <summary>Ethanol, percent by mass; null without ethanol.</summary>
    public double? EthanolMassPercent => MassPercentOf(Solute.Ethanol);

    /// <summary>Isopropanol, percent by volume at 20 °C, good to 0.3; null without isopropanol.</summary>
    public double? IsopropanolVolumePercent => Substance.VolumePercent(this, Solute.Isopropanol);

    /// <summary>Isopropanol, percent by mass, good to 0.4; null without isopropanol.</summary>
    public double? IsopropanolMassPercent => MassPercentOf(Solute.Isopropanol);

    /// <summary>Alcohol of either kind, percent by volume at 20 °C; 0 without alcohol.</summary>
    public double AlcoholVolumePercent => EthanolVolumePercent ?? IsopropanolVolumePercent ?? 0;

    /// <summary>Formaldehyde (CH2O), g per litre at 20 °C; null without formaldehyde.</summary>
    public double? FormaldehydeGramsPerLitre => HasFormaldehyde ? _composition[Solute.Formaldehyde] * Substance.Density(_composition, 20) : null;

    /// <summary>Formaldehyde (CH2O), percent by mass; null without formaldehyde.</summary>
    public double? FormaldehydeMassPercent => MassPercentOf(Solute.Formaldehyde);

    /// <summary>Formaldehyde (CH2O), mol per litre at 20 °C; null without formaldehyde.</summary>
    public double? FormaldehydeMolPerLitre => FormaldehydeGramsPerLitre / Solute.Formaldehyde.MolarMass;

    /// <summary>Methanol, percent by mass; 0 where there is none.</summary>
    public double MethanolMassPercent => 100 * _composition[Solute.Methanol];

    /// <summary>Water, percent by mass.</summary>
    public double WaterMassPercent => 100 * _composition.Water;

    /// <summary>Practical salinity of sea water or of the sea water in a sea-water formalin; 0 else.</summary>
    public double Salinity => _composition[Solute.SeaSalt] > 0 ? Detail : 0;

    /// <summary>Density at a temperature.</summary>
    /// <param name="at">0 to 40 °C (ethanol from -20 °C); beyond that the nearest temperature of the formula is taken.</param>
    /// <returns>The density; see <see cref="DensityDoubt"/> for how well it is known.</returns>
    public Density DensityAt(Temperature at) => Density.FromKilogramsPerCubicMeter(DensityAt(at.DegreesCelsius));

    /// <summary>Half the width of the band around <see cref="DensityAt(Temperature)"/>.</summary>
    /// <param name="at">The temperature.</param>
    /// <returns>About 0.1 kg/m³ for water and ethanol, 1.5 or more for isopropanol, 4 for formaldehyde.</returns>
    public Density DensityDoubt(Temperature at) =>
        Density.FromKilogramsPerCubicMeter(Substance.DensityDoubt(_composition, Nearest(at.DegreesCelsius)));

    /// <summary>How much a volume of it grows or shrinks: its volume at one temperature over its volume at another.</summary>
    /// <param name="from">The temperature of filling.</param>
    /// <param name="to">The temperature it comes to.</param>
    /// <returns>More than 1 where it grows.</returns>
    public double Expansion(Temperature from, Temperature to) => DensityAt(from.DegreesCelsius) / DensityAt(to.DegreesCelsius);

    /// <summary>Reads a fluid as people write it, such as <c>ethanol 70 %vol</c> or <c>neutral buffered formalin 10 %</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="where">Where it stands, for the findings.</param>
    /// <param name="known">The substances that are known; those of the library where none are given.</param>
    /// <returns>The fluid, and findings where the text is unknown, incomplete or ambiguous. An ambiguous fluid is returned beside a warning.</returns>
    public static Checked<Fluid> Read(string text, SourceSpan where = default, SubstanceCatalogue? known = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FluidName.Read(text, where, known ?? SubstanceCatalogue.Bundled);
    }

    /// <summary>The fluid of a text, where nobody asks what is wrong with it: cheaper than <see cref="Read"/> for what may be no fluid at all.</summary>
    /// <param name="text">The text.</param>
    /// <param name="known">The substances that are known; those of the library where none are given.</param>
    /// <returns>The fluid, or null.</returns>
    public static Fluid? Find(string text, SubstanceCatalogue? known = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FluidName.Find(text, known ?? SubstanceCatalogue.Bundled);
    }

    /// <summary>Names of fluids in use, as examples of how they are written; each is read without a finding.</summary>
    public static ImmutableArray<string> Examples => SubstanceCatalogue.Bundled.Examples;

    /// <summary>Same substance, strength, basis, buffering and detail: what it is made of follows from these.</summary>
    /// <param name="other">Another fluid.</param>
    /// <returns>Whether they are the same fluid.</returns>
    public bool Equals(Fluid? other) =>
        other is not null && Substance == other.Substance && Strength.Equals(other.Strength) && Basis == other.Basis
        && Buffering == other.Buffering && Detail.Equals(other.Detail);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Substance.Id, Strength, Basis, Buffering, Detail);

    /// <summary>The canonical name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;

    /// <summary>Density in kg/m³; beyond the temperatures of its formula that of the nearest.</summary>
    internal double DensityAt(double celsius) => Substance.Density(_composition, Nearest(celsius));

    /// <summary>What a sealed vessel feels of it, kPa.</summary>
    internal double VapourPressureAt(double celsius) => Substance.VapoursOver(this, celsius).Sum;

    private double? MassPercentOf(Solute of) => _composition[of] is > 0 and var share ? 100 * share : null;

    private double Nearest(double celsius) => Math.Clamp(celsius, Substance.LowestCelsius, Substance.HighestCelsius);
}
