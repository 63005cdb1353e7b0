using System.Globalization;
using NodaTime;

namespace Protocolist.Planning.Scheduling;

/// <summary>Dates and times as they stand in messages: local dates with the weekday, whole minutes, durations in days, hours and minutes.</summary>
internal static class Wording
{
    public static string Of(Duration time)
    {
        var minutes = Minutes.Ceiling(time);
        var parts = new[] { (minutes / 1440, "d"), (minutes / 60 % 24, "h"), (minutes % 60, "min") }.Where(p => p.Item1 > 0);
        return minutes == 0 ? "no time" : string.Join(' ', parts.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Item1} {p.Item2}")));
    }

    public static string Of(Instant at, DateTimeZone zone) => string.Create(CultureInfo.InvariantCulture, $"{at.InZone(zone):ddd yyyy-MM-dd HH:mm}");

    public static string Of(LocalDate date) => date.ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Of(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Words one after another, the last joined by "and".</summary>
    public static string List(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";
}
