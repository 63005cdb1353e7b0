using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Opening;
using Protocolist.Findings;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Scheduling;

namespace Protocolist.Planning.Batching;

/// <summary>One step of one specimen in a joint schedule.</summary>
/// <param name="SpecimenId">The specimen.</param>
/// <param name="StepId">The step.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
internal sealed record JointStep(string SpecimenId, string StepId, string Title, OffsetDateTime Start, OffsetDateTime End);

/// <summary>
/// Many plans on one bench: people do one thing at a time, and a tub holds one specimen. Plans are put in one after another, in the order of the rows.
/// </summary>
/// <remarks>
/// Unlike a batch it remembers what is taken, so that it is for a season's work rather than for a whole collection: at most <see cref="MostPlans"/> plans.
/// </remarks>
internal sealed class JointSchedule
{
    private static readonly Phrase ScheduleFull = new("schedule-full", "the joint schedule holds {most-plans} plans; the rest is not dated together");
    private static readonly Phrase ScheduleFullRemedy = new("schedule-full.remedy", "split the table by season or by urgency");

    /// <summary>Plans that are dated together at most; each is dated beside all before it.</summary>
    public const int MostPlans = 500;

    private const string Person = "person";

    private readonly OpenMinutes hours;
    private readonly Instant from;
    private Bookings taken;
    private int plans;

    /// <summary>Starts with a free bench.</summary>
    /// <param name="bench">The workplace.</param>
    /// <param name="start">The earliest start, on its clocks.</param>
    public JointSchedule(Bench bench, LocalDateTime start)
    {
        ArgumentNullException.ThrowIfNull(bench);
        hours = OpenMinutes.Of(bench.Opening);
        from = start.InZoneLeniently(bench.Opening.Zone).ToInstant();
        taken = Bookings.Of([(Person, bench.People), .. bench.FreeVessels(start.Date).Select(v => (Resource(v.Id), v.Count))]);
    }

    /// <summary>Dates one more plan beside those before it.</summary>
    /// <param name="row">A row of a batch.</param>
    /// <returns>
    /// Its steps; null without a plan, or with <c>no-dates-fit</c> and its like, or with <c>schedule-full</c> (warning) beyond <see cref="MostPlans"/>.
    /// </returns>
    public Checked<IReadOnlyList<JointStep>> Add(BatchRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        if (row.Draft is not { } draft) return new(null, []);
        if (++plans > MostPlans)
            return new(null, plans > MostPlans + 1 ? [] : [Finding.Warning(ScheduleFull.Id, ScheduleFull.With(("most-plans", MostPlans)), ScheduleFullRemedy)]);
        var open = draft.Steps.Where(SchedulePass.IsDated).ToList();
        if (open.Count == 0) return new(null, []);
        var graph = new StepChain(open, draft, hours, from, by: null, deliveries: []).Shared(Needs);
        var (dated, after) = SharedBench.Earliest([graph], hours, from, taken).First();
        taken = after;
        if (dated.Value is not { } schedule) return new(null, dated.Findings);
        var zone = hours.Hours.Zone;
        return new([.. schedule.Zip(open, Step)], dated.Findings);

        JointStep Step(ScheduledJob dates, DraftStep step) => new(row.SpecimenId, step.Id, step.Title.ToString(), At(dates.Start), At(dates.End));

        OffsetDateTime At(Instant instant) => instant.InZone(zone).ToOffsetDateTime();
    }

    /// <summary>
    /// A person while hands are on it; a vessel of treatment from start to end. The final vessel is not given back, so that it is counted and not booked.
    /// </summary>
    private static ImmutableArray<Scheduling.Need> Needs(DraftStep step) =>
    [
        .. (Scheduling.Need[])(step.HandsOn > Duration.Zero ? [new(Person)] : []),
        .. (Scheduling.Need[])(step.IsSoak && step.Vessel is { } vessel ? [new(Resource(vessel.Vessel.Id), Throughout: true)] : []),
    ];

    private static string Resource(string vessel) => $"vessel {vessel}";
}
