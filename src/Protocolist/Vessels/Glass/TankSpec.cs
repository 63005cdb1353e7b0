using UnitsNet;

namespace Protocolist.Vessels.Glass;

/// <summary>The tank asked for, by its inside.</summary>
/// <param name="Length">Inside length, 20 mm to 5 m.</param>
/// <param name="Width">Inside width, 20 mm to 5 m. Which of the two is called length does not matter.</param>
/// <param name="Depth">Depth of the fluid, 20 mm to 2 m; the panes are taken as high as that, so glass above the fluid adds mass not counted here.</param>
/// <param name="FluidDensity">Density of the fluid at the coldest, 600 to 2000 kg/m³.</param>
/// <param name="Top">What holds the upper edge.</param>
public sealed record TankSpec(Length Length, Length Width, Length Depth, Density FluidDensity, TankTop Top)
{
    /// <summary>Whether the fluid burns: alcohol of more than about 24 % by volume counts (ADR 3.2, special provision 144, from memory).</summary>
    public bool Flammable { get; init; }

    /// <summary>The glass.</summary>
    public FloatGlass Glass { get; init; } = FloatGlass.Annealed;
}
