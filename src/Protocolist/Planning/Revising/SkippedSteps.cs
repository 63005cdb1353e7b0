using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Reviewing;
using Protocolist.Plans;

namespace Protocolist.Planning.Revising;

/// <summary>Steps that were left out stay on the plan, so that it says so.</summary>
internal static class SkippedSteps
{
    /// <summary>Puts them back at their places.</summary>
    /// <param name="steps">The other steps.</param>
    /// <param name="skipped">What was left out.</param>
    /// <param name="accounted">What they would have needed.</param>
    /// <param name="bench">The workplace.</param>
    public static ImmutableArray<Step> PutBack(ImmutableArray<Step> steps, ImmutableArray<SkippedStep> skipped, Accounted accounted, Bench bench)
    {
        var all = steps.ToBuilder();
        foreach (var one in skipped.Reverse())
        {
            var at = one.After is null ? 0 : all.ToList().FindIndex(s => s.Id == one.After) + 1;
            var idle = one.Step with { Inspections = [], ChangesAt = [], LooksBefore = 0, When = null };
            var step = idle with { Fluid = null, Volume = null, Vessel = null, Changes = 0 };
            all.Insert(at, StepWriting.Write(step, accounted, bench, []) with { State = StepState.Skipped, Because = [Message.Text(one.Reason)] });
        }

        return all.ToImmutable();
    }
}
