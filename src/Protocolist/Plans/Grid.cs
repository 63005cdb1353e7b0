using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Plans;

/// <summary>
/// How finely a plan knows its facts: to what no bench can measure, in the units of its JSON. Planning reckons with whole numbers, and what is put
/// on the plan lies on the grid; so one that was read back equals the one that was written. Words are made of what was reckoned.
/// </summary>
internal static class Grid
{
    /// <summary>Three decimals; small amounts keep six.</summary>
    public static double Round(double value) => Math.Abs(value) >= 1 ? Math.Round(value, 3) : Math.Round(value, 6);

    /// <summary>To the minute, in which plans are dated.</summary>
    public static Duration ToMinute(Duration time) => Duration.FromMinutes(Math.Round(time.TotalMinutes));

    /// <summary>Hands-on time, which protocols give in minutes.</summary>
    public static Duration OnMinutes(Duration time) => Duration.FromMinutes(Round(time.TotalMinutes));

    public static Volume On(Volume volume) => Volume.FromMilliliters(Round(volume.Milliliters));

    public static Mass On(Mass mass) => Mass.FromGrams(Round(mass.Grams));

    public static Length? On(Length? length) => length is { } given ? Length.FromMillimeters(Round(given.Millimeters)) : null;

    public static Temperature On(Temperature temperature) => Temperature.FromDegreesCelsius(Round(temperature.DegreesCelsius));
}
