using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Birds.</summary>
internal static class BirdGroups
{
    // No published table of segments was at hand: shares from memory, unsure.
    private static readonly ImmutableArray<RegionRow> Whole =
    [
        new("head", "head", 0.06, 1, 0.45, Unsure) { InjectAt = "brain through the foramen magnum, and beside the tongue" },
        new("neck", "neck", 0.05, 1, 0.25, Unsure) { InjectAt = "along both sides of the neck; the crop" },
        new("breast", "breast muscle", 0.24, 1, 0.5, Unsure) { InjectAt = "breast muscle, both sides of the keel" },
        new("abdomen", "body cavity", 0.38, 1, 1, Unsure)
        {
            Along = 0.4, IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["coelom", "body-cavity"], // 0.35 to 0.45: common practice
            InjectAt = "body cavity, from behind the breastbone",
            Cut = new("abdominal wall beside the cloaca", Band(20, 30, 50, Practice), 50, 0.2, OpensCavity: true, IsSingle: true),
        },
        new("wings", "wings", 0.12, 2, 0.2, Unsure) { InjectAt = "upper arm" },
        new("legs", "legs", 0.15, 2, 0.35, Unsure) { InjectAt = "thigh", Aliases = ["thigh", "hindlimbs"] },
    ];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("bird", "vertebrate", "bird")
        {
            Air = new(1040, Band(0.10, 0.15, 0.20, "common practice: lungs and air sacs, the plumage wetted")),
            Taxa = ["Aves"],
            DensityKgPerM3 = Band(750, 950, 1030, Larramendi + "; plucked and with flooded air sacs near the upper end, from memory"),
            WaterFraction = Band(0.62, 0.65, 0.68, Memory),
            // Half-thickness 1.29·√(V/TL), which agrees with 51·M^(1/3) mm (M in kg), 0.85 to 1.2 of it, from frontal areas.
            Shape = new(0.22, 0.22, 0.15, 1.25, "Pennycuick et al. 1988, frontal area 0.00813·M^0.666 m2, as in the afpt manual") { Measured = 1.2 },
            Length = LengthKind.Total,
            LengthMass = [Means(LengthKind.Total, 0.009559, 2.845, 1242, 2.05, 3.2, BirdTables)],
            Regions = Whole,
            WholeUpToMm = Band(5, 8, 11, "common practice, unsure"),
            WallMm = Band(1.3, 2, 3.8, "common practice: 0.3 to 0.6 mm in a songbird, 1 to 1.5 in a pigeon, 3 to 6 in a goose"),
            Cautions =
            [
                new(
                    "avian-influenza", false,
                    "Do not handle a bird dead of unknown cause without gloves, mask and eye protection; report clusters to the authority first.",
                    "CDC (archived), dead-bird surveillance; common practice"),
                new("psittacosis", false, "Parrots and pigeons may carry psittacosis: gloves and mask.", Memory) { Of = ["parrot", "pigeon", "chick"] },
                new(
                    "protected", true,
                    "Nearly all wild birds are protected (Migratory Bird Treaty Act, EU Birds Directive): a salvage permit comes first.", Treaties),
            ],
        },
        new("chick", "bird", "chick or nestling")
        {
            Air = new(1030, Band(0.03, 0.05, 0.10, "common practice, unsure")),
            WaterFraction = Band(0.70, 0.78, 0.85, Unsure),
            DensityKgPerM3 = Band(950, 1010, 1050, Unsure),
            Barrier = SkinBarrier.Slow,
            Shape = BodyShape.Cylinder(2.5, 1.3, "assumed: stout"),
        },
    ];
}
