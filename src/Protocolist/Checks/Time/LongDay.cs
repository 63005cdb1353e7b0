using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Checks.Time;

/// <summary>No day asks more work than a day has.</summary>
internal static class LongDay
{
    private static readonly Duration Most = Duration.FromHours(8);

    private static readonly Phrase TooMuch = new(
        "long-day", "{day:day} asks {work:vs all} of hands-on work of {people} {people|person|people}; {most:0 h} for each is the most");

    private static readonly Phrase ShareItOut = new(
        "long-day.remedy", "share it out, or begin at opening time and leave what can wait for the next day");

    public static PlanCheck Check { get; } = new(
        "long-day",
        "the specimen and people: work in a hurry, late at night, over formalin",
        "common practice: 8 h of hands-on work a day for each person",
        Find)
    {
        Severities = [new(Severity.Warning, "one day asks more than 8 h of hands-on work of each person")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var most = Most * plan.Bench.People;
        var all = Duration.Zero;
        foreach (var step in plan.Steps) all += step.Step.HandsOn;
        return all > most ? Days(plan, most) : [];
    }

    private static ImmutableArray<Finding> Days(ReviewCase plan, Duration most)
    {
        ImmutableArray<Finding> found = [];
        foreach (var day in plan.Steps.Where(s => s.Step.Start is not null && s.Step.HandsOn > Duration.Zero).GroupBy(s => s.Step.Start!.Value.Date))
        {
            var work = day.Aggregate(Duration.Zero, (sum, s) => sum + s.Step.HandsOn);
            if (work <= most) continue;
            var message = TooMuch.With(("day", day.Key), ("work", work), ("all", most), ("people", plan.Bench.People), ("most", Most));
            found = found.Add(Finding.Warning("long-day", message, ShareItOut) with { Subject = day.First().Id });
        }

        return found;
    }
}
