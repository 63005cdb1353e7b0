using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Amphibians.</summary>
internal static class AmphibianGroups
{
    private const string FrogShares = "rounded from anatomy, unsure";

    private static readonly CutRow ShortSlit =
        new("short slit in the belly wall, beside the midline", Band(3, 5, 10, McDiarmid), 30, 0.2, OpensCavity: true, IsSingle: true);

    private static readonly ImmutableArray<RegionRow> Frog =
    [
        new("head", "head", 0.14, 1, 0.7, FrogShares) { InjectAt = "floor of the mouth" },
        new("trunk-wall", "trunk wall", 0.22, 1, 0.5, FrogShares) { InjectAt = "back muscle" },
        new("coelom", "body cavity", 0.28, 1, 1, FrogShares)
        {
            Along = 0.6, IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen", "belly"], // 0.55 to 0.65 of snout to vent: common practice
            InjectAt = "body cavity until filled but not bloated", Cut = ShortSlit,
        },
        new("forelimbs", "forelimbs", 0.08, 2, 0.3, FrogShares) { InjectAt = "upper arm, in large animals", Aliases = ["arm"] },
        new("hindlimbs", "hindlimbs", 0.28, 2, 0.5, FrogShares) { InjectAt = "thigh, in large animals", Aliases = ["thigh"] },
    ];

    private static readonly ImmutableArray<RegionRow> Newt =
    [
        new("head", "head", 0.12, 1, 0.9, Unsure) { InjectAt = "floor of the mouth" },
        new("trunk-wall", "trunk wall", 0.30, 1, 0.6, Unsure) { InjectAt = "back muscle" },
        new("coelom", "body cavity", 0.23, 1, 1, Unsure)
        {
            Along = 0.6, IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen", "belly"], // 0.55 to 0.65 of snout to vent: common practice
            InjectAt = "body cavity until filled but not bloated", Cut = ShortSlit,
        },
        new("forelimbs", "forelimbs", 0.04, 2, 0.25, Unsure),
        new("hindlimbs", "hindlimbs", 0.06, 2, 0.3, Unsure) { Aliases = ["thigh"] },
        new("tail", "tail", 0.25, 1, 0.7, Unsure) { InjectAt = "tail base, in large animals" },
    ];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("amphibian", "vertebrate", "amphibian")
        {
            Air = new(1040, Band(0, 0.05, 0.10, "common practice: lungs, none once emptied")),
            Taxa = ["Amphibia"],
            DensityKgPerM3 = Band(1020, 1030, 1040, Memory),
            WaterFraction = Band(0.78, 0.80, 0.82, Thorson),
            Length = LengthKind.SnoutVent,
            Shape = BodyShape.Cylinder(4, 1.3, "assumed"),
            Barrier = SkinBarrier.Open,
            Regions = Newt,
            WallMm = Band(0.9, 2.2, 3, "common practice: 0.3 to 1 mm in a frog"),
            WholeUpToMm = Band(4, 6, 8, "common practice: up to about 40 mm snout to vent neither cut nor injected; " + McDiarmid),
            Cautions = [new("skin-toxins", false, "Skin secretions irritate eyes and wounds; rinse the mucus off before fixing.", Practice)],
        },
        new("frog", "amphibian", "frog or toad")
        {
            Taxa = ["Anura", "Salientia"],
            Length = LengthKind.SnoutVent,
            LengthMass = [Means(LengthKind.SnoutVent, 0.09444, 3, 30, 1.91, 3.0, Trochet)],
            // Half-thickness 0.55·√(V/SVL), 0.45 to 0.65.
            Shape = new(0.33, 0.46, 0.60, 1.3, "4599 Colombian frogs (head 0.34 of SVL wide); depth 0.25 to 0.32 by common practice")
            { Measured = 1.2 },
            Regions = Frog,
        },
        new("salamander", "amphibian", "salamander or newt")
        {
            Taxa = ["Caudata", "Urodela", "Salamandridae", "Plethodontidae", "Ambystomatidae"],
            Length = LengthKind.SnoutVent,
            TotalPerLength = Band(1.6, 1.9, 2.2, Unsure),
            LengthMass = [Means(LengthKind.SnoutVent, 0.02379, 3, 24, 1.75, 2.8, Trochet)],
            Shape = new(0.19, 0.21, 0.584, 1.25, "assumed: a cylinder without tail and limbs, half-thickness 0.62·√(V/SVL)"),
        },
        new("caecilian", "amphibian", "caecilian")
        {
            Taxa = ["Gymnophiona", "Apoda"],
            Length = LengthKind.Total,
            Shape = BodyShape.Cylinder(38, 1.4, "assumed, from the mass for the length"),
            LengthMass = [Fitted(LengthKind.Total, 0.00055, 3, 8, 5.3, 7, "AmphiBIO (Oliveira et al. 2017), 8 species")],
        },
        new("amphibian-larva", "amphibian", "tadpole or salamander larva")
        {
            Air = BodyAir.None,
            Kind = BodyKind.Larvae,
            DensityKgPerM3 = Band(1010, 1020, 1030, Memory),
            WaterFraction = Band(0.88, 0.92, 0.94, Unsure),
            Length = LengthKind.Total,
            Shape = new(0.18, 0.20, 0.35, 1.3, "assumed: a ball with a thin tail"),
            Regions = [new("body", "body", 1, 1, 1, "the whole")],
            WholeUpToMm = Band(8, 12, 15, "common practice: larvae are never cut nor injected"),
        },
        new("amphibian-egg", "amphibian", "amphibian spawn")
        {
            Air = BodyAir.None,
            Kind = BodyKind.Eggs,
            DensityKgPerM3 = Band(1000, 1010, 1030, Unsure),
            WaterFraction = Band(0.90, 0.95, 0.98, Unsure),
            Length = LengthKind.Total,
            OtherLengths = [(LengthKind.EggDiameter, Band(0.2, 0.33, 0.5, "common practice: embryos of 1 to 3 mm in jelly of 3 to 10"))],
            Shape = BodyShape.Ellipsoid(0.7, 0.7, 1.4, "assumed: a clump"),
            IsGelatinous = true,
            Regions = [new("body", "clump", 1, 1, 1, "the whole") { Tissue = Tissue.Jelly }],
            WholeUpToMm = Band(8, 12, 15, "common practice: spawn is never cut nor injected"),
        },
    ];
}
