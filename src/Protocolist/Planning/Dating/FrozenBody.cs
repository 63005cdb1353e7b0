using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Dating;

/// <summary>
/// The thawing of this body by its size: longer than the protocol's own time where that would leave it frozen inside, shorter where a small body would lie
/// in water for a day for nothing.
/// </summary>
internal static class FrozenBody
{
    private const string FigureId = "model.thawing";

    /// <summary>Nobody plans a thawing by the minute, nor one of no time at all. The project's choice.</summary>
    private const double Grain = 5;
    private static readonly Duration Shortest = Duration.FromMinutes(15);

    private static readonly Phrase Front = new("model.thawing", "a front of melting through the half-thickness, at {temperature}");
    private static readonly Phrase ThawsLonger = new("thaws-longer", "a body this thick takes {time} to thaw through at {cold}, and '{step}' lasts so long");
    private static readonly Phrase FeelIt =
        new("thaws-longer.remedy", "feel whether it bends before going on; a cold running shower shortens it, warm water spoils it");

    public static Draft Thawed(Draft draft, Bench bench, List<Finding> findings)
    {
        if (draft.Body.Specimen.Condition != Condition.Frozen) return draft;
        foreach (var step in draft.Steps.Where(s => s.Kind == StageKind.Thaw && s.Progress is null))
        {
            var medium = step.Fluid is null ? ThawMedium.StillAir : step.Work is SoakWork { Runs: true } ? ThawMedium.RunningWater : ThawMedium.StillWater;
            var celsius = bench.Temperatures.Cold.DegreesCelsius;
            var time = Thawing.Of(draft.Body.HalfThickness.Nominal.Meters, ShapeOf(draft.Body), medium, celsius, draft.Body.Group.WaterFraction.Nominal);
            findings.AddRange(time.Findings.Select(f => f with { Subject = step.Id }));
            if (time.Most == Duration.Zero) continue;
            var range = new QuantityRange(time.Least.TotalSeconds, time.Most.TotalSeconds, Dimension.OfTime);
            draft = draft with
            {
                Figures = draft.Figures.Add(FigureOf(range, bench.Temperatures.Cold)),
                Steps = draft.Steps.Replace(step, Lasting(step, time)),
            };
            if (time.Likely > step.Least)
            {
                var message = ThawsLonger.With(("time", range), ("cold", bench.Temperatures.Cold), Argument.Id("step", step.Id));
                findings.Add(Finding.Note(ThawsLonger.Id, message, FeelIt) with { Subject = step.Id });
            }
        }

        return draft;
    }

    private static DraftStep Lasting(DraftStep step, ThawTime time)
    {
        var least = Duration.FromMinutes(Grain * Math.Ceiling(Duration.Max(time.Likely, Shortest).TotalMinutes / Grain));
        var most = step.Most is { } longest ? Duration.Max(longest, Duration.Max(time.Most, least)) : (Duration?)null;
        return step with { Least = least, Most = most, Figures = step.Figures.Add(FigureId) };
    }

    private static Figure FigureOf(QuantityRange time, Temperature around) =>
        new FigureOrigin(FigureId, ["specimen.half-thickness", "specimen.water-share"], Thawing.Source) { Rule = Front.With(("temperature", around)) }.Of(time);

    /// <summary>A body less than half as high as it is wide lies like a slab; one about as long as thick is round. The project's choice.</summary>
    private static ThawShape ShapeOf(BodyMeasure body)
    {
        double height = body.Height.Nominal.Meters, width = body.Width.Nominal.Meters, length = body.Length.Nominal.Meters;
        var (thin, wide) = (Math.Min(height, width), Math.Max(height, width));
        return thin < wide / 2 ? ThawShape.Slab : length < 1.5 * wide ? ThawShape.Sphere : ThawShape.Cylinder;
    }
}
