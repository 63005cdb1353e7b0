using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Planning.Deciding;
using Protocolist.Planning.Making;
using Protocolist.Planning.Revising;
using Protocolist.Plans;

namespace Protocolist;

/// <summary>
/// Turns specimens into plans by the protocols of a shelf: measure, select, draft, provision, date, review. Made once; safe to use from any number of
/// threads.
/// </summary>
public sealed class Planner
{
    /// <summary>Makes a planner.</summary>
    /// <param name="shelf">The protocols to choose from.</param>
    public Planner(Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        Pipeline = new(shelf);
    }

    /// <summary>The protocols to choose from.</summary>
    public Shelf Shelf => Pipeline.Shelf;

    /// <summary>The passes, for whoever needs what stands behind a plan.</summary>
    internal Pipeline Pipeline { get; }

    /// <summary>Prepares a bench for plans by this planner: all that depends on the bench alone is worked out once, and checked once.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="days">The days on which the steps of the plans will lie, for many plans; null for a single one.</param>
    /// <returns>The prepared bench, with what is wrong with it; it can be shared between threads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A day lies before 1600 or after 2500.</exception>
    public PreparedBench Prepare(Bench bench, DateInterval? days = null) => new(bench, days, Shelf.Kinds.Substances);

    /// <summary>Makes the plan of one specimen.</summary>
    /// <param name="request">Specimen, bench, start and choices.</param>
    /// <returns>
    /// The plan with all its findings. A plan with an error is returned all the same, marked not to be started. There is no plan,
    /// only findings, where the specimen cannot be measured or no one protocol serves it, or where a bench, a start or a specimen is given that no plan
    /// can be made with
    /// (<see cref="PlanRequest.Validate"/>).
    /// </returns>
    public Checked<Plan> Plan(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Pipeline.Plan(OfOwnKinds(request));
    }

    /// <summary>Plans again after what really happened. The same log twice changes nothing.</summary>
    /// <param name="plan">The plan, first made or revised.</param>
    /// <param name="log">All that happened so far; the whole log each time.</param>
    /// <param name="bench">The workplace as it was at the start of the work.</param>
    /// <returns>
    /// The revision, by the protocol that the plan carries, with the findings of the new plan; a note <c>other-protocol-revision</c> where the shelf has
    /// another of that id, warnings
    /// <c>other-bench</c> and <c>other-zone</c> where the bench is not that of the plan. No revision but errors where the log does not fit (<see
    /// cref="LogCheck"/>), this version cannot
    /// read the plan's protocol (<c>plan-protocol-unreadable</c>), the plan has no start, or one of the three cannot be what it says (<see
    /// cref="WorkLog.Validate"/>,
    /// <see cref="PreparedBench.Findings"/>).
    /// </returns>
    public Checked<Revision> Revise(Plan plan, WorkLog log, PreparedBench bench)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(bench);
        bench = OfOwnKinds(bench);
        ImmutableArray<Finding> refusals =
            [.. PlanFaults.Of(plan).Concat(log.Validate(bench.Bench.Opening.Zone)).Concat(bench.Findings).Where(f => f.Severity == Severity.Error)];
        return refusals.IsEmpty ? Reviser.Revise(plan, log, Pipeline, bench) : new(null, refusals);
    }

    /// <summary>Plans the lawful ways to preserve one specimen that somebody might take. What is chosen or wished already stays as it is.</summary>
    /// <param name="request">Specimen, bench, start, and what is settled.</param>
    /// <returns>
    /// The comparison, or why there is none: as <see cref="Plan"/>. Findings: <c>ways-folded</c> (note) for ways that nobody would take,
    /// <c>ways-not-all-compared</c> (note) beyond <see cref="Comparison.MostWays"/>, <c>choice-cannot-be-planned</c> (note) for choices that no plan can
    /// be made of.
    /// </returns>
    public Checked<Comparison> Compare(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Comparison.Of(OfOwnKinds(request), Pipeline);
    }

    /// <summary>A bench whose stock was read by other substances than those of the shelf is prepared again.</summary>
    internal PreparedBench OfOwnKinds(PreparedBench bench) => bench.Substances == Shelf.Kinds.Substances ? bench : Prepare(bench.Bench);

    private PlanRequest OfOwnKinds(PlanRequest request) =>
        OfOwnKinds(request.Bench) is var bench && bench == request.Bench ? request : request with { Bench = bench };
}
