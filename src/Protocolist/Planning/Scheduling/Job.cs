using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;

namespace Protocolist.Planning.Scheduling;

/// <summary>
/// How long something may take, in whole minutes: a least time is rounded up, a greatest one down, but never below the least. Limits that contradict
/// each other stay so.
/// </summary>
/// <param name="Least">The shortest, 0 or more.</param>
/// <param name="Greatest">The longest; <see cref="Minutes.Far"/> when there is no limit.</param>
internal readonly record struct Window(long Least, long Greatest)
{
    public bool HasGreatest => Greatest < Minutes.Far;

    public static Window Of(Duration least, Duration? greatest) => greatest is { } most ? Between(least, most) : AtLeast(least);

    public static Window Exactly(Duration time) => Between(time, time);

    public static Window AtLeast(Duration time) => new(Minutes.Ceiling(time), Minutes.Far);

    public static Window AtMost(Duration time) => Between(Duration.Zero, time);

    public static Window Between(Duration least, Duration greatest)
    {
        var (from, to) = (Minutes.Ceiling(least), Minutes.Floor(greatest));
        return new(from, greatest >= least ? Math.Max(from, to) : to);
    }

    /// <summary>At once: no time between.</summary>
    public static Window Nothing => default;
}

/// <summary>Something that several plans share: the person, the fume hood, the big tub.</summary>
/// <param name="Resource">Its id.</param>
/// <param name="Throughout">Held from the job's start to its end (a tub); otherwise only during the hands-on time (a person, a hood).</param>
/// <param name="Amount">How many of it.</param>
internal readonly record struct Need(string Resource, bool Throughout = false, int Amount = 1);

/// <summary>One piece of work that has to be dated, in whole minutes.</summary>
/// <remarks>
/// Hands-on time lies inside the job's own duration and is unbroken: the bench is open for all of it, in one opening.
/// Null means that nobody need be there, whatever the hour; zero that the bench must be open at that moment.
/// </remarks>
/// <param name="Id">What it is called where dates do not fit.</param>
/// <param name="Lasts">Elapsed time from start to end; the least is raised to the hands-on time where that is longer.</param>
internal readonly record struct Job(string Id, Window Lasts)
{
    /// <summary>Between what it starts.</summary>
    public Stretch Starts { get; init; } = Stretch.Everything;

    /// <summary>Between what it ends.</summary>
    public Stretch Ends { get; init; } = Stretch.Everything;

    /// <summary>Hands-on minutes at the start.</summary>
    public long? FirstWork { get; init; }

    /// <summary>Hands-on minutes at the end.</summary>
    public long? LastWork { get; init; }

    /// <summary>What it shares with other plans.</summary>
    public ImmutableArray<Need> Needs { get; init; } = [];

    /// <summary>Hands-on time at the start.</summary>
    public Duration? HandsOnAtStart { init => FirstWork = value is { } time ? Minutes.Ceiling(time) : null; }

    /// <summary>Hands-on time at the end.</summary>
    public Duration? HandsOnAtEnd { init => LastWork = value is { } time ? Minutes.Ceiling(time) : null; }

    /// <summary>The earliest start, such as a delivery.</summary>
    public Instant? NotBefore { init => Starts = Starts with { From = After(value) }; }

    /// <summary>The latest start, such as two hours after death.</summary>
    public Instant? StartBy { init => Starts = Starts with { To = Before(value) }; }

    /// <summary>The earliest end.</summary>
    public Instant? EndNotBefore { init => Ends = Ends with { From = After(value) }; }

    /// <summary>The latest end, such as a display date.</summary>
    public Instant? EndBy { init => Ends = Ends with { To = Before(value) }; }

    /// <summary>The shortest that it can last: its own least or the work in it.</summary>
    public long Shortest => Math.Max(Lasts.Least, (FirstWork ?? 0) + (LastWork ?? 0));

    private static long After(Instant? bound) => bound is { } at ? Minutes.Ceiling(at) : -Minutes.Far;

    private static long Before(Instant? bound) => bound is { } at ? Minutes.Floor(at) : Minutes.Far;
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
/// <param name="Before">The number of the job that comes first, from 0.</param>
/// <param name="After">The number of the job that starts later.</param>
/// <param name="Lag">The time between, 0 or more.</param>
/// <param name="From">Whether the lag counts from the end or the start of <paramref name="Before"/>.</param>
internal readonly record struct Link(int Before, int After, Window Lag, Anchor From = Anchor.End);
