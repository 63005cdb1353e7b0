using System.Collections.Immutable;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Vessels;

namespace Protocolist.Planning.Provisioning;

/// <summary>How the body is held in its final vessel, and how that is closed.</summary>
internal static class FinalVessel
{
    /// <summary>The step that houses the body, with its vessel; null where none is planned or none fits.</summary>
    public static DraftStep? HouseOf(ImmutableArray<DraftStep> steps)
    {
        for (var i = steps.Length - 1; i >= 0; i--)
        {
            if (steps[i] is { Kind: StageKind.House, Vessel: not null }) return steps[i];
        }

        return null;
    }

    public static Mount? MountFor(BodyMeasure body, PosedBody posed, ImmutableArray<DraftStep> steps)
    {
        if (HouseOf(steps) is not { Vessel: { } vessel, Fluid: { } fluid }) return null;
        var shows = body.Specimen.IntendedUse is IntendedUse.Display;
        var bearing = BearingOf(body, fluid.DensityAt(FilledAt));
        return Mounting.Choose(BodyKind.Of(body), bearing, shows, fluid, posed.Longest, vessel.Vessel.Shape.Height);
    }

    public static VesselClosing? ClosingFor(ImmutableArray<DraftStep> steps, SealWork seal)
    {
        if (HouseOf(steps) is not { Vessel: { } vessel, Fluid: { } fluid }) return null;

        // A protocol that seals with silicone means for good; anything else is opened again.
        var openedAgain = seal.With != Sealing.Silicone;
        return Closing.Choose(vessel, fluid, openedAgain);
    }

    private const double FilledAt = 20;

    /// <summary>What the body does once the air is let out of it: by its density against the fluid's.</summary>
    private static Bearing BearingOf(BodyMeasure body, double fluidDensity) =>
        body.Group.IsGelatinous ? Bearing.Sags
        : Floating.Of(body).FloatsEmptiedIn(fluidDensity) ? Bearing.Floats
        : Bearing.Sinks;
}
