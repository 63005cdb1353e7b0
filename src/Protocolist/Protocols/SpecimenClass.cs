using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Protocols;

/// <summary>Which specimens a protocol is for: a group, and limits on what can be measured or said of them.</summary>
/// <param name="Group">The taxon group's id; empty for a protocol that only others extend.</param>
/// <param name="Limits">Measure → from its low end up to, and without, its high end, so that neighbours never share an animal.</param>
/// <param name="Words">Trait (life stage, intended use) → the words that fit.</param>
internal sealed record SpecimenClass(
    string Group,
    ImmutableSortedDictionary<string, QuantityRange> Limits,
    ImmutableSortedDictionary<string, ImmutableArray<string>> Words)
{
    private static readonly Phrase Whole = new("class", "{parts:, }");
    private static readonly Phrase Limit = new("class.limit", "{measure} {size}");
    private static readonly Phrase Trait = new("class.trait", "{trait} {words: or }");

    internal static SpecimenClass Nothing { get; } = new(
        "",
        ImmutableSortedDictionary<string, QuantityRange>.Empty,
        ImmutableSortedDictionary<string, ImmutableArray<string>>.Empty);

    /// <summary>Whether it serves any specimen at all.</summary>
    public bool IsForSpecimens => Group.Length > 0;

    internal static bool Within(QuantityRange limit, double value) =>
        limit.Low <= value && (value < limit.High || double.IsPositiveInfinity(limit.High));

    /// <summary>In words: <c>mammal, mass 2 to 60 kg</c>.</summary>
    /// <returns>The group, then each limit.</returns>
    public override string ToString() => Said().ToString();

    /// <summary>As a person would call it.</summary>
    internal Message Said() => Whole.With(
        Argument.ListOf(
            "parts",
            [
                Argument.Id("", Group),
                .. Limits.Select(l => (Argument)("", Limit.With(("measure", l.Key), ("size", l.Value)))),
                .. Words.Select(w => (Argument)("", Trait.With(("trait", w.Key), Argument.Texts("words", w.Value)))),
            ]));
}
