using Protocolist.Fluids.Infiltration;
using UnitsNet;

namespace Protocolist.Rules;

/// <summary>A standing wash is changed.</summary>
internal static class WashChanges
{
    public const string Id = "wash-not-changed";
    public const string Source = "Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104 (one change in 48 h); the tenth is the project's choice";

    /// <summary>Share of the free formaldehyde that one filling may leave behind; the project's choice.</summary>
    public const double MostLeft = 0.1;

    /// <summary>The share that stays in the body however long it lies in one filling; null where that is little.</summary>
    public static double? LeftBehind(Volume tissueWater, Volume filling) => Washout.Left(tissueWater, filling, 1) is > MostLeft and var left ? left : null;
}
