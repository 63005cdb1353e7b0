using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

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
    /// <summary>The temperature that the hours are expressed at.</summary>
    public const double ReferenceC = 20;

    // SPNHC best practices, Fluid Collections, 2023: ten degrees more double the rate of reactions.
    private const double ChemicalQ10 = 2;

    // Growth of bacteria gains more from warmth than chemistry does; three is a usual figure. From memory.
    private const double BacterialQ10 = 3;

    // Below this the body is hard frozen and is taken to stand still. From memory; enzymes creep on even then.
    private const double FrozenC = -5;

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
    // That animals which digest themselves are opened within minutes: Neumann, NHCOLL-L 2011. That decomposing ones are not taken: Western Australian Museum 2011.
    private static Finding Meaning(double least, double most)
    {
        var so = FormattableString.Invariant($"the body has been warm for as long as {(Rounded(least) == Rounded(most) ? Rounded(most) : $"{Rounded(least)} to {Rounded(most)}")} h at {ReferenceC:0} °C");
        return most switch
        {
            <= 2 => Finding.Note("warm-hours-fresh", $"{so}: fresh", "open the gut region first all the same in fishes that digest themselves"),
            <= 12 => Finding.Note("warm-hours-fair", $"{so}: fit for fixing", "inject or slit the gut region first, without delay"),
            <= 48 => Finding.Warning("warm-hours-doubtful", $"{so}: the gut and fine tissue have suffered", "open it and judge by sight and smell; fix at once, or keep skeleton and tissue only"),
            _ => Finding.Warning("warm-hours-decomposed", $"{so}: likely decomposed", "fluid preservation is doubtful; keep skeleton, hair, feathers or a tissue sample"),
        };
    }

    private static string Rounded(double hours) => hours.ToString(hours < 10 ? "0.#" : "0", System.Globalization.CultureInfo.InvariantCulture);
}
