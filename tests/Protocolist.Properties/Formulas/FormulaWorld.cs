using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Formulas;
using Protocolist.Quantities;
using Protocolist.Testing;

namespace Protocolist.Properties.Formulas;

/// <summary>Ranges for every name of the sample vocabulary, ranges within them, and points within those.</summary>
internal sealed record FormulaWorld(
    ImmutableDictionary<string, QuantityRange> Wide,
    ImmutableDictionary<string, QuantityRange> Narrow,
    ImmutableDictionary<string, QuantityRange> Points,
    ImmutableDictionary<string, string> Words)
{
    public static FormulaScope Scope { get; } = new(
        FormulaVocabulary.Sample.Quantities.Select(n => KeyValuePair.Create(n.Key, FormulaType.Of(n.Value)))
            .Concat(FormulaVocabulary.Sample.Words.Select(n => KeyValuePair.Create(n.Key, FormulaType.OneOf(n.Value))))
            .ToDictionary(StringComparer.Ordinal),
        FormulaScope.Empty.Functions);

    /// <summary>The inputs of a whole class: ranges, and words that are not settled.</summary>
    public FormulaInputs OverAll => new(name => Wide.TryGetValue(name, out var range) ? FormulaValue.Of(range) : FormulaValue.AnyWord, OverAll: true);

    public FormulaInputs OverSome => new(name => Narrow.TryGetValue(name, out var range) ? FormulaValue.Of(range) : FormulaValue.Of(Words[name]), OverAll: true);

    /// <summary>One specimen, everything known.</summary>
    public FormulaInputs One => new(name => Points.TryGetValue(name, out var point) ? FormulaValue.Of(point) : FormulaValue.Of(Words[name]));

    /// <summary>One specimen, measurements known as ranges.</summary>
    public FormulaInputs OneEstimated => new(name => Narrow.TryGetValue(name, out var range) ? FormulaValue.Of(range) : FormulaValue.Of(Words[name]));

    public static Arbitrary<FormulaWorld> Worlds() => Arb.From(
        from ends in Gen.ArrayOf(Size, 2 * FormulaVocabulary.Sample.Quantities.Count)
        from shares in Gen.ArrayOf(Gen.OneOf(Gen.Elements(0.0, 0.5, 1.0), Gen.Choose(0, 1000).Select(n => n / 1000.0)), 3 * FormulaVocabulary.Sample.Quantities.Count)
        from picks in Gen.ArrayOf(Gen.Choose(0, 99), FormulaVocabulary.Sample.Words.Count)
        select Build(ends, shares, picks));

    public static Arbitrary<FormulaSketch> Sketches() => FormulaGenerator.WellTyped(FormulaVocabulary.Sample);

    private static readonly Gen<double> Size = Gen.Frequency(
        (8, Gen.Choose(-100, 10_000).Select(n => n / 100.0)),
        (2, Gen.Choose(1, 10_000).Select(n => n / 7.0)),
        (1, Gen.Elements(0, -1, 1e300, -1e300, 1e-300, double.Epsilon, double.PositiveInfinity, double.NegativeInfinity)));

    private static FormulaWorld Build(double[] ends, double[] shares, int[] picks)
    {
        ImmutableDictionary<string, QuantityRange> Empty() => ImmutableDictionary.Create<string, QuantityRange>(StringComparer.Ordinal);
        var (wide, narrow, points) = (Empty(), Empty(), Empty());
        var i = 0;
        foreach (var (name, dimension) in FormulaVocabulary.Sample.Quantities.OrderBy(n => n.Key, StringComparer.Ordinal))
        {
            var range = new QuantityRange(Math.Min(ends[2 * i], ends[(2 * i) + 1]), Math.Max(ends[2 * i], ends[(2 * i) + 1]), dimension);
            var (a, b) = (At(range, shares[3 * i]), At(range, shares[(3 * i) + 1]));
            var within = new QuantityRange(Math.Min(a, b), Math.Max(a, b), dimension);
            wide = wide.Add(name, range);
            narrow = narrow.Add(name, within);
            points = points.Add(name, QuantityRange.Point(At(within, shares[(3 * i) + 2]), dimension));
            i++;
        }

        var words = FormulaVocabulary.Sample.Words.OrderBy(w => w.Key, StringComparer.Ordinal)
            .Select((w, at) => KeyValuePair.Create(w.Key, w.Value[picks[at] % w.Value.Length]));
        return new(wide, narrow, points, ImmutableDictionary.CreateRange(StringComparer.Ordinal, words));
    }

    /// <summary>A point within a range, so far along it.</summary>
    private static double At(QuantityRange range, double share)
    {
        if (range.IsPoint || share == 0) return range.Low;
        if (share == 1) return range.High;
        var (low, high) = (Math.Clamp(range.Low, -1e300, 1e300), Math.Clamp(range.High, -1e300, 1e300));
        return Math.Clamp(low + (share * (high - low)), range.Low, range.High);
    }
}
