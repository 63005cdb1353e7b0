using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Planning.Revising;

/// <summary>Steps that were left out stay on the plan, so that it says so.</summary>
internal static class SkippedSteps
{
    public static ImmutableArray<Step> PutBack(ImmutableArray<Step> steps, ImmutableArray<SkippedStep> skipped, Bench bench)
    {
        var all = steps.ToBuilder();
        foreach (var one in skipped.Reverse())
        {
            var at = one.After is null ? 0 : all.ToList().FindIndex(s => s.Id == one.After) + 1;
            all.Insert(at, StepWriting.Write(one.Step with { Fluid = null, Volume = null, Vessel = null, Changes = 0, Inspections = [], When = null }, bench, []) with { State = StepState.Skipped, Because = [Message.Text(one.Reason)] });
        }

        return all.ToImmutable();
    }
}
