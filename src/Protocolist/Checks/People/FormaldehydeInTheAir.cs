using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Vessels.Air;

namespace Protocolist.Checks.People;

/// <summary>The air over open formalin stays below the limits of the authorities.</summary>
internal static class FormaldehydeInTheAir
{
    private const string Id = "formaldehyde-in-the-air";

    /// <summary>What a hood lets through: an assumption of this project.</summary>
    private const double Hood = 0.05;

    private static readonly Phrase Over = new(
        Id,
        "over the {vessel} in '{step}'{hood} about {near:0.####} ppm of formaldehyde for {time}, {mean:0.####} as the mean of a day, "
        + "each perhaps a third or three times as much; above {limits}");

    private static readonly Phrase InTheHood = new("formaldehyde-in-the-air.hood", " in the hood");
    private static readonly Phrase ADay = new("formaldehyde-in-the-air.day", "{ppm:0.###} ppm a day ({authority})");
    private static readonly Phrase Briefly = new("formaldehyde-in-the-air.briefly", "{ppm:0.###} ppm briefly ({authority})");
    private static readonly Phrase CoverIt = new("formaldehyde-in-the-air.remedy-hood", "cover it whenever nobody works at it, and have the air measured");
    private static readonly Phrase UseAHood = new(
        "formaldehyde-in-the-air.remedy",
        "work in a hood or outdoors, cover it whenever nobody works at it, and have the air measured");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: formaldehyde is a carcinogen, and it sensitises",
        "one-box model and emission measured by Liu and others 2015 (a factor of 3 each way); limits: OSHA 29 CFR 1910.1048, Directive (EU) 2019/983, "
        + "NIOSH Pocket Guide, ACGIH",
        Find)
    {
        Severities =
        [
            new(Severity.Warning, "the reckoned air over the open vessel is above a limit that binds by law"),
            new(Severity.Note, "it is above limits that are advice only"),
        ],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Air is not { } air || air.ChangesPerHour <= 0 || Worst(plan) is not { } open) return [];
        var source = FormaldehydeSource.Over(open.Vessel!.Vessel.Shape, open.Fluid!, air.HasHood ? Hood : 1);
        var work = Duration.FromMinutes(Math.Clamp(open.Step.HandsOn.TotalMinutes, 5, 480));
        if (AirEstimate.Of(source, new(air.Room, air.ChangesPerHour), work, AirLimits.Of("Directive (EU) 2019/983")!).Value is not { } estimate) return [];
        var over = Solute.Formaldehyde.Limits.Where(l => l.Kind switch
        {
            ExposureKind.WorkingDay => estimate.ShiftMean.Ppm > l.Ppm,
            ExposureKind.FifteenMinutes or ExposureKind.Ceiling => estimate.Near.Ppm > l.Ppm,
            _ => false,
        }).ToList();
        if (over.Count == 0) return [];
        var binds = over.Exists(l => l.IsLaw);
        var message = Over.With(
            ("vessel", open.Vessel.Vessel.Name),
            Argument.Id("step", open.Id),
            ("hood", air.HasHood ? InTheHood : default(Message)),
            ("near", TwoFigures(estimate.Near.Ppm)),
            ("time", work),
            ("mean", TwoFigures(estimate.ShiftMean.Ppm)),
            Argument.Messages("limits", over.OrderBy(l => l.Ppm).Select(Limit)));
        var remedy = air.HasHood ? CoverIt : UseAHood;
        return [(binds ? Finding.Warning(Id, message, remedy) : Finding.Note(Id, message, remedy)).At(open, "fluid", "volume")];
    }

    /// <summary>The open vessel that gives off most.</summary>
    private static ReviewStep? Worst(ReviewCase plan)
    {
        var (worst, most) = (default(ReviewStep), 0.0);
        foreach (var step in plan.Formalin)
        {
            if (step.Vessel is not { } vessel) continue;
            var gives = vessel.Vessel.Shape.Footprint.SquareMeters * step.Fluid!.FormaldehydeGramsPerLitre!.Value;
            if (worst is null || gives > most) (worst, most) = (step, gives);
        }

        return worst;
    }

    private static Message Limit(ExposureLimit limit) =>
        (limit.Kind == ExposureKind.WorkingDay ? ADay : Briefly).With(("ppm", limit.Ppm), ("authority", limit.Authority));

    /// <summary>Two figures: more would promise what a factor of three cannot keep.</summary>
    private static double TwoFigures(double ppm)
    {
        if (!(ppm > 0)) return 0;
        var unit = Math.Pow(10, Math.Floor(Math.Log10(ppm)) - 1);
        return Math.Round(ppm / unit, MidpointRounding.AwayFromZero) * unit;
    }
}
