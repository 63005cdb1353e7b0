using Protocolist.Fluids;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>What a vessel is wanted for.</summary>
internal enum VesselUse
{
    /// <summary>Fixing, washing, one bath: filled as far as ratio and cover ask, emptied again.</summary>
    Treating,

    /// <summary>The final vessel: filled up to the headspace, closed for years.</summary>
    Keeping,
}

/// <summary>What a vessel has to hold, and how. Immutable.</summary>
/// <param name="Specimen">The posed body.</param>
/// <param name="Fluid">The fluid.</param>
/// <param name="Density">The fluid's density in kg/m³ over the temperature in °C.</param>
/// <param name="Use">Treating or keeping.</param>
internal sealed record FitRequest(PosedSpecimen Specimen, Fluid Fluid, Func<double, double> Density, VesselUse Use)
{
    /// <summary>Least volume of fluid over volume of specimen for keeping, better 5: common practice.</summary>
    public const double LeastForKeeping = 3;

    /// <summary>Least volume of fluid over volume of specimen: 10 for fixing, which is common practice, and <see cref="LeastForKeeping"/>.</summary>
    public double LeastRatio { get; init; } = Use == VesselUse.Treating ? 10 : LeastForKeeping;

    /// <summary>Volume of fluid over volume of specimen beyond which more does nothing for the body: common practice fixes in 10 to 20.</summary>
    public double MostRatio { get; init; } = 20;

    /// <summary>Room around the body; where not given, by its size.</summary>
    public Clearances? Clearances { get; init; }

    /// <summary>Temperature of the fluid at filling.</summary>
    public Temperature FilledAt { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary>The coldest the vessel gets.</summary>
    public Temperature Coldest { get; init; } = Temperature.FromDegreesCelsius(15);

    /// <summary>The hottest the vessel gets.</summary>
    public Temperature Hottest { get; init; } = Temperature.FromDegreesCelsius(35);

    /// <summary>Headspace as a share of the inside; where not given, by <see cref="Headspace.Rule"/>. Never less than the hottest day needs.</summary>
    public double? HeadspaceShare { get; init; }

    /// <summary>How far below the brim it is filled at the most.</summary>
    /// <remarks>It takes the place of <see cref="HeadspaceShare"/>: never less than the rule, at most 0.9.</remarks>
    public Length? BelowBrim { get; init; }

    /// <summary>How many people lift it, 1 or 2.</summary>
    public int Carriers { get; init; } = 2;

    /// <summary>Whether it has to be carried full. If not, a heavy vessel is filled where it stands.</summary>
    public bool CarriedFull { get; init; }

    /// <summary>What the shelf bears in one place; a heavier vessel is warned of. No limit where not given.</summary>
    public Mass? ShelfBears { get; init; }

    /// <summary>A request for a fluid, with its own density and vapour pressure.</summary>
    /// <param name="specimen">The posed body.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="use">Treating or keeping.</param>
    /// <returns>The request, with the usual ratio, headspace and temperatures.</returns>
    /// <exception cref="ArgumentNullException">The fluid is null.</exception>
    public static FitRequest For(PosedSpecimen specimen, Fluid fluid, VesselUse use) =>
        new(specimen, fluid, fluid.DensityAt, use);
}
