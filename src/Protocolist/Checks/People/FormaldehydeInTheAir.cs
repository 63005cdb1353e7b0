using System.Globalization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Safety;
using Protocolist.Vessels.Air;
using static System.FormattableString;

namespace Protocolist.Checks.People;

/// <summary>The air over open formalin stays below the limits of the authorities.</summary>
internal static class FormaldehydeInTheAir
{
    /// <summary>What a hood lets through: an assumption of this project.</summary>
    private const double Hood = 0.05;

    public static PlanCheck Check { get; } = new(
        "formaldehyde-in-the-air",
        "people: formaldehyde is a carcinogen, and it sensitises",
        "one-box model and emission measured by Liu and others 2015 (a factor of 3 each way); limits: OSHA 29 CFR 1910.1048, Directive (EU) 2019/983, NIOSH Pocket Guide, ACGIH",
        Find)
    {
        Speaks =
        [
            new(Severity.Warning, "the reckoned air over the open vessel is above a limit that binds by law"),
            new(Severity.Note, "it is above limits that are advice only"),
        ],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.Air is not { } air || air.ChangesPerHour <= 0) yield break;
        var open = plan.Formalin.Where(s => s.Vessel is not null).MaxBy(s => s.Vessel!.Vessel.Shape.Footprint.SquareMeters * s.Fluid!.FormaldehydeGramsPerLitre!.Value);
        if (open is null) yield break;
        var source = FormaldehydeSource.Over(open.Vessel!.Vessel.Shape, open.Fluid!, air.HasHood ? Hood : 1);
        var work = Duration.FromMinutes(Math.Clamp(open.Step.HandsOn.TotalMinutes, 5, 480));
        if (AirEstimate.Of(source, new(air.Room, air.ChangesPerHour), work, AirLimits.Of("Directive (EU) 2019/983")!).Value is not { } estimate) yield break;
        var over = Solute.Formaldehyde.Limits.Where(l => l.Kind switch
        {
            ExposureKind.WorkingDay => estimate.ShiftMean.Ppm > l.Ppm,
            ExposureKind.FifteenMinutes or ExposureKind.Ceiling => estimate.Near.Ppm > l.Ppm,
            _ => false,
        }).ToList();
        if (over.Count == 0) yield break;
        var binding = over.Exists(l => l.Authority.StartsWith("OSHA", StringComparison.Ordinal) || l.Authority.StartsWith("Directive", StringComparison.Ordinal));
        var said = string.Join(", ", over.OrderBy(l => l.Ppm).Select(l => Invariant($"{l.Ppm:0.###} ppm {(l.Kind == ExposureKind.WorkingDay ? "a day" : "briefly")} ({l.Authority})")));
        var message = Invariant($"over the {open.Vessel.Vessel.Name} in '{open.Id}'{(air.HasHood ? " in the hood" : "")} about {Two(estimate.Near.Ppm)} ppm of formaldehyde for {work.Text()}, {Two(estimate.ShiftMean.Ppm)} as the mean of a day, each perhaps a third or three times as much; above {said}");
        var remedy = air.HasHood ? "cover it whenever nobody works at it, and have the air measured" : "work in a hood or outdoors, cover it whenever nobody works at it, and have the air measured";
        yield return (binding ? Finding.Warning("formaldehyde-in-the-air", message, remedy) : Finding.Note("formaldehyde-in-the-air", message, remedy)).At(open, "fluid", "volume");
    }

    /// <summary>Two figures: more would promise what a factor of three cannot keep.</summary>
    private static string Two(double ppm) => ppm.ToString("G2", CultureInfo.InvariantCulture) is var text && !text.Contains('E', StringComparison.Ordinal) ? text : ppm.ToString("0.####", CultureInfo.InvariantCulture);
}
