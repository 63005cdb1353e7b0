using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using Protocolist.Reading;

namespace Protocolist.Vessels;

/// <summary>Names of materials and parts as people write them.</summary>
internal static class MaterialNames
{
    private static readonly ImmutableArray<Phrase> Materials =
        [.. Enum.GetValues<VesselMaterial>().Select(m => new Phrase($"material.{EnumWords<VesselMaterial>.Of(m)}", English(m)))];

    private static readonly ImmutableArray<Phrase> Parts =
        [.. Enum.GetValues<VesselPart>().Select(p => new Phrase($"vessel-part.{EnumWords<VesselPart>.Of(p)}", EnumWords<VesselPart>.Of(p)))];

    public static Phrase Of(VesselMaterial material) => Materials.AsSpan().At((int)material);

    public static Phrase Of(VesselPart part) => Parts.AsSpan().At((int)part);

    private static string English(VesselMaterial material) => material switch
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
        _ => EnumWords<VesselMaterial>.Of(material),
    };
}
