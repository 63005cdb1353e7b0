using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Crustaceans, insects, arachnids, myriapods.</summary>
internal static class ArthropodGroups
{
    private static readonly ImmutableArray<RegionRow> Decapod =
    [
        new("carapace", "body under the carapace", 0.50, 1, 1, Unsure)
        {
            IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen", "coelom"],
            InjectAt = "through the soft membrane behind the carapace, 1 to 5 mL a site", // common practice
            Cut = new("lift or puncture the edge of the carapace", Band(5, 10, 20, Practice), 40, 0.2, OpensCavity: true, IsSingle: true),
        },
        new("tail", "tail muscle", 0.25, 1, 0.7, Unsure) { InjectAt = "between the tail rings, from below" },
        new("legs", "claws and legs", 0.25, 2, 0.4, Unsure) { InjectAt = "through the membrane at the leg base", Aliases = ["thigh"] },
    ];

    private static ImmutableArray<RegionRow> Spider(string name, string at, string cut) =>
    [
        new("prosoma", "front body and legs", 0.45, 1, 0.7, Unsure),
        new("abdomen", name, 0.55, 1, 1, Unsure)
        {
            IsCavity = true, Tissue = Tissue.Viscera, InjectAt = at, // 0.1 to 0.5 mL in bodies over 3 cm: common practice
            Cut = new(cut, Band(1, 2, 4, Practice), 20, 0.2, OpensCavity: true, IsSingle: true),
        },
    ];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("arthropod", "invertebrate", "arthropod")
        {
            Kind = BodyKind.Airy,
            Taxa = ["Arthropoda"],
            DensityKgPerM3 = Band(1000, 1070, 1200, Memory),
            WaterFraction = Band(0.60, 0.68, 0.75, Memory),
            Barrier = SkinBarrier.Hide,
            Shape = BodyShape.Cylinder(3, 1.4, "assumed"),
            WallMm = Band(0.5, 1.5, 3, "common practice, unsure: the soft skin between the plates"),
        },
        new("crustacean", "arthropod", "crustacean")
        {
            Kind = BodyKind.Armoured,
            Taxa = ["Crustacea", "Malacostraca"],
            IsCalcareous = true,
            WaterFraction = Band(0.65, 0.70, 0.75, Memory),
        },
        new("decapod", "crustacean", "crab, lobster, shrimp")
        {
            Taxa = ["Decapoda", "Brachyura", "Caridea", "Astacidea", "Anomura", "Paguridae", "Portunidae", "Nephropidae"],
            DensityKgPerM3 = Band(1100, 1180, 1250, Memory),
            Length = LengthKind.Carapace,
            TotalPerLength = Band(1, 2, 3, Unsure),
            Shape = new(0.40, 0.60, 0.75, 1.4, "assumed, unsure: carapace, the tail or claws counted in"),
            Regions = Decapod,
            WholeUpToMm = Band(6, 10, 12, "common practice: up to about 5 cm neither cut nor injected"),
        },
        new("crab", "decapod", "crab")
        {
            Taxa = ["Cancridae", "Majidae", "Grapsidae"],
            Length = LengthKind.Carapace,
            // Carapace length; a crab is wider than long.
            Shape = new(0.45, 1.35, 0.60, 1.3, "assumed, unsure"),
        },
        new("crustacean-larva", "crustacean", "crustacean larva")
        {
            Kind = BodyKind.Larvae,
            Barrier = SkinBarrier.Slow,
            WaterFraction = Band(0.75, 0.82, 0.90, Unsure),
        },
        new("small-crustacean", "crustacean", "isopod, amphipod, mysid, copepod and the like")
        {
            Kind = BodyKind.Tiny,
            Taxa = ["Peracarida", "Isopoda", "Amphipoda", "Mysida", "Cumacea", "Tanaidacea", "Copepoda", "Ostracoda", "Branchiopoda", "Cladocera"],
            Barrier = SkinBarrier.Slow,
            Shape = BodyShape.Ellipsoid(0.22, 0.25, 1.4, "assumed"),
        },
        new("barnacle", "crustacean", "barnacle")
        {
            Kind = BodyKind.Shelled,
            Taxa = ["Cirripedia", "Thecostraca", "Balanidae"],
            DensityKgPerM3 = Band(1200, 1500, 1800, Unsure),
            Length = LengthKind.Shell,
            Shape = new(0.8, 0.9, 0.5, 1.3, "assumed: a cone"),
            Barrier = SkinBarrier.Armour,
            Regions =
            [
                new("body", "body between the plates", 1, 1, 1, "the whole")
                {
                    IsCavity = true,
                    Cut = new("prise the plates of the lid apart", Band(1, 3, 10, Practice), 50, 0, OpensCavity: true, IsSingle: true),
                },
            ],
            WholeUpToMm = Band(0.5, 1, 2, "common practice: opened whatever its size"),
        },
        new("insect", "arthropod", "insect")
        {
            Air = new(1060, Band(0.05, 0.20, 0.40, "common practice: breathing tubes")),
            Taxa = ["Insecta", "Hexapoda", "Coleoptera", "Diptera", "Hymenoptera", "Hemiptera", "Orthoptera", "Odonata", "Blattodea", "Lepidoptera"],
            DensityKgPerM3 = Band(1000, 1050, 1100, Memory),
            WaterFraction = Band(0.60, 0.66, 0.72, Memory),
            Shape = BodyShape.Ellipsoid(0.30, 0.35, 1.4, "assumed"),
        },
        new("insect-larva", "insect", "insect larva or nymph")
        {
            Air = BodyAir.None,
            Kind = BodyKind.Soft,
            WaterFraction = Band(0.70, 0.78, 0.85, Unsure),
            Shape = BodyShape.Cylinder(6, 1.4, "assumed: a caterpillar"),
            Barrier = SkinBarrier.Slow,
        },
        new("arachnid", "arthropod", "spider, scorpion, harvestman")
        {
            Air = new(1060, Band(0.03, 0.08, 0.20, "common practice, unsure: breathing tubes and hair")),
            Taxa = ["Arachnida", "Araneae", "Scorpiones", "Opiliones", "Solifugae"],
            DensityKgPerM3 = Band(1000, 1060, 1100, Memory),
            WaterFraction = Band(0.65, 0.70, 0.75, Memory),
            Shape = BodyShape.Ellipsoid(0.40, 0.45, 1.4, "assumed"),
            Regions = Spider("abdomen", "abdomen, from below, bodies over 3 cm", "tiny slit in the underside of the abdomen"),
            WholeUpToMm = Band(4, 6, 8, "common practice: bodies over 3 cm are injected or slit"),
            Cautions = [new("venom", false, "Scorpion stings and spider fangs can wound after death.", Practice)],
        },
        new("mite", "arachnid", "mite or tick")
        {
            Air = BodyAir.None,
            Kind = BodyKind.Tiny,
            Taxa = ["Acari", "Ixodida"],
            Regions = [new("body", "body", 1, 1, 1, "the whole")],
        },
        new("myriapod", "arthropod", "centipede or millipede")
        {
            Air = new(1080, Band(0.03, 0.08, 0.20, "common practice, unsure: breathing tubes")),
            Taxa = ["Myriapoda", "Chilopoda", "Diplopoda"],
            DensityKgPerM3 = Band(1020, 1080, 1150, Unsure),
            Shape = BodyShape.Cylinder(12, 1.4, "assumed"),
            Regions = Spider("trunk", "trunk, between the rings, large animals only", "slit or cut in the midline below"),
            WholeUpToMm = Band(3, 4, 6, "common practice, unsure"),
            Cautions = [new("secretions", false, "Millipede secretions stain skin and fluid and burn eyes; centipede fangs can wound.", Practice)],
        },
        new("horseshoe-crab", "arthropod", "horseshoe crab")
        {
            Kind = BodyKind.Armoured,
            Taxa = ["Xiphosura", "Limulidae"],
            Length = LengthKind.Carapace,
            TotalPerLength = Band(1.8, 2, 2.2, Unsure),
            Shape = new(0.40, 1.0, 0.45, 1.3, "assumed"),
            Barrier = SkinBarrier.Armour,
            Regions = Decapod,
        },
    ];
}
