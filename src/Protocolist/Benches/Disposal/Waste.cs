using System.Globalization;
using Protocolist.Benches.Stock;

namespace Protocolist.Benches.Disposal;

/// <summary>What sort of waste leaves a plan. Local rules come first; these classes only keep apart what must not be mixed.</summary>
public enum WasteClass
{
    /// <summary>Fluid with formaldehyde: fixative, and the rinses that still hold it.</summary>
    Formaldehyde,

    /// <summary>Alcohol and water that catch fire.</summary>
    FlammableAlcohol,

    /// <summary>Both at once.</summary>
    FormaldehydeAndAlcohol,

    /// <summary>Alcohol and water too weak to count as ignitable.</summary>
    DiluteAlcohol,

    /// <summary>Water and salts, with no more formaldehyde or alcohol than a trace.</summary>
    RinseWater,

    /// <summary>Gloves, paper and cloths that touched fixative.</summary>
    ContaminatedSolids,

    /// <summary>Blades and needles.</summary>
    Sharps,

    /// <summary>Fresh tissue and what touched it.</summary>
    Tissue,
}

/// <summary>What becomes of waste.</summary>
public enum WasteWay
{
    /// <summary>Kept, labelled, for another specimen.</summary>
    KeptForReuse,

    /// <summary>Collected as hazardous waste by those licensed for it.</summary>
    CollectedAsHazardous,

    /// <summary>Collected as sharps or biological waste by those licensed for it.</summary>
    CollectedAsClinical,

    /// <summary>To the drain under a named local permission, never otherwise.</summary>
    DrainedWhereAllowed,
}

/// <summary>One lot of waste. Its destination is never unnamed.</summary>
public sealed record Waste
{
    /// <summary>Makes a lot of waste.</summary>
    /// <param name="what">What it is, for people.</param>
    /// <param name="class">Its class.</param>
    /// <param name="amount">How much.</param>
    /// <param name="way">What becomes of it.</param>
    /// <param name="destination">The vessel, drum or permission, by name.</param>
    /// <exception cref="ArgumentException">The destination is blank.</exception>
    public Waste(string what, WasteClass @class, Amount amount, WasteWay way, string destination)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(destination);
        (What, Class, Amount, Way, Destination) = (what, @class, amount, way, destination);
    }

    /// <summary>What it is, for people.</summary>
    public string What { get; }

    /// <summary>Its class.</summary>
    public WasteClass Class { get; }

    /// <summary>How much.</summary>
    public Amount Amount { get; }

    /// <summary>What becomes of it.</summary>
    public WasteWay Way { get; }

    /// <summary>The vessel, drum or permission, by name.</summary>
    public string Destination { get; }

    /// <summary>The class of a fluid by its composition.</summary>
    /// <param name="formaldehydeMassPercent">Formaldehyde, % by mass.</param>
    /// <param name="alcoholVolumePercent">Ethanol and isopropanol together, % by volume.</param>
    /// <returns>
    /// Formaldehyde from 0.1 % by mass (the limit of waste property HP 7 for a category 1B carcinogen, Regulation (EU) No 1357/2014, from memory);
    /// flammable from 24 % by volume of alcohol (40 CFR 261.21 excludes weaker aqueous solutions, from memory); dilute alcohol from 1 %; else rinse water.
    /// </returns>
    public static WasteClass ClassOf(double formaldehydeMassPercent, double alcoholVolumePercent) => (formaldehydeMassPercent >= 0.1, alcoholVolumePercent) switch
    {
        (true, >= 24) => WasteClass.FormaldehydeAndAlcohol,
        (true, _) => WasteClass.Formaldehyde,
        (false, >= 24) => WasteClass.FlammableAlcohol,
        (false, >= 1) => WasteClass.DiluteAlcohol,
        _ => WasteClass.RinseWater,
    };

    /// <summary><c>2 L fixative (formaldehyde): collected as hazardous, drum F1</c>.</summary>
    /// <returns>The line.</returns>
    public override string ToString() => $"{Amount} {What} ({Words(Class.ToString())}): {Words(Way.ToString())}, {Destination}";

    internal static string Words(string name) => string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLower(c, CultureInfo.InvariantCulture) : char.ToLower(c, CultureInfo.InvariantCulture).ToString()));
}
