using Protocolist.Fluids;

namespace Protocolist.Vessels;

/// <summary>What a vessel has to know of a fluid.</summary>
public static class FluidInVessel
{
    /// <summary>Strength in % by volume from which alcohol needs the larger headspace and is called strong here.</summary>
    public const double StrongFrom = 60;

    /// <summary>Which kind of fluid it is for walls, lids and headspace.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="ArgumentNullException">The fluid is null.</exception>
    public static ContactFluid KindOf(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        if (fluid.IsAlcohol) return fluid.AlcoholVolumePercent >= StrongFrom ? ContactFluid.StrongAlcohol : ContactFluid.WeakAlcohol;
        return fluid.HasFormaldehyde ? ContactFluid.Formalin : ContactFluid.Water;
    }

    /// <summary>Its density over temperature.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <returns>kg/m³ of °C.</returns>
    /// <exception cref="ArgumentNullException">The fluid is null.</exception>
    public static Func<double, double> DensityOf(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        return celsius => fluid.DensityAt(celsius);
    }

    /// <summary>Its vapour pressure over temperature.</summary>
    /// <remarks>Isopropanol is taken as ethanol of the same mass fraction, which evaporates more: the safe side.</remarks>
    /// <param name="fluid">The fluid.</param>
    /// <returns>kPa of °C.</returns>
    /// <exception cref="ArgumentNullException">The fluid is null.</exception>
    public static Func<double, double> VapourOf(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        return fluid.IsAlcohol ? VapourOfAlcohol(AlcoholMassFraction(fluid)) : Vapour.Water;
    }

    /// <summary>Vapour pressure in kPa over °C of alcohol by mass.</summary>
    internal static Func<double, double> VapourOfAlcohol(double massFraction) => celsius =>
    {
        var (ethanol, water) = Vapour.OverMixture(massFraction, celsius);
        return ethanol + water;
    };

    /// <summary>Alcohol by mass, 0 to 1; 0 without alcohol.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <returns>The mass fraction.</returns>
    /// <exception cref="ArgumentNullException">The fluid is null.</exception>
    public static double AlcoholMassFraction(Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        return (fluid.EthanolMassPercent ?? fluid.IsopropanolMassPercent ?? 0) / 100;
    }
}
