using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Protocols;

/// <summary>
/// A check that an institution adds: a condition over the plan's figures, and what to say where it holds; with the names in its condition, each once.
/// </summary>
internal sealed record HouseCheck(
    string Id, Expression When, ImmutableArray<string> Names, Severity Severity, string Message, string Remedy, string Source, SourceSpan Span);

/// <summary>Another weight for a bundled check, with the reason that every plan shows.</summary>
internal sealed record SeverityChange(string CheckId, Severity As, string Because, SourceSpan Span);
