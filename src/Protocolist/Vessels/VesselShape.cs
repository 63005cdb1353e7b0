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

    /// <summary>A round jar.</summary>
    /// <param name="Diameter">Inside diameter; where the mouth is narrower, the mouth's.</param>
    /// <param name="Height">Inside height.</param>
    public sealed record Cylinder(Length Diameter, Length Height) : VesselShape
    {
        /// <inheritdoc/>
        public override Length Height { get; init; } = Height;

        /// <inheritdoc/>
        public override Area Footprint => Area.FromSquareMeters(Math.PI * Diameter.Meters * Diameter.Meters / 4);
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
    }
}
