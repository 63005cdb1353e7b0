using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Protocolist.Findings;

namespace Protocolist.Cli.Commands;

/// <summary>Writes the JSON of the commands about fluids: indented, numbers rounded to what can be measured.</summary>
internal static class FluidJson
{
    // Names hold '%' and '+', never anything that a page would run.
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>The text of one JSON object.</summary>
    public static string Object(Action<Utf8JsonWriter> members)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Options))
        {
            writer.WriteStartObject();
            members(writer);
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>A number to so many decimals.</summary>
    public static void Number(this Utf8JsonWriter writer, string name, double value, int decimals)
    {
        // No negative zero.
        var rounded = Math.Round(value, decimals);
        writer.WriteNumber(name, rounded == 0 ? 0 : rounded);
    }

    /// <summary>A number where there is one; nothing else.</summary>
    public static void NumberIfAny(this Utf8JsonWriter writer, string name, double? value, int decimals)
    {
        if (value is { } number) writer.Number(name, number, decimals);
    }

    /// <summary>The array of findings.</summary>
    public static void Findings(this Utf8JsonWriter writer, IEnumerable<Finding> findings)
    {
        writer.WriteStartArray("findings");
        foreach (var finding in findings)
        {
            writer.WriteStartObject();
            writer.WriteString("id", finding.Id);
            writer.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
            writer.WriteString("message", finding.Message.ToString());
            writer.WriteString("remedy", finding.Remedy.ToString());
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }
}
