using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Fishes of every kind, lampreys and hagfishes among them.</summary>
internal static class FishGroups
{
    private const string TroutShares = "rounded from Souza et al. 2015, Acta Sci Anim Sci 37:103 (trout: head 13.3, viscera 17.0 %)";

    private static readonly CutRow BellySlit =
        new("right side, along the abdominal wall", Band(25, 30, 40, Usgs), 60, 0.2, OpensCavity: true, IsSingle: true);

    private static readonly CutRow MuscleSlits =
        new("right side, deep into the muscle, across the body", Band(20, 30, 60, Practice), 40, 0.6, OpensCavity: false);

    private static ImmutableArray<RegionRow> Fish(double head, double flank, double cavity, double tail, string source) =>
    [
        new("head", "head", head, 1, 0.9, source) { InjectAt = "behind the gills and under the skull, from the right" },
        new("left-flank", "left flank muscle", flank, 1, 0.6, source) { InjectAt = "back muscle, needle from the right or from below", Aliases = ["flank"] },
        new("right-flank", "right flank muscle", flank, 1, 0.6, source) { InjectAt = "back muscle, from the right", Cut = MuscleSlits },
        new("cavity", "body cavity", cavity, 1, 1, source)
        {
            Along = 0.35, IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen", "coelom", "belly"], // 0.30 to 0.40: common practice
            InjectAt = "body cavity, in front of the vent", Cut = BellySlit,
        },
        new("tail", "tail stalk and fins", tail, 1, 0.4, source) { InjectAt = "tail stalk, from the right" },
    ];

    // 158 fish of seven species, lengths, heights and widths of Brofeldt 1917: half of the width is 0.744·√(V/TL), nine tenths within a factor 1.18;
    // deep-bodied ones 0.70. Snout and tail taper, and the fin counts in the length: V is a quarter of the box, not the half of an ellipsoid.
    private static readonly BodyShape Ordinary = new(0.27, 0.146, 0.2442, 1.3, Brofeldt) { Measured = 1.18 };

    public static readonly BodyShape Slender = new(0.163, 0.101, 0.28, 1.25, Brofeldt + ": pike and smelt") { Measured = 1.18 };

    public static readonly BodyShape Deep = new(0.398, 0.141, 0.181, 1.25, Brofeldt + ": bream and silver bream") { Measured = 1.18 };

