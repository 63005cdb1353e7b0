using System.Collections.Immutable;
using Protocolist.Plans;

namespace Protocolist.Planning.Revising;

/// <summary>What goes on from one revision to the next: the counts that calendars go by, and the account of what changed.</summary>
internal static class Carry
{
    public static Revision Over(Plan before, Plan anew)
    {
        var gone = before.Withdrawn.ToDictionary(w => w.Id, StringComparer.Ordinal);
        ImmutableArray<Step> steps = [.. anew.Steps.Select(s => Counted(s, before.Step(s.Id), gone.GetValueOrDefault(s.Id)))];
        var plan = anew with { Steps = steps, Revision = before.Revision, Changes = before.Changes, Withdrawn = Withdrawn(before, steps) };
        var changes = PlanDifference.Between(before, plan);
        if (changes.IsEmpty && IsSame(before, plan)) return new(before, []);
        return new(plan with { Revision = before.Revision + 1, Changes = changes }, changes);
    }

    private static Step Counted(Step step, Step? before, WithdrawnStep? gone)
    {
        if (before is null)
            return gone is null ? step : step with { Sequence = gone.Sequence + 1, MostInspections = Math.Max(step.MostInspections, gone.MostInspections) };
        var counted = step with { Sequence = before.Sequence, MostInspections = Math.Max(step.MostInspections, before.MostInspections) };
        return IsSame(before, counted) ? counted : counted with { Sequence = before.Sequence + 1 };
    }

    private static ImmutableArray<WithdrawnStep> Withdrawn(Plan before, ImmutableArray<Step> steps)
    {
        var ids = steps.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. before.Withdrawn.Concat(before.Steps.Select(s => new WithdrawnStep(s.Id, s.Title, s.Start, s.Sequence + 1, s.MostInspections)))
                .Where(w => !ids.Contains(w.Id)).DistinctBy(w => w.Id).OrderBy(w => w.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>The same apart from what no calendar shows: figures and sources are not compared.</summary>
    private static bool IsSame(Step a, Step b) =>
        a.Start == b.Start && a.End == b.End && a.State == b.State && a.Because
            .AsSpan()
            .SequenceEqual(b.Because.AsSpan()) && a.Title == b.Title && a.Changes == b.Changes && a.MostInspections == b.MostInspections
        && a.Fluid == b.Fluid && Nullable.Equals(
            a.Volume,
            b.Volume) && a.Vessel == b.Vessel && a.Inspections.SequenceEqual(b.Inspections) && a.Instructions.SequenceEqual(b.Instructions);

    private static bool IsSame(Plan a, Plan b) => Plain(a) == Plain(b);

    /// <summary>A plan without its figures and findings, which say how it was made and not what is to be done.</summary>
    private static Plan Plain(Plan plan) => plan with { Figures = [], Findings = [] };
}
