namespace Protocolist.Vessels.Air;

/// <summary>How formaldehyde is kept out of the breathing air, weakest first.</summary>
internal enum AirControl
{
    /// <summary>The room's air is enough by this estimate.</summary>
    RoomAir,

    /// <summary>Cover the vessel and open it for handling only.</summary>
    Cover,

    /// <summary>Work in a fume hood or at an extracted table, cover on whenever nobody works.</summary>
    Hood,

    /// <summary>Hood, cover, and a respirator with formaldehyde cartridges chosen by a safety officer.</summary>
    HoodAndRespirator,
}
