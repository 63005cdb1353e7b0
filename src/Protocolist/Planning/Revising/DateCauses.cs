using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Planning.Dating;
using Protocolist.Plans;

namespace Protocolist.Planning.Revising;

/// <summary>
/// Why dates moved, step after step: each by what is new about it, or else by what moved the end of the step before. Lives for one comparison only.
/// </summary>
/// <remarks>A step that ends when it was to end passes nothing on, so that a delay that was made up for is not blamed for a later one.</remarks>
internal sealed class DateCauses(Plan after)
{
    public static readonly Phrase Log = new("because.log", "the log says so");

    /// <summary>Where nothing in the log moved it.</summary>
    private static readonly Phrase Anew = new("because.anew", "the plan was made anew, and the log, the bench or the protocol is not as it was");

    private static readonly Phrase LeftOut = new("because.left-out", "'{step}' was left out");
    private static readonly Phrase Began = new("because.began", "'{step}' began {at:minute}");
    private static readonly Phrase Over = new("because.over", "'{step}' was over {at:minute}");
    private static readonly Phrase NotBegunBy = new("because.not-begun", "it had not begun by {at:minute}, when the log ends");
    private static readonly Phrase NotOverBy = new("because.not-over", "it was not over by {at:minute}, when the log ends");
    private static readonly Phrase All = new("because.all", "{reasons:; }");

    private ImmutableArray<Message> _carried = [];
    private StepState _before = StepState.Done;
    private Instant? _over;

    /// <summary>The causes for one step's start and end; to be asked for all steps in order.</summary>
    /// <param name="old">The step before the revision; null for a new one.</param>
    /// <param name="step">The step.</param>
    public (Message Start, Message End) Of(Step? old, Step step)
    {
        var own = NewCauses(old, step);
        if (step.State == StepState.Skipped)
        {
            if (old?.State != StepState.Skipped) _carried = Joined(_carried, [LeftOut.With(Argument.Id("step", step.Id))]);
            return (AsOne(own), AsOne(own));
        }

        // Inside the soak before it, which says itself why it lasts.
        if (step.Start?.ToInstant() < _over)
        {
            var inside = IsLogged(step) ? [LogCause(step)] : Or(own, Or(NotBegun(old), [Anew]));
            return (AsOne(inside), AsOne(inside));
        }

        ImmutableArray<Message> start = old is not null && old.Start == step.Start ? [] : StartOf(old, step, own);
        var began = !start.IsEmpty && old is not null && IsLogged(step) ? [Began.With(Argument.Id("step", step.Id), ("at", step.Start!.Value))] : start;
        ImmutableArray<Message> end = old is not null && old.End == step.End ? [] : EndOf(old, step, own, began);
        _carried = end.IsEmpty || step.State != StepState.Done ? end
            : old is null || IsShift(old, step) ? began
            : [Over.With(Argument.Id("step", step.Id), ("at", step.End!.Value))];
        (_before, _over) = (step.State, step.End?.ToInstant());
        return (IsLogged(step) ? LogCause(step) : AsOne(start), step.State == StepState.Done ? LogCause(step) : AsOne(end));
    }

    /// <summary>What a step says of itself that it did not say before.</summary>
    public static ImmutableArray<Message> NewCauses(Step? old, Step step) =>
        old is null || step.Because.Length < old.Because.Length || !step.Because.AsSpan()[..old.Because.Length].SequenceEqual(old.Because.AsSpan())
            ? step.Because
            : step.Because[old.Because.Length..];

    /// <summary>Several reasons as one.</summary>
    public static Message AsOne(ImmutableArray<Message> reasons) => reasons.Length switch
    {
        0 => default,
        1 => reasons[0],
        _ => All.With(Argument.Messages("reasons", reasons)),
    };

    private static bool IsLogged(Step step) => step.State is StepState.Done or StepState.Begun;

    private static Message LogCause(Step step) => !step.Because.IsEmpty && step.Because[^1] == LoggedTimes.Unlogged ? LoggedTimes.Unlogged : Log;

    private ImmutableArray<Message> StartOf(Step? old, Step step, ImmutableArray<Message> own)
    {
        if (IsLogged(step)) return [Log];
        if (_before == StepState.Done && !(Until?.ToInstant() <= _over) && NotBegun(old) is { IsEmpty: false } late) return late;
        return Or(_carried, Or(own, [Anew]));
    }

    private ImmutableArray<Message> NotBegun(Step? old) =>
        Until is { } until && old?.Start?.ToInstant() < until.ToInstant() ? [NotBegunBy.With(("at", until))] : [];

    private ImmutableArray<Message> EndOf(Step? old, Step step, ImmutableArray<Message> own, ImmutableArray<Message> began)
    {
        if (old is null) return Or(own, began);
        if (!began.IsEmpty && IsShift(old, step)) return began;
        if (!own.IsEmpty) return Joined(began, own);
        if (step.State == StepState.Begun && Until is { } until && old.End?.ToInstant() < until.ToInstant()) return [NotOverBy.With(("at", until))];
        return Or(began, [Anew]);
    }

    private OffsetDateTime? Until => after.LoggedUntil;

    /// <summary>Whether it was moved as a whole.</summary>
    private static bool IsShift(Step old, Step step) =>
        old is { Start: { } a, End: { } b } && step is { Start: { } c, End: { } d } && b.ToInstant() - a.ToInstant() == d.ToInstant() - c.ToInstant();

    private static ImmutableArray<Message> Or(ImmutableArray<Message> first, ImmutableArray<Message> second) => first.IsEmpty ? second : first;

    private static ImmutableArray<Message> Joined(ImmutableArray<Message> first, ImmutableArray<Message> second) =>
        first.AsSpan().SequenceEqual(second.AsSpan()) ? second : first.AddRange(second);
}
