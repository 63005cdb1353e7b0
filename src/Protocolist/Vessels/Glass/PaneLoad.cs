namespace Protocolist.Vessels.Glass;

/// <summary>How a fluid presses on a pane.</summary>
internal enum PaneLoad
{
    /// <summary>A wall: nothing at the surface, most at the bottom.</summary>
    Hydrostatic,

    /// <summary>A bottom: the same everywhere.</summary>
    Uniform,
}
