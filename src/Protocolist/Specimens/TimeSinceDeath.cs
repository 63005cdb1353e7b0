using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Specimens;

/// <summary>A time for which the body was at one temperature.</summary>
/// <param name="Lasted">How long.</param>
/// <param name="TemperatureC">The body's own temperature in degrees Celsius, not the room's: the inside of a large animal stays warm for hours.</param>
internal readonly record struct Keeping(Duration Lasted, double TemperatureC);

/// <summary>How far a body may have gone since death, as the hours at 20 °C that would have done the same.</summary>
/// <param name="Least">The lower end of the band.</param>
/// <param name="Most">The upper end.</param>
/// <param name="Meaning">What it means for the work, as one note or warning.</param>
internal sealed record WarmHours(double Least, double Most, Finding Meaning);

/// <summary>Weighs the time since death by temperature.</summary>
internal static class TimeSinceDeath
{
    /// <summary>The temperature that the hours are expressed at, in degrees Celsius.</summary>
    private const double ReferenceC = 20;
    private static readonly Temperature Reference = Temperature.FromDegreesCelsius(ReferenceC);

    // SPNHC best practices, Fluid Collections, 2023: ten degrees more double the rate of reactions.
    private const double ChemicalQ10 = 2;

    // Growth of bacteria gains more from warmth than chemistry does; three is a usual figure. From memory.
    private const double BacterialQ10 = 3;

    // Below this the body is hard frozen and is taken to stand still. From memory; enzymes creep on even then.
    private const double FrozenC = -5;

    private static readonly Phrase Fresh = new("warm-hours-fresh", "the body has been warm for as long as {warm:0.# h} at {at:0 °C}: fresh");
    private static readonly Phrase Fair = new("warm-hours-fair", "the body has been warm for as long as {warm:0.# h} at {at:0 °C}: fit for fixing");
    private static readonly Phrase Doubtful =
        new("warm-hours-doubtful", "the body has been warm for as long as {warm:0.# h} at {at:0 °C}: the gut and fine tissue have suffered");
    private static readonly Phrase Decomposed =
        new("warm-hours-decomposed", "the body has been warm for as long as {warm:0.# h} at {at:0 °C}: likely decomposed");

    private static readonly Phrase GutFirst = new("warm-hours-fresh.remedy", "open the gut region first all the same in fishes that digest themselves");
    private static readonly Phrase WithoutDelay = new("warm-hours-fair.remedy", "inject or slit the gut region first, without delay");
    private static readonly Phrase OpenAndJudge =
        new("warm-hours-doubtful.remedy", "open it and judge by sight and smell; fix at once, or keep skeleton and tissue only");
    private static readonly Phrase KeepWhatLasts =
        new("warm-hours-decomposed.remedy", "fluid preservation is doubtful; keep skeleton, hair, feathers or a tissue sample");

    /// <summary>Sums up the time since death.</summary>
    /// <param name="kept">The times since death with the body's temperature, in any order; negative times count as none.</param>
    /// <returns>Hours at 20 °C: a band, because the law for chemistry and that for bacteria differ, most of all far from 20 °C.</returns>
    public static WarmHours Weigh(IEnumerable<Keeping> kept)
    {
        var (least, most) = (0.0, 0.0);
        foreach (var (lasted, temperature) in kept)
        {
            if (temperature <= FrozenC) continue;
            var hours = Math.Max(0, lasted.TotalHours);
            var tens = (temperature - ReferenceC) / 10;
            var (chemical, bacterial) = (hours * Math.Pow(ChemicalQ10, tens), hours * Math.Pow(BacterialQ10, tens));
            least += Math.Min(chemical, bacterial);
            most += Math.Max(chemical, bacterial);
        }

        return new WarmHours(least, most, Meaning(least, most));
    }

    // The limits are common practice, from memory: two hours are fresh, after half a day the gut goes, after two days the body is lost for fluid.
    // That animals which digest themselves are opened within minutes: Neumann, NHCOLL-L 2011.
    // That decomposing ones are not taken: Western Australian Museum 2011.
    private static Finding Meaning(double least, double most)
    {
        var (severity, meaning, remedy) = most switch
        {
            <= 2 => (Severity.Note, Fresh, GutFirst),
            <= 12 => (Severity.Note, Fair, WithoutDelay),
            <= 48 => (Severity.Warning, Doubtful, OpenAndJudge),
            _ => (Severity.Warning, Decomposed, KeepWhatLasts),
        };
        var warm = new QuantityRange(3600 * Rounded(least), 3600 * Rounded(most), Dimension.OfTime);
        return new(meaning.Id, severity, meaning.With(("warm", warm), ("at", Reference)), remedy);
    }

    /// <summary>To a tenth of an hour below ten hours, and to an hour from there on: the band is wide.</summary>
    private static double Rounded(double hours) => Math.Round(hours, hours < 10 ? 1 : 0, MidpointRounding.AwayFromZero);
}
