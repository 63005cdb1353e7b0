using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Properties.Scheduling;

public class InspectionProperties
{
    [Property(MaxTest = 2000, Arbitrary = [typeof(SmallChains)])]
    public void Visits_are_open_and_never_further_apart_than_the_limit_unless_the_bench_is(SmallProblem problem, byte rhythm, byte more, bool work)
    {
        var (every, handsOn) = (1 + rhythm % 5, work ? 1 : 0);
        var limit = every + more % 4;
        var (visits, findings) = new Inspections(Minutes(every), Minutes(limit), Minutes(handsOn))
            .During(new Interval(SmallProblem.At(0), SmallProblem.At(SmallProblem.Length)), OpenMinutes.Of(problem.Hours));
        var at = visits.Select(v => (int)(v - SmallProblem.At(0)).TotalMinutes).ToList();

        Assert.All(at, v => Assert.True(CanLook(v)));
        var stops = at.Prepend(0).Append(SmallProblem.Length).ToList();
        Assert.All(stops.Zip(stops.Skip(1)), pair => Assert.True(pair.First < pair.Second));
        Assert.Equal(findings.Length, stops.Zip(stops.Skip(1)).Count(pair => pair.Second - pair.First > limit));
        Assert.Equal(Possible(), findings.IsEmpty);

        bool CanLook(int minute) => problem.Openings.Any(o => o.From <= minute && minute + handsOn <= o.To);

        // Whether a visit at every single open minute would do.
        bool Possible()
        {
            var last = 0;
            for (var minute = 1; minute <= SmallProblem.Length; minute++)
            {
                if (minute < SmallProblem.Length && !CanLook(minute)) continue;
                if (minute - last > limit) return false;
                last = minute;
            }

            return true;
        }
    }

    private static Duration Minutes(int minutes) => Duration.FromMinutes(minutes);
}
