using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Quantities;

namespace Protocolist.Plans;

/// <summary>One derived value of a plan, with its reason. Immutable.</summary>
/// <remarks>The value is the plan's own; how it is made, from what and by which source is shared by all plans of a protocol, and put into words when
/// somebody asks.</remarks>
public sealed class Figure : IEquatable<Figure>
{
    internal Figure(FigureOrigin origin, FormulaValue value) => (Origin, Answer) = (origin, value);

    /// <summary>Its id: a value's name, or a step's id, a dot and a setting.</summary>
    public string Id => Origin.Id;

    /// <summary>The value, where it is a quantity; its bounds are exact.</summary>
    public QuantityRange? Quantity => Answer.Kind == FormulaKind.Quantity ? Answer.Quantity : null;

    /// <summary>The value for a person to read: a quantity rounded to what can be measured out, a word, or yes and no.</summary>
    public string Value => Answer.ToString();

    /// <summary>Its exact text in SI-based units, which reads back as the same quantity; empty for words.</summary>
    public string Exact => Answer.Kind == FormulaKind.Quantity ? ExactText.Of(Answer.Quantity) : "";

    /// <summary>How it was made: a formula, a rule, or <c>given</c>.</summary>
    public Message Formula => Origin.HowItIsMade;

    /// <summary>The ids of the figures that it was made from.</summary>
    public ImmutableArray<string> Inputs => Origin.Inputs;

    /// <summary>Where the formula or the number comes from.</summary>
    public string Source => Origin.Source;

    /// <summary>The place in a file where that begins, where it comes from one.</summary>
    public SourceSpan Where => Origin.Where.Start;

    /// <summary>A remark; empty where there is none.</summary>
    public Message Note => Origin.Note;

    /// <summary>How it is made, whatever its value.</summary>
    internal FigureOrigin Origin { get; }

    /// <summary>The value as the formula language has it.</summary>
    internal FormulaValue Answer { get; }

    /// <inheritdoc/>
    public bool Equals(Figure? other) =>
        other is not null && Id == other.Id && Answer == other.Answer && Source == other.Source && Note == other.Note && Inputs
            .AsSpan()
            .SequenceEqual(other.Inputs.AsSpan())
        && (ReferenceEquals(Origin, other.Origin) || (Formula == other.Formula && Where == other.Where));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Figure);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Answer);

    /// <summary>One line.</summary>
    /// <returns>Text such as <c>fix.last = 12 to 21 d</c>.</returns>
    public override string ToString() => $"{Id} = {Value}";
}
