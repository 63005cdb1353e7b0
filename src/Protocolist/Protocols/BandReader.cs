using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>
/// Tables of bands: <c>up to 20 g</c>, <c>20 g to 500 g</c>, <c>over 500 g</c>. Each band holds its low end and not its high end;
/// neighbours must touch, so that no size falls between or into two.
/// </summary>
internal static class BandReader
{
    private static readonly Phrase SaysNothing = new("gap-between-bands", "{what} says nothing from {from} to {to}");
    private static readonly Phrase SaysTwoThings = new("overlapping-bands", "{what} says two things from {from} to {to}");
    private static readonly Phrase EndWhereNextBegins = new("gap-between-bands.remedy", "let each band end where the next begins");
    private static readonly Phrase NoBands = new("missing-key.no-bands", "the bands of {what} are empty");
    private static readonly Phrase NoBandsRemedy = new("missing-key.no-bands.remedy", "add lines such as 'up to 20 g: 24 h'");
    private static readonly Phrase WrongDimension = new("wrong-dimension.band", "the band '{text}' is {dimension}, and the table goes by {by}");
    private static readonly Phrase WrongDimensionRemedy = new("wrong-dimension.band.remedy", "give the bands in units of what the table goes by");
    private static readonly Phrase BandWithoutWidth = new("band-without-width", "the band '{text}' has no width");
    private static readonly Phrase BandWithoutWidthRemedy = new("band-without-width.remedy", "write 'up to a', 'a to b' or 'over b'");
    private static readonly Phrase UnlikeBands = new("unlike-quantities.bands", "the bands of {what} do not measure the same kind of thing");
    private static readonly Phrase UnlikeBandsRemedy = new("unlike-quantities.remedy", "give them all in units of one kind");

    public static ImmutableArray<Band> Read(Fields table, Formula by, Message what, FormulaType? wanted, ExpressionReader expressions, List<Finding> findings)
    {
        var bands = ImmutableArray.CreateBuilder<Band>();
        var sound = true;
        foreach (var entry in table.Entries)
        {
            table.Entry(entry.Key.Value);
            var range = Range(entry.Key, by.Type.Dimension, findings);
            var value = expressions.Read(entry.Value, what, wanted);
            if (range is not null && value is FormulaExpression { Formula: var formula }) bands.Add(new(range.Value, formula, entry.Key.Span));
            else sound = false;
        }

        if (!sound) return default;
        if (bands.Count == 0)
        {
            findings.Add(Finding.Error("missing-key", NoBands.With(("what", what)), NoBandsRemedy, table.Span));
            return default;
        }

        var sorted = bands.OrderBy(b => b.Range.Low).ToImmutableArray();
        return Touching(sorted, what, findings) && Alike(sorted, what, findings) ? sorted : default;
    }

    private static QuantityRange? Range(ScalarNode key, Dimension dimension, List<Finding> findings)
    {
        var text = key.Value;
        var upTo = text.StartsWith("up to ", StringComparison.Ordinal);
        var over = text.StartsWith("over ", StringComparison.Ordinal);
        var lead = upTo ? 6 : over ? 5 : 0;
        var fault = QuantityText.Read(text.AsSpan(lead), out var range);
        if (fault is not null)
        {
            findings.Add(ScalarReading.Found(key, fault with { Offset = fault.Offset + lead }));
            return null;
        }

        if (range.Dimension != dimension)
        {
            findings.Add(Finding.Error(
                "wrong-dimension",
                WrongDimension.With(("text", text), ("dimension", range.Dimension.ToString()), ("by", dimension.ToString())),
                WrongDimensionRemedy,
                key.Span));
            return null;
        }

        if (upTo) return new QuantityRange(Math.Min(0, range.Low), range.Low, dimension);
        if (over) return new QuantityRange(range.High, double.PositiveInfinity, dimension);
        if (range.IsPoint) findings.Add(Finding.Error("band-without-width", BandWithoutWidth.With(("text", text)), BandWithoutWidthRemedy, key.Span));
        return range.IsPoint ? null : range;
    }

    private static bool Touching(ImmutableArray<Band> bands, Message what, List<Finding> findings)
    {
        var sound = true;
        foreach (var (before, after) in bands.Zip(bands.Skip(1)))
        {
            if (before.Range.High == after.Range.Low) continue;
            sound = false;
            var gap = before.Range.High < after.Range.Low;
            var said = (gap ? SaysNothing : SaysTwoThings).With(
                ("what", what),
                Argument.Of("from", Math.Min(before.Range.High, after.Range.Low), before.Range.Dimension),
                Argument.Of("to", Math.Max(before.Range.High, after.Range.Low), before.Range.Dimension));
            findings.Add(Finding.Error(gap ? "gap-between-bands" : "overlapping-bands", said, EndWhereNextBegins, after.Span));
        }

        return sound;
    }

    private static bool Alike(ImmutableArray<Band> bands, Message what, List<Finding> findings)
    {
        var first = bands[0].Formula.Type;
        if (bands.All(b => b.Formula.Type.Kind == FormulaKind.Quantity && b.Formula.Type.Dimension == first.Dimension)) return true;
        findings.Add(Finding.Error("unlike-quantities", UnlikeBands.With(("what", what)), UnlikeBandsRemedy, bands[0].Span));
        return false;
    }
}
