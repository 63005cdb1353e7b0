using System.Collections.Immutable;
using Protocolist.Fluids;
using UnitsNet;
using static System.FormattableString;
using Duration = NodaTime.Duration;

namespace Protocolist.Vessels;

/// <summary>How the final vessel is closed.</summary>
public enum ClosingMethod
{
    /// <summary>The lid it has, screwed or snapped on.</summary>
    OwnLid,

    /// <summary>The lid laid on and taped, to be opened again.</summary>
    Tape,

    /// <summary>The lid bedded in silicone that cures neutrally, for good.</summary>
    NeutralSilicone,

    /// <summary>A ground stopper or ground lid, without sealant.</summary>
    GroundStopper,
}

/// <summary>A closing: what, why and how, what it lets evaporate, and when to look at it again.</summary>
/// <param name="Method">How.</param>
/// <param name="Reason">Why.</param>
/// <param name="Source">Who says so.</param>
/// <param name="Materials">What is needed.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="CuresOpen">How long the sealant cures in the open before the vessel is closed for good; zero where there is none.</param>
/// <param name="RenewAfterYears">After how many years it is renewed; <c>null</c> where it is not.</param>
/// <param name="Evaporation">What is known of its loss.</param>
/// <param name="Port">What a small plugged port in a lid corner would mean; <c>null</c> where the lid takes none.</param>
public sealed record VesselClosing(
    ClosingMethod Method, string Reason, string Source, ImmutableArray<string> Materials, ImmutableArray<string> Steps,
    Duration CuresOpen, int? RenewAfterYears, EvaporationRate Evaporation, PortAdvice? Port);

/// <summary>A plugged port of a lid, weighed: what it is good for, and what it lets evaporate.</summary>
/// <param name="Use">What it is good for.</param>
/// <param name="OpenPerYear">What evaporates in a year if the plug is forgotten.</param>
/// <param name="Worthwhile">Whether it is advised here.</param>
/// <param name="Advice">The advice in words.</param>
public sealed record PortAdvice(string Use, Volume OpenPerYear, bool Worthwhile, string Advice);

/// <summary>Chooses how to close the final vessel. Common practice unless a source is named.</summary>
public static class Closing
{
    /// <summary>Chooses.</summary>
    /// <param name="fitted">The filled vessel.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="openedAgain">Whether it will be opened again, for study or for change of fluid.</param>
    /// <returns>The closing.</returns>
    /// <exception cref="ArgumentNullException">The vessel is null.</exception>
    public static VesselClosing Choose(FittedVessel fitted, Fluid fluid, bool openedAgain)
    {
        ArgumentNullException.ThrowIfNull(fitted);
        var vessel = fitted.Vessel;
        var rate = Evaporation.Of(vessel.Closure, vessel.Seal);
        return vessel.Closure switch
        {
            Closure.GroundStopper => new(
                ClosingMethod.GroundStopper,
                "a ground stopper that fits needs no sealant; petroleum jelly slips into the jar and silicone keeps poorly on old ground glass",
                "Conserve O Gram 11/4; Conservation DistList, February 2011",
                [], ["Wipe stopper and neck dry.", "Set the stopper with a quarter turn.", "Turn it a little at every yearly check, so that it does not seize."],
                Duration.Zero, null, rate, null),
            Closure.ScrewLid or Closure.SnapLid or Closure.WireBail => new(
                ClosingMethod.OwnLid,
                "its own lid with a sound liner seals better than anything laid over it; no tape over lids, for tape hides cracks and rust",
                "SPNHC best-practice wiki; Callomon, collections mailing list 2004",
                ["new liner or gasket, if the old one is hard or torn"], ["Wipe thread and rim dry.", "Close firmly by hand.", "Mark the level on the outside."],
                Duration.Zero, 10, rate, null),
            _ when openedAgain => new(
                ClosingMethod.Tape,
                "the lid will be opened again; tape comes off without harm",
                "common practice",
                ["lid plate of glass", "polyester or PTFE-faced sealing tape"],
                ["Wipe rim and lid dry and free of grease.", "Tape all around in one piece, over a clean overlap.", "Write the date on the tape; renew it after about two years."],
                Duration.Zero, 2, rate, PortOf(fitted, fluid, openedAgain)),
            _ => new(
                ClosingMethod.NeutralSilicone,
                "closed for good; neutral cure, because acetoxy silicone gives off acetic acid, which attacks metal and calcareous parts",
                "common practice; Simmons 2014 for the cure (from memory)",
                ["neutral-cure silicone, fresh", "lid plate of glass", "spacers of 1 mm"],
                [
                    "Wipe rim and lid with alcohol; let them dry, well away from flames.",
                    "Lay a bead on the rim, level it with spacers, and let it cure open, the lid off, the fluid covered by a loose plate clear of the bead.",
                    "Lay the lid on a second thin bead only after the first has cured.",
                    "Leave the vessel standing for a week, and look for leaks before it goes on its shelf.",
                ],
                CuringTime, null, rate, PortOf(fitted, fluid, openedAgain)),
        };
    }

    /// <summary>48 hours: practice asks 24 to 48 h at least, and the longer end is safe.</summary>
    private static Duration CuringTime { get; } = Duration.FromHours(48);

    /// <summary>Pressure in kPa on the hottest day from which a port pays: the project's choice, a tenth of a bar; a sealed flat lid lifts at far less than a jar bursts.</summary>
    private const double PressureForPort = 10;

    private static PortAdvice PortOf(FittedVessel fitted, Fluid fluid, bool openedAgain)
    {
        // 6 mm through a lid of 6 mm: what a glazier drills easily (common practice).
        var hole = Length.FromMillimeters(6);
        var open = Evaporation.OpenPortPerYear(hole, hole, fluid, Temperature.FromDegreesCelsius(20));
        var pressure = fitted.SealedPressure?.Kilopascals ?? double.PositiveInfinity;
        var worthwhile = !openedAgain && (pressure > PressureForPort || fluid.Substance.IsVolatile);
        var felt = double.IsFinite(pressure) ? Invariant($"{pressure:0} kPa") : "the full push of the fluid";
        return new(
            "draining, refilling and testing without breaking the seal, and letting off the pressure of hot seasons",
            open,
            worthwhile,
            worthwhile
                ? Invariant($"drill a 6 mm port in a lid corner and plug it with a PTFE-faced stopper: it spares the seal {felt} on the hottest day; left unplugged it would lose {open.Milliliters:0} mL a year, so check the plug whenever the level is read")
                : Invariant($"no port: there is little to gain, and left unplugged it would lose {open.Milliliters:0} mL a year"));
    }
}
