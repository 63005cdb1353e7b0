using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Measuring;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Reviewing;
using Protocolist.Planning.Selecting;
using Protocolist.Plans;

namespace Protocolist.Planning.Making;

/// <summary>
/// The passes in their order: measure, select, draft, provision, date, account, review. Plans, revisions, comparisons and batches all come through here.
/// </summary>
internal sealed class Pipeline
{
    /// <summary>A protocol is prepared when it is first planned with; a process that makes one plan prepares one.</summary>
    private readonly FrozenDictionary<string, Lazy<PreparedProtocol>> _prepared;

    public Pipeline(Shelf shelf)
    {
        (Shelf, Classes) = (shelf, new(shelf));
        _prepared = shelf.Shelved.ToFrozenDictionary(
            p => p.Id, p => new Lazy<PreparedProtocol>(() => new(p.Protocol, shelf.Kinds.Substances)), StringComparer.Ordinal);
    }

    public Shelf Shelf { get; }

    /// <summary>The protocols by the groups that they are for.</summary>
    public ClassIndex Classes { get; }

    /// <summary>A protocol of the shelf, ready to be planned with.</summary>
    public PreparedProtocol Prepared(Protocol protocol) => _prepared[protocol.Id].Value;

    /// <summary>What is to be decided: the body as measured and the protocol that serves it; without value where there is none.</summary>
    public Checked<Question> Ask(PlanRequest request, Protocol? by = null)
    {
        var measured = MeasurePass.Run(request.Specimen, Shelf.Kinds);
        if (measured.Value is not { } body) return new(null, measured.Findings);
        var selected = by is null ? SelectPass.Run(body, Classes) : new(by, []);
        ImmutableArray<Finding> found = [.. measured.Findings, .. selected.Findings];
        return new(selected.Value is { } protocol ? new(request, body, Prepared(protocol), found) : null, found);
    }

    /// <summary>The steps by certain options; without value where they cannot be drafted.</summary>
    public static Checked<Draft> Draft(Question question, ImmutableSortedDictionary<string, string> choices)
    {
        var request = question.Request;
        var drafted = DraftPass.Run(question.Body, question.Prepared, request.Bench.Bench, request.Choices, choices, request.Wishes);
        return drafted with { Findings = [.. question.Found, .. drafted.Findings] };
    }

    /// <summary>A draft provisioned as it is settled.</summary>
    public static Provisioned Provision(Question question, Draft draft, Settled settled) => ProvisionPass.Run(
        settled.Posture is { } laid ? draft with { Posture = laid } : draft,
        question.Request.Bench.On(question.Request.Start.Date),
        settled.With(question.Request.Wishes));

    /// <summary>One way dated.</summary>
    public static Scheduled Date(Question question, Provisioned provisioned) => SchedulePass.Run(
        provisioned, question.Request.Bench.Bench, question.Request.Bench.Hours, new(question.Request.Start) { By = question.Request.By });

    /// <summary>One dated way with its books closed, reviewed.</summary>
    public static MadePlan Finish(Question question, Provisioned provisioned, Scheduled scheduled, ImmutableArray<Finding> found) =>
        Finish(provisioned, scheduled, question.Request.Bench, question.Request.Wishes, found);

    /// <summary>Closes the books of what is dated, and reviews it.</summary>
    /// <param name="provisioned">The draft with all that it needs.</param>
    /// <param name="scheduled">The same with its dates.</param>
    /// <param name="bench">The bench.</param>
    /// <param name="wishes">What the person insists on.</param>
    /// <param name="found">What was found before provisioning.</param>
    public static MadePlan Finish(Provisioned provisioned, Scheduled scheduled, PreparedBench bench, PlanWishes wishes, ImmutableArray<Finding> found)
    {
        var accounted = AccountPass.Run(provisioned, scheduled.Draft);
        var reviewed = ReviewPass.Run(
            scheduled with { Draft = accounted.Draft }, accounted, bench.Stock, wishes, [.. found, .. accounted.Findings, .. scheduled.Findings]);
        return new(reviewed.Plan, accounted.Draft, provisioned, reviewed.Case);
    }
}

/// <summary>A plan and what stands behind it; the rest is null where there is no plan.</summary>
/// <param name="Plan">The plan with its findings.</param>
/// <param name="Draft">The dated draft.</param>
/// <param name="Provisioned">What provisioning found, with the ways that it did not take.</param>
/// <param name="Review">All that the checks looked at.</param>
internal sealed record MadePlan(Checked<Plan> Plan, Draft? Draft = null, Provisioned? Provisioned = null, ReviewCase? Review = null);
