using Protocolist.Fluids;
using UnitsNet;

namespace Protocolist.Vessels.Air;

/// <summary>A surface of formalin, or a wet body, that gives formaldehyde to the air.</summary>
/// <param name="Surface">Open area of the vessel.</param>
/// <param name="Strength">Formaldehyde in the fluid, g/L: 40 for 10 % formalin.</param>
/// <param name="OpenShare">Share of the surface left open: 1 without a cover, 0.05 under a lid that lies on or in a hood that catches 95 %.</param>
internal sealed record FormaldehydeSource(Area Surface, double Strength, double OpenShare)
{
    /// <summary>mg/min from a square metre of open 10 % formalin at 20 to 23 °C.</summary>
    /// <remarks>
    /// 54 to 73 by the liquid-side coefficients of Liu and others 2015 (Environ Sci Technol 49:1603), 30 to 150 by the gas side. In proportion
    /// to strength, as Henry's law has it for dilute formaldehyde.
    /// </remarks>
    public const double MgPerMinPerM2 = 60;

    /// <summary>How far off the result may be each way: air speed, temperature, stirring, foam, wet gloves and specimens.</summary>
    public const double Uncertainty = 3;

    /// <summary>Emission of one dissection table with embalmed body, mg/min (Keil and others 2001, Appl Occup Environ Hyg 16:967, mean of 47 tables).</summary>
    public const double MgPerMinOfDissectionTable = 3.15;

    /// <summary>What enters the air, mg/min: the best guess, with <see cref="Uncertainty"/> each way.</summary>
    public double EmissionMgPerMin => Surface.SquareMeters * OpenShare * MgPerMinPerM2 * Strength / 40;

    /// <summary>A vessel of formalin.</summary>
    /// <param name="shape">The vessel.</param>
    /// <param name="fluid">What is in it.</param>
    /// <param name="openShare">Share of the surface left open, 0 to 1.</param>
    /// <returns>The source; without emission where there is no formaldehyde in the fluid.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FormaldehydeSource Over(VesselShape shape, Fluid fluid, double openShare)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(fluid);
        return new(shape.Footprint, fluid.FormaldehydeGramsPerLitre ?? 0, openShare);
    }
}
