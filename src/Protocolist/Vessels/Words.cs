using Protocolist.Fluids.Contact;

namespace Protocolist.Vessels;

/// <summary>Names of materials as people write them.</summary>
internal static class Words
{
    public static string Of(VesselMaterial material) => material switch
    {
        VesselMaterial.Pet => "PET",
        VesselMaterial.Pvc => "PVC",
        VesselMaterial.Ptfe => "PTFE",
        VesselMaterial.Epdm => "EPDM rubber",
        VesselMaterial.Acrylic => "acrylic glass",
        VesselMaterial.StainlessSteel => "stainless steel",
        VesselMaterial.Bakelite => "Bakelite",
        VesselMaterial.NaturalRubber => "natural rubber",
        VesselMaterial.NitrileRubber => "nitrile rubber",
        VesselMaterial.NeutralSilicone => "neutral-cure silicone",
        VesselMaterial.AcetoxySilicone => "acetoxy-cure silicone",
        VesselMaterial.PetroleumJelly => "petroleum jelly",
        VesselMaterial.GelatineOrBitumen => "gelatine or bitumen",
        _ => material.ToString().ToLowerInvariant(),
    };
}
