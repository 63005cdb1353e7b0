using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Spicules and ossicles by which an animal is named do not lie in formalin, buffered or not.</summary>
internal static class FormalinOnSpicules
{
    private static readonly Phrase Lies = new(
        SpiculesInFormalin.Id,
        "'{step}' has {group:a}, which is named by its spicules or ossicles, in {fluid} {time}{most}");

    private static readonly Phrase ForGood = new("formalin-on-spicules.for-good", "for good");
    private static readonly Phrase For = new("formalin-on-spicules.for", "for {time:vs week}");
    private static readonly Phrase WeekIsMost = new("formalin-on-spicules.most", "; a week is the most");
    private static readonly Phrase KeepInEthanol = new("formalin-on-spicules.remedy-keep", "keep it in ethanol of 70 to 80 %vol");
    private static readonly Phrase FixInEthanol = new("formalin-on-spicules.remedy", "fix it in ethanol, or take a piece into ethanol first");
    private static readonly Phrase MoveOn = new("formalin-on-spicules.remedy-week", "move it to ethanol after a week, or keep a piece in ethanol beside it");

    public static PlanCheck Check { get; } = new(
        SpiculesInFormalin.Id,
        "the specimen: even buffered formalin turns acid in time and dissolves the fine parts by which the animal is named",
        SpiculesInFormalin.Source,
        Find)
    {
        Severities =
        [
            new(Severity.Error, "an animal named by its spicules or ossicles is kept for good in buffered formalin; sea squirts are only warned of"),
            new(Severity.Warning, "it passes through buffered formalin; a sea squirt for more than 7 d, or for good"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Formalin)
        {
            var (isForGood, lasts) = (step.Kind == StageKind.House, QuantityRange.Point(step.Lasts.TotalSeconds, Dimension.OfTime));
            if (!SpiculesInFormalin.Suffers(plan.Group, step.Fluid!, isForGood, lasts)) continue;
            var bearsAWeek = SpiculesInFormalin.BearsAWeek(plan.Group);
            var message = Lies.With(
                Argument.Id("step", step.Id),
                ("group", plan.Group.Name),
                ("fluid", step.Fluid!.Name),
                ("time", isForGood ? ForGood : For.With(("time", lasts), ("week", SpiculesInFormalin.Week))),
                ("most", bearsAWeek ? WeekIsMost : default(Message)));
            found = found.Add((isForGood && !bearsAWeek
                ? Finding.Error(SpiculesInFormalin.Id, message, KeepInEthanol)
                : Finding.Warning(SpiculesInFormalin.Id, message, bearsAWeek ? MoveOn : FixInEthanol)).At(step, "fluid", "last"));
        }

        return found;
    }
}
