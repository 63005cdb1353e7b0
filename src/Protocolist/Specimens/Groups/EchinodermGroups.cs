using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Echinoderms.</summary>
internal static class EchinodermGroups
{
    private static ImmutableArray<RegionRow> Body(string inject, CutRow? cut, int count = 1) =>
        [new("body", "body cavity", 1, count, 1, "the whole") { IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["coelom"], InjectAt = inject, Cut = cut }];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("echinoderm", "invertebrate", "echinoderm")
        {
            Kind = BodyKind.SoftLimbed,
            Taxa = ["Echinodermata"],
            DensityKgPerM3 = Band(1050, 1200, 1500, Unsure),
            WaterFraction = Band(0.50, 0.65, 0.80, Unsure),
            Length = LengthKind.Disc,
            Shape = BodyShape.Ellipsoid(0.3, 1, 1.5, "assumed") with { Build = BodyBuild.Disc },
            Barrier = SkinBarrier.Hide,
            IsCalcareous = true,
            IsSpiculate = true,
        },
        new("sea-star", "echinoderm", "sea star")
        {
            Taxa = ["Asteroidea", "Asteriidae"],
            // Measured across, arm tip to arm tip.
            DensityKgPerM3 = Band(1050, 1095, 1150, "J Mar Sci Eng 2023;11:296"),
            LengthMass = [new(LengthKind.Disc, 0.035, 3, 3, "three species in Add-my-Pet, the length of one unsure")],
            Shape = new(0.12, 1, 0.27, 1.4, "assumed: five arms across") { Build = BodyBuild.Disc },
            Regions = Body("cavity of each arm, 2 to 10 mL, once over 10 cm across", null, count: 5), // common practice
            WholeUpToMm = Band(4, 6, 8, "common practice: up to 10 cm across"),
        },
        new("brittle-star", "echinoderm", "brittle star")
        {
            Taxa = ["Ophiuroidea"],
            Shape = new(0.3, 1, 0.6, 1.4, "assumed: disc only, thin arms aside") { Build = BodyBuild.Disc },
        },
        new("crinoid", "echinoderm", "feather star or sea lily") { Taxa = ["Crinoidea"] },
        new("sea-urchin", "echinoderm", "sea urchin")
        {
            Kind = BodyKind.Armoured,
            Taxa = ["Echinoidea", "Echinidae", "Diadematidae"],
            DensityKgPerM3 = Band(1230, 1300, 1390, "Grosjean, Paracentrotus lividus, 353 by buoyant weight"),
            LengthMass = [Fitted(LengthKind.Disc, 0.5108, 2.914, 421, 1.18, 1.8, "Grosjean, Paracentrotus lividus (SciViews urchin_bio)")],
            Shape = new(0.51, 1, 0.67, 1.25, "Grosjean, Paracentrotus lividus, 421: height 0.43 to 0.58 of the diameter")
            { Measured = 1.17, Build = BodyBuild.Rigid },
            Barrier = SkinBarrier.Armour,
            Regions = Body(
                "through the membrane round the mouth, 5 to 20 mL", // common practice
                new(
                    "pierce the membrane round the mouth, or two small holes at opposite points",
                    Band(2, 3, 5, "Essex Field Club, The Preservation of Marine Animals (historic)"), 100, 0.2, OpensCavity: true, IsSingle: true)),
            WholeUpToMm = Band(0.5, 1, 2, "common practice: opened whatever its size"),
            Cautions = [new("spines", false, "Urchin spines break off in the skin; some are venomous.", Practice)],
        },
        new("sea-cucumber", "echinoderm", "sea cucumber")
        {
            Kind = BodyKind.Sac,
            Taxa = ["Holothuroidea"],
            DensityKgPerM3 = Band(1020, 1050, 1100, Unsure),
            WaterFraction = Band(0.85, 0.89, 0.92, Memory),
            Length = LengthKind.Total,
            Shape = BodyShape.Cylinder(3.3, 1.4, "assumed: relaxed, from the mass for the length"),
            LengthMass = [new(LengthKind.Total, 0.0785, 2.964, 4, "Apostichopus japonicus, relaxed, in Add-my-Pet; contracted ones are half as long")],
            IsCalcareous = false,
            Regions = Body("through the vent, 1 to 20 mL by size", null), // common practice
            WholeUpToMm = Band(4, 6, 8, "common practice, unsure"),
            Cautions = [new("toxins", false, "Some sea cucumbers throw sticky, irritant threads: gloves.", Practice)],
        },
    ];
}
