using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>The figures that formulas start from: the body's measures, the choices, the bench.</summary>
internal static class GivenFigures
{
    public static IEnumerable<Figure> Of(BodyMeasure body, Bench bench, Protocol protocol, ImmutableSortedDictionary<string, string> wanted, ImmutableSortedDictionary<string, string> choices)
    {
        yield return Measure(body, "specimen.mass", body.Mass, m => m.Kilograms);
        yield return Measure(body, "specimen.volume", body.Volume, v => v.CubicMeters);
        yield return Measure(body, "specimen.lot-volume", body.LotVolume, v => v.CubicMeters);
        yield return Measure(body, "specimen.length", body.Length, l => l.Meters);
        yield return Measure(body, "specimen.half-thickness", body.HalfThickness, l => l.Meters);
        foreach (var name in (string[])["specimen.lot-mass", "specimen.count"])
            yield return Given(name, PlanInputs.Measure(body, name), name == "specimen.count" ? "given" : "mass of one animal, or of the lot where it was weighed together", "") with { Inputs = name == "specimen.count" ? [] : ["specimen.mass", "specimen.count"] };
        yield return Given("specimen.water-share", PlanInputs.Measure(body, "specimen.water-share"), $"the group '{body.Group.Id}'", body.Group.WaterFraction.Source);
        foreach (var trait in (string[])["condition", "life-stage", "intended-use"])
            yield return new($"specimen.{trait}", PlanInputs.Trait(body.Specimen, trait), "given", [], "");
        foreach (var (name, option) in choices)
            yield return new($"choice.{name}", option, wanted.ContainsKey(name) ? "chosen" : "the protocol's default", [], protocol.ToString());
        yield return Given("bench.temperature", QuantityRange.Point(bench.Temperatures.Room.Kelvins, Dimension.OfTemperature), "the bench", "");
        yield return Given("bench.cold", QuantityRange.Point(bench.Temperatures.Cold.Kelvins, Dimension.OfTemperature), "the bench", "");
    }

    private static Figure Measure<T>(BodyMeasure body, string name, Estimate<T> estimate, Func<T, double> si)
        where T : struct
    {
        var point = PlanInputs.Measure(body, name);
        var range = new QuantityRange(Math.Min(si(estimate.Low), si(estimate.High)), Math.Max(si(estimate.Low), si(estimate.High)), point.Dimension);
        return Given(name, point, estimate.How.ToString(), estimate.Source) with
        {
            Note = estimate.IsMeasured ? "" : $"estimated; it may be {Measurable.Text(range)}",
        };
    }

    private static Figure Given(string id, QuantityRange value, string how, string source) =>
        new(id, Measurable.Text(value), how, [], source) { Exact = ExactText.Of(value) };
}
