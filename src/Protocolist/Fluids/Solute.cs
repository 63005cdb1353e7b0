using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Substances;

namespace Protocolist.Fluids;

/// <summary>What a fluid holds beside water: a liquid, a gas or salts, with what is known of it in any mixture. Immutable; one object each.</summary>
/// <remarks>It stands in the file of the substance that brings it; those that the library itself asks for are named here.</remarks>
public sealed class Solute
{
    // Litres of a mole of gas at 25 °C and 1 atm.
    private const double MolarVolume = 24.45;

    internal Solute(
        string id, double molarMass,
        params ReadOnlySpan<(string Authority, bool IsLaw, ExposureKind Kind, double Ppm, double? MilligramsPerCubicMetre, int Year)> limits)
    {
        (Id, MolarMass, Name) = (id, molarMass, new($"solute.{id}", id.Replace('-', ' ')));
        var all = ImmutableArray.CreateBuilder<ExposureLimit>(limits.Length);
        foreach (var (authority, isLaw, kind, ppm, milligrams, year) in limits)
            all.Add(new(id, authority, kind, ppm, milligrams ?? ppm * (molarMass / MolarVolume), year) { IsLaw = isLaw });
        Limits = all.MoveToImmutable();
        LimitsSaid = ExposureLimits.Said(Name, Limits);
    }

    /// <summary>Ethanol.</summary>
    public static Solute Ethanol => Substances.Ethanol.Liquid;

    /// <summary>Isopropanol (2-propanol).</summary>
    public static Solute Isopropanol => Substances.Isopropanol.Liquid;

    /// <summary>Formaldehyde, counted as CH2O whatever its hydrates and chains.</summary>
    public static Solute Formaldehyde => FormaldehydeSolution.Gas;

    /// <summary>Methanol, the stabiliser of formaldehyde stock.</summary>
    public static Solute Methanol => FormaldehydeSolution.Methanol;

    /// <summary>The salt of sea water.</summary>
    public static Solute SeaSalt => Substances.SeaWater.Salt;

    /// <summary>Buffer salts without their water of crystallisation.</summary>
    public static Solute BufferSalts => BufferRecipe.Dissolved;

    /// <summary>A kebab-case name, such as <c>formaldehyde</c>.</summary>
    public string Id { get; }

    /// <summary>What people call it.</summary>
    public Phrase Name { get; }

    /// <summary>Molar mass in g/mol; 0 for a mixture of salts.</summary>
    public double MolarMass { get; }

    /// <summary>Diffusion coefficient in tissue near 20 °C, m²/s, as a band; null where none is known to us.</summary>
    /// <remarks>
    /// A third to a half of the coefficient in water (Wilke and Chang 1955: methanediol 1.52e-9, ethanol 1.28e-9, isopropanol 1.06e-9, methanol
    /// 1.70e-9 at 20 °C); for ethanol lower, mutual diffusion with water falling to a third at 70 %vol (Tyn and Calus, from memory).
    /// No measurement in muscle is known to us: the band is wide on purpose.
    /// </remarks>
    public (double Slow, double Fast)? InTissue { get; internal init; }

    /// <summary>Limits for it in the air that people breathe. Facts for information: the law of the place and the current edition prevail.</summary>
    public ImmutableArray<ExposureLimit> Limits { get; }

    /// <summary>The same in a sentence; empty where there are none.</summary>
    internal Message LimitsSaid { get; }

    /// <summary>Percent by mass of a fluid from which on its limits are told.</summary>
    internal double ToldFromMassPercent { get; init; }

    /// <summary>Hazard statements by its percentage in a mixture, in the order of a label.</summary>
    internal ImmutableArray<HazardRow> Hazards { get; init; } = [];

    /// <summary>Its name.</summary>
    /// <returns>English.</returns>
    public override string ToString() => Name.English;
}

/// <summary>A hazard statement that a mixture carries from one percentage by mass of a solute up to another.</summary>
/// <param name="Statement">The GHS code.</param>
/// <param name="From">Percent from which on.</param>
/// <param name="Below">Percent below which.</param>
internal readonly record struct HazardRow(string Statement, double From, double Below = double.PositiveInfinity);
