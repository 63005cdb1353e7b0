using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning;

/// <summary>Work on a body that goes on soaking: it is done as soon as somebody is there, and the soak waits for what follows from it.</summary>
internal static class SoakRemedies
{
    /// <summary>Dates them.</summary>
    /// <param name="draft">The steps.</param>
    /// <param name="bench">When somebody is there.</param>
    /// <param name="until">The end of the log: what is not in it yet lies after it.</param>
    /// <param name="findings">Takes what the log leaves open.</param>
    public static Draft Dated(Draft draft, Bench bench, Instant? until, List<Finding> findings)
    {
        if (!draft.Steps.Any(s => s.During is not null)) return draft;
        var ends = new Dictionary<string, Instant>(StringComparer.Ordinal);
        var steps = draft.Steps.ToBuilder();
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].During is not { } during) continue;
            if (steps[i].Progress is null && draft.Steps.FirstOrDefault(s => s.Id == during.Soak)?.Progress?.Ended is { } over)
            {
                steps[i] = Unlogged(steps[i], over);
                findings.Add(Finding.Note("not-logged", $"the log does not say that '{steps[i].Id}' was done, and '{during.Soak}' is over; it is taken as done by {Wording.Of(over, bench.Opening.Zone)}", $"add 'done' for '{steps[i].Id}' to the log; where it was not done, look at the body again before going on") with { Subject = steps[i].Id });
            }

            if (When(steps[i], bench, until) is not { } when) continue;
            steps[i] = steps[i] with { When = when };
            ends[during.Soak] = Instant.Max(when.End + during.SoaksOn, ends.GetValueOrDefault(during.Soak, Instant.MinValue));
        }

        for (var i = 0; i < steps.Count; i++)
        {
            if (ends.TryGetValue(steps[i].Id, out var end)) steps[i] = steps[i] with { EndNotBefore = steps[i].EndNotBefore is { } other && other > end ? other : end };
        }

        return draft with { Steps = steps.ToImmutable() };
    }

    private static DraftStep Unlogged(DraftStep step, Instant over) => step with
    {
        Progress = new(Instant.Max(over - step.HandsOn, Instant.Min(step.NotBefore ?? over, over)), over),
        Because = step.Because.Add(LoggedTimes.Unlogged),
    };

    private static Interval? When(DraftStep step, Bench bench, Instant? until)
    {
        if (step.Progress is { Ended: { } ended } done) return new(done.Begun ?? ended - step.HandsOn, ended);
        if (step.Progress is { Begun: { } begun }) return new(begun, begun + step.HandsOn);
        if (step.NotBefore is not { } seen) return null;
        var job = new Job(step.Id, Window.Exactly(step.HandsOn)) { HandsOnAtStart = step.HandsOn };
        return Scheduler.Earliest(JobGraph.Chain((Window.Nothing, job)), bench.Opening, until is { } logged ? Instant.Max(seen, logged) : seen).Value is { } dated ? new(dated.Start, dated.End) : null;
    }
}
