using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Benchmarks;

/// <summary>A chain of baths over about sixty days, on a bench that is closed at weekends, at noon and for a week in between. The target is 100 µs for 40 steps, opening hours included.</summary>
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

    private JobGraph _plan = null!;
    private JobGraph _graph = null!;
    private JobGraph _impossible = null!;

    [Params(10, 20, 40, 80)]
    public int Steps { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _plan = Plan();
        // One link more makes it a graph; it is solved by the general method.
        _graph = JobGraph.Of(_plan.Jobs, _plan.Links.Add(new Link("step0", "step2", Window.AtLeast(Duration.FromHours(1)), Anchor.Start)));
        _impossible = _plan.With(Steps - 1, job => job with { EndBy = Start + Duration.FromDays(20) });
        var end = Scheduler.Earliest(_plan, _hours, Start).Value!.End;
        Console.WriteLine($"// {Steps} steps end after {(end - Start).TotalDays:F1} days");
    }

    private JobGraph Plan()
    {
        var day = 42.0 / Steps; // with waiting for open hours the whole takes about sixty days
        return JobGraph.Chain(Enumerable.Range(0, Steps).Select(i => (
            i % 3 == 0 ? Window.AtMost(Duration.FromHours(72)) : Window.AtMost(Duration.FromHours(2)),
            new Job($"step{i}", (i % 4) switch
            {
                0 => Window.Exactly(Duration.FromMinutes(45)),
                1 => Window.Between(Duration.FromDays(2 * day), Duration.FromDays(3.5 * day) + Duration.FromDays(3)),
                2 => Window.AtLeast(Duration.FromDays(day)),
                _ => Window.Between(Duration.FromDays(day), Duration.FromDays(day) + Duration.FromDays(3)),
            })
            {
                HandsOnAtStart = Duration.FromMinutes(i % 4 == 0 ? 45 : 20),
                HandsOnAtEnd = i % 4 == 0 ? null : Duration.FromMinutes(10),
            })));
    }

    [Benchmark]
    public object Chain() => Scheduler.Earliest(_plan, _hours, Start);

    [Benchmark]
    public object Graph() => Scheduler.Earliest(_graph, _hours, Start);

    [Benchmark]
    public object Backwards() => Scheduler.Latest(_plan, _hours, Start, Start + Duration.FromDays(150));

    [Benchmark]
    public object Impossible() => Scheduler.Earliest(_impossible, _hours, Start);
}
