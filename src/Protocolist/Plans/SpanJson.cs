using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Plans;

/// <summary>A place as <c>file:line:column</c>; empty where none is known.</summary>
internal sealed class SpanJson : JsonConverter<SourceSpan>
{
    public override SourceSpan Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.GetString() ?? "";
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

/// <summary>A message as its English words.</summary>
internal sealed class MessageJson : JsonConverter<Message>
{
    public override Message Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetString() ?? "";

    public override void Write(Utf8JsonWriter writer, Message value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
