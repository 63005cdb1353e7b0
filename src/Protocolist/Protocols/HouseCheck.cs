using Protocolist.Findings;

namespace Protocolist.Protocols;

/// <summary>A check that an institution adds: a condition over the plan's figures, and what to say where it holds.</summary>
internal sealed record HouseCheck(string Id, Expression When, Severity Severity, string Message, string Remedy, string Source, SourceSpan Span);

/// <summary>Another weight for a bundled check, with the reason that every plan shows.</summary>
internal sealed record SeverityChange(string CheckId, Severity As, string Because, SourceSpan Span);
