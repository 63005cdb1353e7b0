using NodaTime;

namespace Protocolist.Benches.Opening;

/// <summary>A stretch of whole minutes since the Unix epoch, both ends included.</summary>
internal readonly record struct Stretch(long From, long To)
{
    public static Stretch Everything => new(-Minutes.Far, Minutes.Far);
}

/// <summary>Whole minutes since the Unix epoch: the resolution of the calendar.</summary>
internal static class Minutes
{
    /// <summary>Far beyond every date, with room for sums of many.</summary>
    public const long Far = 1L << 50;

    private const long Nanoseconds = NodaConstants.NanosecondsPerMinute;

    public static long Floor(Instant at) => Floor(at.ToUnixTimeSeconds(), 60);

    public static long Ceiling(Instant at) => Floor(at) is var minute && At(minute) < at ? minute + 1 : minute;

    public static Instant At(long minute) => Instant.FromUnixTimeSeconds(minute * 60);

    public static long Floor(Duration time) => (time.Days * 1440L) + Floor(time.NanosecondOfDay, Nanoseconds);

    public static long Ceiling(Duration time) => -Floor(-time);

    private static long Floor(long value, long unit) => (value / unit) - (value % unit < 0 ? 1 : 0);
}
