using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Contact;
using Protocolist.Quantities;

namespace Protocolist.Vessels;

/// <summary>What has to be said about one vessel: room, materials, closure, weight and pressure.</summary>
internal static class VesselRemarks
{
    private static readonly Phrase NotAtHand = new("vessel-not-at-hand", "there is no '{vessel}' left");
    private static readonly Phrase NotAtHandRemedy = new("vessel-not-at-hand.remedy", "buy one, or empty one");
    private static readonly Phrase Unfit = new("vessel-material-unfit", "the {part} of '{vessel}' is {material}: {reason} ({source})");
    private static readonly Phrase UnfitRemedy =
        new("vessel-material-unfit.remedy", "glass, or polypropylene with a polyethylene foam or PTFE-faced liner");
    private static readonly Phrase NotForKeeping = new("vessel-material-not-for-keeping", Unfit.English);
    private static readonly Phrase NotForKeepingRemedy =
        new("vessel-material-not-for-keeping.remedy", "keep the specimen in glass, with a polypropylene or glass lid");
    private static readonly Phrase NoSealingLid = new("closure-not-for-keeping", "'{vessel}' has no lid that seals");
    private static readonly Phrase NoSealingLidRemedy = new("closure-not-for-keeping.remedy", "close it with a lid that seals, or use another vessel");
    private static readonly Phrase WireBail = new(
        "closure-not-for-keeping.wire-bail",
        "'{vessel}' closes with a wire bail, which held alcohol worst in a survey of 2596 jars (Diptera collection, Natural History Museum London, 2025)");
    private static readonly Phrase WireBailRemedy =
        new("closure-not-for-keeping.remedy-wire-bail", "use a screw lid with a foam or PTFE-faced liner");
    private static readonly Phrase Heavy = new(
        "vessel-too-heavy-to-lift", "'{vessel}' weighs {mass:0.0 kg} full; {people|one person|two people} should lift {limit:0 kg} at most");
    private static readonly Phrase CarryRemedy = new("vessel-too-heavy-to-lift.remedy-carried", "use a trolley or hoist, or a smaller vessel");
    private static readonly Phrase LiftRemedy = new("vessel-too-heavy-to-lift.remedy", "fill it where it stands, and drain it before it is moved");
    private static readonly Phrase Shelf = new("vessel-too-heavy-for-shelf", "'{vessel}' weighs {mass:0.0 kg} full; the shelf bears {bears:0.0 kg}");
    private static readonly Phrase ShelfRemedy = new("vessel-too-heavy-for-shelf.remedy", "stand it on the floor or on a stronger shelf");
    private static readonly Phrase MassUnknown = new(
        "vessel-mass-unknown", "the empty mass of '{vessel}' is not known, so {mass:0.0 kg} counts fluid and specimen alone");
    private static readonly Phrase MassUnknownRemedy = new("vessel-mass-unknown.remedy", "weigh it once and write it down");
    private static readonly Phrase Pressure = new(
        "sealed-vessel-builds-pressure", "closed tight, '{vessel}' comes under {pressure:0 kPa} on the hottest day");
    private static readonly Phrase Brimful = new(
        "sealed-vessel-builds-pressure.full", "closed tight, '{vessel}' is filled to the brim on the hottest day and bursts or leaks");
    private static readonly Phrase PressureRemedy =
        new("sealed-vessel-builds-pressure.remedy", "leave more headspace, keep it cooler, or give it a small plugged port");
    private static readonly Phrase Raised = new(
        "headspace-raised", "{asked:0.0 %} of headspace would run over at {hottest:0.# degC}; {kept:0.0 %} is left instead");

    private static readonly Phrase MuchFluid = new(
        "ratio-too-high", "'{vessel}' takes {fluid:0.0# L} of fluid, {ratio:0} times the body; {most:0} times are plenty");
    private static readonly Phrase MuchFluidRemedy = new("ratio-too-high.remedy", "take a smaller vessel, or lay several of a kind in it together");

    /// <summary>Each of the remarks in words, in their order.</summary>
    public static ImmutableArray<Finding> Of(FitRemark remarks, in Fit fit, FitDemand demand)
    {
        if (remarks == FitRemark.None) return [];
        var findings = new List<Finding>();
        for (var bit = 1; bit <= (int)FitRemark.MuchFluid; bit <<= 1)
        {
            if (remarks.HasFlag((FitRemark)bit)) findings.Add(Of((FitRemark)bit, fit, fit.Vessel.Vessel, demand));
        }

        return [.. findings];
    }

