using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks;

/// <summary>Findings that had another id once: where two places found the same thing under two names, it has one now.</summary>
internal static class RenamedChecks
{
    /// <summary>The old id and the one it has now.</summary>
    public static ImmutableArray<(string Old, string Now)> All { get; } =
    [
        ("fixation-shorter-than-penetration", Rules.FixationTime.Id),
        ("formalin-on-spiculate", Rules.SpiculesInFormalin.Id),
        ("ratio-floor", Rules.RatioFloor.Id),
    ];

    private static readonly Phrase Renamed = new("renamed-check", "the check '{old}' is called '{now}'");
    private static readonly Phrase Write = new("renamed-check.remedy", "write '{now}'");

    /// <summary>The severities that a protocol asks for, by the names of today. What it says of the new name counts before what it says of the old.</summary>
    public static ImmutableArray<SeverityChange> Current(Protocol protocol)
    {
        var changes = protocol.Severities;
        foreach (var change in protocol.Severities)
        {
            if (NowOf(change, protocol) is not { } now) continue;
            changes = protocol.Severities.Any(c => c.CheckId == now) ? changes.Remove(change) : changes.Replace(change, change with { CheckId = now });
        }

        return changes;
    }

    /// <summary>A warning for each old name that a protocol still uses.</summary>
    public static IEnumerable<Finding> Told(Protocol protocol)
    {
        foreach (var change in protocol.Severities)
        {
            if (NowOf(change, protocol) is not { } now) continue;
            var (old, id) = (Argument.Id("old", change.CheckId), Argument.Id("now", now));
            yield return Finding.Warning("renamed-check", Renamed.With(old, id), Write.With(id), change.Span) with { Subject = now };
        }
    }

    /// <summary>A check of the house may bear an old name.</summary>
    private static string? NowOf(SeverityChange change, Protocol protocol)
    {
        foreach (var (old, now) in All)
        {
            if (change.CheckId == old && !protocol.HouseChecks.Any(c => c.Id == old)) return now;
        }

        return null;
    }
}
