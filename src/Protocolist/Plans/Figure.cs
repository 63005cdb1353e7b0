using System.Collections.Immutable;

namespace Protocolist.Plans;

/// <summary>One derived value of a plan, with its reason.</summary>
/// <param name="Id">Its id: a value's name, or a step's id, a dot and a setting.</param>
/// <param name="Value">The value, rounded for a person to read.</param>
/// <param name="Formula">How it was made: a formula, a rule, or <c>given</c>.</param>
/// <param name="Inputs">The ids of the figures it was made from.</param>
/// <param name="Source">Where the formula or the number comes from.</param>
public sealed record Figure(string Id, string Value, string Formula, ImmutableArray<string> Inputs, string Source)
{
    /// <summary>The file, line and column it stands at, where it comes from a file.</summary>
    public string Where { get; init; } = "";

    /// <summary>Its exact text in SI-based units, which reads back as the same quantity; empty for words.</summary>
    public string Exact { get; init; } = "";

    /// <summary>A remark.</summary>
    public string Note { get; init; } = "";
}
