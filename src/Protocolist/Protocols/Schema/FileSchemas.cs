using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Protocolist.Protocols.Schema;
using Protocolist.Specimens;

namespace Protocolist;

/// <summary>JSON Schemas (2020-12) of our YAML files, for editors that complete and check as one types. What a formula says only the check can judge.</summary>
public static class FileSchemas
{
    /// <summary>Of protocol files.</summary>
    /// <param name="kinds">The taxon groups that there are; null for the bundled ones.</param>
    /// <returns>The schema as indented JSON.</returns>
    public static string Protocol(Kinds? kinds = null) => Text(ProtocolSchema.Build(kinds ?? Kinds.Bundled));

    /// <summary>Of specimen files.</summary>
    /// <param name="kinds">The taxon groups that there are; null for the bundled ones.</param>
    /// <returns>The schema as indented JSON.</returns>
    public static string Specimen(Kinds? kinds = null) => Text(SpecimenSchema.Build(kinds ?? Kinds.Bundled));

    /// <summary>Of bench files.</summary>
    /// <returns>The schema as indented JSON.</returns>
    public static string Bench() => Text(BenchSchema.Build());

    private static string Text(JsonObject schema)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new()
        {
            Indented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        })) schema.WriteTo(json);
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
