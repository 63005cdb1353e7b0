using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Time;

/// <summary>No day asks more work than a day has.</summary>
internal static class LongDay
{
    private const double Hours = 8;

    public static PlanCheck Check { get; } = new(
        "long-day",
        "the specimen and people: work in a hurry, late at night, over formalin",
        "common practice: 8 h of hands-on work a day for each person",
        Find)
    {
        Speaks = [new(Severity.Warning, "one day asks more than 8 h of hands-on work of each person")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var day in plan.Steps.Where(s => s.Step.Start is not null && s.Step.HandsOn > Duration.Zero).GroupBy(s => s.Step.Start!.Value.Date))
        {
            var work = day.Aggregate(Duration.Zero, (sum, s) => sum + s.Step.HandsOn);
            if (work.TotalHours > Hours * plan.Bench.People)
                yield return Finding.Warning("long-day", Invariant($"{LocalDatePattern.Iso.Format(day.Key)} asks {work.Past(Duration.FromHours(Hours * plan.Bench.People))} of hands-on work of {Telling.Count(plan.Bench.People, "person", "people")}; {Hours:0} h for each is the most"), "share it out, or begin at opening time and leave what can wait for the next day") with { Subject = day.First().Id };
        }
    }
}
