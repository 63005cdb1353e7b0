using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Reading;

namespace Protocolist.Checks;

/// <summary>Other severities that a protocol asks for: always in the open, and never lower where a check protects people.</summary>
internal static class Weighing
{
    /// <summary>The findings as the protocol weighs them, and for each change a note with its reason.</summary>
    public static IEnumerable<Finding> Of(IReadOnlyList<Finding> findings, Protocol protocol)
    {
        var changes = RenamedChecks.Current(protocol);
        foreach (var finding in findings) yield return Weighed(finding, changes);
        foreach (var finding in RenamedChecks.Told(protocol)) yield return finding;
        foreach (var change in changes)
        {
            if (Refusal(change, findings) is { } refusal) yield return refusal;
            else yield return Finding.Note("severity-changed", $"'{protocol.Id}' weighs '{change.CheckId}' as {EnumWords<Severity>.Of(change.As)}, because {change.Because}", "", change.Span) with { Subject = change.CheckId };
        }
    }

    /// <summary>What can be said of a protocol's own checks and severities before any animal is at stake.</summary>
    public static IEnumerable<Finding> Faults(Protocol protocol)
    {
        foreach (var check in protocol.HouseChecks)
        {
            if (Bundled(check.Id) is not null)
                yield return Finding.Error("check-id-taken", $"'{check.Id}' is the id of a bundled check", "give the check of the house another id", check.Span);
        }

        foreach (var finding in RenamedChecks.Told(protocol)) yield return finding;
        foreach (var change in RenamedChecks.Current(protocol))
        {
            if (Bundled(change.CheckId) is null && !protocol.HouseChecks.Any(c => c.Id == change.CheckId))
                yield return Finding.Error("unknown-check", $"there is no check '{change.CheckId}'", Suggestion.For(change.CheckId, [.. AllChecks.All.Select(c => c.Id)]), change.Span);
            else if (Refusal(change, []) is { } refusal)
                yield return refusal with { Severity = Severity.Error };
        }
    }

    private static Finding Weighed(Finding finding, ImmutableArray<SeverityChange> changes)
    {
        foreach (var change in changes)
        {
            if (change.CheckId != finding.Id) continue;
            var protects = Bundled(change.CheckId) is { ProtectsPeople: true };
            return protects && change.As < finding.Severity ? finding : finding with { Severity = change.As };
        }

        return finding;
    }

    /// <summary>What protects people is never a mere note by a protocol's wish, and where it found an error it stays one.</summary>
    private static Finding? Refusal(SeverityChange change, IReadOnlyList<Finding> findings)
    {
        if (Bundled(change.CheckId) is not { ProtectsPeople: true } check) return null;
        if (change.As != Severity.Note && !findings.Any(f => f.Id == change.CheckId && f.Severity > change.As)) return null;
        return Finding.Warning("check-cannot-be-lowered", $"'{check.Id}' protects {check.Protects}, and is not lowered to a {EnumWords<Severity>.Of(change.As)}", "leave it, or raise it", change.Span) with { Subject = check.Id };
    }

    private static PlanCheck? Bundled(string id) => AllChecks.All.FirstOrDefault(c => c.Id == id);
}
