using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Vessels;

namespace Protocolist.Planning.Provisioning;

/// <summary>How the body is held in its final vessel, and how that is closed.</summary>
internal static class FinalVessel
{
    /// <summary>The step that houses the body, with its vessel; null where none is planned or none fits.</summary>
    public static DraftStep? HouseOf(Draft draft) => draft.Steps.LastOrDefault(s => s.Kind == StageKind.House && s.Vessel is not null);

    public static Mount? MountFor(Draft draft)
    {
        if (HouseOf(draft) is not { Vessel: { } vessel, Fluid: { } fluid }) return null;
        var body = draft.Body;
        var shows = body.Specimen.IntendedUse is IntendedUse.Display;
        return Mounting.Choose(BearingOf(body, fluid.DensityAt(FilledAt)), shows, FluidInVessel.KindOf(fluid), body.TotalLength.Nominal, vessel.Vessel.Shape.Height);
    }

    public static VesselClosing? ClosingFor(Draft draft, DraftStep seal)
    {
        if (HouseOf(draft) is not { Vessel: { } vessel, Fluid: { } fluid }) return null;

        // A protocol that seals with silicone means for good; anything else is opened again.
        var openedAgain = seal.Details.GetValueOrDefault("closure") != "neutral-cure silicone";
        return Closing.Choose(vessel, FluidInVessel.KindOf(fluid), openedAgain, FluidInVessel.AlcoholMassFraction(fluid));
    }

    private const double FilledAt = 20;

    /// <summary>What the body does once the air is pressed out of it: by its group's density against the fluid's.</summary>
    private static Bearing BearingOf(BodyMeasure body, double fluidDensity) =>
        body.Group.IsGelatinous ? Bearing.Sags
        : body.Group.DensityKgPerM3.Nominal < fluidDensity ? Bearing.Floats
        : Bearing.Sinks;
}
