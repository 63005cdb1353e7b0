using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Protocolist.Findings;

/// <summary>A language that messages can be read in: its phrases by id, laid over the English. Immutable; safe to share between threads.</summary>
public sealed partial class Language
{
    private readonly FrozenDictionary<string, string> _phrases;

    /// <summary>Makes a language.</summary>
    /// <param name="tag">Its tag, such as <c>de</c> or <c>pt-BR</c> (BCP 47).</param>
    /// <param name="phrases">Phrase id → text with the same named places as the English; a phrase that is not among them stays English.</param>
    /// <exception cref="ArgumentException">The tag is none, or a phrase has no text.</exception>
    public Language(string tag, IEnumerable<KeyValuePair<string, string>> phrases)
    {
        ArgumentNullException.ThrowIfNull(tag);
        ArgumentNullException.ThrowIfNull(phrases);
        if (!IsTag(tag)) throw new ArgumentException("A tag of BCP 47 is letters and digits in groups of at most eight, such as pt-BR.", nameof(tag));
        Tag = tag;
        _phrases = phrases.ToFrozenDictionary(StringComparer.Ordinal);
        if (_phrases.Values.Contains(null!)) throw new ArgumentException("A phrase has no text.", nameof(phrases));
    }

    /// <summary>English as it stands beside each rule.</summary>
    public static Language English { get; } = new("en", []);

    /// <summary>Its tag, such as <c>en</c>.</summary>
    public string Tag { get; }

    /// <summary>Whether a text has the form of a tag: two or three letters, then groups of at most eight letters and digits.</summary>
    /// <remarks>BCP 47, without its rare forms.</remarks>
    internal static bool IsTag(string tag) => TagForm.IsMatch(tag);

    [GeneratedRegex(@"^[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8})*\z")]
    private static partial Regex TagForm { get; }

    /// <summary>The text of a phrase in this language, else in English.</summary>
    /// <param name="phrase">The phrase.</param>
    /// <returns>Text with named places.</returns>
    public string Of(Phrase phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return _phrases.Count > 0 && _phrases.TryGetValue(phrase.Id, out var own) ? own : phrase.English;
    }
}
