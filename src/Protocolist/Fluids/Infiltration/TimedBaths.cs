using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Substances;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Fluids.Infiltration;

/// <summary>A body as diffusion sees it.</summary>
/// <param name="Shape">Its shape.</param>
/// <param name="HalfThickness">Half-thickness or radius, of the thickest part that is not opened.</param>
/// <param name="TissueWater">Fluid volume inside it.</param>
internal sealed record SoakingBody(DiffusionShape Shape, Length HalfThickness, Volume TissueWater);

/// <summary>What one bath does within its time, from the slowest to the fastest diffusion thinkable.</summary>
/// <param name="Bath">The bath.</param>
/// <param name="Lasts">Its time.</param>
/// <param name="ReachedSlow">Share of the way to equilibrium that the body's average comes, slowest.</param>
/// <param name="ReachedFast">The same, fastest.</param>
/// <param name="InsideSlow">Mean strength inside the body at the end, %vol, slowest.</param>
/// <param name="InsideFast">The same, fastest.</param>
/// <param name="JarSlow">Strength of jar and body once they do come to rest, %vol, if the baths before went slowest.</param>
/// <param name="JarFast">The same, if they went fastest.</param>
internal sealed record BathOutcome(
    AlcoholBath Bath, Duration Lasts, double ReachedSlow, double ReachedFast, double InsideSlow, double InsideFast, double JarSlow, double JarFast);

/// <summary>A series of baths with their times: what it reaches, and whether its times suffice for so thick a body.</summary>
internal static class TimedBaths
{
    /// <summary>From this share of the way on a bath counts as done (common practice; the 90 to 95 % times agree with soaking times in use).</summary>
    public const double Done = 0.90;

    private static readonly Phrase TooShort = new(
        "bath-too-short",
        "after {time} in {alcohol} a body of {half} half-thickness has come {slow:0} to {fast:0} % of the way, "
        + "to {inside-slow:0} to {inside-fast:0} %vol inside; the last jar comes to rest at {jar-slow:0.0} to {jar-fast:0.0} %vol");

    private static readonly Phrase LeaveLonger = new(
        "bath-too-short.remedy", "leave it {needed}, slit the body, or measure the last jar after some weeks and correct it");

    /// <summary>Follows a series of baths.</summary>
    /// <param name="body">The body.</param>
    /// <param name="baths">Baths and their times, in order, of one alcohol.</param>
    /// <returns>What each bath does.</returns>
    public static ImmutableArray<BathOutcome> Follow(SoakingBody body, IEnumerable<(AlcoholBath Bath, Duration Lasts)> baths)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(baths);
        var outcomes = ImmutableArray.CreateBuilder<BathOutcome>();
        var tissue = body.TissueWater.CubicMeters;
        LiquidInWater? scale = null;
        double slow = 0, fast = 0;
        foreach (var (bath, lasts) in baths)
        {
            var now = AlcoholBaths.LiquidOf(bath.Alcohol);
            if (scale is not null && scale != now) throw new ArgumentException("Ethanol and isopropanol are not mixed.", nameof(baths));
            scale = now;
            var reached = Diffusion.Reached(body.Shape, body.HalfThickness, lasts.TotalSeconds, now.Active);
            var restSlow = AlcoholBaths.Equilibrium(now, tissue, slow, bath);
            var restFast = AlcoholBaths.Equilibrium(now, tissue, fast, bath);
            slow += reached.Slow * (restSlow - slow);
            fast += reached.Fast * (restFast - fast);
            outcomes.Add(new(
                bath, lasts, reached.Slow, reached.Fast, Percent(now, slow), Percent(now, fast), Percent(now, restSlow), Percent(now, restFast)));
        }

        return outcomes.ToImmutable();
    }

    /// <summary>Says where a series' times are too short for the body and what strength the last jar comes to because of it.</summary>
    /// <param name="body">The body.</param>
    /// <param name="outcomes">The outcomes of <see cref="Follow"/>.</param>
    /// <returns>One warning <c>bath-too-short</c> a bath that may end before <see cref="Done"/>; none where all is well.</returns>
    public static ImmutableArray<Finding> Judge(SoakingBody body, ImmutableArray<BathOutcome> outcomes)
    {
        ArgumentNullException.ThrowIfNull(body);
        if (outcomes.IsDefaultOrEmpty) return [];
        var last = outcomes[^1];
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var outcome in outcomes)
        {
            if (outcome.ReachedSlow >= Done) continue;
            var needed = Diffusion.Time(body.Shape, body.HalfThickness, Done, AlcoholBaths.LiquidOf(outcome.Bath.Alcohol).Active);
            findings.Add(Finding.Warning(
                "bath-too-short",
                TooShort.With(
                    ("time", outcome.Lasts), ("alcohol", outcome.Bath.Alcohol.Name), ("half", body.HalfThickness),
                    ("slow", 100 * outcome.ReachedSlow), ("fast", 100 * outcome.ReachedFast),
                    ("inside-slow", outcome.InsideSlow), ("inside-fast", outcome.InsideFast),
                    ("jar-slow", last.JarSlow), ("jar-fast", last.JarFast)),
                LeaveLonger.With(("needed", needed))));
        }

        return findings.ToImmutable();
    }

    private static double Percent(LiquidInWater scale, double massFraction) => 100 * scale.VolumeFraction(massFraction);
}
