using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>What a closure lets evaporate in a year.</summary>
/// <param name="PerYear">Volume lost by one jar; <c>null</c> where only a ranking is published.</param>
/// <param name="Observation">What was observed.</param>
/// <param name="Source">By whom.</param>
public sealed record EvaporationRate(Volume? PerYear, string Observation, string Source);

/// <summary>How much fluid closures lose, as collections have found.</summary>
public static class Evaporation
{
    /// <summary>The published observation nearest to a closure.</summary>
    /// <param name="closure">How the vessel closes.</param>
    /// <param name="seal">What seals it.</param>
    /// <returns>The rate, or the ranking where no rate is known.</returns>
    public static EvaporationRate Of(Closure closure, VesselMaterial seal) => (closure, seal) switch
    {
        (Closure.ScrewLid, VesselMaterial.Polyethylene or VesselMaterial.Ptfe) => new(
            Volume.FromMilliliters(0.75),
            "a 4 oz jar with polypropylene lid and foamed polyethylene liner lost 7.5 of 105 mL of 60 % ethanol in 10 years at 21 degC",
            "Labedz, collections mailing list 2005"),
        (Closure.SnapLid, VesselMaterial.Polyethylene) => new(
            Volume.FromMilliliters(1.25),
            "40 000 jars with new polyethylene-lined lids lost 100 L in 2 years",
            "Bavarian State Collection of Zoology, collections mailing list 2011"),
        (Closure.SnapLid, _) => new(
            Volume.FromMilliliters(13),
            "30 000 jars with old crumbling snap lids lost 400 L a year",
            "Bavarian State Collection of Zoology, collections mailing list 2011"),
        (Closure.GroundStopper, _) => new(
            null, "ground stoppers often seized; they need no sealant when they fit", "Natural History Museum London, survey of 2596 jars, 2025; Conserve O Gram 11/4"),
        (Closure.WireBail, _) => new(null, "wire-bail lids held alcohol worst", "Natural History Museum London, survey of 2596 jars, 2025"),
        (Closure.ScrewLid, _) => new(null, "metal screw lids held alcohol best, but metal corrodes; the liner decides", "Natural History Museum London, survey of 2596 jars, 2025"),
        _ => new(null, "a closure that does not seal dries out; small vials with bad lids within a year", "Bavarian State Collection of Zoology, collections mailing list 2011"),
    };

    /// <summary>What diffuses out of a port that stands open: still air in a straight hole.</summary>
    /// <remarks>
    /// Fick's law with 0.119 cm²/s for ethanol and 0.249 cm²/s for water in air (from memory) against clean dry air: the upper bound without draught.
    /// </remarks>
    /// <param name="diameter">The hole's diameter.</param>
    /// <param name="length">The hole's length, the lid's thickness.</param>
    /// <param name="fluid">The fluid; isopropanol is taken as ethanol.</param>
    /// <param name="temperature">Of fluid and room.</param>
    /// <returns>Volume of fluid lost in a year.</returns>
    public static Volume OpenPortPerYear(Length diameter, Length length, Fluid fluid, Temperature temperature)
    {
        const double Gas = 8.314462618; // J/(mol K), CODATA
        const double Year = 365.25 * 86400;
        var vapour = fluid.Substance.VapoursOver(fluid, temperature.DegreesCelsius);
        var conductance = Math.PI / 4 * diameter.Meters * diameter.Meters / length.Meters; // m
        double Grams(double kilopascals, double squareCmPerS, double molar) =>
            squareCmPerS * 1e-4 * conductance * kilopascals * 1000 / (Gas * temperature.Kelvins) * molar * Year;

        // 0.79 and 1.00 g/mL: ethanol and water at 20 °C (OIML R 22).
        return Volume.FromMilliliters(Grams(vapour.Alcohol, 0.119, Vapour.EthanolMolar) / 0.789 + Grams(vapour.Water, 0.249, Vapour.WaterMolar) / 0.998);
    }
}
