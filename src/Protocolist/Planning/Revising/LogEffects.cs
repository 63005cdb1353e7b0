using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;

namespace Protocolist.Planning.Revising;

/// <summary>What the rules need beside the log.</summary>
/// <param name="Bench">The workplace.</param>
/// <param name="DraftAt">The same draft in a room of another temperature, in °C.</param>
internal sealed record EffectSetting(Bench Bench, Func<double, Draft?> DraftAt);

/// <summary>A step that was left out, and the step it stood after.</summary>
internal sealed record SkippedStep(DraftStep Step, string Reason, string? After);

/// <summary>A draft with a log laid over it: what is done, what was left out, and what signs and readings call for.</summary>
internal sealed record LogEffects(Draft Draft, ImmutableArray<SkippedStep> Skipped, ImmutableArray<Finding> Findings)
{
    public static LogEffects Of(Draft draft, WorkLog log, EffectSetting setting)
    {
        var work = new StepsInWork(draft, log, setting);
        foreach (var entry in log.Entries)
        {
            if (work.Find(entry.Step) is null) continue;
            if (entry.Used is { } used) work.Change(entry.Step, s => s with { Used = used, Volume = used });
            ReadingRules.Apply(work, entry);
            SignRules.Apply(work, entry);
        }

        var skipped = log.Entries.Where(e => e.Skipped is not null).DistinctBy(e => e.Step).Select(e => work.Skip(e)).OfType<SkippedStep>().ToImmutableArray();
        return new(draft with { Steps = work.Steps }, skipped, work.Findings);
    }
}
