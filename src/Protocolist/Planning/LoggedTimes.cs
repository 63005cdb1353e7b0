using NodaTime;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning;

/// <summary>Steps that are over, at the times at which they really were.</summary>
internal static class LoggedTimes
{
    /// <summary>Why a step counts as done that the log does not close.</summary>
    public static readonly Phrase Unlogged = new("not-logged.because", "a later step has begun, and the log does not say when this one was over");

    /// <summary>
    /// Fills in the dates of all that is over. A step that the log leaves out, though a later one has begun, is taken as done just
    /// before that one, with a note: what is not written down is not known.
    /// </summary>
    public static Draft Fill(Draft draft, DateTimeZone zone, List<Finding> findings)
    {
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
            steps[turns[turn]] = step with { When = new(start, end) };
            next = start;
            if (step.Progress?.Ended is null)
            {
                steps[turns[turn]] = steps[turns[turn]] with { Progress = new(start, end), Because = step.Because.Add(Unlogged) };
                findings.Add(Finding.Note("not-logged", $"the log does not say when '{step.Id}' was over, and a later step has begun; it is taken as over by {Wording.Of(end, zone)}", $"add 'done' for '{step.Id}' to the log, or 'skipped' with the reason") with { Subject = step.Id });
            }
        }

        return draft with { Steps = steps.ToImmutable() };
    }
}
