using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using NodaTime.Text;
using Protocolist.Plans;

namespace Protocolist.Testing;

/// <summary>
/// Generates logs of what may really happen to a plan: late and slow work, steps left out or not written down, signs, readings, other amounts. All of it
/// in an order of time that can be.
/// </summary>
public static class LogGenerator
{
    private const int Dice = 16;

    private static readonly OffsetDateTimePattern Moment = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mmo<G>");

    private static readonly string[] Signs =
    [
        "soft", "bloated", "floating", "bloody", "cloudy", "oily", "smelling", "dry", "shrunken", "slipping", "weak", "acid",
    ];

    private static readonly string[] Places = ["", "abdomen", "left side", "head"];

    /// <summary>Logs up to any step of a plan.</summary>
    /// <param name="plan">A plan with dates, first made or revised.</param>
    /// <returns>Log files; for a plan without dates a log without entries.</returns>
    public static Gen<FileSketch> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return After(
            plan,
            new(
                "log.yaml",
                new SketchEntry("format: 1", IsNeeded: true),
                new($"log: \"{plan.Specimen.Id}\"", IsNeeded: true),
                new("entries:", IsNeeded: true)));
    }

    /// <summary>Logs that go on from an earlier one: remedies that a revision called for are done, and the next steps.</summary>
    /// <param name="plan">The plan as revised with the earlier log.</param>
    /// <param name="earlier">The earlier log.</param>
    /// <returns>Log files that begin with the earlier one.</returns>
    public static Gen<FileSketch> After(Plan plan, FileSketch earlier)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(earlier);

        // By their ends: a remedy is over before the soak in which it is done.
        List<Step> open =
        [
            .. plan.Steps
                .Where(s => s is { Start: not null, End: not null, State: StepState.Planned or StepState.Begun })
                .OrderBy(s => s.End!.Value.ToInstant()),
        ];
        if (open.Count == 0 || (plan.LoggedUntil ?? plan.Start) is not { } since) return Gen.Constant(earlier);
        var zone = DateTimeZoneProviders.Tzdb[plan.Zone];
        return
            from reached in Gen.Choose(0, open.Count)
            from dice in Gen.ArrayOf(Gen.ArrayOf(Gen.Choose(0, 9_999), Dice), open.Count)
            select new FileSketch(earlier.Name, earlier.Entries.Concat(Entries(open, reached, dice, since.ToInstant(), zone)));
    }

    private static IEnumerable<SketchEntry> Entries(List<Step> open, int reached, int[][] dice, Instant now, DateTimeZone zone)
    {
        for (var i = 0; i < reached; i++)
        {
            var (step, die) = (open[i], dice[i]);
            var isLast = i == reached - 1;
            if (step.State == StepState.Planned && die[0] % 12 == 0 && step.Kind is not (StageKind.Immerse or StageKind.House))
            {
                yield return Entry(step, "skipped: it was not needed");
                continue;
            }

            // Nobody wrote it down.
            if (step.State == StepState.Planned && die[0] % 12 == 1 && !isLast) continue;
            var begun = now + (step.State == StepState.Begun ? Duration.Zero : Duration.FromMinutes(die[1] % 180));
            var planned = step.End!.Value.ToInstant() - step.Start!.Value.ToInstant();
            var done = begun + Duration.FromMinutes(1 + Math.Round(planned.TotalMinutes * (0.5 + (die[2] % 100 / 100.0))));
            if (step.State == StepState.Planned && (isLast || die[3] % 2 == 0)) yield return Entry(step, $"begun: {Text(begun)}");
            var looks = planned > Duration.FromHours(6) ? die[4] % 4 : 0;
            for (var look = 0; look < looks; look++)
            {
                var at = begun + Duration.FromMinutes(Math.Floor((done - begun).TotalMinutes * (look + 1) / (looks + 1)));
                yield return Entry(step, $"at: {Text(at)}", Seen(die[5 + look]), Read(step, die[8 + look]));
                now = at;
            }

            if (isLast && die[11] % 2 == 0) yield break;
            yield return Entry(step, $"done: {Text(done)}", Used(step, die[12]), Read(step, die[13]));
            now = done;
        }

        string Text(Instant at) => Moment.Format(at.InZone(zone).ToOffsetDateTime());
    }

    private static SketchEntry Entry(Step step, params string[] parts) =>
        new($"  - {{{string.Join(", ", parts.Where(p => p.Length > 0).Prepend($"step: {step.Id}"))}}}");

    private static string Seen(int die)
    {
        if (die % 3 == 0) return "";
        var place = Places[die / 36 % Places.Length];
        return $"signs: [{Signs[die / 3 % Signs.Length]}]{(place.Length > 0 ? $", place: {place}" : "")}";
    }

    private static string Used(Step step, int die) => die % 3 != 0 || step.Volume is not { Milliliters: > 0.01 } volume
        ? ""
        : string.Create(CultureInfo.InvariantCulture, $"used: {Math.Max(0.01, volume.Milliliters * (0.5 + (die / 3 % 100 / 100.0))):0.###} mL");

    private static string Read(Step step, int die)
    {
        var (which, value) = (die % 8, die / 8 % 100);
        var reading = (which, step.Fluid ?? "") switch
        {
            (0, var fluid) when fluid.Contains("anol", StringComparison.Ordinal) => $"strength: {10 + (value * 8 / 10)} %vol",
            (1, var fluid) when fluid.Contains("anol", StringComparison.Ordinal) => $"density: {800 + (value * 19 / 10)} kg/m3, temperature: 20 degC",
            (2, { Length: > 0 }) => string.Create(CultureInfo.InvariantCulture, $"ph: {4 + (value / 25.0):0.#}"),
            (3, { Length: > 0 }) => $"temperature: {3 + (value / 4)} degC",
            (4, { Length: > 0 }) => $"level: {10 + value} mm",
            _ => "",
        };
        return reading.Length > 0 ? $"readings: {{{reading}}}" : "";
    }
}
