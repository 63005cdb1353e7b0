using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Vessels;

/// <summary>Chooses a vessel for a posed specimen and says how to fill it. A pure function of what it is given.</summary>
internal static class VesselFit
{
    private static readonly Phrase NoneAtHand = new("no-vessel-at-hand", "there is no vessel for {specimen}");
    private static readonly Phrase NoneFits = new("no-vessel-fits", "none of {count} kinds of vessel holds {specimen}: {reasons:; }");
    private static readonly Phrase WhyNot = new("no-vessel-fits.reason", "{vessel}: {reason}");

    /// <summary>Chooses among the vessels at hand.</summary>
    /// <param name="request">What has to be held.</param>
    /// <param name="vessels">The vessels at hand, sound by <see cref="Vessel.Validate"/>.</param>
    /// <returns>
    /// The choice: least harm first, then least money, fluid and room. Without value where the request contradicts itself (<c>specimen-without-size</c>,
    /// <c>specimen-larger-than-its-box</c>, <c>temperatures-contradict</c>). Where no vessel does, <c>no-vessel-fits</c> or <c>no-vessel-at-hand</c>
    /// says what to buy or build.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Checked<VesselFitting> Choose(FitRequest request, IEnumerable<Vessel> vessels)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(vessels);
        return Among(request, PreparedVessel.Of(vessels));
    }

    internal static Checked<VesselFitting> Among(FitRequest request, IReadOnlyList<PreparedVessel> vessels)
    {
        var wrong = FitRequestCheck.Of(request);
        if (wrong.Length > 0) return new(null, wrong);
        var demand = new FitDemand(request);
        var fits = new Fit[vessels.Count];
        for (var i = 0; i < fits.Length; i++) fits[i] = Fit.Of(vessels[i], demand);

        var fitting = Fitting(fits, demand);
        var rejected = fits.Where(f => !f.Holds).Select(f => new RejectedVessel(f, demand)).ToImmutableArray();
        if (fitting.Length > 0) return new(new(fitting[0], fitting[1..], rejected, null), fitting[0].Findings);

        var needed = SmallestVessel.For(demand);
        var specimen = ("specimen", request.Specimen.Name);
        var none = rejected.Length == 0
            ? Finding.Error("no-vessel-at-hand", NoneAtHand.With(specimen), needed.Advice)
            : Finding.Error(
                "no-vessel-fits", NoneFits.With(("count", rejected.Length), specimen, Argument.Messages("reasons", rejected.Select(Why))), needed.Advice);
        return new(new(null, [], rejected, needed), [none]);
    }

    /// <summary>The best of the vessels; null where none does, or where the request makes no sense.</summary>
    internal static FittedVessel? Best(FitRequest request, IReadOnlyList<PreparedVessel> vessels) =>
        BestOf(request, vessels) is var (fit, demand) ? fit.Fitted(demand) : null;

    private static (Fit Fit, FitDemand Demand)? BestOf(FitRequest request, IReadOnlyList<PreparedVessel> vessels)
    {
        if (!FitRequestCheck.IsSound(request)) return null;
        var demand = new FitDemand(request);
        Fit best = default;
        for (var i = 0; i < vessels.Count; i++)
        {
            var fit = Fit.Of(vessels[i], demand);
            if (fit.Holds && (best.Vessel is null || Better(fit, best) < 0)) best = fit;
        }

        return best.Vessel is null ? null : (best, demand);
    }

    /// <summary>The fluid (m³) in the best of the vessels, and how many warnings it brings; null as in <see cref="Best"/>.</summary>
    internal static (double Fluid, int Warnings)? FluidInBest(FitRequest request, IReadOnlyList<PreparedVessel> vessels) =>
        BestOf(request, vessels) is var (fit, _) ? (fit.Filling.Fluid, fit.Remarks.Warnings()) : null;

    /// <summary>Every vessel that does, the best first.</summary>
    internal static ImmutableArray<FittedVessel> Fitting(FitRequest request, IReadOnlyList<PreparedVessel> vessels)
    {
        if (!FitRequestCheck.IsSound(request)) return [];
        var demand = new FitDemand(request);
        return Fitting(vessels.Select(v => Fit.Of(v, demand)), demand);
    }

    /// <summary>
    /// The vessels of which none is worse than another in everything that the order looks at, the best first, each with what has to be paid for it and
    /// whether it does no more harm than the best.
    /// </summary>
    internal static ImmutableArray<(Vessel Vessel, long Price, bool IsAsGood)> Worthwhile(FitRequest request, IReadOnlyList<PreparedVessel> vessels)
    {
        if (!FitRequestCheck.IsSound(request)) return [];
        var demand = new FitDemand(request);
        var fits = new List<Fit>(vessels.Count);
        foreach (var vessel in vessels)
        {
            if (Fit.Of(vessel, demand) is { Holds: true } fit) fits.Add(fit);
        }

        fits.Sort((a, b) => Better(a, b));
        for (var i = fits.Count - 1; i > 0; i--)
        {
            var (fit, isWorse) = (fits[i], false);
            for (var j = 0; j < i && !isWorse; j++) isWorse = IsNoWorse(fits[j], fit);
            if (isWorse) fits.RemoveAt(i);
        }

        return [.. fits.Select(f => (f.Vessel.Vessel, f.Vessel.Price, f.Remarks.Harm() == fits[0].Remarks.Harm()))];
    }

    private static bool IsNoWorse(in Fit a, in Fit b)
    {
        var (one, other) = (a.Remarks.Harm(), b.Remarks.Harm());
        return one.People <= other.People && one.Ruin <= other.Ruin && one.Hands <= other.Hands && one.Waste <= other.Waste
            && a.Vessel.Price <= b.Vessel.Price && a.Filling.Fluid <= b.Filling.Fluid;
    }

    /// <summary>One vessel filled, or all reasons against it, without looking for what else would do.</summary>
    internal static (FittedVessel? Fitted, ImmutableArray<Finding> Reasons) One(FitRequest request, Vessel vessel)
    {
        var wrong = FitRequestCheck.Of(request);
        if (wrong.Length > 0) return (null, wrong);
        var demand = new FitDemand(request);
        var fit = Fit.Of(new(vessel), demand);
        return fit.Holds ? (fit.Fitted(demand), []) : (null, VesselRemarks.Of(fit.Remarks.Rejecting(), fit, demand));
    }

    private static ImmutableArray<FittedVessel> Fitting(IEnumerable<Fit> fits, FitDemand demand)
    {
        Fit[] fitting = [.. fits.Where(f => f.Holds)];
        Array.Sort(fitting, (a, b) => Better(a, b));
        return [.. fitting.Select(f => f.Fitted(demand))];
    }

    /// <summary>The less harmful first: people, what ruins the specimen, hands, fluid for nothing, money; then less fluid and less room.</summary>
    private static int Better(in Fit a, in Fit b)
    {
        var byHarm = a.Remarks.Harm().CompareTo(b.Remarks.Harm());
        if (byHarm != 0) return byHarm;
        var byPrice = a.Vessel.Price.CompareTo(b.Vessel.Price);
        if (byPrice != 0) return byPrice;
        var byFluid = a.Filling.Fluid.CompareTo(b.Filling.Fluid);
        if (byFluid != 0) return byFluid;
        var byRoom = a.Vessel.Room.Volume.CompareTo(b.Vessel.Room.Volume);
        return byRoom != 0 ? byRoom : string.CompareOrdinal(a.Vessel.Vessel.Id, b.Vessel.Vessel.Id);
    }

    private static Message Why(RejectedVessel rejected) => WhyNot.With(Argument.Id("vessel", rejected.Vessel.Id), ("reason", rejected.Reasons[0].Message));
}
