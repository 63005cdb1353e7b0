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

    public static Finding Found(ScalarNode scalar, TextFault fault) =>
        Finding.Error(fault.Id, fault.Message, fault.Remedy, scalar.Part(fault.Offset, fault.Length));
}
