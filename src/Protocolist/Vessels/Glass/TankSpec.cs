using Protocolist.Fluids;
using UnitsNet;

namespace Protocolist.Vessels.Glass;

/// <summary>The tank asked for, by its inside.</summary>
/// <param name="Length">Inside length, 20 mm to 5 m.</param>
/// <param name="Width">Inside width, 20 mm to 5 m. Which of the two is called length does not matter.</param>
/// <param name="Depth">Depth of the fluid, 20 mm to 2 m; the panes are taken as high as that, so glass above the fluid adds mass not counted here.</param>
/// <param name="FluidDensity">Density of the fluid, 600 to 2000 kg/m³. At 20 °C it is within 1 % of that of the coldest day.</param>
/// <param name="Top">What holds the upper edge.</param>
internal sealed record TankSpec(Length Length, Length Width, Length Depth, Density FluidDensity, TankTop Top)
{
    /// <summary>Whether the fluid counts as flammable.</summary>
    public bool Flammable { get; init; }

    /// <summary>The glass.</summary>
    public FloatGlass Glass { get; init; } = FloatGlass.Annealed;

    /// <summary>A tank for a fluid, at its density of 20 °C.</summary>
    /// <param name="length">Inside length.</param>
    /// <param name="width">Inside width.</param>
    /// <param name="depth">Depth of the fluid.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="top">What holds the upper edge.</param>
    /// <returns>The specification.</returns>
    /// <exception cref="ArgumentNullException">The fluid is null.</exception>
    public static TankSpec For(Length length, Length width, Length depth, Fluid fluid, TankTop top)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        return new(length, width, depth, fluid.DensityAt(Temperature.FromDegreesCelsius(20)), top)
        {
            Flammable = fluid.IsFlammable,
        };
    }
}
