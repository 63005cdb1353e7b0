using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Wording;

/// <summary>Whether a translated phrase tells all facts that the English tells, and none otherwise.</summary>
/// <remarks>What stands in a place is described at <see cref="Phrase"/>.</remarks>
internal static class PlacesCheck
{
    private static readonly Phrase Broken = new("broken-place", "in '{id}' a brace stands alone");
    private static readonly Phrase BrokenRemedy = new("broken-place.remedy", "write a place as {example}, and no brace besides");
    private static readonly Phrase Unknown = new("unknown-place", "'{id}' has no place {place}");
    private static readonly Phrase Lost = new("lost-place", "'{id}' does not say {place}, which the English says");
    private static readonly Phrase LostRemedy = new("lost-place.remedy", "put the place where it belongs in the sentence");
    private static readonly Phrase Otherwise = new("place-shown-otherwise", "'{id}' shows {place} otherwise than the English");
    private static readonly Phrase OtherwiseRemedy = new("place-shown-otherwise.remedy", "write it as {english}");
    private static readonly Phrase TwoLines = new("phrase-of-two-lines", "'{id}' runs over two lines; the English is one");
    private static readonly Phrase TwoLinesRemedy = new("phrase-of-two-lines.remedy", "write it on one line");

    /// <summary>All that is wrong with the places of a text.</summary>
    public static IEnumerable<Finding> Of(string id, ScalarNode text, string english)
    {
        if (text.Value.Contains('\n') && !english.Contains('\n'))
            yield return Finding.Error(TwoLines.Id, TwoLines.With(("id", id)), TwoLinesRemedy, text.Span);
        var (own, known) = (Template.PartsOf(text.Value), Template.PartsOf(english).Where(p => p.Name.Length > 0).ToList());
        if (own.Any(p => p.Literal.AsSpan().ContainsAny('{', '}')) || own.SkipLast(1).Any(p => p.Name.Length == 0))
        {
            // Where a place ends nobody knows then, so the places are not looked at.
            yield return Finding.Error(Broken.Id, Broken.With(("id", id)), BrokenRemedy.With(("example", "{name}")), text.Span);
            yield break;
        }

        var places = own.Where(p => p.Name.Length > 0).ToList();
        var names = known.Select(p => p.Name).Distinct(StringComparer.Ordinal).ToList();
        foreach (var unknown in places.Where(p => !names.Contains(p.Name)).DistinctBy(p => p.Name))
            yield return Finding.Error(Unknown.Id, Unknown.With(("id", id), ("place", Braced(unknown.Name))), Suggestion.For(unknown.Name, names), text.Span);
        var meant = places.Where(p => p.Words.Length == 0).Select(p => names.Contains(p.Name) ? p.Name : Suggestion.Nearest(p.Name, names)).ToHashSet();
        foreach (var lost in known.Where(p => p.Words.Length == 0 && !meant.Contains(p.Name)).DistinctBy(p => p.Name))
            yield return Finding.Error(Lost.Id, Lost.With(("id", id), ("place", Braced(Written(lost)))), LostRemedy, text.Span);
        foreach (var otherwise in places.Where(p => names.Contains(p.Name) && !IsShownAsIn(known, p)))
            yield return Finding.Error(
                Otherwise.Id,
                Otherwise.With(("id", id), ("place", Braced(Written(otherwise)))),
                OtherwiseRemedy.With(("english", Braced(Written(known.First(p => p.Name == otherwise.Name))))),
                text.Span);
    }

    /// <summary>Articles, joints and capitals are a language's own; numbers, units and moments are shown as in English.</summary>
    private static bool IsShownAsIn(List<Template.Part> english, Template.Part own) =>
        own.Words.Length > 0
        || english.Exists(p => p.Name == own.Name && p.Words.Length == 0
            && (p.Format == own.Format || (Template.IsOfWords(p.Format) && Template.IsOfWords(own.Format))))
        || (own.Format.Length == 0 && english.TrueForAll(p => p.Name != own.Name || p.Words.Length > 0));

    private static string Written(Template.Part place) => place.Format.Length == 0 ? place.Name : $"{place.Name}:{place.Format}";

    private static string Braced(string place) => $"{{{place}}}";
}
