using UnitsNet;

namespace Protocolist.Fluids.Infiltration;

/// <summary>How much free formaldehyde a specimen still holds after changes of water. What is bound to the tissue stays.</summary>
internal static class Washout
{
    /// <summary>Share of the free solute left after equal changes, each to equilibrium: r to the power n.</summary>
    /// <param name="tissueWater">Fluid in the specimen.</param>
    /// <param name="bath">Water of each change.</param>
    /// <param name="changes">How many, 0 or more.</param>
    /// <returns>0 to 1.</returns>
    public static double Left(Volume tissueWater, Volume bath, int changes)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(changes);
        return Math.Pow(tissueWater / (tissueWater + bath), changes);
    }

    /// <summary>Changes needed to come down to a share.</summary>
    /// <param name="tissueWater">Fluid in the specimen.</param>
    /// <param name="bath">Water of each change, above zero.</param>
    /// <param name="share">The share that may be left, above 0 and below 1.</param>
    /// <returns>1 or more.</returns>
    public static int Changes(Volume tissueWater, Volume bath, double share)
    {
        if (!(share is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(share), share, "A share is between 0 and 1.");
        if (!(bath.CubicMeters > 0)) throw new ArgumentOutOfRangeException(nameof(bath), bath, "A wash takes water.");
        return (int)Math.Max(1, Math.Ceiling(Math.Log(share) / Math.Log(tissueWater / (tissueWater + bath)) - 1e-9));
    }
}
