using System.Collections.Immutable;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Worms of every kind. They are neither cut nor injected: common practice.</summary>
internal static class WormGroups
{
    public static readonly ImmutableArray<GroupRow> Rows =
    [
        new("worm", "invertebrate", "worm")
        {
            Kind = BodyKind.Worm,
            Taxa = ["Sipuncula", "Echiura", "Nemertea", "Priapulida"],
            DensityKgPerM3 = Band(1020, 1050, 1080, Unsure),
            WaterFraction = Band(0.80, 0.83, 0.86, Memory),
            Shape = BodyShape.Cylinder(15, 1.5, "assumed"),
            Barrier = SkinBarrier.Open,
        },
        new("annelid", "worm", "ringed worm") { Taxa = ["Annelida", "Clitellata"] },
        new("polychaete", "annelid", "bristle worm")
        {
            Taxa = ["Polychaeta", "Nereididae", "Sabellidae", "Serpulidae"],
            LengthMass = [new(LengthKind.Total, 0.0035, 2.3, 4, "from memory, unsure (Hediste 8 cm 0.45 g)")],
        },
        new("earthworm", "annelid", "earthworm")
        {
            Taxa = ["Oligochaeta", "Lumbricidae", "Crassiclitellata"],
            Shape = BodyShape.Cylinder(20, 1.5, "assumed: twenty times as long as thick"),
            LengthMass = [new(LengthKind.Total, 0.0093, 2.285, 3, "Hale et al. 2004, ash-free dry mass over 0.14")],
        },
        new("leech", "annelid", "leech")
        {
            Taxa = ["Hirudinea", "Hirudinida"],
            Shape = BodyShape.Ellipsoid(0.06, 0.10, 1.5, "assumed: flattened"),
            LengthMass = [new(LengthKind.Total, 0.0025, 3, 5, "common practice, unsure; a fed leech weighs up to 5 times more")],
        },
        new("flatworm", "worm", "flatworm")
        {
            Taxa = ["Platyhelminthes", "Turbellaria", "Polycladida", "Tricladida"],
            Shape = BodyShape.Ellipsoid(0.03, 0.4, 1.6, "assumed: a leaf"),
        },
        new("tapeworm", "flatworm", "tapeworm or fluke")
        {
            Taxa = ["Cestoda", "Trematoda", "Monogenea"],
            Shape = BodyShape.Ellipsoid(0.005, 0.03, 2, "assumed: a ribbon"),
        },
        new("nematode", "worm", "roundworm")
        {
            Taxa = ["Nematoda"],
            Shape = BodyShape.Cylinder(40, 1.6, "assumed: forty times as long as thick"),
            Barrier = SkinBarrier.Slow,
        },
    ];
}
