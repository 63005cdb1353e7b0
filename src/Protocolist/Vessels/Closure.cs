namespace Protocolist.Vessels;

/// <summary>How a vessel closes.</summary>
public enum Closure
{
    /// <summary>No lid.</summary>
    Open,

    /// <summary>A lid that lies on, as on tubs while fixing.</summary>
    LooseLid,

    /// <summary>A lid that snaps on.</summary>
    SnapLid,

    /// <summary>A screw lid.</summary>
    ScrewLid,

    /// <summary>A ground-glass stopper or a ground lid.</summary>
    GroundStopper,

    /// <summary>A glass lid pressed on a gasket by a wire bail.</summary>
    WireBail,

    /// <summary>A flat plate that is taped or sealed on, as on display tanks.</summary>
    SealedPlate,
}
