using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>The top of the tree: what holds for every animal of which nothing better is known.</summary>
internal static class RootGroups
{
    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("animal", null, "animal")
        {
            Taxa = ["Animalia", "Metazoa"],
            DensityKgPerM3 = Band(1000, 1050, 1100, "common practice: 1.05 g/mL within 5 % for soft animals"),
            WaterFraction = Band(0.60, 0.75, 0.90, "common practice"),
            Shape = BodyShape.Cylinder(3, 1.5, "assumed, unsure: a stout cylinder errs on the thick side"),
            Length = LengthKind.Total,
            Barrier = SkinBarrier.Slow,
            Regions = [new("body", "body", 1, 1, 1, "the whole")],
            WholeUpToMm = Band(3, 6, 11, "common practice, unsure: half-thickness of a mouse-sized body"),
            DoseMlPerKg = Band(60, 100, 150, Embalming),
            WallMm = Band(1.5, 3, 6, "common practice, unsure"),
            Cautions =
            [
                new("not-sterile", false, "Fixative does not sterilise at once: treat the specimen as infectious until it is fixed to the core.", Practice),
            ],
        },
        new("vertebrate", "animal", "vertebrate")
        {
            Taxa = ["Vertebrata", "Craniata"],
            DensityKgPerM3 = Band(950, 1040, 1100, Larramendi),
            WaterFraction = Band(0.60, 0.70, 0.80, Memory),
            Barrier = SkinBarrier.Hide,
            Cautions = [new("provenance", true, "A protected species needs a licence even when found dead: keep the papers with the specimen.", Treaties)],
        },
        new("invertebrate", "animal", "invertebrate")
        {
            Taxa = ["Invertebrata"],
            WholeUpToMm = Band(5, 10, 15, "common practice: invertebrates are left whole unless their row says otherwise"),
        },
        new("amniote-embryo", "vertebrate", "embryo or foetus of a mammal, bird or reptile")
        {
            Kind = BodyKind.SoftLimbed,
            DensityKgPerM3 = Band(1000, 1030, 1060, Memory),
            WaterFraction = Band(0.75, 0.85, 0.92, Unsure),
            Shape = BodyShape.Cylinder(2, 1.3, "assumed: curled, twice as long as thick"),
            Barrier = SkinBarrier.Open,
            Regions =
            [
                new("head", "head", 0.30, 1, 0.9, Unsure),
                new("trunk", "trunk", 0.55, 1, 1, Unsure)
                {
                    IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen"],
                    InjectAt = "abdomen, beside the cord, once the body is over 5 cm", // common practice
                },
                new("limbs", "limbs", 0.15, 4, 0.3, Unsure),
            ],
            WholeUpToMm = Band(8, 12, 15, "common practice: up to 5 cm whole"),
        },
        new("embryo", "animal", "egg or embryo")
        {
            Kind = BodyKind.Eggs,
            DensityKgPerM3 = Band(1010, 1030, 1080, Unsure),
            WaterFraction = Band(0.70, 0.85, 0.95, Unsure),
            // Single eggs are spheres, and embryos lie curled.
            Shape = BodyShape.Ellipsoid(1, 1, 1.2, "assumed: a sphere") with { Build = BodyBuild.Rigid },
            OtherLengths = [(LengthKind.EggDiameter, Band(1, 1, 1, "a sphere"))],
            LengthMass = [new(LengthKind.EggDiameter, 0.5445, 3, 1.4, "a sphere of density 1.04")],
            Barrier = SkinBarrier.Open,
        },
    ];
}
