using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>Chooses a vessel for a posed specimen and says how to fill it. A pure function of what it is given.</summary>
public static class VesselFit
{
    /// <summary>Chooses among the vessels at hand.</summary>
    /// <param name="request">What has to be held.</param>
    /// <param name="vessels">The vessels at hand, sound by <see cref="VesselValidator"/>.</param>
    /// <returns>
    /// The choice: fewest warnings first, then least room. Without value where the request contradicts itself (<c>specimen-without-size</c>,
    /// <c>specimen-larger-than-its-box</c>, <c>temperatures-contradict</c>). Where no vessel does, <c>no-vessel-fits</c> or <c>no-vessel-at-hand</c>
    /// says what to buy or build.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Checked<VesselFitting> Choose(FitRequest request, IEnumerable<Vessel> vessels)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(vessels);
        var wrong = FitRequestCheck.Of(request);
        if (wrong.Length > 0) return new(null, wrong);

        var fitting = ImmutableArray.CreateBuilder<FittedVessel>();
        var rejected = ImmutableArray.CreateBuilder<RejectedVessel>();
        foreach (var vessel in vessels)
        {
            var (fitted, reasons) = Try(vessel, request);
            if (fitted is not null) fitting.Add(fitted);
            else rejected.Add(new(vessel, reasons));
        }

        var needed = SmallestVessel.For(request);
        var best = fitting
            .OrderBy(f => f.Findings.Count(x => x.Severity == Severity.Warning))
            .ThenBy(f => f.Vessel.Shape.Inside.CubicMeters)
            .ThenBy(f => f.Vessel.Id, StringComparer.Ordinal)
            .ToImmutableArray();
        if (best.Length > 0)
        {
            return new(new(best[0], best.RemoveAt(0), rejected.ToImmutable(), needed), best[0].Findings);
        }

        var none = rejected.Count == 0
            ? Finding.Error("no-vessel-at-hand", Invariant($"there is no vessel for {request.Specimen.Name}"), needed.Advice)
            : Finding.Error(
                "no-vessel-fits",
                Invariant($"none of {rejected.Count} kinds of vessel holds {request.Specimen.Name}: {string.Join("; ", rejected.Select(r => $"{r.Vessel.Id}: {r.Reasons[0].Message}"))}"),
                needed.Advice);
        return new(new(null, [], rejected.ToImmutable(), needed), [none]);
    }

    /// <summary>One vessel filled, or all reasons against it, without looking for what else would do.</summary>
    internal static (FittedVessel? Fitted, ImmutableArray<Finding> Reasons) One(FitRequest request, Vessel vessel)
    {
        var wrong = FitRequestCheck.Of(request);
        return wrong.Length > 0 ? (null, wrong) : Try(vessel, request);
    }

    /// <summary>Fills one vessel, or gives all reasons against it.</summary>
    private static (FittedVessel? Fitted, ImmutableArray<Finding> Reasons) Try(Vessel vessel, FitRequest request)
    {
        var (filling, cannot) = Filling.Of(vessel.Shape, request);
        var about = VesselRemarks.Of(vessel, request);
        if (vessel.Count <= 0) about = about.Insert(0, Finding.Error("vessel-not-at-hand", Invariant($"there is no '{vessel.Id}' left"), "buy one, or empty one"));
        var fitted = filling is null ? null : Fit(vessel, filling, request);
        ImmutableArray<Finding> all = [.. cannot, .. about, .. fitted is null ? [] : VesselRemarks.Of(fitted, request)];
        ImmutableArray<Finding> errors = [.. all.Where(f => f.Severity == Severity.Error)];
        return errors.Length > 0 || fitted is null ? (null, errors) : (fitted with { Findings = all }, []);
    }

    private static FittedVessel Fit(Vessel vessel, Filling filling, FitRequest request)
    {
        var area = vessel.Shape.Footprint.SquareMeters;
        var body = request.Specimen.Volume.CubicMeters;
        var headspace = filling.Headspace / vessel.Shape.Inside.CubicMeters;
        var density = request.Density(request.FilledAt.DegreesCelsius);
        Length LevelAt(Temperature t) => Length.FromMeters((filling.Fluid * density / request.Density(t.DegreesCelsius) + body) / area);
        return new(
            vessel,
            filling.Arrangement.Name,
            Volume.FromCubicMeters(filling.Fluid),
            Length.FromMeters(filling.Fluid / area),
            LevelAt(request.FilledAt),
            LevelAt(request.Coldest),
            LevelAt(request.Hottest),
            Length.FromMeters(filling.CoveredTo),
            Volume.FromCubicMeters(filling.Headspace),
            filling.Fluid / body,
            (vessel.EmptyMass ?? Mass.Zero) + Mass.FromKilograms(filling.Fluid * density) + request.Specimen.MassOrEstimate,
            vessel.IsGasTight
                ? Headspace.GaugePressure(headspace, request.Density, request.Fluid.VapourPressureAt, request.FilledAt, request.Hottest)
                : null,
            []);
    }

}
