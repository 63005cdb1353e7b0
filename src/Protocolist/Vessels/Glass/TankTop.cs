namespace Protocolist.Vessels.Glass;

/// <summary>What holds the upper edge of a tank's panes.</summary>
internal enum TankTop
{
    /// <summary>Rimless: the upper edge stands free and bends outwards; only the sides and the bottom hold the pane.</summary>
    Free,

    /// <summary>A frame or glued braces hold the upper edge, so that the pane rests on four edges.</summary>
    Framed,
}
