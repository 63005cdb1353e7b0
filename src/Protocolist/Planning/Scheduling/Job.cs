using System.Collections.Immutable;
using NodaTime;

namespace Protocolist.Planning.Scheduling;

/// <summary>How long something may take. The calendar counts whole minutes: a least time is rounded up, a greatest one down, but never below the least.</summary>
/// <param name="Least">The shortest, 0 or more.</param>
/// <param name="Greatest">The longest; null when there is no limit.</param>
internal readonly record struct Window(Duration Least, Duration? Greatest)
{
    public static Window Exactly(Duration time) => new(time, time);

    public static Window AtLeast(Duration time) => new(time, null);

    public static Window AtMost(Duration time) => new(Duration.Zero, time);

    public static Window Between(Duration least, Duration greatest) => new(least, greatest);

    /// <summary>At once: no time between.</summary>
    public static Window Nothing => Exactly(Duration.Zero);
}

/// <summary>Something that several plans share: the person, the fume hood, the big tub.</summary>
/// <param name="Resource">Its id.</param>
/// <param name="Throughout">Held from the job's start to its end (a tub); otherwise only during the hands-on time (a person, a hood).</param>
/// <param name="Amount">How many of it.</param>
internal readonly record struct Need(string Resource, bool Throughout = false, int Amount = 1);

/// <summary>One piece of work that has to be dated.</summary>
/// <remarks>
/// Hands-on time lies inside the job's own duration and is unbroken: the bench is open for all of it, in one opening.
/// Null means that nobody need be there, whatever the hour; zero that the bench must be open at that moment.
/// </remarks>
/// <param name="Id">Unique within its graph.</param>
/// <param name="Lasts">Elapsed time from start to end; the least is raised to the hands-on time where that is longer.</param>
internal sealed record Job(string Id, Window Lasts)
{
    /// <summary>Hands-on time at the start.</summary>
    public Duration? HandsOnAtStart { get; init; }

    /// <summary>Hands-on time at the end.</summary>
    public Duration? HandsOnAtEnd { get; init; }

    /// <summary>The earliest start, such as a delivery.</summary>
    public Instant? NotBefore { get; init; }

    /// <summary>The latest start, such as two hours after death.</summary>
    public Instant? StartBy { get; init; }

    /// <summary>The earliest end.</summary>
    public Instant? EndNotBefore { get; init; }

    /// <summary>The latest end, such as a display date.</summary>
    public Instant? EndBy { get; init; }

    /// <summary>What it shares with other plans.</summary>
    public ImmutableArray<Need> Needs { get; init; } = [];
}

/// <summary>From where a <see cref="Link"/> counts.</summary>
internal enum Anchor
{
    /// <summary>From the end of the job before.</summary>
    End,

    /// <summary>From its start: for work during a soak, such as letting gas out 24 h after immersion.</summary>
    Start,
}

/// <summary>One job starts a while after another.</summary>
/// <param name="Before">The id of the job that comes first.</param>
/// <param name="After">The id of the job that starts later.</param>
/// <param name="Lag">The time between, 0 or more.</param>
/// <param name="From">Whether the lag counts from the end or the start of <paramref name="Before"/>.</param>
internal sealed record Link(string Before, string After, Window Lag, Anchor From = Anchor.End);
