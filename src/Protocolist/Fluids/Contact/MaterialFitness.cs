using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids.Contact;

/// <summary>What walls, lids, seals and mounts may be made of, fluid by fluid.</summary>
internal static class MaterialFitness
{
    private static readonly Phrase Corrodes = new("material.corrodes", "it corrodes, worst in formalin; alcohol escapes and rust spoils the specimen");
    private static readonly Phrase Breaks = new("material.breaks", "it turns brittle and breaks");
    private static readonly Phrase Splits = new("material.splits", "it turns brittle and splits after about 10 years");
    private static readonly Phrase Hardens = new("material.hardens", "it dissolves or hardens; nitrile or EPDM rubber replaces it");
    private static readonly Phrase GivesAcid = new(
        "material.gives-acid", "it gives off acetic acid, which attacks metal and calcareous parts; use silicone that cures neutrally");

    private static readonly Phrase Slips = new("material.slips", "it slips into the jar and onto the specimen");
    private static readonly Phrase Historic = new("material.historic", "a historic seal that turns brittle; gelatine hardens in formalin");
    private static readonly Phrase Breathes = new("material.breathes", "it breathes, and tannin browns the fluid");
    private static readonly Phrase ServesLong = new("material.serves-long", "a synthetic gasket serves 10 to 20 years");
    private static readonly Phrase WithLiner = new("material.with-liner", "good with a liner of polyethylene foam or faced with PTFE");
    private static readonly MaterialVerdict NoObjection = new(
        MaterialGrade.Lasting, new Phrase("material.no-objection", "no objection on record"), "common practice");

    // What holds in every fluid; what a fluid does beyond that stands with its substance. "Conserve O Gram 11/4" is the US National Park Service's
    // Storage Containers and Labels for Fluid-Preserved Collections, 1999. "SPNHC" is the best-practice wiki of the Society for the Preservation
    // of Natural History Collections. "Clark 1992" is Ground Glass Stoppered Jars, Natural History Museum London.
    private static readonly ImmutableArray<MaterialRow> InAnyFluid =
    [
        new(VesselMaterial.Metal, MaterialRow.AllButSeal, MaterialGrade.Unfit, Corrodes, "Conserve O Gram 11/4"),
        new(VesselMaterial.Bakelite, [VesselPart.Lid], MaterialGrade.Unfit, Breaks, "Conserve O Gram 11/4; Museum of Vertebrate Zoology handbook"),
        new(VesselMaterial.Polyethylene, [VesselPart.Wall, VesselPart.Lid], MaterialGrade.ForAWhile, Splits, "Clark 1992; Conserve O Gram 11/4"),
        new(VesselMaterial.NaturalRubber, MaterialRow.AllParts, MaterialGrade.Unfit, Hardens, "SPNHC"),
        new(VesselMaterial.AcetoxySilicone, MaterialRow.AllParts, MaterialGrade.Unfit, GivesAcid, "Simmons 2014; Carter & Walker 1999 (both from memory)"),
        new(VesselMaterial.PetroleumJelly, [VesselPart.Seal], MaterialGrade.Unfit, Slips, "Conservation DistList, February 2011"),
        new(VesselMaterial.GelatineOrBitumen, [VesselPart.Seal], MaterialGrade.Unfit, Historic, MaterialRow.Simmons),
        new(VesselMaterial.Cork, MaterialRow.AllParts, MaterialGrade.Unfit, Breathes, "common practice"),
        new(VesselMaterial.NitrileRubber, [VesselPart.Seal], MaterialGrade.Lasting, ServesLong, "Clark 1992"),
        new(VesselMaterial.Epdm, [VesselPart.Seal], MaterialGrade.Lasting, ServesLong, "Clark 1992"),
        new(VesselMaterial.Polypropylene, [VesselPart.Lid], MaterialGrade.Lasting, WithLiner, "SPNHC; Museum of Vertebrate Zoology handbook; Labedz 2005"),
    ];

    /// <summary>Judges a material.</summary>
    /// <param name="material">What it is.</param>
    /// <param name="part">What it serves as.</param>
    /// <param name="fluid">What it touches.</param>
    /// <returns>The verdict; <c>null</c> for an unknown material. Materials without an objection on record count as lasting.</returns>
    public static MaterialVerdict? Judge(VesselMaterial material, VesselPart part, Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        return Judge(material, part, fluid.Substance);
    }

    internal static MaterialVerdict? Judge(VesselMaterial material, VesselPart part, Substance substance)
    {
        if (material == VesselMaterial.Unknown) return null;
        return (Find(substance.Contact) ?? Find(InAnyFluid)) is { } row ? new(row.Grade, row.Reason, row.Source) : NoObjection;

        MaterialRow? Find(ImmutableArray<MaterialRow> rows)
        {
            foreach (var row in rows)
            {
                if (row.Material == material && row.Parts.Contains(part)) return row;
            }

            return null;
        }
    }
}
