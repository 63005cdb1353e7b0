using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Densities;
using Protocolist.Planning.Drafting;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What the final vessel loses, and what to have ready for topping it up.</summary>
internal static class TopUpAmount
{
    /// <summary>
    /// A jar is topped up when a tenth is gone: the project's choice, before the body stands out and while the strength can still be restored.
    /// </summary>
    private const double Lost = 0.1;

    private const double Humidity = 0.5; // a usual room

    private static readonly Phrase TenthDown = new("top-up", "a tenth down is {lost}: {how}{rate}");
    private static readonly Phrase Same = new("top-up.same", "top up with {fluid}");
    private static readonly Phrase SameOnly = new("top-up.same-only", "top up with {fluid}, nothing of another strength or buffering");
    private static readonly Phrase Measured = new("top-up.measured", "; about {loss} a year is lost, as measured here");
    private static readonly Phrase Published = new("top-up.published", "; about {loss} a year is lost through such a closure ({source})");

    private static readonly Phrase Stronger = new(
        "top-up.stronger",
        "what is left may have sunk to {left:0} %vol; {first}add {add} of ethanol {strength:0} %vol, "
        + "or what the reading calls for (Raoult's law with activity, worst case)");

    private static readonly Phrase DrawOff = new("top-up.draw-off", "draw off {volume}, then ");

    /// <summary>Amounts in a sentence or two; nothing where vessel or fluid is not known.</summary>
    public static Message Of(Draft draft, Bench bench)
    {
        var house = draft.Steps.LastOrDefault(s => s.Kind == StageKind.House);
        if (house is not { Fluid: { } fluid, Vessel: { } fitted }) return default;
        var full = fitted.FluidVolume;
        var how = fluid.Substance == Substance.Ethanol ? Ethanol(fluid, full, bench) : SameOnly.With(("fluid", fluid.Name));
        return TenthDown.With(("lost", full * Lost), ("how", how), ("rate", RateOf(fitted.Vessel, fluid)));
    }

    private static Message RateOf(Vessel vessel, Fluid fluid)
    {
        if (vessel.LossPerYear is { } measured) return Measured.With(("loss", measured));
        var loss = Evaporation.Of(vessel.Closure, vessel.Seal);
        return loss.PerYear is { } perYear && !fluid.HasFormaldehyde ? Published.With(("loss", perYear), ("source", loss.Source)) : default;
    }

    /// <summary>Alcohol goes first, so that what is left is weak: what is added is stronger than what is kept.</summary>
    private static Message Ethanol(Fluid fluid, Volume full, Bench bench)
    {
        var celsius = Math.Clamp(bench.Temperatures.Room.DegreesCelsius, 0, 40);
        if (fluid.EthanolMassPercent is not (>= 5 and <= 97) || fluid.EthanolVolumePercent is not (> 0 and < 90)) return Same.With(("fluid", fluid.Name));
        var left = AlcoholDrift.MassFractionAfter(
            fluid.EthanolMassPercent.Value / 100,
            Lost,
            Humidity,
            celsius,
            Leak.Breathing,
            w => EthanolWater.Density(w, celsius));
        var strength = Fluid.Ethanol(100 * left, StrengthBasis.Mass).AlcoholVolumePercent;
        var topUp = AlcoholDrift.TopUp(full, full * (1 - Lost), strength, fluid.AlcoholVolumePercent);
        return Stronger.With(
            ("left", strength),
            ("first", topUp.DrawOff > Volume.Zero ? DrawOff.With(("volume", topUp.DrawOff)) : default),
            ("add", topUp.Add),
            ("strength", topUp.AddStrength));
    }
}
