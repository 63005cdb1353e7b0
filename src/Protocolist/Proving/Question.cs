using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>One thing that a value could get wrong.</summary>
/// <param name="Id">The finding's id.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="MayFault">Whether bounds leave room for it.</param>
/// <param name="IsFault">Whether one specimen's value has it.</param>
/// <param name="Says">What is said of the value, after its name: <c>is negative</c>.</param>
/// <param name="Remedy">What to do.</param>
internal sealed record Question(
    string Id,
    Severity Severity,
    Func<Case, FormulaValue, bool> MayFault,
    Func<Case, BodyMeasure, FormulaValue, bool> IsFault,
    Phrase Says,
    Phrase Remedy)
{
    /// <summary>Whether it sets against each other what grows together, so that bounds of each say nothing: single specimens alone are asked.</summary>
    public bool WitnessesOnly { get; init; }

    /// <summary>Whether the value itself says nothing about the fault.</summary>
    public bool HidesValue { get; init; }

    /// <summary>Whether it looks for slips of the pen: what bounds leave open is then not worth a note.</summary>
    public bool IsForSlips { get; init; }
}
