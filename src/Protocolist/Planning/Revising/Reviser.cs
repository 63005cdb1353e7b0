using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Planning.Revising;

/// <summary>
/// Plans again after what really happened. The plan is made anew from its own specimen, choices and start, with the whole log laid
/// over it, so that it depends on the log alone and not on how often it was revised: the same log twice changes nothing.
/// </summary>
/// <remarks>
/// The bench is the one at the start of the work: purchases and costs are those of the whole plan, with what was really used. Give
/// the whole log each time, not only what is new.
/// </remarks>
public static class Reviser
{
    /// <summary>Revises a plan. Stateless; safe to use from several threads.</summary>
    /// <param name="plan">The plan, first made or revised.</param>
    /// <param name="log">All that happened so far.</param>
    /// <param name="shelf">The protocols.</param>
    /// <param name="bench">The workplace.</param>
    /// <returns>
    /// The revision, with the findings of the new plan; warnings <c>other-protocol-revision</c>, <c>other-bench</c> and <c>other-zone</c> where shelf or bench are not those
    /// of the plan. No revision but errors where the log does not fit (<see cref="LogCheck"/>), the protocol is gone, or the plan has no start.
    /// </returns>
    public static Checked<Revision> Revise(Plan plan, WorkLog log, Shelf shelf, Bench bench)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(bench);
        if (shelf.Find(plan.Protocol.Id) is not { } protocol) return new(null, [shelf.NotFound(plan.Protocol.Id)]);
        if ((plan.EarliestStart ?? plan.Start) is not { } start)
            return new(null, [Finding.Error("plan-without-dates", "the plan has no start, so nothing can be moved", "make the plan again with a start")]);
        var measured = MeasurePass.Run(plan.Specimen);
        if (measured.Value is not { } body) return new(null, measured.Findings);
        var drafted = DraftPass.Run(body, protocol, bench, plan.Choices);
        if (drafted.Value is not { } draft) return new(null, [.. measured.Findings, .. drafted.Findings]);

        var wishes = plan.Wishes ?? PlanWishes.None;
        var day = PreparedStock.Of(bench).On(start.Date);
        var basis = ProvisionPass.Run(draft, day, wishes).Draft;
        var effects = LogEffects.Of(basis, log, new(bench, celsius => At(celsius, body, protocol, bench, plan.Choices)));
        var unfit = LogCheck.Against(log, plan, [.. effects.Draft.Steps.Select(s => s.Id), .. effects.Skipped.Select(s => s.Step.Id)]).ToList();
        if (unfit.Exists(f => f.Severity == Severity.Error)) return new(null, [.. unfit]);

        var provisioned = ProvisionPass.Run(effects.Draft, day, wishes);
        var scheduled = SchedulePass.Run(provisioned, bench, new(start.LocalDateTime) { By = plan.By, LoggedUntil = log.Until });
        var reviewed = ReviewPass.Run(scheduled, provisioned, bench, [.. measured.Findings, .. drafted.Findings, .. effects.Findings, .. provisioned.Findings, .. scheduled.Findings]);
        var anew = reviewed.Value! with
        {
            EarliestStart = start,
            Wishes = plan.Wishes,
            LoggedUntil = log.Until?.InZone(bench.Opening.Zone).ToOffsetDateTime(),
            Steps = SkippedSteps.PutBack(reviewed.Value!.Steps, effects.Skipped, scheduled.Draft, bench),
        };
        return new(Carry.Over(plan, anew), [.. Mismatches(plan, protocol, bench), .. unfit, .. anew.Findings]);
    }

    private static Draft? At(double celsius, BodyMeasure body, Protocol protocol, Bench bench, ImmutableSortedDictionary<string, string> choices) =>
        DraftPass.Run(body, protocol, bench with { Temperatures = bench.Temperatures with { Room = UnitsNet.Temperature.FromDegreesCelsius(celsius) } }, choices).Value;

    private static IEnumerable<Finding> Mismatches(Plan plan, Protocol protocol, Bench bench)
    {
        if (protocol.Revision != plan.Protocol.Revision)
            yield return Finding.Warning("other-protocol-revision", $"the plan follows revision {plan.Protocol.Revision} of '{protocol.Id}', and the shelf has revision {protocol.Revision}", "what is still to be done follows the shelf's; give the old file with --protocols to keep to it");
        if (plan.Bench.Length > 0 && !string.Equals(bench.Name, plan.Bench, StringComparison.Ordinal))
            yield return Finding.Warning("other-bench", $"the plan was made for the bench '{plan.Bench}', and this is '{bench.Name}': hours, stock and vessels may differ", "give the bench that the plan was made for");
        if (!string.Equals(bench.Opening.Zone.Id, plan.Zone, StringComparison.Ordinal))
            yield return Finding.Warning("other-zone", $"the plan is on the clocks of {plan.Zone}, and the bench on those of {bench.Opening.Zone.Id}", "give the bench that the plan was made for");
    }
}
