using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>A value of a formula: a quantity (always as a range, perhaps of no width), a word, or an answer.</summary>
internal readonly record struct FormulaValue
{
    private FormulaValue(FormulaKind kind, QuantityRange quantity, string word, Truth truth) =>
        (Kind, Quantity, Word, Truth) = (kind, quantity, word, truth);

    public FormulaKind Kind { get; }

    public QuantityRange Quantity { get; }

    public string Word { get; }

    public Truth Truth { get; }

    public static FormulaValue Of(QuantityRange quantity) => new(FormulaKind.Quantity, quantity, "", default);

    public static FormulaValue Of(string word) => new(FormulaKind.Word, default, word, default);

    /// <summary>A word that is not settled: over a whole class it is one for some specimens and another for others.</summary>
    public static FormulaValue AnyWord { get; } = new(FormulaKind.Word, default, "", default);

    public bool IsAnyWord => Kind == FormulaKind.Word && Word is "";

    public static FormulaValue Of(Truth truth) => new(FormulaKind.Truth, default, "", truth);

    /// <summary>Whether it is <c>default</c>: a place that nobody filled.</summary>
    public bool IsNothing => Word is null;

    public override string ToString() => Kind switch
    {
        FormulaKind.Quantity => Measurable.Text(Quantity),
        FormulaKind.Word => IsAnyWord ? "any word" : Word,
        _ => Truth switch { Truth.Yes => "yes", Truth.No => "no", _ => "depends" },
    };
}
