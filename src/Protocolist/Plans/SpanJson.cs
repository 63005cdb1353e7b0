using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Protocols;
using Protocolist.Quantities;

namespace Protocolist.Plans;

/// <summary>A place as <c>file:line:column</c>; empty where none is known.</summary>
internal sealed class SpanJson : JsonConverter<SourceSpan>
{
    public override SourceSpan Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Parse(reader.GetString() ?? "");

    public static SourceSpan Parse(string text)
    {
        var parts = text.Split(':');
        if (parts.Length >= 3 && int.TryParse(parts[^2], NumberStyles.None, CultureInfo.InvariantCulture, out var line) && int.TryParse(parts[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var column))
        {
            return SourceSpan.At(string.Join(':', parts[..^2]), line, column);
        }

        return text.Length == 0 ? default : new(text, 0, 0, 0, 0);
    }

    public override void Write(Utf8JsonWriter writer, SourceSpan value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}

/// <summary>Money as a whole number of the smallest coin, and the currency's ISO 4217 code.</summary>
internal sealed class MoneyJson : JsonConverter<Money>
{
    public override Money Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        long? minor = null;
        string? currency = null;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var name = reader.GetString();
            reader.Read();
            if (name == "costMinor") minor = reader.GetInt64();
            else if (name == "currency") currency = reader.GetString();
            else reader.Skip();
        }

        return minor is { } m && currency is { } c && Money.MinorUnits(c) is not null ? Money.OfMinor(m, c) : throw new JsonException("Money needs 'costMinor' and a 'currency'.");
    }

    public override void Write(Utf8JsonWriter writer, Money value, JsonSerializerOptions options) => Write(writer, value);

    public static void Write(Utf8JsonWriter writer, Money value)
    {
        writer.WriteStartObject();
        writer.WriteNumber("costMinor", value.Minor);
        writer.WriteString("currency", value.Currency);
        writer.WriteEndObject();
    }
}

/// <summary>A kind of stage as the word of the protocol files.</summary>
internal sealed class StageKindJson : JsonConverter<StageKind>
{
    public override StageKind Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        StageGrammar.Find(reader.GetString() ?? "")?.Kind ?? throw new JsonException("This is no kind of stage.");

    public override void Write(Utf8JsonWriter writer, StageKind value, JsonSerializerOptions options) => writer.WriteStringValue(StageGrammar.Of(value).Word);
}

/// <summary>A figure with its value in words and exactly, and how it is made.</summary>
internal sealed class FigureJson : JsonConverter<Figure>
{
    public override Figure Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        var root = document.RootElement;
        var origin = new FigureOrigin(Text(root, "id"), [.. root.GetProperty("inputs").EnumerateArray().Select(i => i.GetString() ?? "")], Text(root, "source"))
        {
            Rule = Message.Text(Text(root, "formula")),
            Where = SpanJson.Parse(Text(root, "where")),
            Note = Message.Text(Text(root, "note")),
        };
        return QuantityText.Read(Text(root, "exact"), out var quantity) is null ? origin.Of(quantity) : origin.Of(Text(root, "value"));
    }

    public override void Write(Utf8JsonWriter writer, Figure value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("id", value.Id);
        writer.WriteString("value", value.Value);
        writer.WriteString("formula", value.Formula.ToString());
        writer.WriteStartArray("inputs");
        foreach (var input in value.Inputs) writer.WriteStringValue(input);
        writer.WriteEndArray();
        writer.WriteString("source", value.Source);
        writer.WriteString("where", value.Where.ToString());
        writer.WriteString("exact", value.Exact);
        writer.WriteString("note", value.Note.ToString());
        writer.WriteEndObject();
    }

    private static string Text(JsonElement figure, string name) => figure.GetProperty(name).GetString() ?? "";
}
