namespace Protocolist.Fluids;

/// <summary>What a fluid is made of, as mass fractions; the rest is water.</summary>
/// <param name="Ethanol">Ethanol.</param>
/// <param name="Isopropanol">2-Propanol.</param>
/// <param name="Formaldehyde">Formaldehyde, as CH2O.</param>
/// <param name="Methanol">Methanol, the stabiliser of the stock.</param>
/// <param name="SeaSalt">Salt of sea water.</param>
/// <param name="BufferSalts">Buffer salts without their water of crystallisation.</param>
internal readonly record struct Composition(
    double Ethanol = 0, double Isopropanol = 0, double Formaldehyde = 0, double Methanol = 0, double SeaSalt = 0, double BufferSalts = 0)
{
    // 1 % NaCl adds 7.1 kg/m³ (CRC Handbook); phosphates and borax add about 8 (from memory).
    private const double BufferSaltEffect = 800;

    /// <summary>Water, as a mass fraction.</summary>
    public double Water => 1 - Ethanol - Isopropanol - Formaldehyde - Methanol - SeaSalt - BufferSalts;

    /// <summary>Density, kg/m³.</summary>
    public double Density(double celsius)
    {
        if (Ethanol > 0) return EthanolWater.Density(Ethanol, celsius);
        if (Isopropanol > 0) return IsopropanolWater.Density(Isopropanol, celsius);
        var density = Formaldehyde > 0 || Methanol > 0 ? Fluids.Formaldehyde.Density(Formaldehyde, Methanol, celsius) : Fluids.Water.Density(celsius);
        if (SeaSalt > 0)
        {
            var salinity = Math.Min(1000 * SeaSalt / (SeaSalt + Water), SeaWater.HighestSalinity);
            density += SeaWater.Density(salinity, celsius) - SeaWater.Density(0, celsius);
        }

        return density + BufferSaltEffect * BufferSalts;
    }

    /// <summary>The mixture of masses of several fluids.</summary>
    public static Composition Mix(ReadOnlySpan<Composition> fluids, ReadOnlySpan<double> kilograms)
    {
        double all = 0, ethanol = 0, isopropanol = 0, formaldehyde = 0, methanol = 0, seaSalt = 0, bufferSalts = 0;
        for (var i = 0; i < fluids.Length; i++)
        {
            var (fluid, mass) = (fluids[i], kilograms[i]);
            all += mass;
            ethanol += mass * fluid.Ethanol;
            isopropanol += mass * fluid.Isopropanol;
            formaldehyde += mass * fluid.Formaldehyde;
            methanol += mass * fluid.Methanol;
            seaSalt += mass * fluid.SeaSalt;
            bufferSalts += mass * fluid.BufferSalts;
        }

        return all > 0
            ? new(ethanol / all, isopropanol / all, formaldehyde / all, methanol / all, seaSalt / all, bufferSalts / all)
            : default;
    }

    /// <summary>This much of it (kg) with dissolved salts and their water of crystallisation (kg).</summary>
    public Composition WithSalts(double kilograms, double anhydrousSalts, double crystalWater)
    {
        var all = kilograms + anhydrousSalts + crystalWater;
        var share = kilograms / all;
        return new(Ethanol * share, Isopropanol * share, Formaldehyde * share, Methanol * share, SeaSalt * share, (BufferSalts * kilograms + anhydrousSalts) / all);
    }
}
