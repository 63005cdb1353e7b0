namespace Protocolist.Vessels.Air;

/// <summary>Formaldehyde in air.</summary>
/// <param name="MgPerM3">Milligrams in a cubic metre.</param>
internal readonly record struct AirConcentration(double MgPerM3)
{
    /// <summary>mg/m³ of 1 ppm formaldehyde (30.026 g/mol) at 25 °C and 101.325 kPa, by the ideal gas law.</summary>
    public const double MgPerM3OfOnePpm = 1.227;

    /// <summary>Parts per million by volume at 25 °C.</summary>
    public double Ppm => MgPerM3 / MgPerM3OfOnePpm;

    /// <summary>Makes a concentration from parts per million.</summary>
    /// <param name="ppm">Parts per million by volume at 25 °C.</param>
    /// <returns>The concentration.</returns>
    public static AirConcentration FromPpm(double ppm) => new(ppm * MgPerM3OfOnePpm);
}
