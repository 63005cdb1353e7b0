using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>The figures that formulas start from: the body's measures, the choices, the bench.</summary>
internal static class GivenFigures
{
    private static readonly Phrase AsGiven = new("figure.given", "given");
    private static readonly Phrase LotMassRule = new("figure.lot-mass", "mass of one animal, or of the lot where it was weighed together");
    private static readonly Phrase OfGroup = new("figure.group", "the group '{group}'");
    private static readonly Phrase Chosen = new("figure.chosen", "chosen");
    private static readonly Phrase Default = new("figure.default", "the protocol's default");
    private static readonly Phrase OfBench = new("figure.bench", "the bench");
    private static readonly Phrase Estimated = new("figure.estimated", "estimated; it may be {range}");

    private static readonly FigureOrigin LotMass = new("specimen.lot-mass", ["specimen.mass", "specimen.count"], "") { Rule = LotMassRule };
    private static readonly FigureOrigin Count = new("specimen.count", [], "") { Rule = AsGiven };
    private static readonly FigureOrigin RoomTemperature = new("bench.temperature", [], "") { Rule = OfBench };
    private static readonly FigureOrigin ColdTemperature = new("bench.cold", [], "") { Rule = OfBench };

    private static readonly ImmutableArray<(string Trait, FigureOrigin Origin)> Traits =
        [.. ((string[])["condition", "life-stage", "intended-use"]).Select(t => (t, new FigureOrigin($"specimen.{t}", [], "") { Rule = AsGiven }))];

    public static IEnumerable<Figure> Of(BodyMeasure body, Bench bench, Protocol protocol, ImmutableSortedDictionary<string, string> wanted, ImmutableSortedDictionary<string, string> choices)
    {
        yield return Measure(body, "specimen.mass", body.Mass, m => m.Kilograms);
        yield return Measure(body, "specimen.volume", body.Volume, v => v.CubicMeters);
        yield return Measure(body, "specimen.lot-volume", body.LotVolume, v => v.CubicMeters);
        yield return Measure(body, "specimen.length", body.Length, l => l.Meters);
        yield return Measure(body, "specimen.half-thickness", body.HalfThickness, l => l.Meters);
        yield return LotMass.Of(PlanInputs.Measure(body, LotMass.Id));
        yield return Count.Of(PlanInputs.Measure(body, Count.Id));
        yield return new FigureOrigin("specimen.water-share", [], body.Group.WaterFraction.Source) { Rule = OfGroup.With(Argument.Id("group", body.Group.Id)) }
            .Of(PlanInputs.Measure(body, "specimen.water-share"));
        foreach (var (trait, origin) in Traits) yield return origin.Of(PlanInputs.Trait(body.Specimen, trait));
        foreach (var (name, option) in choices)
            yield return new FigureOrigin($"choice.{name}", [], protocol.ToString()) { Rule = wanted.ContainsKey(name) ? Chosen : Default }.Of(option);
        yield return RoomTemperature.Of(bench.Temperatures.Room.Kelvins, Dimension.OfTemperature);
        yield return ColdTemperature.Of(bench.Temperatures.Cold.Kelvins, Dimension.OfTemperature);
    }

    private static Figure Measure<T>(BodyMeasure body, string name, Estimate<T> estimate, Func<T, double> si)
        where T : struct
    {
        var point = PlanInputs.Measure(body, name);
        var range = new QuantityRange(Math.Min(si(estimate.Low), si(estimate.High)), Math.Max(si(estimate.Low), si(estimate.High)), point.Dimension);
        return new FigureOrigin(name, [], estimate.Source) { Rule = estimate.How, Note = estimate.IsMeasured ? default : Estimated.With(("range", range)) }.Of(point);
    }
}
