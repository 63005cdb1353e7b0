using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>How a body may lie or stand in its vessel.</summary>
[Flags]
internal enum Orientations
{
    /// <summary>No way at all.</summary>
    None = 0,

    /// <summary>On its belly or side: its height stands upright.</summary>
    Lying = 1,

    /// <summary>Head up or head down: its length stands upright.</summary>
    Upright = 2,

    /// <summary>On edge, as a ray that has hardened: its width stands upright.</summary>
    OnEdge = 4,
}

/// <summary>The body as it goes into the vessel: its outline, not yet its room. Immutable.</summary>
/// <param name="Name">What to call it in messages.</param>
/// <param name="Volume">Volume of all bodies together.</param>
internal abstract record PosedSpecimen(string Name, Volume Volume)
{
    /// <summary>Mass of all bodies together; where not given, the volume at 1.05 g/mL (muscle 1.06, whole bodies about 1.0 to 1.1).</summary>
    public Mass? Mass { get; init; }

    /// <summary>The mass, given or taken from the volume.</summary>
    public Mass MassOrEstimate => Mass ?? UnitsNet.Mass.FromKilograms(Volume.CubicMeters * 1050);

    /// <summary>A body that keeps its pose, by the box around it.</summary>
    /// <param name="Name">What to call it in messages.</param>
    /// <param name="Volume">Its volume.</param>
    /// <param name="Length">Along the body, with limbs and tail as posed.</param>
    /// <param name="Width">From side to side.</param>
    /// <param name="Height">From belly to back.</param>
    /// <param name="Allowed">How it may lie or stand.</param>
    public sealed record Boxed(
        string Name, Volume Volume, Length Length, Length Width, Length Height, Orientations Allowed = Orientations.Lying | Orientations.Upright)
        : PosedSpecimen(Name, Volume);

    /// <summary>A snake, eel or worm laid in flat spirals, one above the other; hard, it keeps them in every vessel.</summary>
    /// <param name="Name">What to call it in messages.</param>
    /// <param name="Volume">Its volume.</param>
    /// <param name="Across">Across the coil.</param>
    /// <param name="Height">Of all layers.</param>
    /// <param name="Layers">How many.</param>
    public sealed record Coiled(string Name, Volume Volume, Length Across, Length Height, int Layers) : PosedSpecimen(Name, Volume);

    /// <summary>Many small animals in one vessel.</summary>
    /// <param name="Name">What to call them in messages.</param>
    /// <param name="Volume">Volume of all together.</param>
    /// <param name="Count">How many.</param>
    /// <param name="Length">Of the largest.</param>
    /// <param name="Width">Of the largest.</param>
    /// <param name="Height">Of the largest.</param>
    public sealed record Lot(string Name, Volume Volume, int Count, Length Length, Length Width, Length Height) : PosedSpecimen(Name, Volume);

    /// <summary>A ray, flatfish or starfish while it is fixed: flat on the bottom, or on edge once it is hard.</summary>
    /// <param name="name">What to call it in messages.</param>
    /// <param name="volume">Its volume.</param>
    /// <param name="length">Length with tail.</param>
    /// <param name="width">Greatest width of the disc.</param>
    /// <param name="thickness">Greatest thickness.</param>
    /// <param name="hardened">Whether it is fixed and may stand on edge.</param>
    /// <returns>The posed body.</returns>
    public static Boxed Flat(string name, Volume volume, Length length, Length width, Length thickness, bool hardened) =>
        new(name, volume, length, width, thickness, hardened ? Orientations.Lying | Orientations.Upright | Orientations.OnEdge : Orientations.Lying);
}
