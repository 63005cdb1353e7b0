using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Mammals.</summary>
internal static class MammalGroups
{
    private const string HeadForTesting = "Where testing is wanted the head stays fresh and chilled, neither frozen nor fixed.";

    // Slits of about half an inch in limbs, tail, neck, abdomen and between the ribs, some 30 mm apart: common practice.
    private static readonly SourcedBand HalfInch = Band(12, 12.5, 13, Practice);

    // M(kg) = 30·HB(m)³ within a factor 2, from typical sizes; no published head-body equation was at hand.
    private static readonly LengthMassRelation HeadBody = new(
        0.03, 3, 1, 2, LengthKind.HeadBody, "true within a factor of 2 only: weigh the specimen", "derived from typical sizes, unsure");

    // A cylinder three times as long as thick holds the body; against head-body length by the relation above it is 0.231 thick
    // (30 kg/m³ over 1030 kg/m³ = 0.02913·HB³ = 3π/4·D³), and so fills 0.545 of the box: derived.
    private static readonly BodyShape Trunk = new(
        0.2313, 0.2313, 0.545, 1.2, "cylinder three times as long as thick, against 30 kg/m³ of head-body length cubed; derived");

    private static CutRow Slits(string where, bool opens = false) => new(where, HalfInch, 30, opens ? 0.2 : 0.5, opens);

    private static ImmutableArray<RegionRow> Quadruped(double head, double neck, double thorax, double abdomen, double fore, double hind, double tail) =>
    [
        new("head", "head", head, 1, 0.57, Anatomy) { InjectAt = "cheeks, tongue base, and the brain through the foramen magnum" },
        new("neck", "neck", neck, 1, 0.59, Anatomy) { InjectAt = "deep muscle on both sides of the spine", Cut = Slits("along the side that will not show") },
        new("thorax", "chest", thorax, 1, 1, Anatomy)
        {
            Along = 0.28, IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["chest"], // chest and belly together 0.55 to 0.65: common practice
            InjectAt = "between the ribs into the chest cavity, and the muscle over the shoulder", Cut = Slits("between the ribs", opens: true),
        },
        new("abdomen", "abdomen", abdomen, 1, 1, Anatomy)
        {
            Along = 0.32, IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["belly", "coelom"],
            InjectAt = "abdominal cavity and gut, fluid spread to all quarters", Cut = Slits("belly, beside the midline, through the wall", opens: true),
        },
        new("forelimbs", "forelimbs", fore, 2, 0.36, Derived)
        {
            Aliases = ["forelimb", "arm", "shoulder"], InjectAt = "upper arm and shoulder muscle, forearm", Cut = Slits("along the inner side"),
        },
        new("hindlimbs", "hindlimbs", hind, 2, 0.47, Derived)
        {
            Aliases = ["hindlimb", "thigh", "thighs"], InjectAt = "thigh, front and back, then the calf", Cut = Slits("along the inner side of thigh and calf"),
        },
        new("tail", "tail", tail, 1, 0.20, Derived) { InjectAt = "along the underside, from the root", Cut = Slits("along the underside") },
    ];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("mammal", "vertebrate", "mammal")
        {
            Air = new(1050, Band(0.02, 0.04, 0.06, "common practice: lungs, gut and coat")),
            Taxa = ["Mammalia"],
            DensityKgPerM3 = Band(950, 1030, 1060, "derived from organ densities: 1.03 to 1.06 flooded, 0.95 to 1.00 with air; " + Larramendi),
            WaterFraction = Band(0.60, 0.67, 0.70, "Pace & Rathbun (0.73 of fat-free mass), from memory; BioNumbers 110743 (about 60 %)"),
            Shape = Trunk,
            Length = LengthKind.HeadBody,
            TotalPerLength = Band(1.05, 1.5, 2.2, Unsure),
            LengthMass = HeadBody,
            Regions = Quadruped(0.08, 0.07, 0.24, 0.26, 0.12, 0.21, 0.02),
            WholeUpToMm = Band(5, 6, 11, "common practice: a mouse is opened or injected"),
            WallMm = Band(2.2, 3.2, 6.5, "common practice: 0.7 to 1 mm in a mouse, 2 to 3 in a rat, 5 to 8 in a fox; double in fat animals"),
            SpareSide = "left",
            Cautions =
            [
                new(
                    "mammal-zoonoses", false,
                    "Mammals may carry hantavirus (rodents), plague, tularaemia and leptospira: gloves, mask and eye protection.",
                    "Sikes & Bryan 2016, from memory"),
                new(
                    "anthrax", false,
                    "A grazing animal that died suddenly, or with unclotted blood at the openings: do not open, slit or inject it; call the authority.",
                    "Canadian Food Inspection Agency, anthrax carcasses"),
            ],
        },
        new("bat", "mammal", "bat")
        {
            Taxa = ["Chiroptera"],
            // Wings weigh little but hold the flight muscle: shares from memory, unsure.
            Regions = Quadruped(0.12, 0.04, 0.34, 0.28, 0.14, 0.07, 0.01),
            Cautions =
            [
                new(
                    "rabies", false,
                    "Bats may carry rabies: vaccinated, titre-checked handlers only. " + HeadForTesting,
                    "Fenton et al. 2024, FACETS"),
            ],
        },
        new("carnivore", "mammal", "carnivorous mammal")
        {
            Taxa = ["Carnivora", "Canidae", "Felidae", "Mustelidae", "Procyonidae", "Ursidae", "Viverridae", "Herpestidae"],
            Cautions =
            [
                new(
                    "rabies", false,
                    "Carnivores may carry rabies: vaccinated, titre-checked handlers only. " + HeadForTesting,
                    "Fenton et al. 2024, FACETS"),
            ],
        },
        new("rodent", "mammal", "rodent") { Taxa = ["Rodentia", "Muridae", "Cricetidae", "Sciuridae", "Gliridae"] },
        new("shrew", "mammal", "shrew, mole or hedgehog") { Taxa = ["Eulipotyphla", "Insectivora", "Soricidae", "Talpidae", "Erinaceidae", "Soricomorpha"] },
        new("marine-mammal", "mammal", "seal or small whale")
        {
            Air = new(1010, Band(0.02, 0.04, 0.06, "common practice: blubber floats it")),
            Taxa = ["Cetacea", "Pinnipedia", "Phocidae", "Otariidae", "Sirenia"],
            Shape = BodyShape.Cylinder(5, 1.2, "assumed: spindle-shaped, five times as long as thick"),
            Length = LengthKind.Total,
            Cautions =
            [
                new("brucella", false, "Marine mammals may carry brucella: gloves, mask and eye protection.", Memory),
                new("protected", true, "Marine mammals are protected nearly everywhere: a licence comes before touching a carcass.", Treaties),
            ],
        },
    ];
}
