using System.Collections.Immutable;

namespace Protocolist.Formulas;

/// <summary>One parameter of a function.</summary>
/// <param name="Name">As the guide calls it.</param>
/// <param name="Type">What it must be; null where the function decides by itself.</param>
/// <param name="Optional">Whether it may be left out. Only the last ones may.</param>
internal sealed record FormulaParameter(string Name, FormulaType? Type, bool Optional = false);

/// <summary>A documented function of the formula language. Rooms register their own; the list is closed for authors of files.</summary>
/// <param name="Name">Kebab-case.</param>
/// <param name="Summary">One line for the guide, with the source of any number in it.</param>
/// <param name="Parameters">What it takes.</param>
/// <param name="ResultType">Its type for given argument types, or text saying why they do not fit.</param>
/// <param name="Evaluate">
/// Its value. Arguments are ranges; the result must hold every value that arguments within them can give.
/// An optional argument left out is absent from the array.
/// </param>
internal sealed record FormulaFunction(
    string Name,
    string Summary,
    ImmutableArray<FormulaParameter> Parameters,
    Func<ImmutableArray<FormulaType>, (FormulaType Type, string? Misfit)> ResultType,
    Func<ImmutableArray<FormulaValue>, FormulaValue> Evaluate)
{
    /// <summary>Whether the last parameter may be repeated.</summary>
    public bool Repeats { get; init; }

    /// <summary>
    /// The value over all specimens of a class, where it differs from the value for one: the low end of one specimen's range
    /// can lie anywhere in the range that all of them span.
    /// </summary>
    public Func<ImmutableArray<FormulaValue>, FormulaValue>? Bound { get; init; }

    /// <summary>As it stands in the guide: <c>least(a, b, …)</c>.</summary>
    public string Signature =>
        $"{Name}({string.Join(", ", Parameters.Select(p => p.Optional ? $"[{p.Name}]" : p.Name))}{(Repeats ? ", …" : "")})";
}
