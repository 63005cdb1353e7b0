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
            return gone is null ? step : Most(step, gone.Sequence + 1, gone.MostInspections, gone.MostChanges);
        var counted = Most(step, before.Sequence, before.MostInspections, before.MostChanges);
        return IsSame(before, counted) ? counted : counted with { Sequence = before.Sequence + 1 };
    }

    private static WithdrawnStep Gone(Step step) =>
        new(step.Id, step.Title, step.Start, step.Sequence + 1, step.MostInspections) { MostChanges = step.MostChanges };

    private static Step Most(Step step, int sequence, int inspections, int changes) => step with
    {
        Sequence = sequence,
        MostInspections = Math.Max(step.MostInspections, inspections),
        MostChanges = Math.Max(step.MostChanges, changes),
    };

    private static ImmutableArray<WithdrawnStep> Withdrawn(Plan before, ImmutableArray<Step> steps)
    {
        var ids = steps.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. before.Withdrawn.Concat(before.Steps.Select(Gone))
                .Where(w => !ids.Contains(w.Id)).DistinctBy(w => w.Id).OrderBy(w => w.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>The same apart from what no calendar shows: figures and sources are not compared.</summary>
    private static bool IsSame(Step a, Step b) =>
        a.Start == b.Start && a.End == b.End && a.State == b.State && a.Because.AsSpan().SequenceEqual(b.Because.AsSpan())
        && a.Title == b.Title && a.Changes == b.Changes && a.MostInspections == b.MostInspections && a.MostChanges == b.MostChanges
        && a.Fluid == b.Fluid && Nullable.Equals(a.Volume, b.Volume) && a.Vessel == b.Vessel
        && a.Inspections.SequenceEqual(b.Inspections) && a.ChangesAt.SequenceEqual(b.ChangesAt) && a.Instructions.SequenceEqual(b.Instructions);

    private static bool IsSame(Plan a, Plan b) => Plain(a) == Plain(b);

    /// <summary>A plan without its figures and findings, which say how it was made and not what is to be done.</summary>
    private static Plan Plain(Plan plan) => plan with { Figures = [], Findings = [] };
}
