using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Measuring;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning.Drafting;

/// <summary>The figures that formulas start from: the body's measures, and the bench.</summary>
internal static class GivenFigures
{
    private static readonly Phrase AsGiven = new("figure.given", "given");
    private static readonly Phrase LotMassRule = new("figure.lot-mass", "mass of one animal, or of the lot where it was weighed together");
    private static readonly Phrase OfGroup = new("figure.group", "the group '{group}'");
    private static readonly Phrase OfBench = new("figure.bench", "the bench");
    private static readonly Phrase Estimated = new("figure.estimated", "estimated; it may be {range}");

    private static readonly FigureOrigin LotMass = new("specimen.lot-mass", ["specimen.mass", "specimen.count"], "") { Rule = LotMassRule };
    private static readonly FigureOrigin CountOfAnimals = new("specimen.count", [], "") { Rule = AsGiven };
    private static readonly FigureOrigin RoomTemperature = new("bench.temperature", [], "") { Rule = OfBench };
    private static readonly FigureOrigin ColdTemperature = new("bench.cold", [], "") { Rule = OfBench };

    private static readonly ImmutableArray<(string Trait, FigureOrigin Origin)> Traits =
        [.. ((string[])["condition", "life-stage", "intended-use"]).Select(t => (t, new FigureOrigin($"specimen.{t}", [], "") { Rule = AsGiven }))];

    /// <summary>How many there are, with that of the model of fixation.</summary>
    public static int Count => 12 + Traits.Length;

    public static void AddBody(BodyMeasure body, List<Figure> figures)
    {
        figures.Add(Measure(body, "specimen.mass", body.Mass, m => m.Kilograms));
        figures.Add(Measure(body, "specimen.volume", body.Volume, v => v.CubicMeters));
        figures.Add(Measure(body, "specimen.lot-volume", body.LotVolume, v => v.CubicMeters));
        figures.Add(Measure(body, "specimen.length", body.Length, l => l.Meters));
        figures.Add(Measure(body, "specimen.half-thickness", body.HalfThickness, l => l.Meters));
        figures.Add(LotMass.Of(SpecimenValues.Measure(body, LotMass.Id)));
        figures.Add(CountOfAnimals.Of(SpecimenValues.Measure(body, CountOfAnimals.Id)));
        figures.Add(new FigureOrigin("specimen.water-share", [], body.Group.WaterFraction.Source) { Rule = OfGroup.With(Argument.Id("group", body.Group.Id)) }
            .Of(SpecimenValues.Measure(body, "specimen.water-share")));
        foreach (var (trait, origin) in Traits) figures.Add(origin.Of(SpecimenValues.Trait(body.Specimen, trait)));
    }

    public static void AddBench(Bench bench, List<Figure> figures)
    {
        figures.Add(RoomTemperature.Of(bench.Temperatures.Room.Kelvins, Dimension.OfTemperature));
        figures.Add(ColdTemperature.Of(bench.Temperatures.Cold.Kelvins, Dimension.OfTemperature));
    }

    private static Figure Measure<T>(BodyMeasure body, string name, Estimate<T> estimate, Func<T, double> si)
        where T : struct
    {
        var point = SpecimenValues.Measure(body, name);
        var range = new QuantityRange(Math.Min(si(estimate.Low), si(estimate.High)), Math.Max(si(estimate.Low), si(estimate.High)), point.Dimension);
        return new FigureOrigin(name, [], estimate.Source)
        {
            Rule = estimate.How,
            Note = estimate.IsMeasured ? default : Estimated.With(("range", range)),
        }.Of(point);
    }
}
