using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Infiltration;
using Protocolist.Quantities;
using Protocolist.Rules;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks.Fluids;

/// <summary>The water of the body, and baths too short for it, do not pull the final alcohol out of its band.</summary>
internal static class AlcoholWeakenedByBody
{
    /// <summary>More changes than this change nothing any more.</summary>
    private const int MostChanges = 20;

    /// <summary>What is sold: no bath is mixed stronger, %vol.</summary>
    private const double Strongest = 96;

    private static readonly Phrase Weakened = new(
        StrengthAtRest.Id,
        "{before}the body holds {water} of water: {jar} of {fluid} in '{step}' come to rest at {rest:0.0 %vol}, below {least:0}");

    private static readonly Phrase Before = new(
        "alcohol-weakened-by-body.before",
        "the baths before bring it to {inside:0 %vol} inside, for {depth} to cross, and ");

    private static readonly Phrase Stronger = new(
        "alcohol-weakened-by-body.remedy",
        "fill it with {stronger:0 %vol}, or change the fluid once after some weeks; then measure");

    private static readonly Phrase Longer = new(
        "alcohol-weakened-by-body.remedy-longer",
        "leave it longer in the baths, change the last fluid twice, and measure");

    private static readonly Phrase Bath = new("alcohol-weakened-by-body.remedy-bath", "put a bath before it, or change the fluid twice, and measure");

    public static PlanCheck Check { get; } = new(
        StrengthAtRest.Id,
        "the specimen: a jar filled at the right strength comes to rest below it, and nobody notices for years",
        StrengthAtRest.Source,
        Find)
    {
        Severities =
        [
            new(
                Severity.Warning,
                "by the slower of two reckonings the last jar comes to rest more than half a point below 65 %vol of ethanol, or 40 %vol of isopropanol"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid.IsAlcohol: true, Volume: { } jar } house) return [];
        var fillings = new List<(AlcoholBath, Duration)>();
        foreach (var step in plan.Alcohol)
        {
            if (OneAlcohol.Clash(step.Fluid!, house.Fluid)) return [];
            if (step.Kind is not (StageKind.Immerse or StageKind.Bath or StageKind.House) || step.Volume is not { } volume) continue;
            var times = 1 + Math.Min(step.Step.Changes, MostChanges);
            for (var i = 0; i < times; i++) fillings.Add((new(step.Fluid!, volume), step.Lasts / times));
        }

        var least = KeepingStrength.Band(house.Fluid, isForDna: false).Low;
        var rest = StrengthAtRest.Of(plan.Depth, plan.Water, fillings);
        if (!StrengthAtRest.IsBelow(least, rest)) return [];
        var message = Weakened.With(
            ("before", fillings.Count > 1 ? Before.With(("inside", Percent(rest.InsideSlow, rest.InsideFast)), ("depth", plan.Depth)) : default(Message)),
            ("water", plan.Water),
            ("jar", jar),
            ("fluid", house.Fluid.Name),
            Argument.Id("step", house.Id),
            ("rest", Percent(rest.Low, rest.High)),
            ("least", least));
        var stronger = AlcoholBaths.LastBath(house.Fluid, plan.Water, jar, house.Fluid.AlcoholVolumePercent, rest.InsideSlow);
        Message remedy = stronger is <= Strongest and var enough ? Stronger.With(("stronger", Percent(enough, enough))) : fillings.Count > 1 ? Longer : Bath;
        return [Finding.Warning(StrengthAtRest.Id, message, remedy)
            .At(house, "fluid", "volume")
            .By("specimen.water-share", "specimen.lot-volume", "specimen.half-thickness")
            .ByEach(plan.Alcohol.Where(s => s != house), "last")];
    }

    private static QuantityRange Percent(double one, double other) => new(Math.Min(one, other) / 100, Math.Max(one, other) / 100, Dimension.OfShareByVolume);
}
