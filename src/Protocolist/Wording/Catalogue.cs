using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist;

/// <summary>
/// A catalogue of phrases in another language, as a YAML file: <c>format: 1</c>, <c>language:</c> a tag such as <c>de</c> (BCP 47), and <c>phrases:</c>
/// with the text of each
/// phrase under its id. Named places stand in braces as in the English; their order is free.
/// </summary>
public static class Catalogue
{
    private const int Format = 1;

    private static readonly Phrase ACatalogue = new("named.catalogue", "a catalogue");

    /// <summary>Reads a catalogue.</summary>
    /// <param name="source">The text and its name.</param>
    /// <returns>The language, or why there is none; a phrase that the catalogue lacks stays English.</returns>
    public static Checked<Language> Read(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var document = DocumentReader.Read(source);
        var findings = document.Findings.ToList();
        if (document.Value is null || Fields.Of(document.Value, ACatalogue, findings) is not { } fields || !FormatVersion.Check(fields, Format, findings))
            return new(null, [.. findings]);
        var tag = fields.Required("language")?.Value;
        var phrases = new Dictionary<string, string>(StringComparer.Ordinal);
        if (fields.Nested("phrases") is { } table)
        {
            foreach (var entry in table.Entries)
            {
                if (table.Prose(entry.Key.Value) is { } text) phrases[entry.Key.Value] = text.Value;
            }
        }

        fields.Finish();
        var failed = findings.Exists(f => f.Severity == Severity.Error) || tag is null;
        return new(failed ? null : new Language(tag!, phrases), [.. findings]);
    }
}
