using System.Text.Json;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Plans;

/// <summary>
/// A message: its English words for whoever reads the file, and beside them the phrase and its facts, so that it can be said in another language and
/// compared by
/// what it says. Somebody's own text is a bare string.
/// </summary>
internal sealed class MessageJson(Language language) : PartJson<Message>
{
    /// <summary>The language of the words that these options write.</summary>
    public static Language LanguageOf(JsonSerializerOptions options) => Own<MessageJson>.Of(options).Language;

    private Language Language => language;

    protected override Message Of(JsonElement json, JsonSerializerOptions options) => Read(json);

    public override void Write(Utf8JsonWriter writer, Message value, JsonSerializerOptions options) => Write(writer, value, language);

    /// <summary>The message that <see cref="Write(Utf8JsonWriter, in Message, Language)"/> wrote.</summary>
    public static Message Read(JsonElement json)
    {
        if (json.ValueKind == JsonValueKind.String) return Message.Text(json.GetString()!);
        if (!json.TryGetProperty("text", out var words)) throw new JsonException("A message is a text, or an object with 'text'.");
        if (words.GetString() is not { } text) throw new JsonException("The words of a message are a text.");
        if (!json.TryGetProperty("phrase", out var phrase)) return Message.Text(text);
        if (phrase.GetString() is not { Length: > 0 } id || text.Length == 0) throw new JsonException("A message that has a phrase has its words.");
        Argument[] facts = json.TryGetProperty("facts", out var all) ? [.. all.EnumerateObject().Select(f => FactOf(f.Name, f.Value))] : [];
        return new Message(Phrase.OfWords(id, text), facts);
    }

    private static Argument FactOf(string name, JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.String => (name, json.GetString()!),
        JsonValueKind.Number => (name, FiniteNumber.Of(json.GetDouble())),
        JsonValueKind.Null => (name, default(Message)),
        JsonValueKind.Array => Argument.ListOf(name, json.EnumerateArray().Select(item => FactOf("", item))),
        JsonValueKind.Object => ObjectOf(name, json),
        _ => throw new JsonException($"'{name}' is no fact."),
    };

    private static Argument ObjectOf(string name, JsonElement json)
    {
        if (json.TryGetProperty("quantity", out var quantity))
            return QuantityText.Read(quantity.GetString() ?? "", out var range) is null
                ? (name, range)
                : throw new JsonException($"'{quantity}' is no quantity.");
        if (json.TryGetProperty("at", out var at)) return (name, Parsed(OffsetDateTimePattern.Rfc3339, at));
        if (json.TryGetProperty("on", out var on)) return (name, Parsed(LocalDatePattern.Iso, on));
        if (json.TryGetProperty("id", out var id)) return Argument.Id(name, id.GetString() ?? throw new JsonException("An id is a text."));
        if (json.TryGetProperty("costMinor", out _)) return (name, MoneyJson.Read(json));
        return (name, Read(json));
    }

    private static T Parsed<T>(IPattern<T> pattern, JsonElement json)
    {
        var parsed = pattern.Parse(json.GetString() ?? "");
        return parsed.Success ? parsed.Value : throw new JsonException(parsed.Exception.Message);
    }

    /// <summary>Writes a message: somebody's own text as a bare string.</summary>
    public static void Write(Utf8JsonWriter writer, in Message message, Language language)
    {
        if (message.Phrase == Message.OwnText || message.Phrase is null) writer.WriteStringValue(message.ToString());
        else WriteObject(writer, message, language);
    }

    private static void WriteObject(Utf8JsonWriter writer, in Message message, Language language)
    {
        writer.WriteStartObject();
        writer.WriteString("text", message.ToString(language));
        if (message.Phrase != Message.OwnText) writer.WriteString("phrase", message.Phrase!.Id);
        if (!message.Arguments.IsEmpty && message.Phrase != Message.OwnText)
        {
            writer.WriteStartObject("facts");
            foreach (var argument in message.Arguments)
            {
                writer.WritePropertyName(argument.Name);
                WriteFact(writer, argument, language);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static void WriteFact(Utf8JsonWriter writer, in Argument fact, Language language)
    {
        switch (fact.Kind)
        {
            case ArgumentKind.Number:
                writer.WriteNumberValue(fact.Number);
                break;
            case ArgumentKind.Text:
                writer.WriteStringValue(fact.Text);
                break;
            case ArgumentKind.Message:
                if (fact.Message.Phrase is null) writer.WriteNullValue();
                else WriteObject(writer, fact.Message, language);
                break;
            case ArgumentKind.Money:
                MoneyJson.Write(writer, fact.Money!);
                break;
            case ArgumentKind.List:
                writer.WriteStartArray();
                foreach (var item in fact.List) WriteFact(writer, item, language);
                writer.WriteEndArray();
                break;
            default:
                writer.WriteStartObject();
                var (key, text) = fact.Kind switch
                {
                    ArgumentKind.Quantity => ("quantity", ExactText.Of(fact.Quantity)),
                    ArgumentKind.Moment => ("at", OffsetDateTimePattern.Rfc3339.Format(fact.Moment)),
                    ArgumentKind.Date => ("on", LocalDatePattern.Iso.Format(fact.Date)),
                    _ => ("id", fact.Text),
                };
                writer.WriteString(key, text);
                writer.WriteEndObject();
                break;
        }
    }
}
