using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>What a closure lets evaporate in a year.</summary>
/// <param name="PerYear">Volume lost by one jar; <c>null</c> where only a ranking is published.</param>
/// <param name="Observation">What was observed.</param>
/// <param name="Source">By whom.</param>
internal sealed record EvaporationRate(Volume? PerYear, Phrase Observation, string Source);

/// <summary>How much fluid closures lose, as collections have found.</summary>
internal static class Evaporation
{
    private const string Munich = "Bavarian State Collection of Zoology, collections mailing list 2011";
    private const string London = "Natural History Museum London, survey of 2596 jars, 2025";

    private static readonly EvaporationRate LinedScrewLid = new(
        Volume.FromMilliliters(0.75),
        new(
            "loss.lined-screw-lid",
            "a 4 oz jar with polypropylene lid and foamed polyethylene liner lost 7.5 of 105 mL of 60 % ethanol in 10 years at 21 degC"),
        "Labedz, collections mailing list 2005");
    private static readonly EvaporationRate LinedSnapLid = new(
        Volume.FromMilliliters(1.25), new("loss.lined-snap-lid", "40 000 jars with new polyethylene-lined lids lost 100 L in 2 years"), Munich);
    private static readonly EvaporationRate SnapLid = new(
        Volume.FromMilliliters(13), new("loss.snap-lid", "30 000 jars with old crumbling snap lids lost 400 L a year"), Munich);
    private static readonly EvaporationRate GroundStopper = new(
        null, new("loss.ground-stopper", "ground stoppers often seized; they need no sealant when they fit"), London + "; Conserve O Gram 11/4");
    private static readonly EvaporationRate WireBail = new(null, new("loss.wire-bail", "wire-bail lids held alcohol worst"), London);
    private static readonly EvaporationRate ScrewLid = new(
        null, new("loss.screw-lid", "metal screw lids held alcohol best, but metal corrodes; the liner decides"), London);
    private static readonly EvaporationRate Unsealed = new(
        null, new("loss.unsealed", "a closure that does not seal dries out; small vials with bad lids within a year"), Munich);

    /// <summary>The published observation nearest to a closure.</summary>
    /// <param name="closure">How the vessel closes.</param>
    /// <param name="seal">What seals it.</param>
    /// <returns>The rate, or the ranking where no rate is known.</returns>
    public static EvaporationRate Of(Closure closure, VesselMaterial seal) => (closure, seal) switch
    {
        (Closure.ScrewLid, VesselMaterial.Polyethylene or VesselMaterial.Ptfe) => LinedScrewLid,
        (Closure.SnapLid, VesselMaterial.Polyethylene) => LinedSnapLid,
        (Closure.SnapLid, _) => SnapLid,
        (Closure.GroundStopper, _) => GroundStopper,
        (Closure.WireBail, _) => WireBail,
        (Closure.ScrewLid, _) => ScrewLid,
        _ => Unsealed,
    };

    /// <summary>What diffuses out of a port that stands open: still air in a straight hole.</summary>
    /// <remarks>
    /// Fick's law with 0.119 cm²/s for ethanol and 0.249 cm²/s for water in air (from memory) against clean dry air: the upper bound without
    /// draught.
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
