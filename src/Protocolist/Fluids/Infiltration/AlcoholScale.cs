namespace Protocolist.Fluids.Infiltration;

/// <summary>One alcohol's densities at 20 °C, so that ethanol and isopropanol share their mass balances.</summary>
internal sealed record AlcoholScale(FluidKind Kind)
{
    public static AlcoholScale Of(Fluid alcohol)
    {
        ArgumentNullException.ThrowIfNull(alcohol);
        return alcohol.IsAlcohol ? new(alcohol.Kind) : throw new ArgumentException($"{alcohol.Name} is no alcohol.", nameof(alcohol));
    }

    public Solute Solute => Kind is FluidKind.Ethanol ? Solute.Ethanol : Solute.Isopropanol;

    public double Density(double massFraction) =>
        Kind is FluidKind.Ethanol ? EthanolWater.Density(massFraction, 20) : IsopropanolWater.Density(massFraction, 20);

    public double MassFraction(double volumeFraction) =>
        Kind is FluidKind.Ethanol ? EthanolWater.MassFractionOfVolume(volumeFraction) : IsopropanolWater.MassFractionOfVolume(volumeFraction);

    public double VolumeFraction(double massFraction) =>
        Kind is FluidKind.Ethanol ? EthanolWater.VolumeFraction(massFraction) : IsopropanolWater.VolumeFraction(massFraction);

    /// <summary>Mass fraction in tissue and bath once they have one strength; volumes in m³.</summary>
    public double Equilibrium(double tissue, double inside, double bath, double outside)
    {
        double inTissue = tissue * Density(inside), inBath = bath * Density(outside);
        return (inTissue * inside + inBath * outside) / (inTissue + inBath);
    }

    public double Equilibrium(double tissue, double inside, AlcoholBath bath) =>
        Equilibrium(tissue, inside, bath.Volume.CubicMeters, Kind is FluidKind.Ethanol ? bath.Alcohol.Composition.Ethanol : bath.Alcohol.Composition.Isopropanol);
}
