using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Reading;

namespace Protocolist.Checks;

/// <summary>Other severities that a protocol asks for: always in the open, and never lower where a check protects people.</summary>
internal static class SeverityChanges
{
    private static readonly Phrase Changed = new("severity-changed", "'{protocol}' weighs '{check}' as {severity}, because {because}");
    private static readonly Phrase IdTaken = new("check-id-taken", "'{check}' is the id of a bundled check");
    private static readonly Phrase AnotherId = new("check-id-taken.remedy", "give the check of the house another id");
    private static readonly Phrase Unknown = new("unknown-check", "there is no check '{check}'");
    private static readonly Phrase NotLowered = new("check-cannot-be-lowered", "'{check}' protects {protects}, and is not lowered to a {severity}");
    private static readonly Phrase LeaveOrRaise = new("check-cannot-be-lowered.remedy", "leave it, or raise it");

    /// <summary>The findings as grave as the protocol wants them, and for each change a note with its reason.</summary>
    public static ImmutableArray<Finding> Of(ImmutableArray<Finding> findings, Protocol protocol)
    {
        var changes = RenamedChecks.Current(protocol);
        var all = ImmutableArray.CreateBuilder<Finding>(findings.Length + (2 * changes.Length));
        foreach (var finding in findings) all.Add(WithSeverity(finding, changes));
        all.AddRange(RenamedChecks.Told(protocol));
        foreach (var change in changes) all.Add(Refusal(change, findings) ?? Note(change, protocol));
        return all.DrainToImmutable();
    }

    /// <summary>What can be said of a protocol's own checks and severities before any animal is at stake.</summary>
    public static IEnumerable<Finding> Faults(Protocol protocol)
    {
        foreach (var check in protocol.HouseChecks)
        {
            if (AllChecks.Find(check.Id) is not null)
                yield return Finding.Error("check-id-taken", IdTaken.With(Argument.Id("check", check.Id)), AnotherId, check.Span);
        }

        foreach (var finding in RenamedChecks.Told(protocol)) yield return finding;
        foreach (var change in RenamedChecks.Current(protocol))
        {
            if (AllChecks.Find(change.CheckId) is null && !protocol.HouseChecks.Any(c => c.Id == change.CheckId))
            {
                var known = Suggestion.For(change.CheckId, [.. AllChecks.All.Select(c => c.Id)]);
                yield return Finding.Error("unknown-check", Unknown.With(("check", change.CheckId)), known, change.Span);
            }
            else if (Refusal(change, []) is { } refusal)
            {
                yield return refusal with { Severity = Severity.Error };
            }
        }
    }

    private static Finding WithSeverity(Finding finding, ImmutableArray<SeverityChange> changes)
    {
        foreach (var change in changes)
        {
            if (change.CheckId != finding.Id) continue;
            var protects = AllChecks.Find(change.CheckId) is { ProtectsPeople: true };
            return protects && change.As < finding.Severity ? finding : finding with { Severity = change.As };
        }

        return finding;
    }

    private static Finding Note(SeverityChange change, Protocol protocol)
    {
        var message = Changed.With(
            Argument.Id("protocol", protocol.Id),
            Argument.Id("check", change.CheckId),
            ("severity", EnumWords<Severity>.Of(change.As)),
            ("because", change.Because));
        return Finding.Note("severity-changed", message, where: change.Span) with { Subject = change.CheckId };
    }

    /// <summary>What protects people is never a mere note by a protocol's wish, and where it found an error it stays one.</summary>
    private static Finding? Refusal(SeverityChange change, ImmutableArray<Finding> findings)
    {
        if (AllChecks.Find(change.CheckId) is not { ProtectsPeople: true } check) return null;
        if (change.As != Severity.Note && !findings.Any(f => f.Id == change.CheckId && f.Severity > change.As)) return null;
        var message = NotLowered.With(Argument.Id("check", check.Id), ("protects", check.Protects), ("severity", EnumWords<Severity>.Of(change.As)));
        return Finding.Warning("check-cannot-be-lowered", message, LeaveOrRaise, change.Span) with { Subject = check.Id };
    }
}
