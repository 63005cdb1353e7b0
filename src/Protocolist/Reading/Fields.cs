using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Reading;

/// <summary>
/// Takes the entries of one mapping by name, adding to a shared list what is wrong with each, and reports at the end
/// every key that nobody asked for. Keys that start with <c>x-</c> are an author's own and pass.
/// </summary>
internal sealed class Fields(MappingNode mapping, Message what, List<Finding> findings)
{
    private static readonly Phrase NotAMapping = new("not-a-mapping", "{what} must be a set of 'key: value' lines");
    private static readonly Phrase NotAMappingRemedy = new("not-a-mapping.remedy", "put each key on a line of its own");
    private static readonly Phrase MissingKey = new("missing-key", "{what} needs '{key}'");
    private static readonly Phrase AddKey = new("missing-key.remedy", "add '{key}:'");
    private static readonly Phrase NotAText = new("not-a-text", "'{key}' must be one value");
    private static readonly Phrase NotATextRemedy = new("not-a-text.remedy", "write it on the same line as its key");
    private static readonly Phrase NotTexts = new("not-a-text.item", "each item of '{key}' must be one value");
    private static readonly Phrase NotTextsRemedy = new("not-a-text.item.remedy", "write one value an item");
    private static readonly Phrase UnknownWord = new("unknown-word.key", "'{word}' is not one of the words for '{key}'");
    private static readonly Phrase NotWhole = new("bad-number.whole", "'{key}' must be a whole number from {least} to {most}, not '{word}'");
    private static readonly Phrase NotWholeRemedy = new(
        "bad-number.whole.remedy", "write digits only, within those bounds; where it is not known, leave it out");
    private static readonly Phrase RenamedKey = new("renamed-key", "'{key}' is called '{meant}' in {what}");
    private static readonly Phrase RenamedKeyRemedy = new("renamed-key.remedy", "write '{meant}:'");
    private static readonly Phrase UnknownKey = new("unknown-key", "unknown key '{key}' in {what}");

    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    public SourceSpan Span => mapping.Span;

    public List<Finding> Findings => findings;

    public IEnumerable<MappingEntry> Entries => mapping.Entries;

    /// <summary>Fields of a node that must be a mapping; null with a finding where it is not.</summary>
    public static Fields? Of(DocumentNode node, Message what, List<Finding> findings)
    {
        if (node is MappingNode mapping) return new(mapping, what, findings);
        if (node is not ScalarNode { IsEmpty: true })
            findings.Add(Finding.Error("not-a-mapping", NotAMapping.With(("what", what)), NotAMappingRemedy, node.Span));
        return null;
    }

    /// <summary>The entry of that key, or null; an empty value counts as not given.</summary>
    public MappingEntry? Entry(string key)
    {
        _asked.Add(key);
        return mapping.Find(key) is { } entry && entry.Value is not ScalarNode { IsEmpty: true } ? entry : null;
    }

    /// <summary>The text of that key, on one line; null where absent, not a text, or not one line.</summary>
    public ScalarNode? Scalar(string key) => Single(key) is { } scalar ? OneLine(scalar, key) : null;

    /// <summary>The text of that key, which may run over several lines; null where absent, not a text, or far too long.</summary>
    public ScalarNode? Prose(string key) => Single(key) is { } scalar ? Prose(scalar, key) : null;

    /// <summary>As <see cref="Scalar"/>, with a finding where absent.</summary>
    public ScalarNode? Required(string key) => IsThere(key) ? Scalar(key) : null;

    /// <summary>As <see cref="Prose(string)"/>, with a finding where absent.</summary>
    public ScalarNode? RequiredProse(string key) => IsThere(key) ? Prose(key) : null;

    private bool IsThere(string key)
    {
        if (Entry(key) is not null) return true;
        Miss(key);
        return false;
    }

    /// <summary>Says that a key is missing.</summary>
    /// <param name="key">The key.</param>
    /// <param name="remedy">What to do; to add it, where nothing better can be said.</param>
    /// <param name="where">The place; the key's own where it stands there without a value, else that of the mapping.</param>
    public void Miss(string key, Message? remedy = null, SourceSpan? where = null) => findings.Add(Finding.Error(
        MissingKey.Id,
        MissingKey.With(("what", what), ("key", key)),
        remedy ?? AddKey.With(("key", key)),
        where ?? mapping.Find(key)?.Key.Span ?? mapping.Span));

    private ScalarNode? Single(string key)
    {
        if (Entry(key) is not { } entry) return null;
        if (entry.Value is ScalarNode scalar) return scalar;
        findings.Add(Finding.Error("not-a-text", NotAText.With(("key", key)), NotATextRemedy, entry.Key.Span));
        return null;
    }

    private ScalarNode? OneLine(ScalarNode scalar, string key)
    {
        // Text folded under its key ends with a line break that nobody wrote.
        var value = scalar.Value.TrimEnd('\n');
        return Told(scalar, TextRules.OfLine(key, value)) ? null : value.Length == scalar.Value.Length ? scalar : scalar with { Value = value };
    }

