namespace Protocolist.Fluids.Mixing;

/// <summary>
/// A liquid that goes into a mixture in a fixed amount beside what gives it its strength, such as the formalin and the acid of a compound fixative.
/// </summary>
/// <param name="Liquid">What the recipe calls for.</param>
/// <param name="MillilitresPerLitre">How much of it for a litre of the mixture, both at 20 °C.</param>
internal readonly record struct Addition(Fluid Liquid, double MillilitresPerLitre)
{
    /// <summary>Kilograms of a stock that bring as much of what gives the liquid its strength, for a litre of the mixture.</summary>
    public double KilogramsPerLitre(Fluid stock)
    {
        var active = Liquid.Substance.Active!;
        return MillilitresPerLitre * 1e-6 * Liquid.DensityAt(20.0) * Liquid.Composition[active] / stock.Composition[active];
    }
}
