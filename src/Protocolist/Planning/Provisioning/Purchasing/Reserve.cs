using Protocolist.Benches;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>What is set aside beyond the amount a step asks for. Stated on the plan; a bench may set its own.</summary>
/// <param name="SpillShare">Kept ready for spills and short measure, as a part of the amount, 0 to 1. It stays on the shelf unless it is needed.</param>
/// <param name="DeadVolumeUnits">What stays behind in jugs, hoses and syringes each time a material is drawn on: microlitres or milligrams. It is lost, so
/// it counts as used. Pieces have none.</param>
internal sealed record Reserve(decimal SpillShare, long DeadVolumeUnits)
{
    /// <summary>5 % and 20 mL (20 g): common practice, from memory; no published figure is claimed.</summary>
    public static Reserve Usual { get; } = new(0.05m, 20_000);

    /// <summary>Nothing set aside.</summary>
    public static Reserve None { get; } = new(0, 0);

    /// <summary>What leaves the shelf for good: the amount and its dead volume.</summary>
    /// <param name="asked">What the steps ask for, 0 or more.</param>
    /// <param name="draws">How many times it is drawn on.</param>
    /// <returns>The amount used; none where none is asked for.</returns>
    public Amount Used(Amount asked, int draws = 1) =>
        asked.Units == 0 || asked.Kind == AmountKind.Count ? asked : asked with { Units = asked.Units + DeadVolumeUnits * draws };

    /// <summary>What must be at hand for spills on top of <see cref="Used"/>: the share of the amount asked for, rounded up, whole pieces for things.</summary>
    /// <param name="asked">What the steps ask for, 0 or more.</param>
    /// <returns>The spill reserve.</returns>
    public Amount ForSpills(Amount asked) => asked with { Units = (long)decimal.Ceiling(asked.Units * SpillShare) };

    /// <summary>What must be on the shelf or bought: used, and the spill reserve.</summary>
    /// <param name="asked">What the steps ask for, 0 or more.</param>
    /// <param name="draws">How many times it is drawn on.</param>
    /// <returns>The amount to provide.</returns>
    public Amount ToProvide(Amount asked, int draws = 1) => Used(asked, draws) + ForSpills(asked);
}