    private static Finding Of(FitRemark remark, in Fit fit, Vessel vessel, FitDemand demand) => remark switch
    {
        FitRemark.TooNarrow => Filling.TooNarrow(vessel, demand),
        FitRemark.TooShallow => fit.Filling.TooShallow(fit.Vessel.Room, demand),
        FitRemark.TooSmallForRatio => fit.Filling.TooSmallForRatio(demand),
        FitRemark.NotAtHand => Finding.Error("vessel-not-at-hand", NotAtHand.With(Id(vessel)), NotAtHandRemedy),
        FitRemark.WallUnfit or FitRemark.LidUnfit or FitRemark.SealUnfit =>
            Finding.Error("vessel-material-unfit", Material(Unfit, remark, vessel, demand), UnfitRemedy),
        FitRemark.WallNotForKeeping or FitRemark.LidNotForKeeping or FitRemark.SealNotForKeeping =>
            Finding.Warning("vessel-material-not-for-keeping", Material(NotForKeeping, remark, vessel, demand), NotForKeepingRemedy),
        FitRemark.NoSealingLid => Finding.Warning("closure-not-for-keeping", NoSealingLid.With(Id(vessel)), NoSealingLidRemedy),
        FitRemark.WireBail => Finding.Warning("closure-not-for-keeping", WireBail.With(Id(vessel)), WireBailRemedy),
        FitRemark.TooHeavyToCarry => Finding.Error("vessel-too-heavy-to-lift", TooHeavy(fit, demand), CarryRemedy),
        FitRemark.TooHeavyToLift => Finding.Warning("vessel-too-heavy-to-lift", TooHeavy(fit, demand), LiftRemedy),
        FitRemark.TooHeavyForShelf => Finding.Warning(
            "vessel-too-heavy-for-shelf", Shelf.With(Id(vessel), ("mass", fit.TotalMass), ("bears", demand.Request.ShelfBears!.Value)), ShelfRemedy),
        FitRemark.MassUnknown => Finding.Note("vessel-mass-unknown", MassUnknown.With(Id(vessel), ("mass", fit.TotalMass)), MassUnknownRemedy),
        FitRemark.BuildsPressure => Finding.Warning("sealed-vessel-builds-pressure", Sealed(fit, vessel), PressureRemedy),
        FitRemark.MuchFluid => Finding.Note("ratio-too-high", MuchFluid.With(
            Id(vessel), ("fluid", UnitsNet.Volume.FromCubicMeters(fit.Filling.Fluid)), ("ratio", fit.Filling.Fluid / demand.Body.Volume),
            ("most", demand.MostRatio)), MuchFluidRemedy),
        _ => Finding.Note("headspace-raised", Raised.With(
            Argument.Of("asked", demand.AskedHeadspace(fit.Vessel.Room)!.Value, Dimension.None), ("hottest", demand.Request.Hottest),
            Argument.Of("kept", fit.Filling.HeadspaceShare, Dimension.None))),
    };

    private static Argument Id(Vessel vessel) => Argument.Id("vessel", vessel.Id);

    private static Message Material(Phrase phrase, FitRemark remark, Vessel vessel, FitDemand demand)
    {
        var (part, material) = remark switch
        {
            FitRemark.WallUnfit or FitRemark.WallNotForKeeping => (VesselPart.Wall, vessel.Wall),
            FitRemark.LidUnfit or FitRemark.LidNotForKeeping => (VesselPart.Lid, vessel.Lid),
            _ => (VesselPart.Seal, vessel.Seal),
        };
        var verdict = MaterialFitness.Judge(material, part, demand.Request.Fluid)!;
        return phrase.With(
            ("part", MaterialNames.Of(part)), Id(vessel), ("material", MaterialNames.Of(material)), ("reason", verdict.Reason), ("source", verdict.Source));
    }

    private static Message TooHeavy(in Fit fit, FitDemand demand)
    {
        var carriers = demand.Request.Carriers;
        return Heavy.With(Id(fit.Vessel.Vessel), ("mass", fit.TotalMass), ("people", carriers), ("limit", Lifting.Limit(carriers)));
    }

    private static Message Sealed(in Fit fit, Vessel vessel) => fit.SealedPressure is { } kilopascals
        ? Pressure.With(Id(vessel), ("pressure", UnitsNet.Pressure.FromKilopascals(kilopascals)))
        : Brimful.With(Id(vessel));
}