    public static readonly BodyShape Eel = new(1 / 22.0, 1 / 22.0, 0.75 * Math.PI / 4, 1.3, "assumed: tapered cylinder, fills three quarters, 0.65·√(V/L)");

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("fish", "vertebrate", "fish")
        {
            Taxa = ["Pisces"],
            DensityKgPerM3 = Band(1000, 1050, 1080, "from memory: 1.00 to 1.03 with swim bladder, 1.05 to 1.08 without"),
            WaterFraction = Band(0.70, 0.73, 0.76, "Souza et al. 2015 (rainbow trout 0.712 to 0.723 whole); " + Thorson),
            Length = LengthKind.Total,
            Shape = Ordinary,
            // Total over standard length 1.175 (1.134 to 1.275).
            OtherLengths = [(LengthKind.Standard, Band(0.78, 0.85, 0.885, Brofeldt))],
            Barrier = SkinBarrier.Slow,
            Regions = Fish(0.18, 0.27, 0.13, 0.15, TroutShares),
            // Whole up to 75, 150 and 200 mm by three handbooks; half-width is 0.073 of the length.
            WholeUpToMm = Band(5.5, 11, 14.6, Usgs + " (150 mm); 75 mm by memory; 200 mm by Allen"),
            DoseMlPerKg = Band(60, 80, 120, Embalming),
            WallMm = Band(4, 5, 9, "common practice: 1 mm in a fish of 10 cm, 3 to 5 at 30 cm, 7 to 12 at 60 cm; a shark of 1 m 4 to 8"),
            SpareSide = "left",
        },
        new("bony-fish", "fish", "bony fish")
        {
            Air = new(1065, Band(0, 0.06, 0.07, "swim bladder 5 to 7 %, none once pierced: Jones and Marshall 1953, from memory")),
            Taxa =
            [
                "Actinopterygii", "Teleostei", "Osteichthyes", "Perciformes", "Cypriniformes", "Salmoniformes", "Gadiformes", "Clupeiformes",
                "Cyprinidae", "Clupeidae", "Percidae", "Gobiidae", "Labridae",
            ],
            LengthMass = [Fitted(LengthKind.Total, 0.01, 3.04, 5150, 3.27, 6.0, FishForms)],
        },
        new("flatfish", "bony-fish", "flatfish")
        {
            Air = BodyAir.None,
            Taxa = ["Pleuronectiformes", "Pleuronectidae", "Soleidae", "Bothidae", "Scophthalmidae"],
            Shape = new(0.42, 0.05, 0.45, 1.4, "from memory, unsure: thickness 0.05 to 0.08 of the length") { Build = BodyBuild.Disc },
            LengthMass = [new(LengthKind.Total, 0.009856 / 1.15, 3.0561, 2.8, "plaice, means of FishBase records over 1.15; the factor of a body form")],
            SpareSide = "eyed",
        },
        new("eel", "bony-fish", "eel-shaped fish")
        {
            Taxa = ["Anguilliformes", "Anguillidae", "Congridae", "Muraenidae"],
            Shape = Eel,
            LengthMass = [new(LengthKind.Total, 0.001023, 3.06, 2.8, FishForms + ": eel-like")],
            Cautions = [new("eel-blood", false, "Raw eel blood irritates eyes and wounds.", Memory)],
        },
        new("oily-fish", "bony-fish", "oily fish (herring, salmon and their like, where rich in fat)"),
        new("fish-larva", "fish", "fish larva or fry")
        {
            Kind = BodyKind.Larvae,
            WaterFraction = Band(0.80, 0.85, 0.90, Unsure),
            Shape = BodyShape.Ellipsoid(0.15, 0.10, 1.4, "assumed"),
            Barrier = SkinBarrier.Open,
            Regions = [new("body", "body", 1, 1, 1, "the whole")],
        },
        new("cartilaginous-fish", "fish", "shark, ray or chimaera")
        {
            Taxa = ["Chondrichthyes", "Elasmobranchii"],
            DensityKgPerM3 = Band(1040, 1060, 1080, Memory),
            WaterFraction = Band(0.72, 0.75, 0.78, Memory),
            Barrier = SkinBarrier.Hide,
            Cautions = [new("spines", false, "Tail and fin spines wound and may be venomous after death.", Practice)],
        },
        new("shark", "cartilaginous-fish", "shark or dogfish")
        {
            Taxa = ["Selachimorpha", "Selachii", "Carcharhiniformes", "Squaliformes", "Scyliorhinidae", "Squalidae", "Lamniformes"],
            Shape = BodyShape.Ellipsoid(0.13, 0.13, 1.3, "assumed, unsure: round and slender"),
            LengthMass = [new(LengthKind.Total, 0.0026, 3.1, 2.8, "between catshark and spurdog, means of FishBase records over 1.15")],
            Regions = Fish(0.18, 0.25, 0.17, 0.15, Unsure),
            WholeUpToMm = Band(6, 8.2, 25, "as for other fishes; up to 50 cm injection is 'totally unnecessary' by " + SharkThread),
        },
        new("ray", "cartilaginous-fish", "ray or skate")
        {
            Taxa = ["Batoidea", "Rajiformes", "Myliobatiformes", "Torpediniformes"],
            Length = LengthKind.Disc,
            LengthIsTotal = true,
            TotalPerLength = Band(1.2, 1.6, 3, Unsure),
            Shape = new(0.12, 1, 0.35, 1.4, "assumed, unsure: a flat disc as wide as it is measured") { Build = BodyBuild.Disc },
            Regions =
            [
                new("disc", "disc and head", 0.65, 1, 0.7, Unsure) { InjectAt = "thick muscle of the wings, from below", Aliases = ["flank"] },
                new("cavity", "body cavity", 0.20, 1, 1, Unsure)
                {
                    IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen", "coelom"], InjectAt = "body cavity, from below",
                    Cut = new("from below, in front of the vent", Band(20, 30, 50, SharkThread), 60, 0.2, OpensCavity: true, IsSingle: true),
                },
                new("tail", "tail", 0.15, 1, 0.4, Unsure) { InjectAt = "tail root" },
            ],
            SpareSide = "upper",
        },
        new("lamprey", "fish", "lamprey or hagfish")
        {
            Taxa = ["Petromyzontiformes", "Petromyzontidae", "Cyclostomata", "Agnatha", "Myxini", "Myxiniformes"],
            DensityKgPerM3 = Band(1030, 1050, 1080, Unsure),
            Shape = BodyShape.Cylinder(18, 1.3, "assumed: eighteen times as long as thick"),
            Barrier = SkinBarrier.Slow,
            WholeUpToMm = Band(4, 6, 8, "common practice: adults over 15 cm"),
        },
    ];
}
