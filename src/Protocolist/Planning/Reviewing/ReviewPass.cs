using System.Collections.Immutable;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Planning.Dating;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;

namespace Protocolist.Planning.Reviewing;

/// <summary>Seventh pass: the plan is put together and read once more by every check.</summary>
internal static class ReviewPass
{
    private static readonly Phrase GetOne = new("vessel-needed", "get a vessel that holds it");

    public static (Checked<Plan> Plan, ReviewCase Case) Run(
        Scheduled scheduled, Accounted accounted, PreparedStock stock, PlanWishes wishes, ImmutableArray<Finding> found)
    {
        var review = Case(scheduled, accounted, stock, wishes, found);
        var plan = review.Plan with { Findings = Sorted(AllChecks.Review(review)) };
        return (new(plan, plan.Findings), review);
    }

    /// <summary>The plan without findings, and all that the checks look at.</summary>
    private static ReviewCase Case(Scheduled scheduled, Accounted accounted, PreparedStock stock, PlanWishes wishes, ImmutableArray<Finding> found)
    {
        var (draft, bench) = (scheduled.Draft, stock.Bench);
        var zone = bench.Opening.Zone;
        var cautions = CautionWriting.Of(draft, accounted.Choice);
        var (steps, reviewed, care) = (
            ImmutableArray.CreateBuilder<Step>(
                draft.Steps.Length), ImmutableArray.CreateBuilder<ReviewStep>(draft.Steps.Length), ImmutableArray.CreateBuilder<ReviewStep>());
        for (var i = 0; i < draft.Steps.Length; i++)
        {
            var drafted = draft.Steps[i];
            var step = StepWriting.Write(drafted, accounted, bench, cautions[i]);
            (drafted.IsCare ? care : reviewed).Add(Reviewed(drafted, step));
            if (!drafted.IsCare) steps.Add(step);
        }

        var plan = new Plan
        {
            Protocol = new(draft.Protocol.Id, draft.Protocol.Revision, draft.Protocol.Title, draft.Protocol.File) { Files = draft.Protocol.Texts },
            Specimen = draft.Body.Specimen,
            Choices = draft.Choices,
            Wishes = wishes.IsEmpty() ? null : wishes,
            Zone = zone.Id,
            Bench = bench.IsGiven ? bench.Name : "",
            EarliestStart = scheduled.Bounds.Start.InZoneLeniently(zone).ToOffsetDateTime(),
            By = scheduled.Bounds.By,
            Start = draft.Steps.Min(s => s.When?.Start)?.InZone(zone).ToOffsetDateTime(),
            End = draft.Steps.Max(s => s.When?.End)?.InZone(zone).ToOffsetDateTime(),
            Steps = steps.DrainToImmutable(),
            Recipes = accounted.Recipes,
            Purchases = accounted.Purchases,
            Materials = accounted.Materials,
            Costs = accounted.Costs,
            Waste = accounted.Waste,
            Fluids = accounted.Moves,
            Label = LabelWriting.Lines(draft, zone),
            Care = CareWriting.Events(draft, accounted.Day),
            Figures = ProvisionFigures.With(draft),
        };
        var review = new ReviewCase(plan, draft.Body, bench, draft.Protocol)
        {
            Steps = reviewed.DrainToImmutable(),
            Care = care.DrainToImmutable(),
            Earlier = [.. found, .. VesselFindings(draft)],
            Fixation = draft.Fixation,
            Tank = draft.Steps.LastOrDefault(s => s is { Kind: StageKind.House, Vessel: not null }) is { } house
                ? FinalTank.Of(house.Vessel, house.Fluid)
                : null,
            Stored = accounted.Stored,
            Holds = stock.Holds,
            ValueOf = name => plan.Figure(name)?.Answer,
        };
        return review;
    }

    private static ReviewStep Reviewed(DraftStep draft, Step step) => new(step, draft.Kind, draft.Fluid)
    {
        Volume = draft.Volume,
        Vessel = draft.Vessel,
        VesselReasons = draft.NoVessel?.Reasons ?? [],
        VesselAdvice = draft.NoVessel is { } none ? none.Needed?.Advice ?? GetOne : default,
        Work = draft.Work,
        Covers = draft.Stage.Covers,
        WatchEvery = draft.Watch?.Every,
    };

    /// <summary>The gravest first; within a severity in the order in which they were found, and nothing twice.</summary>
    private static ImmutableArray<Finding> Sorted(ImmutableArray<Finding> findings)
    {
        var sorted = ImmutableArray.CreateBuilder<Finding>(findings.Length);
        for (var severity = Severity.Error; severity >= Severity.Note; severity--)
        {
            for (var i = 0; i < findings.Length; i++)
            {
                if (findings[i].Severity == severity && !IsTold(findings[i], findings.AsSpan(0, i))) sorted.Add(Placed(findings[i]));
            }
        }

        return sorted.DrainToImmutable();
    }

    /// <summary>A place in a file is where it begins: a plan does not keep how far it reaches.</summary>
    private static Finding Placed(Finding finding) => finding.Where == finding.Where.Start ? finding : finding with { Where = finding.Where.Start };

    private static bool IsTold(Finding finding, ReadOnlySpan<Finding> before)
    {
        foreach (var other in before)
        {
            if (other.Id == finding.Id && other.Subject == finding.Subject && other.Message == finding.Message) return true;
        }

        return false;
    }

    /// <summary>What is to be said of the vessels that were chosen, such as a lid that will not last.</summary>
    private static IEnumerable<Finding> VesselFindings(Draft draft) =>
        draft.Steps.Where(s => s.Vessel is not null).SelectMany(s => s.Vessel!.Findings.Select(f => f with { Subject = s.Id }));
}
