using System.Collections.Immutable;

namespace Protocolist.Formulas;

/// <summary>The names and functions a formula may use, and what each stands for. Known at load time.</summary>
/// <param name="Names">Every name with its type.</param>
/// <param name="Functions">Every function by name.</param>
internal sealed record FormulaScope(
    IReadOnlyDictionary<string, FormulaType> Names,
    IReadOnlyDictionary<string, FormulaFunction> Functions)
{
    /// <summary>Of a word-valued name, the words that can really come up, where they are fewer than those it may be compared with.</summary>
    public IReadOnlyDictionary<string, ImmutableArray<string>> Selectable { get; init; } = ImmutableDictionary<string, ImmutableArray<string>>.Empty;

    /// <summary>
    /// The place of each name in a table of values, so that nothing is looked up by its name while a plan is made; a name without a place is asked for by
    /// name.
    /// </summary>
    public IReadOnlyDictionary<string, int> Slots { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>The words that a word-valued formula can really come to.</summary>
    public ImmutableArray<string> Needed(Formula by) => by.Root is NameNode name ? Selectable.GetValueOrDefault(name.Name, by.Type.Words) : by.Type.Words;

    /// <summary>A name of this scope at a place of a formula.</summary>
    public NameNode NodeOf(string name, FormulaType type, int offset, int length) =>
        new(name, type, offset, length) { Slot = Slots.GetValueOrDefault(name, -1) };

    /// <summary>A scope with the built-in functions and no names.</summary>
    public static FormulaScope Empty { get; } = new(
        new Dictionary<string, FormulaType>(StringComparer.Ordinal),
        CommonFunctions.All.ToDictionary(f => f.Name, StringComparer.Ordinal));
}
