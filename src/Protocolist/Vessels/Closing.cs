using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Vessels;

/// <summary>How the final vessel is closed.</summary>
internal enum ClosingMethod
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
/// <param name="Way">How it is done.</param>
/// <param name="Evaporation">What is known of its loss.</param>
/// <param name="Port">What a small plugged port in a lid corner would mean; <c>null</c> where the lid takes none.</param>
internal sealed record VesselClosing(ClosingWay Way, EvaporationRate Evaporation, PortAdvice? Port);

/// <summary>A way of closing, the same for every vessel that is closed so.</summary>
/// <param name="Method">How.</param>
/// <param name="Reason">Why.</param>
/// <param name="Source">Who says so.</param>
/// <param name="Materials">What is needed.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="CuresOpen">How long the sealant cures in the open before the vessel is closed for good; zero where there is none.</param>
/// <param name="RenewAfterYears">After how many years it is renewed; <c>null</c> where it is not.</param>
internal sealed record ClosingWay(
    ClosingMethod Method, Message Reason, string Source, ImmutableArray<Message> Materials, ImmutableArray<Message> Steps,
    Duration CuresOpen, int? RenewAfterYears);

/// <summary>A plugged port of a lid, weighed: what it is good for, and what it lets evaporate.</summary>
/// <param name="OpenPerYear">What evaporates in a year if the plug is forgotten.</param>
/// <param name="IsWorthwhile">Whether it is advised here.</param>
/// <param name="Advice">The advice in words.</param>
internal sealed record PortAdvice(Volume OpenPerYear, bool IsWorthwhile, Message Advice);

/// <summary>Chooses how to close the final vessel. Common practice unless a source is named.</summary>
internal static class Closing
{
    private static readonly Phrase LidPlate = new("closing.lid-plate", "lid plate of glass");

    private static readonly ClosingWay Stopper = new(
        ClosingMethod.GroundStopper,
        new Phrase(
            "closing.ground-stopper",
            "a ground stopper that fits needs no sealant; petroleum jelly slips into the jar and silicone keeps poorly on old ground glass"),
        "Conserve O Gram 11/4; Conservation DistList, February 2011",
        [],
        [
            new Phrase("closing.ground-stopper.wipe", "Wipe stopper and neck dry."),
            new Phrase("closing.ground-stopper.set", "Set the stopper with a quarter turn."),
            new Phrase("closing.ground-stopper.turn", "Turn it a little at every yearly check, so that it does not seize."),
        ],
        Duration.Zero,
        null);

    private static readonly ClosingWay OwnLid = new(
        ClosingMethod.OwnLid,
        new Phrase(
            "closing.own-lid", "its own lid with a sound liner seals better than anything laid over it; no tape over lids, for tape hides cracks and rust"),
        "SPNHC best-practice wiki; Callomon, collections mailing list 2004",
        [new Phrase("closing.liner", "new liner or gasket, if the old one is hard or torn")],
        [
            new Phrase("closing.own-lid.wipe", "Wipe thread and rim dry."),
            new Phrase("closing.own-lid.close", "Close firmly by hand."),
            new Phrase("closing.own-lid.mark", "Mark the level on the outside."),
        ],
        Duration.Zero,
        10);

    private static readonly ClosingWay Tape = new(
        ClosingMethod.Tape,
        new Phrase("closing.tape", "the lid will be opened again; tape comes off without harm"),
        "common practice",
        [LidPlate, new Phrase("closing.sealing-tape", "polyester or PTFE-faced sealing tape")],
        [
            new Phrase("closing.tape.wipe", "Wipe rim and lid dry and free of grease."),
            new Phrase("closing.tape.around", "Tape all around in one piece, over a clean overlap."),
            new Phrase("closing.tape.date", "Write the date on the tape; renew it after about two years."),
        ],
        Duration.Zero,
        2);

    private static readonly ClosingWay Silicone = new(
        ClosingMethod.NeutralSilicone,
        new Phrase(
            "closing.silicone",
            "closed for good; neutral cure, because acetoxy silicone gives off acetic acid, which attacks metal and calcareous parts"),
        "common practice; Simmons 2014 for the cure (from memory)",
        [new Phrase("closing.sealant", "neutral-cure silicone, fresh"), LidPlate, new Phrase("closing.spacers", "spacers of 1 mm")],
        [
            new Phrase("closing.silicone.wipe", "Wipe rim and lid with alcohol; let them dry, well away from flames."),
            new Phrase(
                "closing.silicone.bead",
                "Lay a bead on the rim, level it with spacers, and let it cure open, the lid off, the fluid covered by a loose plate clear of the bead."),
            new Phrase("closing.silicone.lid", "Lay the lid on a second thin bead only after the first has cured."),
            new Phrase("closing.silicone.stand", "Leave the vessel standing for a week, and look for leaks before it goes on its shelf."),
        ],
        Duration.FromHours(48), // practice asks 24 to 48 h at least, and the longer end is safe
        null);

    private static readonly Phrase NoPort = new("port.none", "no port: there is little to gain, and left unplugged it would lose {loss:0 mL} a year");
    private static readonly Phrase Drill = new(
        "port.drill",
        "drill a 6 mm port in a lid corner and plug it with a PTFE-faced stopper: it spares the seal {pressure} on the hottest day; "
        + "left unplugged it would lose {loss:0 mL} a year, so check the plug whenever the level is read");
    private static readonly Phrase SealPressure = new("port.pressure", "{pressure:0 kPa}");
    private static readonly Phrase FullPush = new("port.full-push", "the full push of the fluid");

    /// <summary>Pressure in kPa on the hottest day from which a port pays: a tenth of a bar, the project's choice.</summary>
    /// <remarks>A sealed flat lid lifts at far less than a jar bursts.</remarks>
    private const double PressureForPort = 10;

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
            Closure.GroundStopper => new(Stopper, rate, null),
            Closure.ScrewLid or Closure.SnapLid or Closure.WireBail => new(OwnLid, rate, null),
            _ => new(openedAgain ? Tape : Silicone, rate, PortOf(fitted, fluid, openedAgain)),
        };
    }

    private static PortAdvice PortOf(FittedVessel fitted, Fluid fluid, bool openedAgain)
    {
        // 6 mm through a lid of 6 mm: what a glazier drills easily (common practice).
        var hole = Length.FromMillimeters(6);
        var open = Evaporation.OpenPortPerYear(hole, hole, fluid, Temperature.FromDegreesCelsius(20));
        var isTight = !(fitted.SealedPressure?.Kilopascals <= PressureForPort);
        var isWorthwhile = !openedAgain && (isTight || fluid.Substance.IsVolatile);
        if (!isWorthwhile) return new(open, false, NoPort.With(("loss", open)));
        var spared = fitted.SealedPressure is { } pressure ? SealPressure.With(("pressure", pressure)) : FullPush;
        return new(open, true, Drill.With(("pressure", spared), ("loss", open)));
    }
}
