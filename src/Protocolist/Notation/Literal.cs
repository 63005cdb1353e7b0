using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Notation;

/// <summary>A number as written, with its unit if it had one.</summary>
internal readonly record struct Literal(double Number, Unit? Unit)
{
    private static readonly Phrase ReversedRange = new("reversed-range", "the range runs backwards");
    private static readonly Phrase ReversedRangeRemedy = new("reversed-range.order.remedy", "put the lower end first");
    private static readonly Phrase UnlikeTolerance = new("unlike-quantities.tolerance", "a tolerance of temperature cannot be told from a temperature");
    private static readonly Phrase UnlikeToleranceRemedy = new("unlike-quantities.tolerance.remedy", "write the range as 'a to b'");
    private static readonly Phrase BadNumber = new("bad-number", "this number is too large");
    private static readonly Phrase BadNumberRemedy = new("bad-number.figures.remedy", "give at most 15 figures");
    private static readonly Phrase UnlikeEnds = new("unlike-quantities.ends", "one end is {dimension}, the other {other}");
    private static readonly Phrase UnlikeEndsRemedy = new("unlike-quantities.ends.remedy", "give both ends in units of one kind");

    public Dimension Dimension => Unit?.Dimension ?? Dimension.None;

    public double Si => Unit?.ToSi(Number) ?? Number;

    public QuantityRange ToRange() => QuantityRange.Point(Si, Dimension);

    /// <summary>The range from this to another: in "2 to 5 mL" the first number takes the second one's unit.</summary>
    public TextFault? To(Literal last, int offset, int end, out QuantityRange range)
    {
        range = default;
        var first = Unit is null && last.Unit is not null ? this with { Unit = last.Unit } : this;
        if (first.Dimension != last.Dimension) return Unlike(first, last, offset, end - offset);
        if (first.Si > last.Si) return new("reversed-range", ReversedRange, ReversedRangeRemedy, offset, end - offset);
        range = new(first.Si, last.Si, first.Dimension);
        return null;
    }

    /// <summary>The range around this one, so much to either side.</summary>
    public TextFault? PlusMinus(Literal tolerance, int offset, out QuantityRange range)
    {
        range = default;
        var middle = Unit is null && tolerance.Unit is not null ? this with { Unit = tolerance.Unit } : this;
        if (middle.Dimension != tolerance.Dimension) return Unlike(middle, tolerance, offset, 1);
        if (middle.Dimension == Dimension.OfTemperature) return new("unlike-quantities", UnlikeTolerance, UnlikeToleranceRemedy, offset, 1);
        var width = Math.Abs(tolerance.Si);
        if (!double.IsFinite(middle.Si - width) || !double.IsFinite(middle.Si + width)) return new("bad-number", BadNumber, BadNumberRemedy, offset, 1);
        range = new(middle.Si - width, middle.Si + width, middle.Dimension);
        return null;
    }

    private static TextFault Unlike(Literal a, Literal b, int offset, int length) =>
        new("unlike-quantities", UnlikeEnds.With(("dimension", a.Dimension.ToString()), ("other", b.Dimension.ToString())), UnlikeEndsRemedy, offset, length);
}
