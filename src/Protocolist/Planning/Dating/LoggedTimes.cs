using NodaTime;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;

namespace Protocolist.Planning.Dating;

/// <summary>Steps that are over, at the times at which they really were.</summary>
internal static class LoggedTimes
{
    /// <summary>Why a step counts as done that the log does not close.</summary>
    public static readonly Phrase Unlogged = new("not-logged.because", "a later step has begun, and the log does not say when this one was over");

    private static readonly Phrase NotLogged =
        new("not-logged", "the log does not say when '{step}' was over, and a later step has begun; it is taken as over by {end}");
    private static readonly Phrase AddDone = new("not-logged.remedy", "add 'done' for '{step}' to the log, or 'skipped' with the reason");

    /// <summary>
    /// Fills in the dates of all that is over. A step that the log leaves out, though a later one has begun, is taken as done just
    /// before that one, with a note: what is not written down is not known.
    /// </summary>
    public static Draft Fill(Draft draft, DateTimeZone zone, List<Finding> findings)
    {
        if (!draft.Steps.Any(s => s.Progress is not null)) return draft;
        var steps = draft.Steps.ToBuilder();
        var turns = Enumerable.Range(0, steps.Count).Where(i => SchedulePass.IsDated(steps[i]) && steps[i].During is null).ToList();
        var last = turns.FindLastIndex(i => steps[i].Progress is not null);
        Instant? next = null;
        for (var turn = last; turn >= 0; turn--)
        {
            var step = steps[turns[turn]];
            if (turn == last && step.Progress!.Ended is null)
            {
                next = step.Progress.Begun;
                continue;
            }

            var earlier = turns.Take(turn).Select(i => steps[i].Progress?.Ended ?? steps[i].Progress?.Begun).LastOrDefault(t => t is not null);
            var end = step.Progress?.Ended ?? next!.Value;
            var guess = end - (step.IsSoak ? step.Least : step.HandsOn);
            var start = Instant.Min(end, step.Progress?.Begun ?? (earlier is { } e && e > guess ? e : guess));
            var looked = step.Watch is { } watch && watch.Every > Duration.Zero ? WorkDuringSoak.Passed(new(start, end), watch.Every) : 0;
            steps[turns[turn]] = step with { When = new(start, end), LooksBefore = looked };
            next = start;
            if (step.Progress?.Ended is null)
            {
                steps[turns[turn]] = steps[turns[turn]] with { Progress = new(start, end), Because = step.Because.Add(Unlogged) };
                var id = Argument.Id("step", step.Id);
                findings.Add(Finding.Note(NotLogged.Id, NotLogged.With(id, Argument.At("end", end, zone)), AddDone.With(id)) with { Subject = step.Id });
            }
        }

        return draft with { Steps = steps.ToImmutable() };
    }
}
