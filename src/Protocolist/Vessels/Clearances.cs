using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>The room kept free around a body so that it touches nothing and fluid reaches it from all sides.</summary>
/// <param name="Side">To each wall.</param>
/// <param name="Above">Fluid over the body, kept even on the coldest day.</param>
/// <param name="Below">Under the body: a pad of gauze, mesh or glass.</param>
internal sealed record Clearances(Length Side, Length Above, Length Below)
{
    /// <summary>10 mm at the sides, 15 mm above, 5 mm below for bodies of 100 mm and more; in proportion down to a fifth of that for smaller ones.</summary>
    /// <remarks>Common practice: 10 mm at the sides, 10 to 25 mm above, 5 to 10 mm below. The proportion for small bodies is this project's choice.</remarks>
    /// <param name="longest">The longest side of the body.</param>
    /// <returns>The clearances.</returns>
    public static Clearances For(Length longest)
    {
        var share = Math.Clamp(longest.Millimeters / 100, 0.2, 1);
        return new(Length.FromMillimeters(10 * share), Length.FromMillimeters(15 * share), Length.FromMillimeters(5 * share));
    }
}
