using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>What the final vessel loses, and what to have ready for topping it up.</summary>
internal static class TopUpAmount
{
    /// <summary>A jar is topped up when a tenth is gone: the project's choice, before the body stands out and while the strength can still be restored.</summary>
    private const double Lost = 0.1;

    private const double Humidity = 0.5; // a usual room

    /// <summary>Amounts in a sentence or two; empty where vessel or fluid is not known.</summary>
    public static string Of(Draft draft, Bench bench)
    {
        var house = draft.Steps.LastOrDefault(s => s.Kind == StageKind.House);
        if (house is not { Fluid: { } fluid, Vessel: { } fitted }) return "";
        var full = fitted.FluidVolume;
        var down = $"a tenth down is {Text(full * Lost)}";
        var topUp = fluid.Substance == Substance.Ethanol ? Ethanol(fluid, full, bench) : $"top up with {fluid.Name}, nothing of another strength or buffering";
        if (fitted.Vessel.LossPerYear is { } measured) return $"{down}: {topUp}; about {Text(measured)} a year is lost, as measured here";
        var loss = Evaporation.Of(fitted.Vessel.Closure, fitted.Vessel.Seal);
        var rate = loss.PerYear is { } perYear && !fluid.HasFormaldehyde ? $"; about {Text(perYear)} a year is lost through such a closure ({loss.Source})" : "";
        return $"{down}: {topUp}{rate}";
    }

    /// <summary>Alcohol goes first, so that what is left is weak: what is added is stronger than what is kept.</summary>
    private static string Ethanol(Fluid fluid, Volume full, Bench bench)
    {
        var celsius = Math.Clamp(bench.Temperatures.Room.DegreesCelsius, 0, 40);
        if (fluid.EthanolMassPercent is not (>= 5 and <= 97) || fluid.EthanolVolumePercent is not (> 0 and < 90)) return $"top up with {fluid.Name}";
        var left = AlcoholDrift.MassFractionAfter(fluid.EthanolMassPercent.Value / 100, Lost, Humidity, celsius, Leak.Breathing, w => Fluid.Ethanol(100 * w, StrengthBasis.Mass).DensityAt(Temperature.FromDegreesCelsius(celsius)).KilogramsPerCubicMeter);
        var strength = Fluid.Ethanol(100 * left, StrengthBasis.Mass).AlcoholVolumePercent;
        var topUp = AlcoholDrift.TopUp(full, full * (1 - Lost), strength, fluid.AlcoholVolumePercent);
        var first = topUp.DrawOff > Volume.Zero ? $"draw off {Text(topUp.DrawOff)}, then " : "";
        return FormattableString.Invariant($"what is left may have sunk to {strength:0} %vol; {first}add {Text(topUp.Add)} of ethanol {topUp.AddStrength:0} %vol, or what the reading calls for (Raoult's law with activity, worst case)");
    }

    private static string Text(Volume volume) => Measurable.Text(volume.CubicMeters, Dimension.OfVolume);
}
