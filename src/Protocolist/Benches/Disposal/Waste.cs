using System.Collections.Immutable;
using Protocolist.Findings;

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

/// <summary>The words of waste, and which class a fluid belongs to.</summary>
internal static class Waste
{
    private static readonly Phrase[] Classes =
    [
        new("waste-class.formaldehyde", "formaldehyde"),
        new("waste-class.flammable-alcohol", "flammable alcohol"),
        new("waste-class.formaldehyde-and-alcohol", "formaldehyde and alcohol"),
        new("waste-class.dilute-alcohol", "dilute alcohol"),
        new("waste-class.rinse-water", "rinse water"),
        new("waste-class.contaminated-solids", "contaminated solids"),
        new("waste-class.sharps", "sharps"),
        new("waste-class.tissue", "tissue"),
    ];

    private static readonly Phrase[] Ways =
    [
        new("waste-way.kept-for-reuse", "kept for reuse"),
        new("waste-way.collected-as-hazardous", "collected as hazardous"),
        new("waste-way.collected-as-clinical", "collected as clinical"),
        new("waste-way.drained-where-allowed", "drained where allowed"),
    ];

    /// <summary>Every class in the order of its English words.</summary>
    public static ImmutableArray<WasteClass> ByWord { get; } = [.. Enum.GetValues<WasteClass>().OrderBy(c => Words(c).English, StringComparer.Ordinal)];

    /// <summary>What people call a class.</summary>
    public static Phrase Words(WasteClass @class) => Classes[(int)@class];

    /// <summary>What people call a way.</summary>
    public static Phrase Words(WasteWay way) => Ways[(int)way];

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

    /// <summary>Counted by the piece; the rest is poured.</summary>
    public static bool IsSolid(WasteClass @class) => @class is WasteClass.ContaminatedSolids or WasteClass.Sharps or WasteClass.Tissue;
}
