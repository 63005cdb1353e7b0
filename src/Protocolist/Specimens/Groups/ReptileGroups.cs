using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Reptiles.</summary>
internal static class ReptileGroups
{
    private const string LizardShares = "rounded from anatomy, unsure";

    private static readonly ImmutableArray<RegionRow> Lizard =
    [
        new("head", "head", 0.10, 1, 0.75, LizardShares) { InjectAt = "jaw muscle, throat" },
        new("trunk-wall", "neck and trunk wall", 0.35, 1, 0.6, LizardShares) { InjectAt = "muscle along the spine", Aliases = ["neck", "back"] },
        new("coelom", "body cavity", 0.25, 1, 1, LizardShares)
        {
            Along = 0.65, IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen", "belly"], // 0.6 to 0.7 of snout to vent: common practice
            InjectAt = "body cavity, off the midline",
            Cut = new("ventral body wall, beside the midline", Band(6, 20, 76, "Wagstaffe & Fidler, by size"), 40, 0.2, OpensCavity: true),
        },
        new("forelimbs", "forelimbs", 0.05, 2, 0.3, LizardShares)
        {
            InjectAt = "upper arm", Aliases = ["arm"], Cut = new("behind the upper arm", Band(3, 5, 10, "Wagstaffe & Fidler"), 30, 0.5, false, IsSingle: true),
        },
        new("hindlimbs", "hindlimbs", 0.10, 2, 0.4, LizardShares)
        {
            InjectAt = "thigh", Aliases = ["thigh"], Cut = new("behind the thigh", Band(3, 5, 10, "Wagstaffe & Fidler"), 30, 0.5, false, IsSingle: true),
        },
        new("tail", "tail", 0.15, 1, 0.5, LizardShares)
        {
            InjectAt = "tail base (hemipenes) and along the underside",
            Cut = new("along the underside, clear of the vent", Band(6, 10, 20, "Wagstaffe & Fidler"), 30, 0.5, false),
        },
    ];

    private static readonly ImmutableArray<RegionRow> Snake =
    [
        new("head", "head", 0.04, 1, 0.8, LizardShares) { InjectAt = "throat and jaw muscle" },
        new("body-wall", "body wall", 0.66, 1, 0.6, LizardShares) { InjectAt = "thick muscle of the back, where over 10 mm", Aliases = ["trunk-wall", "neck"] },
        new("coelom", "body cavity", 0.25, 1, 1, LizardShares)
        {
            // From the heart, about a fifth of the way down, to the vent: from memory. Its volume alone, as a cylinder as thick as the body,
            // would be a third of that.
            Along = 0.8,
            IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen"], InjectAt = "body cavity at equal intervals along the whole body",
            Cut = new("beside the mid-ventral line, 1 to 2 cm long, every 3 to 5 cm", Band(10, 15, 20, Simmons), 40, 0.2, OpensCavity: true),
        },
        new("tail", "tail", 0.05, 1, 0.6, LizardShares)
        {
            InjectAt = "tail base (everts the hemipenes) and along the tail", Cut = new("underside of the tail", Band(5, 10, 15, Simmons), 40, 0.5, false),
        },
    ];

