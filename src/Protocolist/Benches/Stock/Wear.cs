
namespace Protocolist.Benches;

/// <summary>How a thing wears out: a blade after one animal, goggles after some hundred.</summary>
/// <param name="LastsUses">Uses that one piece lasts; 1 or more.</param>
/// <param name="UsedSoFar">Uses that the piece in hand has seen; 0 up to, not including, <paramref name="LastsUses"/>.</param>
public sealed record Wear(int LastsUses, int UsedSoFar = 0)
{
    /// <summary>Used once and thrown away.</summary>
    public static Wear SingleUse { get; } = new(1);

    /// <summary>New pieces that so many uses call for, beyond what the piece in hand still gives.</summary>
    /// <param name="uses">Uses to come, 0 or more.</param>
    /// <param name="hasPieceInHand">Whether there is a piece that has seen <see cref="UsedSoFar"/> uses.</param>
    /// <returns>Whole pieces.</returns>
    internal long NewPiecesFor(long uses, bool hasPieceInHand)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(uses);
        var beyond = Math.Max(0, uses - (hasPieceInHand ? LastsUses - UsedSoFar : 0));
        return (beyond + LastsUses - 1) / LastsUses;
    }

    /// <summary>The part of a piece that so many uses wear away, for its cost.</summary>
    /// <param name="uses">Uses, 0 or more.</param>
    /// <returns>Pieces; 1 is a whole one.</returns>
    internal decimal PiecesWorn(long uses) => (decimal)uses / LastsUses;
}
