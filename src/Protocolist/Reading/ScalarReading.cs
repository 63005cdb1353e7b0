using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Reading;

/// <summary>Meanings read from the text of a scalar, with the place of what is wrong.</summary>
internal static class ScalarReading
{
    private static readonly Phrase WrongDimension = new("wrong-dimension.key", "'{what}' must be {dimension}, and '{text}' is {is}");
    private static readonly Phrase WrongDimensionRemedy = new("wrong-dimension.remedy", "give it in a fitting unit");
    private static readonly Phrase BadDate = new("bad-date", "'{text}' is not a date");
    private static readonly Phrase BadDateRemedy = new("bad-date.remedy", "write year, month and day as 2027-03-01");
    private static readonly Phrase BadTime = new("bad-time", "'{text}' is not a time of day");
    private static readonly Phrase BadTimeRemedy = new("bad-time.remedy", "write hours and minutes as 08:30");

    public static QuantityRange? Quantity(ScalarNode scalar, string what, Dimension dimension, List<Finding> findings)
    {
        var fault = QuantityText.Read(scalar.Value, out var range);
        if (fault is not null)
        {
            findings.Add(Found(scalar, fault));
            return null;
        }

        if (range.Dimension == dimension) return range;
        findings.Add(Finding.Error(
            "wrong-dimension",
            WrongDimension.With(("what", what), ("dimension", dimension.ToString()), ("text", Excerpt.Of(scalar.Value)), ("is", range.Dimension.ToString())),
            WrongDimensionRemedy,
            scalar.Span));
        return null;
    }

    public static LocalDate? Date(ScalarNode scalar, List<Finding> findings)
    {
        var parsed = LocalDatePattern.Iso.Parse(scalar.Value);
        if (parsed.Success && Calendar.Has(parsed.Value)) return parsed.Value;
        findings.Add(parsed.Success
            ? Calendar.Fault(parsed.Value.Year, scalar.Span)
            : Finding.Error("bad-date", BadDate.With(("text", Excerpt.Of(scalar.Value))), BadDateRemedy, scalar.Span));
        return null;
    }

    public static LocalTime? Time(ScalarNode scalar, ReadOnlySpan<char> text, List<Finding> findings)
    {
        var trimmed = text.Trim().ToString();
        var parsed = LocalTimePattern.CreateWithInvariantCulture("H:mm").Parse(trimmed);
        if (parsed.Success) return parsed.Value;
        findings.Add(Finding.Error("bad-time", BadTime.With(("text", trimmed)), BadTimeRemedy, scalar.Span));
        return null;
    }

    public static Finding Found(ScalarNode scalar, TextFault fault) =>
        Finding.Error(fault.Id, fault.Message, fault.Remedy, scalar.Part(fault.Offset, fault.Length));
}
