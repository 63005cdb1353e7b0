using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Drafting;
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
internal static class Reviser
{
    private static readonly Phrase PlanWithoutDates = new("plan-without-dates", "the plan has no start, so nothing can be moved");
    private static readonly Phrase PlanWithoutDatesRemedy = new("plan-without-dates.remedy", "make the plan again with a start");
    private static readonly Phrase OtherProtocolRevision = new(
        "other-protocol-revision",
        "the plan follows revision {plan} of '{protocol}', and the shelf has revision {shelf}");
    private static readonly Phrase OtherProtocolRevisionRemedy = new(
        "other-protocol-revision.remedy",
        "what is still to be done follows the shelf's; give the old file with --protocols to keep to it");
    private static readonly Phrase OtherBench = new(
        "other-bench",
        "the plan was made for the bench '{plan}', and this is '{bench}': hours, stock and vessels may differ");
    private static readonly Phrase OtherBenchRemedy = new("other-bench.remedy", "give the bench that the plan was made for");
    private static readonly Phrase OtherZone = new("other-zone", "the plan is on the clocks of {plan}, and the bench on those of {bench}");

    /// <summary>Revises a plan.</summary>
    public static Checked<Revision> Revise(Plan plan, WorkLog log, Planner planner, PreparedBench prepared)
    {
        var bench = prepared.Bench;
        if (planner.Shelf.Find(plan.Protocol.Id) is not { } protocol) return new(null, [planner.Shelf.NotFound(plan.Protocol.Id)]);
        var ready = planner.Prepared(protocol);
        if ((plan.EarliestStart ?? plan.Start) is not { } start)
            return new(null, [Finding.Error("plan-without-dates", PlanWithoutDates, PlanWithoutDatesRemedy)]);
        var measured = MeasurePass.Run(plan.Specimen);
        if (measured.Value is not { } body) return new(null, measured.Findings);
        var drafted = DraftPass.Run(body, ready, bench, plan.Choices);
        if (drafted.Value is not { } draft) return new(null, [.. measured.Findings, .. drafted.Findings]);

        var wishes = plan.Wishes ?? PlanWishes.None;
        var day = prepared.On(start.Date);
        var basis = ProvisionPass.Run(draft, day, wishes).Draft;
        var effects = LogEffects.Of(basis, log, new(bench, celsius => At(celsius, body, ready, bench, plan.Choices)));
        var unfit = LogCheck.Against(log, plan, [.. effects.Draft.Steps.Select(s => s.Id), .. effects.Skipped.Select(s => s.Step.Id)]).ToList();
        if (unfit.Exists(f => f.Severity == Severity.Error)) return new(null, [.. unfit]);

        var provisioned = ProvisionPass.Run(effects.Draft, day, wishes);
        var scheduled = SchedulePass.Run(provisioned, bench, prepared.Hours, new(start.LocalDateTime) { By = plan.By, LoggedUntil = log.Until });
        var (reviewed, _) = ReviewPass.Run(scheduled, provisioned, bench, [.. measured.Findings, .. drafted.Findings, .. effects.Findings, .. provisioned.Findings, .. scheduled.Findings]);
        var anew = reviewed.Value! with
        {
            EarliestStart = start,
            Wishes = plan.Wishes,
            LoggedUntil = log.Until?.InZone(bench.Opening.Zone).ToOffsetDateTime(),
            Steps = SkippedSteps.PutBack(reviewed.Value!.Steps, effects.Skipped, bench),
        };
        return new(Carry.Over(plan, anew), [.. Mismatches(plan, protocol, bench), .. unfit, .. anew.Findings]);
    }

    private static Draft? At(double celsius, BodyMeasure body, PreparedProtocol protocol, Bench bench, ImmutableSortedDictionary<string, string> choices) =>
        DraftPass.Run(body, protocol, bench with { Temperatures = bench.Temperatures with { Room = UnitsNet.Temperature.FromDegreesCelsius(celsius) } }, choices).Value;

    private static IEnumerable<Finding> Mismatches(Plan plan, Protocol protocol, Bench bench)
    {
        if (protocol.Revision != plan.Protocol.Revision)
            yield return Finding.Warning("other-protocol-revision", OtherProtocolRevision.With(("plan", plan.Protocol.Revision), ("protocol", protocol.Id), ("shelf", protocol.Revision)), OtherProtocolRevisionRemedy);
        if (plan.Bench.Length > 0 && !string.Equals(bench.Name, plan.Bench, StringComparison.Ordinal))
            yield return Finding.Warning("other-bench", OtherBench.With(("plan", plan.Bench), ("bench", bench.Name)), OtherBenchRemedy);
        if (!string.Equals(bench.Opening.Zone.Id, plan.Zone, StringComparison.Ordinal))
            yield return Finding.Warning("other-zone", OtherZone.With(("plan", plan.Zone), ("bench", bench.Opening.Zone.Id)), OtherBenchRemedy);
    }
}