    private ScalarNode? Prose(ScalarNode scalar, string key) => Told(scalar, TextRules.OfProse(key, scalar.Value)) ? null : scalar;

    private bool Told(ScalarNode scalar, Finding? fault)
    {
        if (fault is not null) findings.Add(fault with { Where = scalar.Span });
        return fault is not null;
    }

    public Fields? Nested(string key, Message? nested = null) => Entry(key) is { } entry ? Of(entry.Value, nested ?? Named.Key(key), findings) : null;

    /// <summary>The items of a list; a single value counts as a list of one.</summary>
    public ImmutableArray<DocumentNode> List(string key) => Entry(key)?.Value switch
    {
        SequenceNode sequence => sequence.Items,
        { } single => [single],
        null => [],
    };

    /// <summary>A list of texts, each on one line.</summary>
    public ImmutableArray<ScalarNode> Texts(string key) => Texts(key, OneLine);

    /// <summary>A list of texts, each of which may run over several lines.</summary>
    public ImmutableArray<ScalarNode> Paragraphs(string key) => Texts(key, Prose);

    private ImmutableArray<ScalarNode> Texts(string key, Func<ScalarNode, string, ScalarNode?> read)
    {
        var texts = ImmutableArray.CreateBuilder<ScalarNode>();
        foreach (var item in List(key))
        {
            if (item is ScalarNode scalar && read(scalar, key) is { } text) texts.Add(text);
            else if (item is not ScalarNode) findings.Add(Finding.Error("not-a-text", NotTexts.With(("key", key)), NotTextsRemedy, item.Span));
        }

        return texts.DrainToImmutable();
    }

    /// <summary>A quantity or range of a known kind.</summary>
    public QuantityRange? Quantity(string key, Dimension dimension)
    {
        if (Scalar(key) is not { } scalar) return null;
        return ScalarReading.Quantity(scalar, key, dimension, findings);
    }

    /// <summary>One of a closed list of words.</summary>
    public string? Word(string key, IReadOnlyCollection<string> words)
    {
        if (Scalar(key) is not { } scalar) return null;
        if (words.Contains(scalar.Value)) return scalar.Value;
        findings.Add(Finding.Error(
            "unknown-word",
            UnknownWord.With(("word", Excerpt.Of(scalar.Value)), ("key", key)),
            Suggestion.For(scalar.Value, words),
            scalar.Span));
        return null;
    }

    /// <summary>One of the values of an enumeration, in kebab-case.</summary>
    public T? Choice<T>(string key)
        where T : struct, Enum =>
        Word(key, EnumWords<T>.All) is { } word ? EnumWords<T>.Parse(word) : null;

    /// <summary>A date as <c>2027-03-01</c>.</summary>
    public LocalDate? Date(string key) => Scalar(key) is { } scalar ? ScalarReading.Date(scalar, findings) : null;

    /// <summary>Yes or no.</summary>
    public bool? YesNo(string key) => Word(key, ["yes", "no", "true", "false"]) is { } word ? word is "yes" or "true" : null;

    /// <summary>A whole number within bounds.</summary>
    public int? Whole(string key, int least, int most)
    {
        if (Scalar(key) is not { } scalar) return null;
        if (int.TryParse(scalar.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most) return number;
        findings.Add(Finding.Error(
            "bad-number",
            NotWhole.With(("key", key), ("least", least), ("most", most), ("word", Excerpt.Of(scalar.Value))),
            NotWholeRemedy,
            scalar.Span));
        return null;
    }

    /// <summary>Reports the keys nobody asked for; a key that is missing because it was misspelt is then not reported as well.</summary>
    /// <param name="renamed">Keys that go by another name now: that name for each.</param>
    public void Finish(IReadOnlyDictionary<string, string>? renamed = null)
    {
        foreach (var entry in mapping.Entries)
        {
            var key = entry.Key.Value;
            if (_asked.Contains(key) || key.StartsWith("x-", StringComparison.Ordinal)) continue;
            var isRenamed = renamed is not null && renamed.TryGetValue(key, out var now) && _asked.Contains(now);
            var meant = isRenamed ? renamed![key] : Suggestion.Nearest(key, _asked);
            if (meant is not null) findings.RemoveAll(f => f.Message == MissingKey.With(("what", what), ("key", meant)));
            if (isRenamed)
                findings.Add(Finding.Error(
                    "renamed-key",
                    RenamedKey.With(("key", key), ("meant", meant!), ("what", what)),
                    RenamedKeyRemedy.With(("meant", meant!)),
                    entry.Key.Span));
            else
                findings.Add(Finding.Error(
                    "unknown-key",
                    UnknownKey.With(("key", Excerpt.Of(key)), ("what", what)),
                    Suggestion.For(key, _asked),
                    entry.Key.Span));
        }
    }
}
