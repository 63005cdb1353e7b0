using System.Collections.Immutable;

namespace Protocolist.Vessels;

/// <summary>What walls, lids, seals and mounts may be made of, fluid by fluid.</summary>
public static class MaterialFitness
{
    // "Simmons 2014 (from memory)" is Fluid Preservation: A Comprehensive Reference (from memory). "Conserve O Gram 11/4" is the US National Park Service's
    // Storage Containers and Labels for Fluid-Preserved Collections, 1999. "SPNHC" is the best-practice wiki of the Society for the Preservation
    // of Natural History Collections. "Clark 1992" is Ground Glass Stoppered Jars, Natural History Museum London.
    private static readonly ImmutableArray<Row> s_rows =
    [
        new(VesselMaterial.Metal, [VesselPart.Wall, VesselPart.Lid, VesselPart.Mount], AnyWet, MaterialGrade.Unfit,
            "it corrodes, worst in formalin; alcohol escapes and rust spoils the specimen", "Conserve O Gram 11/4"),
        new(VesselMaterial.StainlessSteel, AllParts, [ContactFluid.Formalin], MaterialGrade.ForAWhile,
            "formalin that has turned acid pits it in the long run", "from memory"),
        new(VesselMaterial.Bakelite, [VesselPart.Lid], AnyWet, MaterialGrade.Unfit,
            "it turns brittle and breaks", "Conserve O Gram 11/4; Museum of Vertebrate Zoology handbook"),
        new(VesselMaterial.Polyethylene, [VesselPart.Wall, VesselPart.Lid], AnyWet, MaterialGrade.ForAWhile,
            "it turns brittle and splits after about 10 years", "Clark 1992; Conserve O Gram 11/4"),
        new(VesselMaterial.Polystyrene, [VesselPart.Wall, VesselPart.Lid, VesselPart.Mount], Alcohols, MaterialGrade.Unfit,
            "alcohol crazes and cracks it", "Simmons 2014 (from memory)"),
        new(VesselMaterial.Acrylic, [VesselPart.Wall, VesselPart.Lid, VesselPart.Mount], Alcohols, MaterialGrade.Unfit,
            "alcohol crazes and cracks it", "Simmons 2014 (from memory)"),
        new(VesselMaterial.Polycarbonate, [VesselPart.Wall, VesselPart.Lid, VesselPart.Mount], Alcohols, MaterialGrade.Unfit,
            "alcohol crazes and cracks it", "Simmons 2014 (from memory)"),
        new(VesselMaterial.Polystyrene, [VesselPart.Wall, VesselPart.Lid], [ContactFluid.Formalin], MaterialGrade.ForAWhile,
            "for fixing only", "common practice"),
        new(VesselMaterial.Polycarbonate, [VesselPart.Wall, VesselPart.Lid], [ContactFluid.Formalin], MaterialGrade.ForAWhile,
            "for fixing only", "common practice"),
        new(VesselMaterial.Pvc, AllParts, Alcohols, MaterialGrade.ForAWhile,
            "alcohol draws out its softeners and it crumbles, as old snap lids show",
            "Bavarian State Collection of Zoology, collections mailing list 2011; the reason from memory"),
        new(VesselMaterial.Pet, [VesselPart.Wall], Alcohols, MaterialGrade.ForAWhile,
            "water passes its wall faster than alcohol and the strength wanders", "Canadian Museum of Nature, collections mailing list 2007"),
        new(VesselMaterial.NaturalRubber, AllParts, AnyWet, MaterialGrade.Unfit,
            "it dissolves or hardens; nitrile or EPDM rubber replaces it", "SPNHC"),
        new(VesselMaterial.AcetoxySilicone, AllParts, AnyWet, MaterialGrade.Unfit,
            "it gives off acetic acid, which attacks metal and calcareous parts; use silicone that cures neutrally",
            "Simmons 2014; Carter & Walker 1999 (both from memory)"),
        new(VesselMaterial.PetroleumJelly, [VesselPart.Seal], AnyWet, MaterialGrade.Unfit,
            "it slips into the jar and onto the specimen", "Conservation DistList, February 2011"),
        new(VesselMaterial.GelatineOrBitumen, [VesselPart.Seal], AnyWet, MaterialGrade.Unfit,
            "a historic seal that turns brittle; gelatine hardens in formalin", "Simmons 2014 (from memory)"),
        new(VesselMaterial.Cork, AllParts, AnyWet, MaterialGrade.Unfit,
            "it breathes, and tannin browns the fluid", "common practice"),
        new(VesselMaterial.NeutralSilicone, [VesselPart.Seal], Alcohols, MaterialGrade.Lasting,
            "let it cure open for 24 to 48 h at least; how it ages in alcohol is not known well", "common practice"),
        new(VesselMaterial.NitrileRubber, [VesselPart.Seal], AnyWet, MaterialGrade.Lasting,
            "a synthetic gasket serves 10 to 20 years", "Clark 1992"),
        new(VesselMaterial.Epdm, [VesselPart.Seal], AnyWet, MaterialGrade.Lasting,
            "a synthetic gasket serves 10 to 20 years", "Clark 1992"),
        new(VesselMaterial.Polypropylene, [VesselPart.Lid], AnyWet, MaterialGrade.Lasting,
            "good with a liner of polyethylene foam or faced with PTFE", "SPNHC; Museum of Vertebrate Zoology handbook; Labedz 2005"),
    ];

    private static ImmutableArray<VesselPart> AllParts => [.. Enum.GetValues<VesselPart>()];

    private static ImmutableArray<ContactFluid> AnyWet => [.. Enum.GetValues<ContactFluid>()];

    private static ImmutableArray<ContactFluid> Alcohols => [ContactFluid.StrongAlcohol, ContactFluid.WeakAlcohol];

    /// <summary>Judges a material.</summary>
    /// <param name="material">What it is.</param>
    /// <param name="part">What it serves as.</param>
    /// <param name="fluid">What it touches.</param>
    /// <returns>The verdict; <c>null</c> for an unknown material. Materials without an objection on record count as lasting.</returns>
    public static MaterialVerdict? Judge(VesselMaterial material, VesselPart part, ContactFluid fluid)
    {
        if (material == VesselMaterial.Unknown) return null;
        var row = s_rows.FirstOrDefault(r => r.Material == material && r.Parts.Contains(part) && r.Fluids.Contains(fluid));
        return row is null
            ? new(MaterialGrade.Lasting, "no objection on record", "common practice")
            : new(row.Grade, row.Reason, row.Source);
    }

    private sealed record Row(
        VesselMaterial Material, ImmutableArray<VesselPart> Parts, ImmutableArray<ContactFluid> Fluids, MaterialGrade Grade, string Reason, string Source);
}
