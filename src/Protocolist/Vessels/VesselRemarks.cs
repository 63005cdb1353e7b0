using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Contact;
using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>What has to be said about one vessel: materials, closure, weight and pressure. Errors reject it.</summary>
internal static class VesselRemarks
{
    /// <summary>Gauge pressure in kPa above which a sealed jar is warned of: the project's choice, just above what 10 % of headspace over alcohol gives.</summary>
    private const double WarnPressure = 50;

    private static readonly Phrase TooHeavy = new(
        "vessel-too-heavy-to-lift", "'{vessel}' weighs {mass:0.0 kg} full; {people|one person|two people} should lift {limit:0 kg} at most");

    private static readonly Phrase TrolleyOrSmaller = new("vessel-too-heavy-to-lift.remedy-carried-full", "use a trolley or hoist, or a smaller vessel");
    private static readonly Phrase FillWhereItStands = new("vessel-too-heavy-to-lift.remedy", "fill it where it stands, and drain it before it is moved");

    /// <summary>What can be said before it is filled.</summary>
    public static ImmutableArray<Finding> Of(Vessel vessel, FitRequest request)
    {
        Finding?[] all =
        [
            Material(vessel, vessel.Wall, VesselPart.Wall, request),
            vessel.Closure == Closure.Open ? null : Material(vessel, vessel.Lid, VesselPart.Lid, request),
            Material(vessel, vessel.Seal, VesselPart.Seal, request),
            Closing(vessel, request),
        ];
        return [.. all.OfType<Finding>()];
    }

    /// <summary>What can be said of it full.</summary>
    public static ImmutableArray<Finding> Of(FittedVessel fitted, FitRequest request)
    {
        Finding?[] all = [Weight(fitted, request), Shelf(fitted, request), UnknownMass(fitted), Pressure(fitted), Raised(request)];
        return [.. all.OfType<Finding>()];
    }

    private static Finding? Material(Vessel vessel, VesselMaterial material, VesselPart part, FitRequest request)
    {
        var verdict = MaterialFitness.Judge(material, part, request.Fluid);
        var what = Invariant($"the {part.ToString().ToLowerInvariant()} of '{vessel.Id}' is {Words.Of(material)}");
        return verdict switch
        {
            { Grade: MaterialGrade.Unfit } => Finding.Error(
                "vessel-material-unfit", Invariant($"{what}: {verdict.Reason} ({verdict.Source})"), "glass, or polypropylene with a polyethylene foam or PTFE-faced liner"),
            { Grade: MaterialGrade.ForAWhile } when request.Use == VesselUse.Keeping => Finding.Warning(
                "vessel-material-not-for-keeping", Invariant($"{what}: {verdict.Reason} ({verdict.Source})"), "keep the specimen in glass, with a polypropylene or glass lid"),
            _ => null,
        };
    }

    private static Finding? Closing(Vessel vessel, FitRequest request)
    {
        if (request.Use != VesselUse.Keeping) return null;
        var alcohol = request.Fluid.Substance.IsVolatile;
        return vessel.Closure switch
        {
            Closure.Open or Closure.LooseLid => Finding.Warning(
                "closure-not-for-keeping", Invariant($"'{vessel.Id}' has no lid that seals"), "close it with a lid that seals, or use another vessel"),
            Closure.WireBail when alcohol => Finding.Warning(
                "closure-not-for-keeping",
                Invariant($"'{vessel.Id}' closes with a wire bail, which held alcohol worst in a survey of 2596 jars (Diptera collection, Natural History Museum London, 2025)"),
                "use a screw lid with a foam or PTFE-faced liner"),
            _ => null,
        };
    }

    private static Finding? Weight(FittedVessel fitted, FitRequest request)
    {
        var limit = Lifting.Limit(request.Carriers);
        if (fitted.TotalMass <= limit) return null;
        var message = TooHeavy.With(Argument.Id("vessel", fitted.Vessel.Id), ("mass", fitted.TotalMass), ("people", request.Carriers), ("limit", limit));
        return request.CarriedFull
            ? Finding.Error("vessel-too-heavy-to-lift", message, TrolleyOrSmaller)
            : Finding.Warning("vessel-too-heavy-to-lift", message, FillWhereItStands);
    }

    private static Finding? Shelf(FittedVessel fitted, FitRequest request) => request.ShelfBears is { } bears && fitted.TotalMass > bears
        ? Finding.Warning(
            "vessel-too-heavy-for-shelf",
            Invariant($"'{fitted.Vessel.Id}' weighs {fitted.TotalMass.Kilograms:0.0} kg full; the shelf bears {bears.Kilograms:0.0} kg"),
            "stand it on the floor or on a stronger shelf")
        : null;

    private static Finding? UnknownMass(FittedVessel fitted) => fitted.Vessel.EmptyMass is not null ? null : Finding.Note(
        "vessel-mass-unknown",
        Invariant($"the empty mass of '{fitted.Vessel.Id}' is not known, so {fitted.TotalMass.Kilograms:0.0} kg counts fluid and specimen alone"),
        "weigh it once and write it down");

    private static Finding? Pressure(FittedVessel fitted)
    {
        if (!fitted.Vessel.IsGasTight || fitted.SealedPressure is { Kilopascals: <= WarnPressure }) return null;
        return Finding.Warning(
            "sealed-vessel-builds-pressure",
            fitted.SealedPressure is { } pressure
                ? Invariant($"closed tight, '{fitted.Vessel.Id}' comes under {pressure.Kilopascals:0} kPa on the hottest day")
                : Invariant($"closed tight, '{fitted.Vessel.Id}' is filled to the brim on the hottest day and bursts or leaks"),
            "leave more headspace, keep it cooler, or give it a small plugged port");
    }

    private static Finding? Raised(FitRequest request) =>
        request.HeadspaceShare is { } asked && Filling.HeadspaceOf(request) is var kept && kept > asked
            ? Finding.Note(
                "headspace-raised",
                Invariant($"{asked * 100:0.0} % of headspace would run over at {request.Hottest.DegreesCelsius:0.#} degC; {kept * 100:0.0} % is left instead"))
            : null;
}
