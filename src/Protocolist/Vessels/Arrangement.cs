using Protocolist.Findings;

namespace Protocolist.Vessels;

/// <summary>One way to lay a body into a room.</summary>
/// <param name="Lies">What to call it.</param>
/// <param name="Layers">Of a coil, how many; else 0.</param>
/// <param name="Height">How high it stands (m).</param>
internal readonly record struct Arrangement(Phrase Lies, double Layers, double Height)
{
    /// <summary>Loose heaps of irregular bodies fill about half of their room (random packing, from memory).</summary>
    private const double LooseHeap = 0.5;

    public static readonly Phrase Lying = new("lies.lying", "lying");
    public static readonly Phrase Upright = new("lies.upright", "upright");
    public static readonly Phrase OnEdge = new("lies.on-edge", "on edge");
    private static readonly Phrase InLayers = new("lies.coiled", "coiled in {layers} {layers|layer|layers}");
    private static readonly Phrase Loosely = new("lies.loosely", "laid loosely");

    /// <summary>In words.</summary>
    public Message Words => Lies == InLayers ? InLayers.With(("layers", Layers)) : Lies;

    /// <summary>The lowest way in which the body fits the room from wall to wall, or null.</summary>
    public static Arrangement? Lowest(in Outline body, in Room room, double side) => body.Kind switch
    {
        OutlineKind.Coiled => Coiled(body, room, side),
        OutlineKind.Heaped => Heaped(body, room, side),
        _ => Boxed(body, room, side),
    };

    private static Arrangement? Boxed(in Outline body, in Room room, double side)
    {
        var (l, w, h) = (body.Length, body.Width, body.Height);
        Arrangement? lowest = null;
        Try(Orientations.Lying, Lying, l, w, h, body, room);
        Try(Orientations.Upright, Upright, w, h, l, body, room);
        Try(Orientations.OnEdge, OnEdge, l, h, w, body, room);
        return lowest;

        void Try(Orientations way, Phrase lies, double a, double b, double up, in Outline of, in Room within)
        {
            if ((of.Allowed & way) == way && !(lowest?.Height <= up) && within.Encloses(a, b, side)) lowest = new(lies, 0, up);
        }
    }

    /// <summary>Flat spirals one above the other, in the layers that the body was posed with.</summary>
    private static Arrangement? Coiled(in Outline body, in Room room, double side) =>
        room.Width + 1e-12 >= body.Width + (2 * side) ? new(InLayers, body.Layers, body.Height) : null;

    private static Arrangement? Heaped(in Outline lot, in Room room, double side)
    {
        if (Boxed(lot, room, side) is not { } one) return null;
        var heap = lot.Volume / LooseHeap / room.Area;
        return new(Loosely, 0, Math.Max(one.Height, heap));
    }
}
