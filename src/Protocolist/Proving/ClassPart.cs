using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>
/// A stretch of a class along its main measure: the bounds of every name over all specimens in it, and real specimens of it as witnesses.
/// Halves are made when asked for and kept, so that all claims about a protocol share them.
/// </summary>
internal sealed class ClassPart
{
    /// <summary>
    /// How often a stretch is halved before a question stays open. The project's choice: 32 stretches, a fifteenth apart in a class from 2 to 20.
    /// </summary>
    private const int Deepest = 5;

    private readonly Line _line;
    private readonly int _depth;
    private ImmutableArray<ClassPart> _halves;
    private ImmutableArray<BodyMeasure> _witnesses;

    private ClassPart(Line line, QuantityRange stretch, IReadOnlyDictionary<string, QuantityRange> bounds, int depth) =>
        (_line, Stretch, Bounds, _depth, Number) = (line, stretch, bounds, depth, line.Parts++);

    /// <summary>Which of the parts of its class it is.</summary>
    public int Number { get; }

    /// <summary>From where to where it goes, in the main measure.</summary>
    public QuantityRange Stretch { get; }

    /// <summary>Name → bounds over every specimen of the stretch.</summary>
    public IReadOnlyDictionary<string, QuantityRange> Bounds { get; }

    /// <summary>Both halves; none where it is fine enough.</summary>
    public ImmutableArray<ClassPart> Halves => _halves.IsDefault ? _halves = Split() : _halves;

    /// <summary>
    /// Specimens that lie in it: of the whole class the smallest, a middling and the largest one, of smaller stretches the smallest and the middling one.
    /// </summary>
    public ImmutableArray<BodyMeasure> Witnesses => _witnesses.IsDefault ? _witnesses = [.. Points().Select(_line.Specimen).OfType<BodyMeasure>()] : _witnesses;

    /// <summary>The whole class; null where it limits nothing that leads to a size.</summary>
    public static ClassPart? Whole(SpecimenClass taxon, TaxonGroup group)
    {
        var (measure, stretch) = ClassBounds.MainMeasure(taxon);
        return Of(new(taxon, group, measure), taxon, stretch, 0);
    }

    private ImmutableArray<ClassPart> Split()
    {
        if (_depth == Deepest || Stretch.IsPoint) return [];
        var middle = Middle(Stretch);
        return [.. new[] { Part(Stretch.Low, middle), Part(middle, Stretch.High) }.OfType<ClassPart>()];
    }

    private ClassPart? Part(double low, double high)
    {
        var stretch = new QuantityRange(low, high, Stretch.Dimension);
        return Of(_line, _line.Taxon with { Limits = _line.Taxon.Limits.SetItem(_line.Measure, stretch) }, stretch, _depth + 1);
    }

    private static ClassPart? Of(Line line, SpecimenClass taxon, QuantityRange stretch, int depth) =>
        line.Measured(stretch.Low) is { } small && line.Measured(stretch.High) is { } large
            ? new(line, stretch, ClassBounds.Of(taxon, line.Group, small, large), depth)
            : null;

    /// <summary>The high end of a class is not in it.</summary>
    private IEnumerable<double> Points() => _depth == 0
        ? [Stretch.Low, Middle(Stretch), Stretch.Low + (0.99 * (Stretch.High - Stretch.Low))]
        : [Stretch.Low, Middle(Stretch)];

    /// <summary>Sizes are spread by factors.</summary>
    private static double Middle(QuantityRange stretch) => Math.Sqrt(stretch.Low * stretch.High);

    /// <summary>A specimen's size in the main measure, as a person would give it.</summary>
    public Message Describe(BodyMeasure body) => ClassBounds.Describe(body, _line.Measure, _line.Group);

    /// <summary>What all parts of a class share: where one ends another begins, so that each size is measured once.</summary>
    private sealed class Line(SpecimenClass taxon, TaxonGroup group, string measure)
    {
        private readonly Dictionary<double, BodyMeasure?> _bodies = [];

        public SpecimenClass Taxon => taxon;

        public TaxonGroup Group => group;

        public string Measure => measure;

        public int Parts { get; set; }

        public BodyMeasure? Measured(double size) =>
            _bodies.TryGetValue(size, out var known) ? known : _bodies[size] = ClassBounds.Measure(measure, size, group);

        /// <summary>Null where the class does not hold it.</summary>
        public BodyMeasure? Specimen(double size) =>
            Measured(size) is { } body
                && taxon.Limits.All(l => l.Key == measure || SpecimenClass.Within(l.Value, SpecimenValues.Measure(body, "specimen." + l.Key).Middle))
                ? body
                : null;
    }
}
