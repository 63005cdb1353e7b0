using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning.Dating;

/// <summary>Work on a body that goes on soaking: it is done as soon as somebody is there, and the soak waits for what follows from it.</summary>
internal static class SoakRemedies
{
    private static readonly Phrase NotLogged =
        new("not-logged.remedy-of-soak", "nobody logged that '{step}' was done, and '{soak}' is over; it is dated as done by {end}, which nobody knows");
    private static readonly Phrase AddDone =
        new("not-logged.add-remedy", "add 'done' for '{step}' to the log; where it was not done, look at the body again before going on");

    /// <summary>Dates them.</summary>
    /// <param name="draft">The steps.</param>
    /// <param name="hours">When somebody is there.</param>
    /// <param name="until">The end of the log: what is not in it yet lies after it.</param>
    /// <param name="findings">Takes what the log leaves open.</param>
    public static Draft Dated(Draft draft, OpenMinutes hours, Instant? until, List<Finding> findings)
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
                var id = Argument.Id("step", steps[i].Id);
                var message = NotLogged.With(id, Argument.Id("soak", during.Soak), Argument.At("end", over, hours.Hours.Zone));
                findings.Add(Finding.Warning("not-logged", message, AddDone.With(id)) with { Subject = steps[i].Id });
            }

            if (When(steps[i], hours, until) is not { } when) continue;
            steps[i] = steps[i] with { When = when };
            ends[during.Soak] = Instant.Max(when.End + during.SoaksOn, ends.GetValueOrDefault(during.Soak, Instant.MinValue));
        }

        for (var i = 0; i < steps.Count; i++)
        {
            if (!ends.TryGetValue(steps[i].Id, out var end)) continue;
            steps[i] = steps[i] with { EndNotBefore = steps[i].EndNotBefore is { } other && other > end ? other : end };
        }

        return draft with { Steps = steps.ToImmutable() };
    }

    private static DraftStep Unlogged(DraftStep step, Instant over) => step with
    {
        Progress = new(Instant.Max(over - step.HandsOn, Instant.Min(step.NotBefore ?? over, over)), over),
        Because = step.Because.Add(LoggedTimes.Unlogged),
    };

    private static Interval? When(DraftStep step, OpenMinutes hours, Instant? until)
    {
        if (step.Progress is { Ended: { } ended } done) return new(done.Begun ?? ended - step.HandsOn, ended);
        if (step.Progress is { Begun: { } begun }) return new(begun, begun + step.HandsOn);
        if (step.NotBefore is not { } seen) return null;
        var job = new Job(step.Id, Window.Exactly(step.HandsOn)) { HandsOnAtStart = step.HandsOn };
        var dated = Scheduler.TryEarliest(JobGraph.Chain([job], [Window.Nothing]), hours, until is { } logged ? Instant.Max(seen, logged) : seen);
        return dated?.Value is { } only ? new(only.Start, only.End) : null;
    }
}
