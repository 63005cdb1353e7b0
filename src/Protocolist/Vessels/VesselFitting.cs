using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>A vessel that holds the specimen, and how it is filled. Specimen, fluid and headspace make up the inside.</summary>
/// <param name="Vessel">The vessel.</param>
/// <param name="Arrangement">How the body lies or stands in it.</param>
/// <param name="FluidVolume">Fluid to pour in all, at the filling temperature.</param>
/// <param name="LevelBefore">Where that fluid would stand without the specimen. Fill to about half of it, lower the specimen, then top up.</param>
/// <param name="LevelAfter">The fill level with the specimen in.</param>
/// <param name="LevelColdest">The level on the coldest day.</param>
/// <param name="LevelHottest">The level on the hottest day.</param>
/// <param name="CoveredTo">The least level that covers the body with the margin wanted.</param>
/// <param name="HeadspaceVolume">The room left empty at filling.</param>
/// <param name="Ratio">Volume of fluid over volume of specimen.</param>
/// <param name="TotalMass">Vessel, fluid and specimen; the vessel's own mass is missing where it is not known (<c>vessel-mass-unknown</c>).</param>
/// <param name="SealedPressure">Gauge pressure on the hottest day if the vessel is closed tight; <c>null</c> where it breathes.</param>
/// <param name="Findings">Warnings and notes about this vessel.</param>
internal sealed record FittedVessel(
    Vessel Vessel,
    Message Arrangement,
    Volume FluidVolume,
    Length LevelBefore,
    Length LevelAfter,
    Length LevelColdest,
    Length LevelHottest,
    Length CoveredTo,
    Volume HeadspaceVolume,
    double Ratio,
    Mass TotalMass,
    Pressure? SealedPressure,
    ImmutableArray<Finding> Findings);

/// <summary>A vessel that does not do, and why: all reasons, not the first only.</summary>
internal sealed class RejectedVessel
{
    private readonly Fit _fit;
    private readonly FitDemand _demand;

    internal RejectedVessel(Fit fit, FitDemand demand) => (_fit, _demand) = (fit, demand);

    /// <summary>The vessel.</summary>
    public Vessel Vessel => _fit.Vessel.Vessel;

    /// <summary>Errors with this case's numbers; made when they are asked for.</summary>
    public ImmutableArray<Finding> Reasons => VesselRemarks.Of(_fit.Remarks.Rejecting(), _fit, _demand);
}

/// <summary>The smallest vessels that would do, for buying or building.</summary>
/// <param name="Jar">A round one; <c>null</c> where a round one would be absurd.</param>
/// <param name="Tub">A rectangular one; <c>null</c> as above.</param>
/// <param name="Advice">Dimensions and materials in words.</param>
internal sealed record NeededVessel(VesselShape.Cylinder? Jar, VesselShape.Box? Tub, Message Advice);

/// <summary>The choice among the vessels at hand.</summary>
/// <param name="Chosen">The best; <c>null</c> where none does.</param>
/// <param name="AlsoFit">The others that would do, best first.</param>
/// <param name="Rejected">Those that do not, in the order given.</param>
/// <param name="Needed">The smallest that would do, where none of those at hand does; else <c>null</c>.</param>
internal sealed record VesselFitting(
    FittedVessel? Chosen, ImmutableArray<FittedVessel> AlsoFit, ImmutableArray<RejectedVessel> Rejected, NeededVessel? Needed);
