using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Planning.Comparing;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Revising;
using Protocolist.Planning.Selecting;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>Turns specimens into plans by the protocols of a shelf: measure, select, draft, provision, date, review. Made once; safe to use from any number of threads.</summary>
public sealed class Planner
{
    /// <summary>A protocol is prepared when it is first planned with; a process that makes one plan prepares one.</summary>
    private readonly FrozenDictionary<string, Lazy<PreparedProtocol>> _prepared;

    /// <summary>Makes a planner.</summary>
    /// <param name="shelf">The protocols to choose from.</param>
    public Planner(Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        Shelf = shelf;
        Classes = new(shelf);
        _prepared = shelf.Shelved.ToFrozenDictionary(p => p.Id, p => new Lazy<PreparedProtocol>(() => new(p.Protocol)), StringComparer.Ordinal);
    }

    /// <summary>The protocols to choose from.</summary>
    public Shelf Shelf { get; }

    /// <summary>Makes the plan of one specimen.</summary>
    /// <param name="request">Specimen, bench, start and choices.</param>
    /// <returns>
    /// The plan with all its findings. A plan with an error is returned all the same, marked not to be started. There is no plan,
    /// only findings, where the specimen cannot be measured or no one protocol serves it, or where a bench, a start or a specimen is given that no plan can be made with
    /// (<see cref="PlanRequest.Validate"/>).
    /// </returns>
    public Checked<Plan> Plan(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.Refusals() is { IsEmpty: false } refusals ? new(null, refusals) : Make(request).Plan;
    }

    /// <summary>Plans again after what really happened. The same log twice changes nothing.</summary>
    /// <param name="plan">The plan, first made or revised.</param>
    /// <param name="log">All that happened so far; the whole log each time.</param>
    /// <param name="bench">The workplace as it was at the start of the work.</param>
    /// <returns>
    /// The revision, by the protocol that the plan carries, with the findings of the new plan; a note <c>other-protocol-revision</c> where the shelf has another of that id, warnings
    /// <c>other-bench</c> and <c>other-zone</c> where the bench is not that of the plan. No revision but errors where the log does not fit (<see cref="LogCheck"/>), this version cannot
    /// read the plan's protocol (<c>plan-protocol-unreadable</c>), the plan has no start, or one of the three cannot be what it says (<see cref="WorkLog.Validate"/>,
    /// <see cref="PreparedBench.Findings"/>).
    /// </returns>
    public Checked<Revision> Revise(Plan plan, WorkLog log, PreparedBench bench)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(bench);
        ImmutableArray<Finding> refusals =
            [.. PlanFaults.Of(plan).Concat(log.Validate(bench.Bench.Opening.Zone)).Concat(bench.Findings).Where(f => f.Severity == Severity.Error)];
        return refusals.IsEmpty ? Reviser.Revise(plan, log, this, bench) : new(null, refusals);
    }

    /// <summary>Plans every lawful way to preserve one specimen. What the request has chosen or wishes already stays as it is.</summary>
    /// <param name="request">Specimen, bench, start, and what is settled.</param>
    /// <returns>
    /// The comparison, or why there is none: as <see cref="Plan"/>. Findings: <c>one-at-a-time</c> (note) beyond <see cref="Comparison.MostCombined"/> combinations,
    /// <c>ways-not-all-compared</c> (note) beyond <see cref="Comparison.MostWays"/>, <c>choice-cannot-be-planned</c> (note) for choices that no plan can be made of.
    /// </returns>
    public Checked<Comparison> Compare(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Comparison.Of(request, this);
    }

    /// <summary>The protocols by the groups that they are for.</summary>
    internal ClassIndex Classes { get; }

    /// <summary>A protocol of the shelf, ready to be planned with.</summary>
    internal PreparedProtocol Prepared(Protocol protocol) => _prepared[protocol.Id].Value;

    /// <summary>The plan with what stands behind it, for whoever has to date it beside others or to weigh it against other ways.</summary>
    /// <param name="request">Specimen, bench, start and choices.</param>
    /// <param name="by">The protocol to plan by; null for the one that serves the specimen.</param>
    internal MadePlan Make(PlanRequest request, Protocol? by = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        var bench = request.Bench.Bench;
        var measured = MeasurePass.Run(request.Specimen);
        if (measured.Value is not { } body) return new(new(null, measured.Findings));
        var selected = by is null ? SelectPass.Run(body, Classes) : new(by, []);
        if (selected.Value is not { } protocol) return new(new(null, [.. measured.Findings, .. selected.Findings]));
        var drafted = DraftPass.Run(body, Prepared(protocol), bench, request.Choices);
        if (drafted.Value is not { } draft) return new(new(null, [.. measured.Findings, .. selected.Findings, .. drafted.Findings]));
        var provisioned = ProvisionPass.Run(draft, request.Bench.On(request.Start.Date), request.Wishes);
        var scheduled = SchedulePass.Run(provisioned, bench, request.Bench.Hours, new(request.Start) { By = request.By });
        var reviewed = ReviewPass.Run(
            scheduled,
            provisioned,
            bench,
            [.. measured.Findings, .. selected.Findings, .. drafted.Findings, .. provisioned.Findings, .. scheduled.Findings]);
        var made = request.Wishes.IsEmpty() ? reviewed.Plan : reviewed.Plan with { Value = reviewed.Plan.Value! with { Wishes = request.Wishes } };
        return new(made, scheduled.Draft, provisioned, reviewed.Case);
    }
}

/// <summary>A plan and what stands behind it; the rest is null where there is no plan.</summary>
/// <param name="Plan">The plan with its findings.</param>
/// <param name="Draft">The dated draft.</param>
/// <param name="Provisioned">What the fourth pass found, with the ways that it did not take.</param>
/// <param name="Review">All that the checks looked at.</param>
internal sealed record MadePlan(Checked<Plan> Plan, Draft? Draft = null, Provisioned? Provisioned = null, ReviewCase? Review = null);