    private static readonly ImmutableArray<RegionRow> Turtle =
    [
        new("head", "head and neck", 0.10, 1, 0.6, Unsure) { InjectAt = "neck, pulled out", Aliases = ["neck"] },
        new("limbs", "limbs", 0.20, 4, 0.45, Unsure)
        {
            InjectAt = "each limb socket", Aliases = ["thigh", "forelimbs", "hindlimbs"],
            Cut = new("skin of the limb pockets", Band(10, 15, 30, Simmons), 50, 0.1, false, IsSingle: true), // through the skin alone
        },
        new("coelom", "body within the shell", 0.68, 1, 1, Unsure)
        {
            Along = 0.8, // common practice
            IsCavity = true, Tissue = Tissue.Viscera, Aliases = ["abdomen"], InjectAt = "through the soft skin in front of the hind limbs",
        },
        new("tail", "tail", 0.02, 1, 0.2, Unsure) { InjectAt = "tail base" },
    ];

    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("reptile", "vertebrate", "reptile")
        {
            Air = new(1050, Band(0, 0.06, 0.10, "common practice: lungs, none once emptied")),
            Taxa = ["Reptilia", "Sauropsida"],
            DensityKgPerM3 = Band(1000, 1040, 1100, "from memory, within " + Larramendi),
            WaterFraction = Band(0.70, 0.72, 0.75, Thorson),
            Length = LengthKind.SnoutVent,
            Shape = BodyShape.Cylinder(5, 1.3, "assumed: lizard-like"),
            Regions = Lizard,
            WallMm = Band(1.5, 2.5, 4, "common practice, unsure: 0.4 to 0.8 mm in a lizard of 60 mm, 1 to 2 in a snake of 1 m"),
            Cautions = [new("salmonella", false, "Reptiles may carry salmonella: gloves, and no food near the bench.", Memory)],
        },
        new("lizard", "reptile", "lizard")
        {
            Taxa =
            [
                "Sauria", "Lacertilia", "Anolidae", "Dactyloidae",
            ],
            DensityKgPerM3 = Band(1010, 1030, 1060, Memory),
            Length = LengthKind.SnoutVent,
            TotalPerLength = Band(1.5, 2.4, 3.2, Unsure),
            LengthMass = [Means(LengthKind.SnoutVent, 0.0225, 3.031, 1301, 1.81, 3.0, Amniote)],
            Shape = new(0.19, 0.21, 0.584, 1.25, "assumed: a cylinder without tail and limbs, half-thickness 0.62·√(V/SVL)"),
        },
        new("snake", "reptile", "snake")
        {
            Taxa = ["Serpentes", "Ophidia", "Colubridae", "Viperidae", "Elapidae"],
            DensityKgPerM3 = Band(1010, 1040, 1060, Memory),
            Length = LengthKind.SnoutVent,
            TotalPerLength = Band(1.08, 1.2, 1.4, Unsure),
            LengthMass =
            [
                new(LengthKind.SnoutVent, 0.00025, 3, 6.5, "spans thread snakes (0.00005, Zipkin et al. 2020) and cottonmouths (0.0015, Hill & Beaupre 2008)"),
            ],
            // V = 0.75·π/4·d²·SVL; a snake of that mass is fifty times as long as thick.
            Shape = new(1 / 50.0, 1 / 50.0, 0.75 * Math.PI / 4, 1.5, "assumed: tapered cylinder, fills three quarters of its greatest section"),
            Regions = Snake,
            Cautions = [new("venom", false, "Fangs of a venomous snake are dangerous after death and after fixation.", Practice)],
        },
        new("turtle", "reptile", "turtle or tortoise")
        {
            Air = new(1150, Band(0, 0.06, 0.10, "common practice: lungs, none once emptied")),
            Kind = BodyKind.Armoured,
            Taxa = ["Testudines", "Chelonia", "Emydidae", "Cheloniidae"],
            DensityKgPerM3 = Band(1050, 1130, 1200, "from memory, within " + Larramendi),
            Length = LengthKind.Carapace,
            TotalPerLength = Band(1.2, 1.4, 2.0, Unsure),
            LengthMass = [new(LengthKind.Carapace, 0.16, 3, 2.0, "between Pough 1980 (0.154 at 20 cm) and open data of tortoises and hatchlings")],
            Shape = new(0.36, 0.78, 0.504, 1.3, "NOAA Galveston, 3043 hatchlings: half of the depth 0.48·√(V/L), width 0.77 to 0.83; adults from memory")
            { Measured = 1.13 },
            Barrier = SkinBarrier.Armour,
            Regions = Turtle,
            Cautions = [new("cites", true, "Sea turtles and many tortoises are listed by CITES: papers before moving it across a border.", Treaties)],
        },
        new("crocodilian", "reptile", "crocodilian")
        {
            Air = new(1080, Band(0, 0.06, 0.10, "common practice: lungs, none once emptied")),
            Taxa = ["Crocodylia", "Crocodilia", "Crocodylidae", "Alligatoridae"],
            DensityKgPerM3 = Band(1020, 1060, 1120, Unsure),
            Length = LengthKind.Total,
            LengthMass = [Fitted(LengthKind.Total, 0.003893, 3, 43, 1.3, 1.8, "Chentanez et al. 1983, Siamese crocodile, digitised in Add-my-Pet")],
            Shape = new(0.09, 0.115, 0.355, 1.3, "assumed, from the mass for the total length"),
            Cautions = [new("cites", true, "All crocodilians are listed by CITES: papers before anything else.", Treaties)],
        },
    ];
}
