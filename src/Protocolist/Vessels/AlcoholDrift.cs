using Protocolist.Fluids.Contact;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>How vapour leaves a jar that leaks.</summary>
internal enum Leak
{
    /// <summary>Through still air in a gap: water vapour, being lighter, passes twice as fast as alcohol's.</summary>
    Diffusive,

    /// <summary>With moving air, as from an open or breathing jar: both vapours pass alike, so that the alcohol falls faster.</summary>
    Breathing,
}

/// <summary>What is to be added so that a jar that lost fluid is full and right again.</summary>
/// <param name="DrawOff">What to draw off first: zero unless the jar is so weak that no alcohol is strong enough.</param>
/// <param name="Add">What to add.</param>
/// <param name="AddStrength">Strength of what is added, % by volume.</param>
internal sealed record TopUp(Volume DrawOff, Volume Add, double AddStrength);

/// <summary>How ethanol weakens as a jar loses volume, and how to bring it back.</summary>
internal static class AlcoholDrift
{
    // Diffusion in air near 22 °C, cm²/s (usual tables, from memory). Only their ratio matters here.
    private const double EthanolInAir = 0.119, WaterInAir = 0.249;

    /// <summary>The strength left when a part of the volume is gone.</summary>
    /// <remarks>
    /// Worked out with <see cref="Vapour.OverMixture(double, double)"/>: the two escapes bracket what jars do. PET jars are an exception: water passes
    /// their wall
    /// faster and the alcohol grows stronger (Canadian Museum of Nature, in a collections mailing list of 2007).
    /// </remarks>
    /// <param name="massFraction">Ethanol by mass at the start, 0.05 to 0.97.</param>
    /// <param name="lost">Share of the volume lost, 0 to 0.9.</param>
    /// <param name="humidity">Relative humidity of the room, 0 to 0.9.</param>
    /// <param name="temperatureC">Temperature of the room in °C, 0 to 40.</param>
    /// <param name="leak">How the vapour leaves.</param>
    /// <param name="density">Density in kg/m³ of the ethanol's mass fraction.</param>
    /// <returns>Ethanol by mass, 0 to 1.</returns>
    /// <exception cref="ArgumentNullException">The density is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number lies outside its range.</exception>
    public static double MassFractionAfter(
        double massFraction, double lost, double humidity, double temperatureC, Leak leak, Func<double, double> density)
    {
        ArgumentNullException.ThrowIfNull(density);
        Require(massFraction is >= 0.05 and <= 0.97, nameof(massFraction), massFraction);
        Require(lost is >= 0 and <= 0.9, nameof(lost), lost);
        Require(humidity is >= 0 and <= 0.9, nameof(humidity), humidity);
        Require(temperatureC is >= 0 and <= 40, nameof(temperatureC), temperatureC);

        double ethanol = massFraction, water = 1 - massFraction;
        double overEthanol = Vapour.Ethanol(temperatureC), overWater = Vapour.Water(temperatureC);
        var target = (1 - lost) / density(massFraction);
        while (true)
        {
            var before = Space(ethanol, water);
            if (before <= target) return ethanol / (ethanol + water);
            var first = Loss(ethanol, water);
            var time = 0.002 * ethanol / first.Ethanol; // small steps: 0.2 % of the alcohol at a time, by the midpoint
            var (ethanolRate, waterRate) = Loss(ethanol - first.Ethanol * time / 2, water - first.Water * time / 2);
            double nextEthanol = ethanol - ethanolRate * time, nextWater = water - waterRate * time;
            var after = Space(nextEthanol, nextWater);
            if (after < target)
            {
                var part = (before - target) / (before - after);
                (nextEthanol, nextWater) = (ethanol - ethanolRate * time * part, water - waterRate * time * part);
                return nextEthanol / (nextEthanol + nextWater);
            }

            (ethanol, water) = (nextEthanol, nextWater);
        }

        double Space(double e, double w) => (e + w) / density(e / (e + w));

        (double Ethanol, double Water) Loss(double e, double w)
        {
            var vapour = Vapour.OverMixture(e / (e + w), overEthanol, overWater);
            var (forEthanol, forWater) = leak == Leak.Diffusive ? (EthanolInAir, WaterInAir) : (1, 1);
            return (
                forEthanol * vapour.Ethanol * Vapour.EthanolMolar,
                forWater * (vapour.Water - humidity * overWater) * Vapour.WaterMolar);
        }
    }

    /// <summary>What brings a jar back to its level and strength, volumes taken as adding up (they shrink by up to 4 %: measure again after mixing).</summary>
    /// <param name="full">The volume wanted.</param>
    /// <param name="left">The volume left, more than 0 and not above <paramref name="full"/>.</param>
    /// <param name="strength">Its strength by density meter or hydrometer, % by volume.</param>
    /// <param name="target">The strength wanted, % by volume.</param>
    /// <param name="strongest">The strongest alcohol at hand, % by volume, above <paramref name="target"/>.</param>
    /// <returns>The top-up; nothing to add where the jar is full and strong enough. A jar that is too strong is given water (strength 0 at least).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume or strength contradicts the others.</exception>
    public static TopUp TopUp(Volume full, Volume left, double strength, double target, double strongest = 96)
    {
        double whole = full.Liters, rest = left.Liters;
        Require(rest > 0 && rest <= whole, nameof(left), rest);
        Require(target is > 0 and < 100, nameof(target), target);
        Require(strongest > target && strongest <= 100, nameof(strongest), strongest);
        Require(strength is >= 0 and <= 100, nameof(strength), strength);
        var missing = whole - rest;
        var alcohol = target * whole - strength * rest;
        if (missing > 0 && alcohol / missing is var needed && needed >= 0 && needed <= strongest) return new(Volume.Zero, full - left, needed);
        if (missing <= 0 && alcohol == 0) return new(Volume.Zero, Volume.Zero, target);

        // Too weak for what is at hand, or too strong for water alone: draw off until the strongest (or water) fills the rest.
        var added = alcohol > 0 ? strongest : 0;
        var draw = (alcohol - added * missing) / (added - strength);
        return new(Volume.FromLiters(draw), Volume.FromLiters(missing + draw), added);
    }

    private static void Require(bool holds, string name, double value)
    {
        if (!holds) throw new ArgumentOutOfRangeException(name, value, "out of the range that the documentation gives");
    }
}
