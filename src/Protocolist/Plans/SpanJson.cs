using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Formulas;
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
        if (parts.Length >= 3
            && int.TryParse(parts[^2], NumberStyles.None, CultureInfo.InvariantCulture, out var line)
            && int.TryParse(parts[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var column))
        {
            return SourceSpan.At(string.Join(':', parts[..^2]), line, column);
        }

        return text.Length == 0 ? default : new(text, 0, 0, 0, 0);
    }

    public override void Write(Utf8JsonWriter writer, SourceSpan value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}

/// <summary>Money as a whole number of the smallest coin, and the currency's ISO 4217 code.</summary>
internal sealed class MoneyJson : PartJson<Money>
{
    protected override Money Of(JsonElement json, JsonSerializerOptions options) => Read(json);

    public static Money Read(JsonElement json) =>
        json.GetProperty("currency").GetString() is { } currency && Money.MinorUnits(currency) is not null
            ? Money.OfMinor(json.GetProperty("costMinor").GetInt64(), currency)
            : throw new JsonException("Money needs a currency.");

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
/// <remarks>The exact value is a quantity's text, yes or no as such, and empty for a word.</remarks>
internal sealed class FigureJson : PartJson<Figure>
{
    protected override Figure Of(JsonElement root, JsonSerializerOptions options)
    {
        var origin = new FigureOrigin(
            Text(root, "id"),
            [.. Part(root, "inputs").EnumerateArray().Select(i => i.GetString() ?? throw new JsonException("An input is an id."))],
            Text(root, "source"))
        {
            Rule = MessageJson.Read(Part(root, "formula")),
            Where = SpanJson.Parse(Text(root, "where")),
            Note = MessageJson.Read(Part(root, "note")),
        };
        return new(origin, Answer(Part(root, "exact"), Text(root, "value")));
    }

    public override void Write(Utf8JsonWriter writer, Figure value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("id", value.Id);
        writer.WriteString("value", value.Value);
        writer.WritePropertyName("formula");
        MessageJson.Write(writer, value.Formula, MessageJson.LanguageOf(options));
        writer.WriteStartArray("inputs");
        foreach (var input in value.Inputs) writer.WriteStringValue(input);
        writer.WriteEndArray();
        writer.WriteString("source", value.Source);
        writer.WriteString("where", value.Where.ToString());
        if (value.Answer is { Kind: FormulaKind.Truth, Truth: Truth.Yes or Truth.No }) writer.WriteBoolean("exact", value.Answer.Truth == Truth.Yes);
        else writer.WriteString("exact", value.Exact);
        writer.WritePropertyName("note");
        MessageJson.Write(writer, value.Note, MessageJson.LanguageOf(options));
        writer.WriteEndObject();
    }

    private static FormulaValue Answer(JsonElement exact, string word)
    {
        if (exact.ValueKind is JsonValueKind.True or JsonValueKind.False) return FormulaValue.Of(exact.GetBoolean() ? Truth.Yes : Truth.No);
        if (exact.ValueEquals("")) return FormulaValue.Of(word);
        return QuantityText.Read(exact.GetString() ?? "", out var quantity) is null
            ? FormulaValue.Of(quantity)
            : throw new JsonException($"'{exact}' is no quantity.");
    }

    private static JsonElement Part(JsonElement figure, string name) =>
        figure.TryGetProperty(name, out var part) ? part : throw new JsonException($"A figure needs '{name}'.");

    private static string Text(JsonElement figure, string name) =>
        Part(figure, name).GetString() ?? throw new JsonException($"'{name}' of a figure is a text.");
}
