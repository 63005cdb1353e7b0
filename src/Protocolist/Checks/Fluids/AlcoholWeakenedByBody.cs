using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>The water of the body, and baths too short for it, do not pull the final alcohol out of its band.</summary>
internal static class AlcoholWeakenedByBody
{
    /// <summary>What is kept: the lower ends of ethanol and isopropanol, as for the fluid poured in.</summary>
    private static double Lowest(Fluid alcohol) => alcohol.Substance.Keeping!.Low;

    public static PlanCheck Check { get; } = new(
        "alcohol-weakened-by-body",
        "the specimen: a jar filled at the right strength comes to rest below it, and nobody notices for years",
        "mass balance with contraction (OIML R 22) and diffusion into a cylinder (Crank 1975); one change, then test: Simmons 2009, Michonneau 2017",
        Find)
    {
        Speaks = [new(Severity.Warning, "by the slower of two reckonings the last jar comes to rest more than half a point below 65 %vol of ethanol, or 40 %vol of isopropanol")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid.IsAlcohol: true, Step.Volume: { } jar } house || plan.Alcohol.Any(s => s.Fluid!.Substance != house.Fluid.Substance)) yield break;
        var baths = new List<(AlcoholBath, Duration)>();
        foreach (var step in plan.Alcohol)
        {
            if (step.Kind is not (StageKind.Immerse or StageKind.Bath or StageKind.House) || step.Step.Volume is not { } volume) continue;
            var fillings = 1 + Math.Min(step.Step.Changes, 20);
            for (var i = 0; i < fillings; i++) baths.Add((new(step.Fluid!, volume), Duration.FromSeconds(step.Lasts.TotalSeconds / fillings)));
        }

        var body = new SoakingBody(DiffusionShape.Cylinder, plan.Depth, plan.Water);
        var outcomes = TimedBaths.Follow(body, baths);
        var (slow, fast) = (Math.Min(outcomes[^1].JarSlow, outcomes[^1].JarFast), Math.Max(outcomes[^1].JarSlow, outcomes[^1].JarFast));
        if (slow >= Lowest(house.Fluid) - 0.5) yield break;
        var before = outcomes.Length > 1 ? Invariant($"the baths before bring it to {outcomes[^2].InsideSlow:0} to {outcomes[^2].InsideFast:0} %vol inside, for {plan.Depth.Text()} to cross, and ") : "";
        var stronger = AlcoholBaths.LastBath(house.Fluid, plan.Water, jar, house.Fluid.AlcoholVolumePercent, outcomes.Length > 1 ? outcomes[^2].InsideSlow : 0);
        yield return Finding.Warning(
            "alcohol-weakened-by-body",
            Invariant($"{before}the body holds {plan.Water.Text()} of water: {jar.Text()} of {house.Fluid.Name} in '{house.Id}' come to rest at {Ends(slow, fast)} %vol, below {Lowest(house.Fluid):0}"),
            stronger is { } s && s <= 96
                ? Invariant($"fill it with {s:0} %vol, or change the fluid once after some weeks; then measure")
                : baths.Count > 1 ? "leave it longer in the baths, change the last fluid twice, and measure" : "put a bath before it, or change the fluid twice, and measure").At(house, "fluid", "volume").By("specimen.water-share", "specimen.lot-volume", "specimen.half-thickness").ByEach(plan.Alcohol.Where(s => s != house), "last");
    }

    private static string Ends(double low, double high)
    {
        var (from, to) = (Invariant($"{low:0.0}"), Invariant($"{high:0.0}"));
        return from == to ? from : $"{from} to {to}";
    }
}
