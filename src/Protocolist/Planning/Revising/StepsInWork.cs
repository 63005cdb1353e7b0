using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;

namespace Protocolist.Planning.Revising;

/// <summary>The steps of one revision while the log is laid over them; lives for that long only.</summary>
internal sealed class StepsInWork
{
    private static readonly Phrase StepSkipped = new("step-skipped", "'{step}' was left out: {skipped}");
    private static readonly Phrase StepSkippedRemedy = new("step-skipped.remedy", "make sure that what follows does not need it");

    private readonly List<DraftStep> _steps;
    private readonly List<Finding> _findings = [];
    private readonly ILookup<string, LogEntry> _entries;

    public StepsInWork(Draft draft, WorkLog log, EffectSetting setting)
    {
        (Draft, Setting, Zone) = (draft, setting, setting.Bench.Opening.Zone);
        _entries = log.Entries.Where(e => e.Moment is not null && e.Skipped is null).ToLookup(e => e.Step, StringComparer.Ordinal);
        _steps = [.. draft.Steps.Select(WithProgress)];
    }

    /// <summary>The draft before the log.</summary>
    public Draft Draft { get; }

    public EffectSetting Setting { get; }

    public DateTimeZone Zone { get; }

    public ImmutableArray<DraftStep> Steps => [.. _steps];

    public ImmutableArray<Finding> Findings => [.. _findings];

    public DraftStep? Find(string id) => _steps.Find(s => s.Id == id);

    /// <summary>The step that the body lay in before.</summary>
    public DraftStep? SoakBefore(string id) => _steps.TakeWhile(s => s.Id != id).LastOrDefault(s => s.IsSoak && s.Fluid is not null && s.During is null);

    public void Say(Finding finding) => _findings.Add(finding);

    public void Change(string id, Func<DraftStep, DraftStep> change)
    {
        var at = _steps.FindIndex(s => s.Id == id);
        _steps[at] = change(_steps[at]);
    }

    /// <summary>Gives a reason for what is different about a step, beside those it has.</summary>
    public void Explain(string id, Message because) => Change(id, s => s.BecauseOf(because));

    /// <summary>Puts a step after a soak and what was put there before, under an id that the same log gives it every time.</summary>
    /// <returns>The id.</returns>
    public string Insert(string host, string word, Func<string, DraftStep> make)
    {
        var prefix = $"{host}-{word}-";
        var id = FormattableString.Invariant($"{prefix}{_steps.Count(s => s.Id.StartsWith(prefix, StringComparison.Ordinal)) + 1}");
        var at = _steps.FindLastIndex(s => s.Id == host
            || s.During?.Soak == host
            || s.Id.StartsWith($"{host}-", StringComparison.Ordinal) && !s.Because.IsEmpty);
        _steps.Insert(at + 1, WithProgress(make(id)));
        return id;
    }

    public SkippedStep? Skip(LogEntry entry)
    {
        var at = _steps.FindIndex(s => s.Id == entry.Step);
        if (at < 0) return null;
        var skipped = new SkippedStep(_steps[at], entry.Skipped!, at > 0 ? _steps[at - 1].Id : null);
        _steps.RemoveAt(at);
        Say(Finding.Warning(
            "step-skipped",
            StepSkipped.With(("step", entry.Step), ("skipped", entry.Skipped!)),
            StepSkippedRemedy,
            entry.Where) with
        { Subject = entry.Step });
        return skipped;
    }

    private DraftStep WithProgress(DraftStep step)
    {
        if (!_entries.Contains(step.Id)) return step;
        if (step.IsCare) return step with { Progress = new(null, _entries[step.Id].Max(e => e.Moment)) };
        var begun = _entries[step.Id].Select(e => e.Begun).FirstOrDefault(t => t is not null);
        var done = _entries[step.Id].Select(e => e.Done).FirstOrDefault(t => t is not null);

        // Somebody looked at it, so it has begun; when, nobody wrote down.
        begun ??= done is null ? _entries[step.Id].Select(e => e.At).Min() : null;
        return step with { Progress = new(begun, done) };
    }
}
