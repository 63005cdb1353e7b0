using Protocolist.Fluids.Densities;
using UnitsNet;

namespace Protocolist.Fluids.Infiltration;

/// <summary>The water a specimen brings into its bath.</summary>
internal static class TissueWater
{
    /// <summary>Volume of the water in a body.</summary>
    /// <param name="body">The body's mass.</param>
    /// <param name="share">Water as a share of that mass, 0 to 1.</param>
    /// <returns>Its volume as water at 20 °C.</returns>
    public static Volume Of(Mass body, double share)
    {
        if (!(share is >= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(share), share, "A share is 0 to 1.");
        return Volume.FromCubicMeters(body.Kilograms * share / WaterDensity.Of(20));
    }

    /// <summary>Volume of the water in a body of known volume and density.</summary>
    /// <param name="body">The body's volume.</param>
    /// <param name="density">The body's density; 1.03 to 1.07 g/mL for most animals.</param>
    /// <param name="share">Water as a share of the mass, 0 to 1.</param>
    /// <returns>Its volume as water at 20 °C.</returns>
    public static Volume Of(Volume body, Density density, double share) => Of(body * density, share);
}
