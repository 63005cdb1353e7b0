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

    /// <summary>Less than this, or than this share of the jar, is neither topped up by reckoning nor drawn off: the project's choice.</summary>
    private static readonly Volume Least = Volume.FromMilliliters(1);
    private const double LeastShare = 0.02;

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
    public static Message Of(Draft draft, StockDay day)
    {
        var house = draft.Steps.LastOrDefault(s => s.Kind == StageKind.House);
        if (house is not { Fluid: { } fluid, Vessel: { } fitted }) return default;
        var full = fitted.FluidVolume;
        var how = fluid.Substance == Substance.Ethanol ? Ethanol(fluid, full, day) : SameOnly.With(("fluid", fluid.Name));
        return TenthDown.With(("lost", full * Lost), ("how", how), ("rate", RateOf(fitted.Vessel, fluid)));
    }

    private static Message RateOf(Vessel vessel, Fluid fluid)
    {
        if (vessel.LossPerYear is { } measured) return Measured.With(("loss", measured));
        var loss = Evaporation.Of(vessel.Closure, vessel.Seal);
        return loss.PerYear is { } perYear && !fluid.HasFormaldehyde ? Published.With(("loss", perYear), ("source", loss.Source)) : default;
    }

    /// <summary>Alcohol goes first, so that what is left is weak: what is added is stronger than what is kept.</summary>
    private static Message Ethanol(Fluid fluid, Volume full, StockDay day)
    {
        var celsius = Math.Clamp(day.Stock.Bench.Temperatures.Room.DegreesCelsius, 0, 40);
        if (fluid.EthanolMassPercent is not (>= 5 and <= 97) || fluid.EthanolVolumePercent is not (> 0 and < 90)) return Same.With(("fluid", fluid.Name));
        var left = AlcoholDrift.MassFractionAfter(
            fluid.EthanolMassPercent.Value / 100,
            Lost,
            Humidity,
            celsius,
            Leak.Breathing,
            w => EthanolWater.Density(w, celsius));
        var strength = Fluid.Ethanol(100 * left, StrengthBasis.Mass).AlcoholVolumePercent;
        if (full * Lost < Least || StrongestOn(day, fluid) is not { } strongest) return Same.With(("fluid", fluid.Name));
        var topUp = AlcoholDrift.TopUp(full, full * (1 - Lost), strength, fluid.AlcoholVolumePercent, strongest);
        var isTrifle = topUp.DrawOff > Volume.Zero && (topUp.DrawOff < Least || topUp.DrawOff < full * LeastShare);
        if (isTrifle) topUp = new(Volume.Zero, full * Lost, topUp.AddStrength);
        return Stronger.With(
            ("left", strength),
            ("first", topUp.DrawOff > Volume.Zero ? DrawOff.With(("volume", topUp.DrawOff)) : default),
            ("add", topUp.Add),
            ("strength", topUp.AddStrength));
    }

    /// <summary>The strongest of it on the bench, %vol; what is usually sold where no stock is listed; null where none is stronger than what is kept.</summary>
    private static double? StrongestOn(StockDay day, Fluid kept)
    {
        const double Sold = 96;
        if (day.Stock.Bench.Stock.IsEmpty) return Sold;
        var strongest = kept.AlcoholVolumePercent;
        foreach (var on in day.Fluids)
        {
            if (on.Material is { IsSpent: false, Fluid: { } fluid } && fluid.Substance == kept.Substance)
                strongest = Math.Max(strongest, fluid.AlcoholVolumePercent);
        }

        return strongest > kept.AlcoholVolumePercent ? strongest : null;
    }
}
