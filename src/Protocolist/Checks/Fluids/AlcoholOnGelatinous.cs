using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Jelly goes to alcohol by small steps, or better not at all.</summary>
internal static class AlcoholOnGelatinous
{
    private static readonly Phrase TooBig = new(
        JellyInAlcohol.Id,
        "{group:a} of {water:0 %} water goes into alcohol, and '{step}' raises it by {points:0.# vs most} points at once; {most:0.# vs points} is the most");

    private static readonly Phrase Small = new(
        "alcohol-on-gelatinous.small-steps",
        "{group:a} of {water:0 %} water goes into alcohol, and '{step}' raises it by {points:0.# vs most} points at once; "
        + "no step is over {most:0.# vs points}, and it shrinks even so");

    private static readonly Phrase Climb = new("alcohol-on-gelatinous.remedy", "keep it in buffered formalin, or climb by steps of 10 points");
    private static readonly Phrase Formalin = new("alcohol-on-gelatinous.remedy-formalin", "keep it in buffered formalin where nothing forbids it");

    public static PlanCheck Check { get; } = new(
        JellyInAlcohol.Id,
        "the specimen: alcohol draws the water out of jelly, which shrinks to a shred",
        JellyInAlcohol.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Error, "a jelly goes into alcohol, and one step raises it by more than 10 points of %vol"),
            new(Severity.Warning, "a jelly goes into alcohol, by steps of 10 points at the most"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Alcohol.IsEmpty || !JellyInAlcohol.Shrinks(plan.Group, plan.Alcohol[0].Fluid!)) return [];
        var (before, largest, at) = (0.0, default(Rise), plan.Alcohol[0]);
        foreach (var step in plan.Alcohol)
        {
            var rise = new Rise(before, step.Fluid!.AlcoholVolumePercent);
            if (rise.Points > largest.Points) (largest, at) = (rise, step);
            before = rise.To;
        }

        var isTooBig = JellyInAlcohol.IsTooBig(largest);
        var message = (isTooBig ? TooBig : Small).With(
            ("group", plan.Group.Name),
            Argument.Of("water", plan.Group.WaterFraction.Nominal, default),
            Argument.Id("step", at.Id),
            ("points", largest.Points),
            ("most", JellyInAlcohol.Most));
        var finding = isTooBig ? Finding.Error(JellyInAlcohol.Id, message, Climb) : Finding.Warning(JellyInAlcohol.Id, message, Formalin);
        return [finding.ByEach(plan.Alcohol, "fluid").By("specimen.water-share") with { Subject = at.Id }];
    }
}
