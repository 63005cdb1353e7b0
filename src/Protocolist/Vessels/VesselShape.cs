using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>The room inside a vessel with straight walls; shoulders and necks are not counted.</summary>
public abstract record VesselShape
{
    private VesselShape()
    {
    }

    /// <summary>Inside height from the bottom to where the lid begins.</summary>
    public abstract Length Height { get; init; }

    /// <summary>Area of the inside seen from above.</summary>
    public abstract Area Footprint { get; }

    /// <summary>The whole inside.</summary>
    public Volume Inside => Footprint * Height;

    /// <summary>The widest circle that fits inside, seen from above: the room of a coil.</summary>
    public abstract Length InscribedCircle { get; }

    /// <summary>What the vessel holds up to a level.</summary>
    /// <param name="level">Height of the surface above the bottom, 0 to <see cref="Height"/>.</param>
    /// <returns>The volume up to there, whatever displaces it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside the vessel.</exception>
    public Volume VolumeAt(Length level) => level.Meters >= 0 && level.Meters <= Height.Meters * (1 + 1e-12)
        ? Footprint * level
        : throw new ArgumentOutOfRangeException(nameof(level), level.Meters, "the level must lie inside the vessel");

    /// <summary>Where the surface stands when the contents fill a volume.</summary>
    /// <param name="contents">Fluid and everything submerged in it, 0 to <see cref="Inside"/>.</param>
    /// <returns>Height of the surface above the bottom.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The contents do not fit.</exception>
    public Length LevelAt(Volume contents) => contents.CubicMeters >= 0 && contents.CubicMeters <= Inside.CubicMeters * (1 + 1e-12)
        ? contents / Footprint
        : throw new ArgumentOutOfRangeException(nameof(contents), contents.CubicMeters, "the contents must fit the vessel");

    /// <summary>Whether a rectangle, seen from above, lies inside with a clearance to the walls; all in metres.</summary>
    internal abstract bool Encloses(double length, double width, double clearance);

    /// <summary>A round jar.</summary>
    /// <param name="Diameter">Inside diameter; where the mouth is narrower, the mouth's.</param>
    /// <param name="Height">Inside height.</param>
    public sealed record Cylinder(Length Diameter, Length Height) : VesselShape
    {
        /// <inheritdoc/>
        public override Length Height { get; init; } = Height;

        /// <inheritdoc/>
        public override Area Footprint => Area.FromSquareMeters(Math.PI * Diameter.Meters * Diameter.Meters / 4);

        /// <inheritdoc/>
        public override Length InscribedCircle => Diameter;

        /// <inheritdoc/>
        internal override bool Encloses(double length, double width, double clearance) =>
            Math.Sqrt(length * length + width * width) + 2 * clearance <= Diameter.Meters * (1 + 1e-12);
    }

    /// <summary>A tub, tray or tank with a rectangular bottom.</summary>
    /// <param name="Length">Inside length.</param>
    /// <param name="Width">Inside width.</param>
    /// <param name="Height">Inside height.</param>
    public sealed record Box(Length Length, Length Width, Length Height) : VesselShape
    {
        /// <inheritdoc/>
        public override Length Height { get; init; } = Height;

        /// <inheritdoc/>
        public override Area Footprint => Length * Width;

        /// <inheritdoc/>
        public override Length InscribedCircle => UnitsNet.Length.FromMeters(Math.Min(Length.Meters, Width.Meters));

        /// <inheritdoc/>
        internal override bool Encloses(double length, double width, double clearance) =>
            Math.Max(length, width) + 2 * clearance <= Math.Max(Length.Meters, Width.Meters) * (1 + 1e-12)
            && Math.Min(length, width) + 2 * clearance <= Math.Min(Length.Meters, Width.Meters) * (1 + 1e-12);
    }
}
