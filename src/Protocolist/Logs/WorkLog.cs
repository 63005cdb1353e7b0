using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist;

/// <summary>What really happened to one specimen, entry by entry as it was written down. Immutable; safe to share between threads.</summary>
/// <param name="Specimen">The specimen's number.</param>
/// <param name="Entries">In the order of the file, which is the order of time.</param>
public sealed record WorkLog(string Specimen, ImmutableArray<LogEntry> Entries)
{
    internal static readonly WorkLogValidator Validator = new();

    /// <summary>In the order of the file, which is the order of time.</summary>
    public ImmutableArray<LogEntry> Entries { get; init => field = GivenList.Of(value); } = GivenList.Of(Entries);

    /// <summary>What is wrong with it in itself, in the same words as of a log file; whether it fits a plan says <see cref="LogCheck"/>.</summary>
    /// <param name="zone">On whose clocks moments are told: the plan's.</param>
    /// <returns>Findings, at the places of the entries where those are known; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Validate(DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        return [.. ValidatorFindings.Of(Validator, this), .. LogOrder.Check(this, zone)];
    }

    /// <summary>A log of a specimen to which nothing has happened yet.</summary>
    /// <param name="specimen">The specimen's number.</param>
    /// <returns>The empty log.</returns>
    public static WorkLog Empty(string specimen) => new(specimen, []);

    /// <summary>When the log was closed, where it says so: nothing that is not in it happened before.</summary>
    public Instant? Written { get; init; }

    /// <summary>The last moment that the log speaks of; null for an empty one.</summary>
    public Instant? Until => Entries.Select(e => e.Moment).Append(Written).Max();
}

/// <summary>One entry of a log.</summary>
/// <param name="Step">The id of the step it is about.</param>
public sealed record LogEntry(string Step)
{
    /// <summary>When the step began.</summary>
    public Instant? Begun { get; init; }

    /// <summary>When somebody looked, measured or decided, between begin and end.</summary>
    public Instant? At { get; init; }

    /// <summary>When the step was over.</summary>
    public Instant? Done { get; init; }

    /// <summary>What was measured.</summary>
    public ImmutableArray<LogReading> Readings { get; init => field = GivenList.Of(value); } = [];

    /// <summary>Signs seen or felt, in the words of a protocol's <c>watch</c>.</summary>
    public ImmutableArray<string> Signs { get; init => field = GivenList.Of(value); } = [];

    /// <summary>Where on the body; empty where the entry does not say.</summary>
    public string Place { get; init; } = "";

    /// <summary>How much fluid was really used.</summary>
    public Volume? Used { get; init; }

    /// <summary>Why the step was left out; null where it was not.</summary>
    public string? Skipped { get; init; }

    /// <summary>A remark.</summary>
    public string Note { get; init; } = "";

    /// <summary>Where the entry stands.</summary>
    public SourceSpan Where { get; init; }

    /// <summary>The moment that the entry speaks of last; null for a step that was left out at no particular time.</summary>
    public Instant? Moment => Done ?? At ?? Begun;
}

/// <summary>One reading.</summary>
/// <param name="What">What was measured.</param>
/// <param name="Value">What the instrument showed; with both ends where it wavered.</param>
/// <param name="Where">Where it stands.</param>
public sealed record LogReading(ReadingKind What, QuantityRange Value, SourceSpan Where);

/// <summary>What a log may hold readings of.</summary>
public enum ReadingKind
{
    /// <summary>Strength of an alcohol, by volume or by mass.</summary>
    Strength,

    /// <summary>Density of the fluid, at the temperature of the same entry.</summary>
    Density,

    /// <summary>pH of the fluid.</summary>
    Ph,

    /// <summary>Temperature of the fluid.</summary>
    Temperature,

    /// <summary>Height of the fluid over the vessel's floor.</summary>
    Level,

    /// <summary>Mass of the specimen.</summary>
    Mass,
}
