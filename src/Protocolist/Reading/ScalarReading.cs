using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Reading;

/// <summary>Meanings read from the text of a scalar, with the place of what is wrong.</summary>
internal static class ScalarReading
{
    public static QuantityRange? Quantity(ScalarNode scalar, string what, Dimension dimension, List<Finding> findings)
    {
        var fault = QuantityText.Read(scalar.Value, out var range);
        if (fault is not null)
        {
            findings.Add(Found(scalar, fault));
            return null;
        }

        if (range.Dimension == dimension) return range;
        findings.Add(Finding.Error("wrong-dimension", $"'{what}' must be {dimension}, and '{Excerpt.Of(scalar.Value)}' is {range.Dimension}", "give it in a fitting unit", scalar.Span));
        return null;
    }

    public static LocalDate? Date(ScalarNode scalar, List<Finding> findings)
    {
        var parsed = LocalDatePattern.Iso.Parse(scalar.Value);
        if (parsed.Success && Calendar.Has(parsed.Value)) return parsed.Value;
        findings.Add(parsed.Success ? Calendar.Fault(parsed.Value.Year, scalar.Span) : Finding.Error("bad-date", $"'{Excerpt.Of(scalar.Value)}' is not a date", "write year, month and day as 2027-03-01", scalar.Span));
        return null;
    }

    public static LocalTime? Time(ScalarNode scalar, ReadOnlySpan<char> text, List<Finding> findings)
    {
        var trimmed = text.Trim().ToString();
        var parsed = LocalTimePattern.CreateWithInvariantCulture("H:mm").Parse(trimmed);
        if (parsed.Success) return parsed.Value;
        findings.Add(Finding.Error("bad-time", $"'{trimmed}' is not a time of day", "write hours and minutes as 08:30", scalar.Span));
        return null;
    }

    public static Finding Found(ScalarNode scalar, TextFault fault) =>
        Finding.Error(fault.Id, fault.Message, fault.Remedy, scalar.Part(fault.Offset, fault.Length));
}
