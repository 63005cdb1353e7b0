
namespace Protocolist.Fluids;

/// <summary>What walls, lids, seals and mounts are made of.</summary>
public enum VesselMaterial
{
    /// <summary>Not known, or not given.</summary>
    Unknown,

    /// <summary>Soda-lime or borosilicate glass.</summary>
    Glass,

    /// <summary>Polypropylene.</summary>
    Polypropylene,

    /// <summary>Polyethylene, of high or low density, also as foam.</summary>
    Polyethylene,

    /// <summary>Polyethylene terephthalate.</summary>
    Pet,

    /// <summary>Polystyrene.</summary>
    Polystyrene,

    /// <summary>Acrylic glass (PMMA).</summary>
    Acrylic,

    /// <summary>Polycarbonate.</summary>
    Polycarbonate,

    /// <summary>Polyvinyl chloride.</summary>
    Pvc,

    /// <summary>Tinplate, aluminium or coated steel.</summary>
    Metal,

    /// <summary>Stainless steel.</summary>
    StainlessSteel,

    /// <summary>Phenol-formaldehyde resin (Bakelite), as black lids.</summary>
    Bakelite,

    /// <summary>Polytetrafluoroethylene, as facing, thread or tape.</summary>
    Ptfe,

    /// <summary>Natural rubber.</summary>
    NaturalRubber,

    /// <summary>Nitrile rubber (Buna-N).</summary>
    NitrileRubber,

    /// <summary>Ethylene-propylene rubber (EPDM).</summary>
    Epdm,

    /// <summary>Silicone that cures neutrally.</summary>
    NeutralSilicone,

    /// <summary>Silicone that gives off acetic acid as it cures.</summary>
    AcetoxySilicone,

    /// <summary>Petroleum jelly.</summary>
    PetroleumJelly,

    /// <summary>Gelatine or bitumen, the historic seals.</summary>
    GelatineOrBitumen,

    /// <summary>Cork.</summary>
    Cork,
}
