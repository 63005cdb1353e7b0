using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Molluscs.</summary>
internal static class MolluscGroups
{
    private static readonly ImmutableArray<RegionRow> Squid =
    [
        new("mantle", "mantle wall and fins", 0.50, 1, 0.4, Unsure),
        new("mantle-cavity", "organs in the mantle", 0.25, 1, 1, Unsure)
        {
            Along = 0.85, // common practice
            IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen", "coelom", "cavity"], InjectAt = "flush the mantle cavity",
            Cut = new("mantle, in the midline below, once the mantle is over 10 cm", Band(30, 50, 100, Practice), 100, 0.2, OpensCavity: true, IsSingle: true),
        },
        new("arms", "head and arms", 0.25, 1, 0.6, Unsure) { InjectAt = "thick tissue of the head and arm bases, in large animals", Aliases = ["head"] },
    ];

    private static ImmutableArray<RegionRow> Snail(string inject, string cut) =>
    [
        new("foot", "foot and head", 0.55, 1, 1, Unsure) { InjectAt = inject },
        new("spire", "organs in the whorls", 0.45, 1, 0.7, Unsure)
        {
            IsCavity = true, Tissue = Tissue.Viscera,
            Cut = new(cut, Band(1, 2, 5, Practice), 30, 0, OpensCavity: true, IsSingle: true),
        },
    ];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("mollusc", "invertebrate", "mollusc")
        {
            Kind = BodyKind.Soft,
            Taxa = ["Mollusca"],
            DensityKgPerM3 = Band(1030, 1050, 1100, Memory),
            WaterFraction = Band(0.78, 0.81, 0.85, Memory),
            Barrier = SkinBarrier.Open,
            Shape = BodyShape.Cylinder(3, 1.4, "assumed"),
        },
        new("gastropod", "mollusc", "snail")
        {
            Kind = BodyKind.Shelled,
            Taxa = ["Gastropoda"],
            DensityKgPerM3 = Band(1200, 1550, 1800, "from memory, shell included"),
            WaterFraction = Band(0.35, 0.50, 0.70, "from memory, unsure: shell included"),
            Length = LengthKind.Shell,
            // Round shells 0.25, tower shells 0.035.
            LengthMass = [new(LengthKind.Shell, 0.15, 3, 8, "spans tower shells (from memory) and round ones (Robinson et al. 2010, Add-my-Pet)")],
            Shape = new(0.65, 0.70, 0.45, 1.3, "assumed: a turned shell"),
            Barrier = SkinBarrier.Armour,
            IsCalcareous = true,
            Regions = Snail("foot, in large animals", "pierce the topmost whorls, or crack or drill a thick shell"),
            WholeUpToMm = Band(0.5, 1, 2, "common practice: opened whatever its size"),
        },
        new("land-snail", "gastropod", "land snail")
        {
            Air = new(1250, Band(0, 0.05, 0.15, "common practice, unsure: air in the mantle")),
            Taxa = ["Stylommatophora", "Helicidae", "Pulmonata"],
            DensityKgPerM3 = Band(1050, 1200, 1500, "from memory, unsure: thin shell"),
            WaterFraction = Band(0.55, 0.68, 0.78, Unsure),
            Cautions = [new("lungworm", false, "Land snails and slugs may carry lungworm larvae: gloves, and wash the hands.", Memory)],
        },
        new("cone-snail", "gastropod", "cone snail")
        {
            Taxa = ["Conidae", "Conus"],
            Cautions = [new("venom", false, "The dart of a cone snail can sting after death.", Practice)],
        },
        new("slug", "mollusc", "slug")
        {
            Within = ["Gastropoda"],
            Taxa = ["Limacidae", "Arionidae"],
            Shape = BodyShape.Cylinder(8, 1.4, "assumed: creeping, eight times as long as thick"),
            LengthMass = [new(LengthKind.Total, 0.012, 3, 4, "from memory, unsure (Arion ater 12 cm 15 to 25 g)")],
            Regions =
            [
                new("body", "body", 1, 1, 1, "the whole")
                {
                    InjectAt = "body cavity, once over 5 cm", // common practice
                    Cut = new("small slit on the right side, in large animals", Band(3, 5, 10, Practice), 30, 0.3, OpensCavity: true, IsSingle: true),
                },
            ],
            WholeUpToMm = Band(4, 6, 8, "common practice: up to 5 cm"),
        },
        new("sea-slug", "mollusc", "sea slug")
        {
            Within = ["Gastropoda"],
            Taxa = ["Nudibranchia", "Opisthobranchia", "Sacoglossa", "Heterobranchia"],
            Shape = BodyShape.Cylinder(4, 1.4, "assumed"),
            IsSpiculate = true,
        },
        new("bivalve", "mollusc", "bivalve")
        {
            Kind = BodyKind.Shelled,
            Taxa = ["Bivalvia"],
            DensityKgPerM3 = Band(1200, 1600, 1800, "from memory, shell included"),
            WaterFraction = Band(0.25, 0.45, 0.65, "from memory, unsure: shell included"),
            Length = LengthKind.Shell,
            // Mussels 0.11, cockles 0.35, razor shells 0.013.
            LengthMass = [new(LengthKind.Shell, 0.1, 3, 8, "spans razor shells and cockles (from memory) and mussels (Ansell & Lagardere 1980, Add-my-Pet)")],
            Shape = new(0.55, 0.30, 0.45, 1.3, "assumed: two valves"),
            Barrier = SkinBarrier.Armour,
            IsCalcareous = true,
            Regions =
            [
                new("body", "soft body between the valves", 1, 1, 1, "the whole")
                {
                    IsCavity = true, InjectAt = "flush the mantle cavity",
                    Cut = new("wedge the valves open, or cut the closing muscle", Band(5, 10, 20, Practice), 100, 0, OpensCavity: true, IsSingle: true),
                },
            ],
            WholeUpToMm = Band(0.5, 1, 2, "common practice: opened whatever its size"),
        },
        new("chiton", "mollusc", "chiton")
        {
            Taxa = ["Polyplacophora"],
            Shape = new(0.25, 0.5, 0.5, 1.3, "assumed"),
            IsCalcareous = true,
        },
        new("cephalopod", "mollusc", "cuttlefish or other cephalopod")
        {
            Kind = BodyKind.SoftLimbed,
            Taxa = ["Cephalopoda"],
            Length = LengthKind.Mantle,
            TotalPerLength = Band(1.5, 2.2, 4, Unsure),
            Shape = new(0.33, 0.40, 0.80, 1.4, "assumed, unsure: mantle, the arms counted in"),
            // Beaks, hooks and statoliths corrode in acid: O'Shea 2003, Large Squid Fixing and Preservation Notes.
            IsCalcareous = true,
            Regions = Squid,
            WallMm = Band(8, 12, 16, "common practice: 2 to 4 % of the mantle length"),
            WholeUpToMm = Band(10, 15, 20, "common practice: the mantle is slit once over 10 cm"),
        },
        new("squid", "cephalopod", "squid")
        {
            Taxa = ["Teuthida", "Oegopsida", "Myopsida", "Loliginidae", "Ommastrephidae"],
            Length = LengthKind.Mantle,
            TotalPerLength = Band(1.5, 2.2, 4, Unsure),
            LengthMass = [new(LengthKind.Mantle, 0.13, 2.4, 2.6, "between Loligo pealei (Lange & Johnson, Add-my-Pet) and Illex from memory")],
            Shape = new(0.18, 0.20, 0.57, 1.3, "assumed, from the mass for the length"),
        },
        new("octopus", "cephalopod", "octopus")
        {
            Taxa = ["Octopoda", "Octopodidae"],
            Length = LengthKind.Mantle,
            TotalPerLength = Band(3, 5, 8, Unsure),
            WallMm = Band(2.5, 4, 6, "common practice: 2 to 4 % of the mantle length"),
            LengthMass =
            [
                new(LengthKind.Mantle, 0.45, 2.9, 3.0, "Storero et al. 2010, Forsythe & Hanlon 1988, Jabeur et al. 2012"),
                new(LengthKind.VentralMantle, 0.8732, 3.096, 2.6, "O. vulgaris, Canary Islands 1996-1999, 760 animals, abstract") { Count = 760 },
            ],
            // Of one mass the dorsal mantle is 1.2 times as long as the ventral one, by the two relations.
            OtherLengths = [(LengthKind.VentralMantle, Band(0.7, 0.83, 0.95, "from the two relations"))],
            Shape = new(0.55, 0.60, 1.03, 1.4, "assumed, unsure: mantle, the arms counted in"),
        },
    ];
}
