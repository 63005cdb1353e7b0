using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>Sixth pass: the plan is put together and read once more by every check.</summary>
internal static class ReviewPass
{
    private static readonly Phrase GetOne = new("vessel-needed", "get a vessel that holds it");

    public static (Checked<Plan> Plan, ReviewCase Case) Run(Scheduled scheduled, Provisioned provisioned, Bench bench, ImmutableArray<Finding> found)
    {
        var review = Case(scheduled, provisioned, bench, found);
        ImmutableArray<Finding> findings = [.. Sorted(AllChecks.Review(review))];
        return (new(review.Plan with { Findings = findings }, findings), review);
    }

    /// <summary>The plan without findings, and all that the checks look at.</summary>
    private static ReviewCase Case(Scheduled scheduled, Provisioned provisioned, Bench bench, ImmutableArray<Finding> found)
    {
        var draft = scheduled.Draft;
        var zone = bench.Opening.Zone;
        var cautions = CautionWriting.Of(draft, provisioned.Recipes);
        ImmutableArray<Step> steps = [.. draft.Steps.Where(s => !s.IsCare).Select(s => StepWriting.Write(s, provisioned, bench, cautions))];
        var plan = new Plan
        {
            Protocol = new(draft.Protocol.Id, draft.Protocol.Revision, draft.Protocol.Title, draft.Protocol.File) { Files = draft.Protocol.Texts },
            Specimen = draft.Body.Specimen,
            Choices = draft.Choices,
            Zone = zone.Id,
            Bench = bench.IsGiven ? bench.Name : "",
            EarliestStart = scheduled.Bounds.Start.InZoneLeniently(zone).ToOffsetDateTime(),
            By = scheduled.Bounds.By,
            Start = Moment(draft.Steps.Where(s => s.When is not null).Select(s => s.When!.Value.Start), zone, earliest: true),
            End = Moment(draft.Steps.Where(s => s.When is not null).Select(s => s.When!.Value.End), zone, earliest: false),
            Steps = steps,
            Recipes = provisioned.Recipes,
            Purchases = provisioned.Purchases,
            Materials = provisioned.Materials,
            Costs = provisioned.Costs,
            Waste = provisioned.Waste,
            Fluids = provisioned.Moves,
            Label = LabelWriting.Lines(draft, zone),
            Care = CareWriting.Events(draft, bench),
            Figures = [.. draft.Figures, .. ProvisionFigures.Of(draft)],
        };
        var review = new ReviewCase(plan, draft.Body, bench, draft.Protocol)
        {
            Steps = [.. draft.Steps.Where(s => !s.IsCare).Zip(steps, Reviewed)],
            Care = [.. draft.Steps.Where(s => s.IsCare).Select(s => Reviewed(s, StepWriting.Write(s, provisioned, bench, cautions)))],
            Earlier = [.. found, .. VesselFindings(draft)],
            Fixation = draft.Fixation,
            Tank = draft.Steps.LastOrDefault(s => s is { Kind: StageKind.House, Vessel: not null }) is { } house ? FinalTank.Of(house.Vessel, house.Fluid) : null,
            Stored = provisioned.Stored,
            ValueOf = name => plan.Figure(name)?.Answer,
        };
        return review;
    }

    private static ReviewStep Reviewed(DraftStep draft, Step step) => new(step, draft.Kind, draft.Fluid)
    {
        Vessel = draft.Vessel,
        VesselReasons = draft.NoVessel?.Reasons ?? [],
        VesselAdvice = draft.NoVessel is { } none ? none.Needed?.Advice ?? GetOne : default,
        Work = draft.Work,
        Covers = draft.Stage.Covers,
        WatchEvery = draft.Watch?.Every,
    };

    /// <summary>The gravest first; within a severity in the order in which they were found.</summary>
    private static IEnumerable<Finding> Sorted(ImmutableArray<Finding> findings) =>
        findings.DistinctBy(f => (f.Id, f.Message, f.Subject)).OrderByDescending(f => f.Severity);

    /// <summary>What is to be said of the vessels that were chosen, such as a lid that will not last.</summary>
    private static IEnumerable<Finding> VesselFindings(Draft draft) =>
        draft.Steps.Where(s => s.Vessel is not null).SelectMany(s => s.Vessel!.Findings.Select(f => f with { Subject = s.Id }));

    private static OffsetDateTime? Moment(IEnumerable<Instant> instants, DateTimeZone zone, bool earliest)
    {
        var all = instants.ToList();
        return all.Count == 0 ? null : (earliest ? all.Min() : all.Max()).InZone(zone).ToOffsetDateTime();
    }
}
