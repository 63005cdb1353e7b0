using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Protocolist.Findings;

/// <summary>What came of reading or making something: the value where there is one, and all that was found on the way.</summary>
/// <remarks>Bad input is data, not an exception. A value may be present beside errors, so that a person sees all that is wrong at once.</remarks>
/// <typeparam name="T">The kind of value.</typeparam>
/// <param name="Value">The value, or <c>null</c> where nothing usable could be made.</param>
/// <param name="Findings">All findings, in the order of their places.</param>
public sealed record Checked<T>(T? Value, ImmutableArray<Finding> Findings)
    where T : class
{
    /// <summary>Whether there is a value and no finding is an error.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsSound => Value is not null && !HasErrors;

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}
