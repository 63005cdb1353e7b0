
namespace Protocolist.Fluids;

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

    /// <summary>Glycerol, glycols and the like in water: no hazard by law, but too rich for a drain without leave.</summary>
    OrganicInWater,

    /// <summary>Gloves, paper and cloths that touched fixative.</summary>
    ContaminatedSolids,

    /// <summary>Blades and needles.</summary>
    Sharps,

    /// <summary>Fresh tissue and what touched it.</summary>
    Tissue,
}

/// <summary>What sort of waste a fluid becomes.</summary>
internal static class WasteClasses
{
    /// <summary>The class of a fluid by its composition.</summary>
    /// <param name="formaldehydeMassPercent">Formaldehyde, % by mass.</param>
    /// <param name="alcoholVolumePercent">Ethanol and isopropanol together, % by volume.</param>
    /// <returns>
    /// Formaldehyde from 0.1 % by mass (the limit of waste property HP 7 for a category 1B carcinogen, Regulation (EU) No 1357/2014, from memory);
    /// flammable from 24 % by volume of alcohol (40 CFR 261.21 excludes weaker aqueous solutions, from memory); dilute alcohol from 1 %; else rinse water.
    /// </returns>
    public static WasteClass Of(double formaldehydeMassPercent, double alcoholVolumePercent) => (formaldehydeMassPercent >= 0.1, alcoholVolumePercent) switch
    {
        (true, >= 24) => WasteClass.FormaldehydeAndAlcohol,
        (true, _) => WasteClass.Formaldehyde,
        (false, >= 24) => WasteClass.FlammableAlcohol,
        (false, >= 1) => WasteClass.DiluteAlcohol,
        _ => WasteClass.RinseWater,
    };
}
