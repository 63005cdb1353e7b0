using System.Globalization;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks;

/// <summary>How findings tell their numbers.</summary>
internal static class Telling
{
    private const int MostDecimals = 6;

    public static string Text(this Volume volume) => Measurable.Text(volume.CubicMeters, Dimension.OfVolume);

    public static string Text(this Length length) => Measurable.Text(length.Meters, Dimension.OfLength);

    public static string Text(this Mass mass) => Measurable.Text(mass.Kilograms, Dimension.OfMass);

    public static string Text(this Duration time) => Measurable.Text(time.TotalSeconds, Dimension.OfTime);

    /// <summary>
    /// A number and the limit that it is past, with as many decimals as it takes to tell them apart: 4.99 is not "5, below 5". Alike where they are equal.
    /// </summary>
    public static (string Value, string Limit) Apart(double value, double limit, int decimals = 0)
    {
        for (var places = decimals; places <= MostDecimals; places++)
        {
            var (said, most) = (Rounded(value, places), Rounded(limit, places));
            if (said != most) return (said, most);
        }

        return (Rounded(value, decimals), Rounded(limit, decimals));
    }

    /// <summary>A volume and the limit that it is past.</summary>
    public static (string Value, string Limit) Apart(Volume value, Volume limit) => Apart(value.Text(), limit.Text(), value.Liters, limit.Liters, "L");

    /// <summary>A length and the limit that it is past.</summary>
    public static (string Value, string Limit) Apart(Length value, Length limit) => Apart(value.Text(), limit.Text(), value.Millimeters, limit.Millimeters, "mm");

    /// <summary>A mass and the limit that it is past.</summary>
    public static (string Value, string Limit) Apart(Mass value, Mass limit) => Apart(value.Text(), limit.Text(), value.Kilograms, limit.Kilograms, "kg");

    /// <summary>A time that is past a limit: rounded, or to the minute or second where that reads as the limit itself.</summary>
    public static string Past(this Duration time, Duration limit)
    {
        if (time.Text() != limit.Text() || time == limit) return time.Text();
        var days = limit.Text().EndsWith('d');
        (long Count, string Unit)[] parts =
        [
            (days ? (long)time.TotalDays : 0, "d"),
            ((long)time.TotalHours - (days ? 24 * (long)time.TotalDays : 0), "h"),
            (time.Minutes, "min"),
            (time.Seconds, "s"),
        ];
        return string.Join(' ', parts.Where(p => p.Count > 0).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Count} {p.Unit}")));
    }

    /// <summary>How often, in words: <c>once</c>, <c>twice</c>, <c>3 times</c>.</summary>
    public static string Times(int count) => count switch { 1 => "once", 2 => "twice", _ => string.Create(CultureInfo.InvariantCulture, $"{count} times") };

    /// <summary>A number of things, one or several.</summary>
    public static string Count(int count, string one, string several) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : several)}");

    /// <summary><c>a and b</c>; <c>a, b and c</c>.</summary>
    public static string And(IReadOnlyList<string> all) => all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.Take(all.Count - 1))} and {all[^1]}";

    /// <summary>The group with its article: <c>an earthworm</c>.</summary>
    public static string One(this TaxonGroup group) => Phrases.One(group.Name);

    private static (string Value, string Limit) Apart(string value, string limit, double exact, double exactLimit, string unit)
    {
        if (value != limit) return (value, limit);
        var (said, most) = Apart(exact, exactLimit, 1);
        return said == most ? (value, limit) : ($"{said} {unit}", $"{most} {unit}");
    }

    private static string Rounded(double value, int places) => value.ToString("0." + new string('#', places), CultureInfo.InvariantCulture);
}
