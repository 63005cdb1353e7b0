using System.Numerics;

namespace Protocolist.Vessels;

/// <summary>What is to be said of a vessel for a request, in the order in which it is said. What it says is made by <see cref="VesselRemarks"/>.</summary>
[Flags]
internal enum FitRemark
{
    None = 0,

    // Against it.
    TooNarrow = 1 << 0,
    TooShallow = 1 << 1,
    TooSmallForRatio = 1 << 2,
    NotAtHand = 1 << 3,
    WallUnfit = 1 << 4,
    WallNotForKeeping = 1 << 5,
    LidUnfit = 1 << 6,
    LidNotForKeeping = 1 << 7,
    SealUnfit = 1 << 8,
    SealNotForKeeping = 1 << 9,
    NoSealingLid = 1 << 10,
    WireBail = 1 << 11,
    TooHeavyToCarry = 1 << 12,
    TooHeavyToLift = 1 << 13,
    TooHeavyForShelf = 1 << 14,
    MassUnknown = 1 << 15,
    BuildsPressure = 1 << 16,
    HeadspaceRaised = 1 << 17,
    MuchFluid = 1 << 18,
}

/// <summary>How much each remark weighs.</summary>
internal static class FitRemarks
{
    private const FitRemark Errors = FitRemark.TooNarrow | FitRemark.TooShallow | FitRemark.TooSmallForRatio | FitRemark.NotAtHand
        | FitRemark.WallUnfit | FitRemark.LidUnfit | FitRemark.SealUnfit | FitRemark.TooHeavyToCarry;

    private const FitRemark Notes = FitRemark.MassUnknown | FitRemark.HeadspaceRaised;

    private const FitRemark People = FitRemark.TooHeavyForShelf | FitRemark.BuildsPressure;

    /// <summary>Those that reject the vessel.</summary>
    public static FitRemark Rejecting(this FitRemark remarks) => remarks & Errors;

    private const FitRemark Hands = FitRemark.TooHeavyToLift;
    private const FitRemark Waste = FitRemark.MuchFluid;

    private const FitRemark Materials = FitRemark.WallNotForKeeping | FitRemark.LidNotForKeeping | FitRemark.SealNotForKeeping;
    private const FitRemark Closures = FitRemark.NoSealingLid | FitRemark.WireBail;

    /// <summary>In the order of harm: what hurts people, what ruins the specimen later, what asks more of hands, fluid that serves nothing.</summary>
    public static (int People, int Ruin, int Hands, int Waste) Harm(this FitRemark remarks) =>
        (Count(remarks & People), Any(remarks & Materials) + Any(remarks & Closures), Count(remarks & Hands), Count(remarks & Waste));

    /// <summary>How many warnings there are.</summary>
    public static int Warnings(this FitRemark remarks) => Count(remarks & ~Errors & ~Notes & ~Waste);

    private static int Any(FitRemark remarks) => remarks == FitRemark.None ? 0 : 1;

    private static int Count(FitRemark remarks) => BitOperations.PopCount((uint)remarks);
}
