using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Protocols;

/// <summary>Reads <c>for:</c>, the class of specimens that a protocol serves.</summary>
internal static class ClassReader
{
    private static readonly Phrase ListThem = new("unknown-group.remedy", "'protocolist list groups' prints them all");
    private static readonly Phrase UnknownGroup = new("unknown-group", "there is no taxon group '{group}'");
    private static readonly Phrase ClassWithoutWidth = new("class-without-width", "the class holds no {key} but one");
    private static readonly Phrase ClassWithoutWidthRemedy = new("class-without-width.remedy", "write 'a to b', 'at least a' or 'at most b'");
    private static readonly Phrase UnknownWord = new("unknown-word.class", "'{word}' is not one of the words for '{key}'");

    /// <summary>What a class can be limited by; each is a name of the specimen's scope without its prefix.</summary>
    public static readonly (string Key, Dimension Dimension)[] Measures =
    [
        ("mass", Dimension.OfMass),
        ("length", Dimension.OfLength),
        ("half-thickness", Dimension.OfLength),
        ("volume", Dimension.OfVolume),
    ];

    public static readonly (string Key, ImmutableArray<string> Words)[] Traits =
    [
        ("life-stage", SpecimenScope.LifeStages),
        ("intended-use", SpecimenScope.Uses),
    ];

    public static SpecimenClass Read(Fields protocol, Kinds kinds, List<Finding> findings)
    {
        if (protocol.Nested("for") is not { } fields) return SpecimenClass.Nothing;
        var group = fields.Required("group");
        if (group is not null && kinds.Find(group.Value) is null)
            findings.Add(Finding.Error(
                "unknown-group",
                UnknownGroup.With(("group", group.Value)),
                Suggestion.Nearest(group.Value, kinds.Groups.Select(g => g.Id)) is { } near ? Suggestion.Of(near) : ListThem,
                group.Span));
        var limits = ImmutableSortedDictionary.CreateBuilder<string, QuantityRange>(StringComparer.Ordinal);
        foreach (var (key, dimension) in Measures)
        {
            if (fields.Quantity(key, dimension) is not { } range) continue;
            limits[key] = range;
            if (range.IsPoint)
                findings.Add(Finding.Error("class-without-width", ClassWithoutWidth.With(("key", key)), ClassWithoutWidthRemedy, fields.Entry(key)!.Key.Span));
        }

        var words = ImmutableSortedDictionary.CreateBuilder<string, ImmutableArray<string>>(StringComparer.Ordinal);
        foreach (var (key, known) in Traits)
        {
            var chosen = fields.Texts(key);
            foreach (var word in chosen.Where(w => !known.Contains(w.Value)))
                findings.Add(Finding.Error("unknown-word", UnknownWord.With(("word", word.Value), ("key", key)), Suggestion.For(word.Value, known), word.Span));
            if (!chosen.IsEmpty) words[key] = [.. chosen.Select(w => w.Value)];
        }

        fields.Finish();
        return group is null ? SpecimenClass.Nothing : new(group.Value, limits.ToImmutable(), words.ToImmutable());
    }
}
