using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning;

/// <summary>Work on a body that goes on soaking: it is done as soon as somebody is there, and the soak waits for what follows from it.</summary>
internal static class SoakRemedies
{
    public static Draft Dated(Draft draft, Bench bench)
    {
        if (!draft.Steps.Any(s => s.During is not null)) return draft;
        var ends = new Dictionary<string, Instant>(StringComparer.Ordinal);
        var steps = draft.Steps.ToBuilder();
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].During is not { } during || When(steps[i], bench) is not { } when) continue;
            steps[i] = steps[i] with { When = when };
            ends[during.Soak] = Instant.Max(when.End + during.SoaksOn, ends.GetValueOrDefault(during.Soak, Instant.MinValue));
        }

        for (var i = 0; i < steps.Count; i++)
        {
            if (ends.TryGetValue(steps[i].Id, out var end)) steps[i] = steps[i] with { EndNotBefore = steps[i].EndNotBefore is { } other && other > end ? other : end };
        }

        return draft with { Steps = steps.ToImmutable() };
    }

    private static Interval? When(DraftStep step, Bench bench)
    {
        if (step.Progress is { Ended: { } ended } done) return new(done.Begun ?? ended - step.HandsOn, ended);
        if (step.Progress is { Begun: { } begun }) return new(begun, begun + step.HandsOn);
        if (step.NotBefore is not { } from) return null;
        var job = new Job(step.Id, Window.Exactly(step.HandsOn)) { HandsOnAtStart = step.HandsOn };
        return Scheduler.Earliest(JobGraph.Chain((Window.Nothing, job)), bench.Opening, from).Value is { } dated ? new(dated.Start, dated.End) : null;
    }
}
