using System.Globalization;
using NodaTime;
using Protocolist.Planning.Dating;
using Protocolist.Plans;

namespace Protocolist.Planning.Revising;

/// <summary>Why dates moved, step after step: each by what is new about it, or else by what moved the end of the step before. Lives for one comparison only.</summary>
/// <remarks>A step that ends when it was to end passes nothing on, so that a delay that was made up for is not blamed for a later one.</remarks>
internal sealed class DateCauses(Plan after)
{
    public const string Log = "the log says so";

    /// <summary>Where nothing in the log moved it.</summary>
    private const string Anew = "the plan was made anew, and the log, the bench or the protocol is not as it was";

    private string _carried = "";
    private string _before = "done";
    private Instant? _over;

    /// <summary>The causes for one step's start and end; to be asked for all steps in order.</summary>
    /// <param name="old">The step before the revision; null for a new one.</param>
    /// <param name="step">The step.</param>
    public (string Start, string End) Of(Step? old, Step step)
    {
        var own = NewCause(old, step);
        if (step.State == "skipped")
        {
            if (old?.State != "skipped") _carried = Joined(_carried, $"'{step.Id}' was left out");
            return (own, own);
        }

        // Inside the soak before it, which says itself why it lasts.
        if (step.Start?.ToInstant() < _over)
        {
            var inside = step.State is "done" or "begun" ? LogCause(step) : Or(own, Or(NotBegun(old), Anew));
            return (inside, inside);
        }

        var start = old is not null && old.Start == step.Start ? "" : StartOf(old, step, own);
        var began = start.Length > 0 && old is not null && step.State is "done" or "begun" ? $"'{step.Id}' began {Text(step.Start)}" : start;
        var end = old is not null && old.End == step.End ? "" : EndOf(old, step, own, began);
        _carried = end.Length == 0 || step.State != "done" ? end : old is null || IsShift(old, step) ? began : $"'{step.Id}' was over {Text(step.End)}";
        (_before, _over) = (step.State, step.End?.ToInstant());
        return (step.State is "done" or "begun" ? LogCause(step) : start, step.State == "done" ? LogCause(step) : end);
    }

    /// <summary>What a step says of itself that it did not say before.</summary>
    public static string NewCause(Step? old, Step step)
    {
        if (old is null || old.Because.Length == 0) return step.Because;
        if (step.Because == old.Because) return "";
        return step.Because.StartsWith(old.Because + "; ", StringComparison.Ordinal) ? step.Because[(old.Because.Length + 2)..] : step.Because;
    }

    private static string LogCause(Step step) => step.Because.EndsWith(LoggedTimes.Unlogged, StringComparison.Ordinal) ? LoggedTimes.Unlogged : Log;

    private string StartOf(Step? old, Step step, string own)
    {
        if (step.State is "done" or "begun") return Log;
        if (_before == "done" && !(Until?.ToInstant() <= _over) && NotBegun(old) is { Length: > 0 } late) return late;
        return Or(_carried, Or(own, Anew));
    }

    private string NotBegun(Step? old) =>
        Until is { } until && old?.Start?.ToInstant() < until.ToInstant() ? $"it had not begun by {Text(until)}, when the log ends" : "";

    private string EndOf(Step? old, Step step, string own, string began)
    {
        if (old is null) return Or(own, began);
        if (began.Length > 0 && IsShift(old, step)) return began;
        if (own.Length > 0) return Joined(began, own);
        if (step.State == "begun" && Until is { } until && old.End?.ToInstant() < until.ToInstant()) return $"it was not over by {Text(until)}, when the log ends";
        return Or(began, Anew);
    }

    private OffsetDateTime? Until => after.LoggedUntil;

    /// <summary>Whether it was moved as a whole.</summary>
    private static bool IsShift(Step old, Step step) =>
        old is { Start: { } a, End: { } b } && step is { Start: { } c, End: { } d } && b.ToInstant() - a.ToInstant() == d.ToInstant() - c.ToInstant();

    private static string Or(string first, string second) => first.Length > 0 ? first : second;

    private static string Joined(string first, string second) => first.Length == 0 || first == second ? second : $"{first}; {second}";

    private static string Text(OffsetDateTime? at) => at is { } moment ? moment.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture) : "at no date";
}
