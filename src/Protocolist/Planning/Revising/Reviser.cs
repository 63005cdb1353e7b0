using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Making;
using Protocolist.Planning.Measuring;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
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
        "'{protocol}' is another one on the shelf, revision {shelf}; the plan keeps to its own, revision {plan}");
    private static readonly Phrase OtherProtocolRevisionRemedy = new(
        "other-protocol-revision.remedy",
        "nothing, where the plan is to go on as it was; to follow the shelf's, make a new plan for what is still to be done");
    private static readonly Phrase PlanProtocolUnreadable = new(
        "plan-protocol-unreadable", "the protocol that the plan carries cannot be read here");
    private static readonly Phrase PlanProtocolUnreadableRemedy = new(
        "plan-protocol-unreadable.remedy",
        "revise it with the groups, the substances and the program that it was planned with, or make a new plan for what is still to be done");
    private static readonly Phrase OtherBench = new(
        "other-bench",
        "the plan was made for the bench '{plan}', and this is '{bench}': hours, stock and vessels may differ");
    private static readonly Phrase OtherBenchRemedy = new("other-bench.remedy", "give the bench that the plan was made for");
    private static readonly Phrase OtherZone = new("other-zone", "the plan is on the clocks of {plan}, and the bench on those of {bench}");

    /// <summary>Revises a plan.</summary>
    public static Checked<Revision> Revise(Plan plan, WorkLog log, Pipeline pipeline, PreparedBench prepared)
    {
        var bench = prepared.Bench;
        var shelved = pipeline.Shelf.Find(plan.Protocol.Id);
        var isShelved = shelved is not null && plan.Protocol.Files.Select(f => f.Text).SequenceEqual(shelved.Texts.Select(t => t.Text), StringComparer.Ordinal);
        var own = isShelved ? pipeline.Shelf : Carried(plan.Protocol, pipeline.Shelf.Kinds);
        if (own.Find(plan.Protocol.Id) is not { } protocol)
            return new(null, [Finding.Error("plan-protocol-unreadable", PlanProtocolUnreadable, PlanProtocolUnreadableRemedy), .. own.Findings]);
        var ready = isShelved ? pipeline.Prepared(protocol) : new(protocol, pipeline.Shelf.Kinds.Substances);
        if ((plan.EarliestStart ?? plan.Start) is not { } start)
            return new(null, [Finding.Error("plan-without-dates", PlanWithoutDates, PlanWithoutDatesRemedy)]);
        var measured = MeasurePass.Run(plan.Specimen, pipeline.Shelf.Kinds);
        if (measured.Value is not { } body) return new(null, measured.Findings);
        var wishes = plan.Wishes ?? PlanWishes.None;
        var drafted = DraftPass.Run(body, ready, bench, plan.Choices, wishes: wishes);
        if (drafted.Value is not { } draft) return new(null, [.. measured.Findings, .. drafted.Findings]);

        var day = prepared.On(start.Date);
        var means = (new Settled { Means = plan.Settled ?? PlanWishes.None }).With(wishes);
        var basis = ProvisionPass.Run(draft, day, means);
        var effects = LogEffects.Of(basis.Draft, log, new(bench, celsius => At(celsius, body, ready, bench, plan.Choices, wishes)));
        var unfit = LogCheck.Against(log, plan, [.. effects.Draft.Steps.Select(s => s.Id), .. effects.Skipped.Select(s => s.Step.Id)]).ToList();
        if (unfit.Exists(f => f.Severity == Severity.Error)) return new(null, [.. unfit]);

        // A round of care long after sealing says nothing of when the work is done that is still open.
        var until = log.Entries.Where(e => !draft.Steps.Any(s => s.IsCare && s.Id == e.Step)).Select(e => e.Moment).Append(log.Written).Max();
        var provisioned = ProvisionPass.Run(effects.Draft, day, means);
        var made = Pipeline.Finish(
            provisioned,
            SchedulePass.Run(provisioned, bench, prepared.Hours, new(start.LocalDateTime) { By = plan.By, LoggedUntil = until }),
            prepared,
            wishes,
            [.. measured.Findings, .. drafted.Findings, .. effects.Findings]);
        var reviewed = made.Plan.Value!;
        var anew = reviewed with
        {
            EarliestStart = start,
            Settled = plan.Settled,
            LoggedUntil = until?.InZone(bench.Opening.Zone).ToOffsetDateTime(),
            Steps = SkippedSteps.PutBack(reviewed.Steps, effects.Skipped, AccountPass.Run(basis, basis.Draft), bench),
        };
        return new(Carry.Over(plan, anew), [.. Mismatches(plan, isShelved ? null : shelved, bench), .. unfit, .. anew.Findings]);
    }

    /// <summary>A shelf of the protocol as the plan carries it, each file laid over those before it as it was.</summary>
    private static Shelf Carried(PlanProtocol protocol, Kinds kinds) => Shelf.Of(kinds, [.. protocol.Files.Select(file => (IReadOnlyList<SourceText>)[file])]);

    private static Draft? At(
        double celsius, BodyMeasure body, PreparedProtocol protocol, Bench bench, ImmutableSortedDictionary<string, string> choices, PlanWishes wishes) =>
        DraftPass.Run(
            body,
            protocol,
            bench with { Temperatures = bench.Temperatures with { Room = UnitsNet.Temperature.FromDegreesCelsius(celsius) } },
            choices,
            wishes: wishes).Value;

    private static IEnumerable<Finding> Mismatches(Plan plan, Protocol? other, Bench bench)
    {
        if (other is not null)
        {
            var message = OtherProtocolRevision.With(("plan", plan.Protocol.Revision), ("protocol", other.Id), ("shelf", other.Revision));
            yield return Finding.Note(OtherProtocolRevision.Id, message, OtherProtocolRevisionRemedy);
        }

        if (plan.Bench.Length > 0 && !string.Equals(bench.Name, plan.Bench, StringComparison.Ordinal))
            yield return Finding.Warning("other-bench", OtherBench.With(("plan", plan.Bench), ("bench", bench.Name)), OtherBenchRemedy);
        if (!string.Equals(bench.Opening.Zone.Id, plan.Zone, StringComparison.Ordinal))
            yield return Finding.Warning("other-zone", OtherZone.With(("plan", plan.Zone), ("bench", bench.Opening.Zone.Id)), OtherBenchRemedy);
    }
}
