using System.Collections.Frozen;
using Protocolist.Findings;
using Protocolist.Reading;
using Protocolist.Wording;

namespace Protocolist;

/// <summary>
/// A catalogue of phrases in another language, as a YAML file: <c>format: 1</c>, <c>language:</c> a tag such as <c>de</c> (BCP 47), and <c>phrases:</c>
/// with the text of each phrase under its id. Named places stand in braces as in the English; their order is free, and words to choose from after bars
/// are the language's own.
/// </summary>
public static class Catalogue
{
    private const int Format = 1;

    private static readonly Phrase ACatalogue = new("named.catalogue", "a catalogue");
    private static readonly Phrase BadTag = new("bad-language-tag", "'{tag}' is not the tag of a language");
    private static readonly Phrase BadTagRemedy = new("bad-language-tag.remedy", "write a tag of BCP 47, such as de or pt-BR");
    private static readonly Phrase UnknownPhrase = new("unknown-phrase", "no phrase has the id '{id}'; nothing is ever said with it");
    private static readonly Phrase EmptyPhrase = new("empty-phrase", "'{id}' would be said as nothing");
    private static readonly Phrase EmptyPhraseRemedy = new("empty-phrase.remedy", "translate '{english}', or leave the id out: it then stays English");
    private static readonly Phrase Untranslated = new("untranslated", "{left} of {all} phrases stay English, such as {ids}");

    private static readonly Lazy<FrozenDictionary<string, string>> Phrases = new(() =>
        PhrasesOf(Fields.Of(DocumentReader.Read(new("english.yaml", English)).Value!, ACatalogue, [])!)
            .ToFrozenDictionary(p => p.Key.Value, p => p.Text.Value));

    /// <summary>The catalogue of every phrase of this library in English: what a translator starts from.</summary>
    public static string English
    {
        get
        {
            using var reader = new StreamReader(typeof(Catalogue).Assembly.GetManifestResourceStream("english.yaml")!);
            return reader.ReadToEnd();
        }
    }

    /// <summary>Reads a catalogue. Each phrase must be known, and say every fact that its English says, each as the English shows it.</summary>
    /// <param name="source">The text and its name.</param>
    /// <returns>The language, or why there is none; a phrase that the catalogue lacks stays English, and how many do is noted.</returns>
    public static Checked<Language> Read(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var document = DocumentReader.Read(source);
        var findings = document.Findings.ToList();
        if (document.Value is null || Fields.Of(document.Value, ACatalogue, findings) is not { } fields || !FormatVersion.Check(fields, Format, findings))
            return new(null, [.. findings]);
        var tag = fields.Required("language");
        if (tag is not null && !Language.IsTag(tag.Value))
            findings.Add(Finding.Error(BadTag.Id, BadTag.With(("tag", Excerpt.Of(tag.Value))), BadTagRemedy, tag.Span));
        var phrases = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (key, text) in PhrasesOf(fields))
        {
            Finding[] faults = [.. Faults(key, text)];
            findings.AddRange(faults);
            if (faults.Length == 0) phrases[key.Value] = text.Value;
        }

        fields.Finish();
        if (findings.Exists(f => f.Severity == Severity.Error) || tag is null) return new(null, [.. findings]);
        var left = Phrases.Value.Keys.Where(id => !phrases.ContainsKey(id)).Order(StringComparer.Ordinal).ToList();
        if (left.Count > 0)
            findings.Add(Finding.Note(
                Untranslated.Id,
                Untranslated.With(("left", left.Count), ("all", Phrases.Value.Count), Argument.Texts("ids", left.Take(3))),
                where: fields.Span));
        return new(new Language(tag.Value, phrases), [.. findings]);
    }

    private static IEnumerable<(ScalarNode Key, ScalarNode Text)> PhrasesOf(Fields fields) =>
        fields.Nested("phrases") is { } table
            ? from entry in table.Entries
              let text = table.Prose(entry.Key.Value)
              where text is not null
              select (entry.Key, text)
            : [];

    private static IEnumerable<Finding> Faults(ScalarNode key, ScalarNode text)
    {
        var id = Excerpt.Of(key.Value);
        if (!Phrases.Value.TryGetValue(key.Value, out var english))
            return [Finding.Warning(UnknownPhrase.Id, UnknownPhrase.With(("id", id)), Suggestion.For(key.Value, Phrases.Value.Keys), key.Span)];
        return string.IsNullOrWhiteSpace(text.Value) && !string.IsNullOrWhiteSpace(english)
            ? [Finding.Error(EmptyPhrase.Id, EmptyPhrase.With(("id", id)), EmptyPhraseRemedy.With(("english", Excerpt.Of(english))), text.Span)]
            : PlacesCheck.Of(id, text, english);
    }
}
