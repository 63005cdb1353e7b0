using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Benchmarks;

/// <summary>
/// A chain of baths over about sixty days, on a bench that is closed at weekends, at noon and for a week in between. The target for 13 steps is 8 µs
/// and 6 kB, the graph and two solves included, with opening minutes that are worked out beforehand.
/// </summary>
[MemoryDiagnoser]
public class SchedulingBenchmarks
{
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Berlin"];
    private static readonly Instant Start = new LocalDateTime(2027, 3, 1, 9, 0).InZoneStrictly(Zone).ToInstant();

    private readonly OpeningHours _hours = OpeningHours.Create(
        Zone,
        Enumerable.Range(1, 5).SelectMany(day => new[]
        {
            new WeeklyOpening((IsoDayOfWeek)day, new LocalTime(8, 0), new LocalTime(12, 0)),
            new WeeklyOpening((IsoDayOfWeek)day, new LocalTime(13, 0), new LocalTime(17, 0)),
        }),
        [new ClosedDays(new LocalDate(2027, 3, 26), new LocalDate(2027, 3, 29), "spring holiday")],
        [new Holiday(new AnnualDate(5, 1), "1 May")]).Value!;

    private OpenMinutes _prepared = null!;
    private JobGraph _plan = null!;
    private JobGraph _graph = null!;
    private JobGraph _impossible = null!;

    [Params(13, 40, 80)]
    public int Steps { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        _prepared = Prepare();
        _plan = Plan();
        // One link more makes it a graph; it is solved by the general method.
        _graph = JobGraph.Of(_plan.Jobs, _plan.Links.Add(new Link(0, 2, Window.AtLeast(Duration.FromHours(1)), Anchor.Start)));
        _impossible = _plan.With(Steps - 1, job => job with { EndBy = Start + Duration.FromDays(20) });
        var end = Scheduler.Earliest(_plan, _prepared, Start).Value!.End;
        Console.WriteLine($"// {Steps} steps end after {(end - Start).TotalDays:F1} days");
    }

    private JobGraph Plan()
    {
        var day = 42.0 / Steps; // with waiting for open hours the whole takes about sixty days
        var jobs = new Job[Steps];
        var lags = new Window[Steps];
        for (var i = 0; i < Steps; i++)
        {
            lags[i] = i % 3 == 0 ? Window.AtMost(Duration.FromHours(72)) : Window.AtMost(Duration.FromHours(2));
            var lasts = (i % 4) switch
            {
                0 => Window.Exactly(Duration.FromMinutes(45)),
                1 => Window.Between(Duration.FromDays(2 * day), Duration.FromDays(3.5 * day) + Duration.FromDays(3)),
                2 => Window.AtLeast(Duration.FromDays(day)),
                _ => Window.Between(Duration.FromDays(day), Duration.FromDays(day) + Duration.FromDays(3)),
            };
            jobs[i] = new Job("step", lasts)
            {
                HandsOnAtStart = Duration.FromMinutes(i % 4 == 0 ? 45 : 20),
                HandsOnAtEnd = i % 4 == 0 ? null : Duration.FromMinutes(10),
            };
        }

        return JobGraph.Chain(jobs, lags);
    }

    [Benchmark]
    public object Chain() => Scheduler.Earliest(_plan, _prepared, Start);

    /// <summary>As the dating pass does where something has to be bought: all jobs put together, dated, one of them held up, and dated again.</summary>
    [Benchmark]
    public object Chain_made_and_dated_twice()
    {
        var plan = Plan();
        var supplied = Scheduler.Earliest(plan, _prepared, Start).Value!;
        return Scheduler.Earliest(plan.With(3, job => job with { NotBefore = supplied[3].Start + Duration.FromDays(2) }), _prepared, Start);
    }

    /// <summary>Without anything worked out beforehand.</summary>
    [Benchmark]
    public object Chain_unprepared() => Scheduler.Earliest(_plan, OpenMinutes.Of(_hours), Start);

    [Benchmark]
    public object Graph() => Scheduler.Earliest(_graph, _prepared, Start);

    [Benchmark]
    public object Backwards() => Scheduler.Latest(_plan, _prepared, Start, Start + Duration.FromDays(150));

    [Benchmark]
    public object Impossible() => Scheduler.Earliest(_impossible, _prepared, Start);

    [Benchmark]
    public object Visits_of_sixty_days() =>
        new Inspections(Duration.FromDays(2), Duration.FromDays(4), Duration.FromMinutes(10)).During(new(Start, Start + Duration.FromDays(60)), _prepared);

    [Benchmark]
    public object Care_of_ten_years() => CareRound.Dates(CareRound.Usual[1], new(2027, 3, 1), new(2037, 3, 1), _hours);

    /// <summary>Working out three years, once for a bench.</summary>
    [Benchmark]
    public object Prepare_three_years() => Prepare();

    private OpenMinutes Prepare() => OpenMinutes.Of(_hours, new(2027, 1, 1), new(2029, 12, 31));
}
