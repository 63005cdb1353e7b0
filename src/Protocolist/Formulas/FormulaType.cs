using System.Collections.Immutable;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>The three kinds of value a formula can have.</summary>
internal enum FormulaKind
{
    Quantity,
    Word,
    Truth,
}

/// <summary>What a formula, a name or a parameter stands for; known when a file is loaded, before any specimen is there.</summary>
/// <param name="Kind">Quantity, word or yes-no.</param>
/// <param name="Dimension">Of a quantity: what it measures.</param>
/// <param name="Words">Of a word: all the words it can be; empty where any text can stand.</param>
internal readonly record struct FormulaType(FormulaKind Kind, Dimension Dimension, ImmutableArray<string> Words)
{
    public static FormulaType Truth { get; } = new(FormulaKind.Truth, default, []);

    public static FormulaType Of(Dimension dimension) => new(FormulaKind.Quantity, dimension, []);

    public static FormulaType OneOf(params ImmutableArray<string> words) => new(FormulaKind.Word, default, words);

    public override string ToString() => Kind switch
    {
        FormulaKind.Quantity => Dimension.ToString(),
        FormulaKind.Word => "a word",
        _ => "a yes-or-no condition",
    };
}
