using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Mammals.</summary>
internal static class MammalGroups
{
    private const string HeadForTesting = "Where testing is wanted the head stays fresh and chilled, neither frozen nor fixed.";

    // Slits of about half an inch in limbs, tail, neck, abdomen and between the ribs, some 30 mm apart: common practice.
    private static readonly SourcedBand HalfInch = Band(12, 12.5, 13, Practice);

    // Half-thickness 0.65·√(V/HB), 0.55 to 0.75; with the median mass of land mammals, 0.027·HB³ g (cm), it is 0.105 of the head-body length.
    private static readonly BodyShape Trunk = new(
        0.21, 0.21, 0.592, 1.25, "from girths: crabeater seal (J Zool 2003;259:103) 0.75, pig 0.61, cattle and sheep about 0.64 of √(V/HB)")
    { Measured = 1.18 };

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
            LengthMass = [Means(LengthKind.HeadBody, 0.03325, 2.947, 1547, 1.90, 3.1, Pantheria)],
            Regions = Quadruped(0.08, 0.07, 0.24, 0.26, 0.12, 0.21, 0.02),
            WholeUpToMm = Band(5, 6, 11, "common practice: a mouse is opened or injected"),
            WallMm = Band(2.2, 3.2, 6.5, "common practice: 0.7 to 1 mm in a mouse, 2 to 3 in a rat, 5 to 8 in a fox; double in fat animals"),
            SpareSide = "left",
            Cautions =
            [
                new(
                    "mammal-zoonoses", false,
                    "Mammals may carry plague, tularaemia and leptospira: gloves, mask and eye protection.", "Sikes & Bryan 2016, from memory"),
                new(
                    "hantavirus", false, "Rodents may carry hantavirus: no dust, no dry brushing, until it is fixed through.",
                    "Sikes & Bryan 2016, from memory") { Of = ["rodent"] },
                new(
                    "anthrax", false,
                    "A grazing animal that died suddenly, or with unclotted blood at the openings: do not open, slit or inject it; call the authority.",
                    "Canadian Food Inspection Agency, anthrax carcasses") { Of = ["hoofed", "odd-toed"] },
            ],
        },
        new("bat", "mammal", "bat")
        {
            Taxa = ["Chiroptera"],
            // The spine is short: twice as heavy for the head-body length as a mouse. Head-body over forearm 1.45 (1.02 to 1.88, n 158): PanTHERIA.
            LengthMass =
            [
                Means(LengthKind.HeadBody, 0.1387, 2.589, 154, 1.59, 3.1, Pantheria), Means(LengthKind.Forearm, 0.1668, 2.915, 658, 1.90, 2.8, Pantheria),
            ],
            OtherLengths = [(LengthKind.Forearm, Band(0.53, 0.69, 0.98, Pantheria))],
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
            Taxa = ["Carnivora"],
            LengthMass = [Means(LengthKind.HeadBody, 0.01392, 3.103, 205, 1.91, 2.8, Pantheria)],
            Cautions =
            [
                new(
                    "rabies", false,
                    "Carnivores may carry rabies: vaccinated, titre-checked handlers only. " + HeadForTesting,
                    "Fenton et al. 2024, FACETS"),
            ],
        },
        new("rodent", "mammal", "rodent")
        {
            Taxa = ["Rodentia"], LengthMass = [Means(LengthKind.HeadBody, 0.03916, 2.906, 612, 1.71, 2.7, Pantheria)],
        },
        new("shrew", "mammal", "shrew, mole or hedgehog")
        {
            // Shrews and moles by the order's curve; a hedgehog weighs twice that, and the accept factor takes it in.
            Taxa = ["Eulipotyphla", "Insectivora", "Soricomorpha"], LengthMass = [Means(LengthKind.HeadBody, 0.01637, 3.211, 90, 1.72, 3.4, Pantheria)],
        },
        new("marine-mammal", "mammal", "seal or small whale")
        {
            Air = new(1010, Band(0.02, 0.04, 0.06, "common practice: blubber floats it")),
            Shape = BodyShape.Cylinder(5, 1.2, "assumed: spindle-shaped, five times as long as thick"),
            Length = LengthKind.Total,
            LengthMass = [Means(LengthKind.Total, 0.03574, 2.810, 43, 2.45, 4.0, Pantheria + "; whales, and seals within its spread")],
            Cautions =
            [
                new("brucella", false, "Marine mammals may carry brucella: gloves, mask and eye protection.", Memory),
                new("protected", true, "Marine mammals are protected nearly everywhere: a licence comes before touching a carcass.", Treaties),
            ],
        },
    ];
}
