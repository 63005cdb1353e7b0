using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Cnidarians, comb jellies, sponges, bryozoans, sea squirts.</summary>
internal static class JellyAndColonyGroups
{
    private static readonly CautionRow Stings =
        new("stings", false, "Stinging cells stay active after death and in fixative: gloves.", "Boltovskoy 1999, South Atlantic Zooplankton");

    private static readonly ImmutableArray<RegionRow> Jelly = [new("body", "body", 1, 1, 1, "the whole") { Tissue = Tissue.Jelly }];

    private static ImmutableArray<RegionRow> Filled(string at) =>
        [new("body", "body", 1, 1, 1, "the whole") { IsCavity = true, InjectAt = at }];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("cnidarian", "invertebrate", "cnidarian")
        {
            Kind = BodyKind.Colony,
            Taxa = ["Cnidaria", "Anthozoa"],
            DensityKgPerM3 = Band(1020, 1030, 1060, Memory),
            WaterFraction = Band(0.80, 0.90, 0.96, Unsure),
            Barrier = SkinBarrier.Open,
            Shape = BodyShape.Cylinder(1.5, 1.5, "assumed"),
            Cautions = [Stings],
        },
        new("jellyfish", "cnidarian", "jellyfish")
        {
            Kind = BodyKind.Jelly,
            Taxa = ["Scyphozoa", "Cubozoa", "Medusozoa"],
            DensityKgPerM3 = Band(1020, 1025, 1030, Memory),
            WaterFraction = Band(0.95, 0.955, 0.96, Memory),
            Length = LengthKind.Disc,
            LengthMass = [Fitted(LengthKind.Disc, 0.06, 3, 41, 1.53, 3, "Cyanea, Brewer 1989, digitised in Add-my-Pet; Cassiopea 0.064 (Muffett et al. 2022)")],
            Shape = new(0.195, 1, 0.30, 1.5, "assumed: a hollow bell, as wide as it is measured") { Build = BodyBuild.Disc },
            IsGelatinous = true,
            Regions = Jelly,
            WholeUpToMm = Band(60, 100, 150, "common practice: never cut nor injected"),
        },
        // Bells and chains: no length tells the mass of a siphonophore.
        new("hydromedusa", "jellyfish", "hydromedusa or siphonophore")
        { Taxa = ["Siphonophorae", "Trachymedusae"], Within = ["Hydrozoa"], LengthMass = [] },
        new("hydroid", "cnidarian", "hydroid") { Taxa = ["Hydrozoa", "Leptothecata", "Anthoathecata", "Hydroida"] },
        new("anemone", "cnidarian", "sea anemone")
        {
            Kind = BodyKind.Sac,
            Taxa = ["Actiniaria", "Actiniidae"],
            WaterFraction = Band(0.80, 0.86, 0.90, Unsure),
            Regions = Filled("through the mouth, 5 to 20 mL, in large animals"), // common practice
        },
        new("hard-coral", "cnidarian", "hard coral")
        {
            Taxa = ["Scleractinia"],
            DensityKgPerM3 = Band(1300, 1800, 2200, "from memory, unsure: skeleton included"),
            WaterFraction = Band(0.10, 0.25, 0.45, "from memory, unsure: skeleton included"),
            IsCalcareous = true,
        },
        new("octocoral", "cnidarian", "soft coral, sea fan or sea pen")
        {
            Taxa = ["Octocorallia", "Alcyonacea", "Gorgonacea", "Pennatulacea", "Malacalcyonacea"],
            DensityKgPerM3 = Band(1030, 1100, 1300, Unsure),
            WaterFraction = Band(0.60, 0.78, 0.90, Unsure),
            IsSpiculate = true,
        },
        new("ctenophore", "invertebrate", "comb jelly")
        {
            Kind = BodyKind.Jelly,
            Taxa = ["Ctenophora"],
            DensityKgPerM3 = Band(1020, 1025, 1030, Memory),
            WaterFraction = Band(0.95, 0.957, 0.96, Memory),
            Shape = BodyShape.Ellipsoid(0.7, 0.7, 1.4, "assumed"),
            Barrier = SkinBarrier.Open,
            IsGelatinous = true,
            Regions = Jelly,
            WholeUpToMm = Band(60, 100, 150, "common practice: never cut nor injected"),
        },
        new("sponge", "invertebrate", "sponge")
        {
            Kind = BodyKind.Colony,
            Taxa = ["Porifera", "Demospongiae", "Hexactinellida"],
            DensityKgPerM3 = Band(1020, 1080, 1200, Unsure),
            WaterFraction = Band(0.80, 0.87, 0.92, Memory),
            Shape = BodyShape.Cylinder(1.5, 1.6, "assumed: a lump"),
            Barrier = SkinBarrier.Open,
            IsSpiculate = true,
            Cautions =
            [
                new(
                    "toxins", false, "Sponges may irritate skin by spicules and toxins: gloves; keep each apart.",
                    "Queensland Museum, Collecting & preserving sponges; common practice"),
            ],
        },
        new("calcareous-sponge", "sponge", "calcareous sponge") { Taxa = ["Calcarea"], IsCalcareous = true },
        new("bryozoan", "invertebrate", "moss animal")
        {
            Kind = BodyKind.Colony,
            Taxa = ["Bryozoa", "Ectoprocta"],
            DensityKgPerM3 = Band(1050, 1300, 1700, Unsure),
            WaterFraction = Band(0.40, 0.65, 0.85, Unsure),
            Barrier = SkinBarrier.Open,
            Shape = BodyShape.Ellipsoid(0.3, 0.8, 1.6, "assumed: a crust or tuft"),
            IsCalcareous = true,
        },
        new("ascidian", "invertebrate", "sea squirt")
        {
            Kind = BodyKind.Sac,
            Taxa = ["Ascidiacea", "Tunicata", "Urochordata"],
            DensityKgPerM3 = Band(1020, 1030, 1060, Unsure),
            WaterFraction = Band(0.85, 0.90, 0.95, Memory),
            Shape = BodyShape.Ellipsoid(0.55, 0.5, 1.4, "assumed"),
            IsSpiculate = true,
            Regions = Filled("through the siphon, large solitary ones only"), // common practice
        },
        new("salp", "ascidian", "salp or other pelagic tunicate")
        {
            Kind = BodyKind.Jelly,
            Taxa = ["Thaliacea", "Salpida", "Appendicularia"],
            WaterFraction = Band(0.94, 0.955, 0.97, Memory),
            IsGelatinous = true,
            IsSpiculate = false,
            Regions = Jelly,
        },
        new("brachiopod", "invertebrate", "lamp shell")
        {
            Kind = BodyKind.Shelled,
            Taxa = ["Brachiopoda"],
            DensityKgPerM3 = Band(1200, 1500, 1800, Unsure),
            WaterFraction = Band(0.30, 0.50, 0.70, Unsure),
            Length = LengthKind.Shell,
            Shape = new(0.85, 0.55, 0.5, 1.3, "assumed"),
            Barrier = SkinBarrier.Armour,
            IsCalcareous = true,
            Regions =
            [
                new("body", "soft body between the valves", 1, 1, 1, "the whole")
                {
                    IsCavity = true,
                    Cut = new("wedge the valves open", Band(2, 5, 10, Practice), 50, 0, OpensCavity: true, IsSingle: true),
                },
            ],
            WholeUpToMm = Band(0.5, 1, 2, "common practice: opened whatever its size"),
        },
    ];
}
