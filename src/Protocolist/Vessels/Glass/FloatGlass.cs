using System.Collections.Immutable;
using UnitsNet;

namespace Protocolist.Vessels.Glass;

/// <summary>What annealed float glass bears, and in what thicknesses it is sold. Never toughened glass: it collapses at once.</summary>
/// <param name="Strength">Tensile strength that the safety factor divides.</param>
/// <param name="SafetyFactor">Strength over the stress allowed.</param>
/// <param name="Stiffness">Young's modulus.</param>
/// <param name="Poisson">Poisson number used for the coefficients.</param>
/// <param name="Density">Density of the glass.</param>
/// <param name="StockThicknesses">Thicknesses sold, rising.</param>
internal sealed record FloatGlass(
    Pressure Strength, double SafetyFactor, Pressure Stiffness, double Poisson, Density Density, ImmutableArray<Length> StockThicknesses)
{
    /// <summary>The values that tank builders use.</summary>
    /// <remarks>
    /// Strength 19.2 MPa and factor 3.8: W. Stilwell, aquarium glass articles (Federation of New Zealand Aquatic Societies). The 5.05 MPa
    /// they allow are some 30 % below what EN 16612 (45 · 0.29 / 1.8 = 7.25 MPa) and ASTM E1300 (7.2 MPa) allow under a permanent load (from memory).
    /// 70 GPa and 2500 kg/m³: EN 572-1 (from memory). Poisson number 0.3: as Roark's and Timoshenko's tables, on the safe side of the 0.2 of EN 572-1.
    /// Stock to 19 mm as sold by German glaziers; 25 mm from memory.
    /// </remarks>
    public static FloatGlass Annealed { get; } = new(
        Pressure.FromMegapascals(19.2),
        3.8,
        Pressure.FromGigapascals(70),
        PlateCoefficients.TabulatedPoisson,
        Density.FromKilogramsPerCubicMeter(2500),
        [.. new[] { 3.0, 4, 5, 6, 8, 10, 12, 15, 19, 25 }.Select(mm => Length.FromMillimeters(mm))]);

    /// <summary>The stress allowed: strength over safety factor.</summary>
    public Pressure Allowed => Strength / SafetyFactor;
}
