using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Protocols;

/// <summary>What is known of a bundled protocol without reading it.</summary>
/// <param name="Id">Its id.</param>
/// <param name="File">Its file, by the name under which it travels in the library.</param>
/// <param name="Line">The ids of what it extends, the nearest first.</param>
/// <param name="Class">Which specimens it serves.</param>
/// <param name="Digest">What it and all that it extends say: <see cref="Protocol.Digest"/>.</param>
internal sealed record IndexedProtocol(string Id, string File, ImmutableArray<string> Line, SpecimenClass Class, string Digest);

/// <summary>
/// An index of the bundled protocols, so that a process reads only those that it uses, and proves none again that has not changed. A test makes it from
/// the files, proves each
/// of them on the way, and holds that it is theirs.
/// </summary>
internal static class BundledIndex
{
    /// <summary>The name under which it travels in the library.</summary>
    public const string Name = "protocols.json";

    private static readonly Lazy<FrozenDictionary<string, IndexedProtocol>> Read = new(() => Parse(BundledProtocols.Text(Name)).ToFrozenDictionary(
        p => p.Id,
        StringComparer.Ordinal));

    /// <summary>Every bundled protocol, by its id.</summary>
    public static FrozenDictionary<string, IndexedProtocol> ById => Read.Value;

    /// <summary>Whether a protocol says the same as the bundled one of its id, which was proved.</summary>
    public static bool IsProved(Protocol protocol) => ById.TryGetValue(protocol.Id, out var indexed) && indexed.Digest == protocol.Digest;

    /// <summary>Writes the index of protocols that were proved.</summary>
    public static string Write(IEnumerable<Protocol> protocols)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartArray();
            foreach (var protocol in protocols.OrderBy(p => p.Id, StringComparer.Ordinal)) Write(json, protocol);
            json.WriteEndArray();
        }

        return System.Text.Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Protocol protocol)
    {
        json.WriteStartObject();
        json.WriteString("id", protocol.Id);
        json.WriteString("file", protocol.File);
        WriteTexts(json, "extends", protocol.Extends);
        json.WriteString("digest", protocol.Digest);
        if (protocol.IsForSpecimens)
        {
            json.WriteString("group", protocol.Class.Group);
            json.WriteStartObject("limits");
            foreach (var (measure, limit) in protocol.Class.Limits) json.WriteString(measure, ExactText.Of(limit));
            json.WriteEndObject();
            json.WriteStartObject("words");
            foreach (var (trait, words) in protocol.Class.Words) WriteTexts(json, trait, words);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static IEnumerable<IndexedProtocol> Parse(string text)
    {
        using var document = JsonDocument.Parse(text);
        return
        [
            .. document.RootElement.EnumerateArray().Select(p => new IndexedProtocol(
                p.GetProperty("id").GetString()!,
                p.GetProperty("file").GetString()!,
                Texts(p.GetProperty("extends")),
                ClassOf(p),
                p.GetProperty("digest").GetString()!)),
        ];
    }

    private static SpecimenClass ClassOf(JsonElement protocol) => protocol.TryGetProperty("group", out var group)
        ? new(
            group.GetString()!,
            protocol.GetProperty("limits").EnumerateObject().ToImmutableSortedDictionary(l => l.Name, l => Limit(l.Value.GetString()!), StringComparer.Ordinal),
            protocol.GetProperty("words").EnumerateObject().ToImmutableSortedDictionary(w => w.Name, w => Texts(w.Value), StringComparer.Ordinal))
        : SpecimenClass.Nothing;

    private static QuantityRange Limit(string text) =>
        QuantityText.Read(text, out var range) is null ? range : throw new InvalidOperationException($"The index of the bundled protocols says '{text}'.");

    private static ImmutableArray<string> Texts(JsonElement array) => [.. array.EnumerateArray().Select(t => t.GetString()!)];
}
