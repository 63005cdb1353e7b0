using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist;

/// <summary>A check as the list of checks shows it.</summary>
/// <param name="Id">The id of its findings.</param>
/// <param name="Protects">What or whom it protects.</param>
/// <param name="Severities">How grave its findings are, and when.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="ProtectsPeople">Whether no protocol may lower it.</param>
public sealed record CheckDescription(string Id, string Protects, ImmutableArray<SeverityRule> Severities, string Source, bool ProtectsPeople);

/// <summary>A severity, and what must be the case for a finding of a check to have it.</summary>
/// <param name="Severity">How much the finding weighs, before a protocol weighs it otherwise.</param>
/// <param name="When">What must be the case, with the limits.</param>
public sealed record SeverityRule(Severity Severity, string When)
{
    /// <summary>One line.</summary>
    /// <returns>Text such as <c>warning: formalin is injected in a room without a hood</c>.</returns>
    public override string ToString() => $"{Severity.ToString().ToLowerInvariant()}: {When}";
}
