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
    /// <summary>How often a stretch is halved before a question stays open. The project's choice: 32 stretches, a fifteenth apart in a class from 2 to 20.</summary>
    private const int Deepest = 5;

    private readonly SpecimenClass _taxon;
    private readonly TaxonGroup _group;
    private readonly string _measure;
    private readonly int _depth;
    private readonly Lazy<ImmutableArray<ClassPart>> _halves;
    private readonly Lazy<ImmutableArray<BodyMeasure>> _witnesses;

    private ClassPart(SpecimenClass taxon, TaxonGroup group, string measure, QuantityRange stretch, ImmutableDictionary<string, QuantityRange> bounds, int depth)
    {
        (_taxon, _group, _measure, Stretch, Bounds, _depth) = (taxon, group, measure, stretch, bounds, depth);
        _halves = new(Split);
        _witnesses = new(() => [.. Points().Select(Specimen).OfType<BodyMeasure>()]);
    }

    /// <summary>From where to where it goes, in the main measure.</summary>
    public QuantityRange Stretch { get; }

    /// <summary>Name → bounds over every specimen of the stretch.</summary>
    public ImmutableDictionary<string, QuantityRange> Bounds { get; }

    /// <summary>Both halves; none where it is fine enough.</summary>
    public ImmutableArray<ClassPart> Halves => _halves.Value;

    /// <summary>Specimens that lie in it: of the whole class the smallest, a middling and the largest one, of smaller stretches the smallest and the middling one.</summary>
    public ImmutableArray<BodyMeasure> Witnesses => _witnesses.Value;

    /// <summary>The whole class; null where it limits nothing that leads to a size.</summary>
    public static ClassPart? Whole(SpecimenClass taxon, TaxonGroup group)
    {
        var (measure, stretch) = ClassBounds.MainMeasure(taxon);
        return ClassBounds.Of(taxon, group) is { } bounds ? new(taxon, group, measure, stretch, bounds, 0) : null;
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
        return ClassBounds.Of(_taxon with { Limits = _taxon.Limits.SetItem(_measure, stretch) }, _group) is { } bounds
            ? new(_taxon, _group, _measure, stretch, bounds, _depth + 1)
            : null;
    }

    /// <summary>The high end of a class is not in it.</summary>
    private IEnumerable<double> Points() => _depth == 0
        ? [Stretch.Low, Middle(Stretch), Stretch.Low + (0.99 * (Stretch.High - Stretch.Low))]
        : [Stretch.Low, Middle(Stretch)];

    /// <summary>Sizes are spread by factors.</summary>
    private static double Middle(QuantityRange stretch) => Math.Sqrt(stretch.Low * stretch.High);

    private BodyMeasure? Specimen(double size)
    {
        var body = ClassBounds.Measure(_measure, size, _group);
        return body is not null && _taxon.Limits.All(l => l.Key == _measure || SpecimenClass.Within(l.Value, SpecimenValues.Measure(body, "specimen." + l.Key).Middle)) ? body : null;
    }

    /// <summary>A specimen's size in the main measure, as a person would give it.</summary>
    public Message Describe(BodyMeasure body) => ClassBounds.Describe(body, _measure, _group);
}
