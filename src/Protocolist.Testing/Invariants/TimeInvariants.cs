using System.Collections.Immutable;
using NodaTime;
using Protocolist.Plans;

namespace Protocolist.Testing.Invariants;

/// <summary>What holds of the dates of a plan.</summary>
internal static class TimeInvariants
{
    public static ImmutableArray<PlanInvariant> All { get; } =
    [
        PlanInvariant.OfPlan("specimen-in-one-place", "steps stand in order and no two hold the specimen at once", InOnePlace),
        PlanInvariant.OfPlan("steps-within-windows", "no step is shorter than its least or longer than its most, in elapsed time", WithinWindows),
        PlanInvariant.OfPlan("hands-on-while-open", "nobody has to work at a closed bench", WhileOpen),
        PlanInvariant.OfPlan("visits-while-open", "somebody looks while the step lasts and the bench is open, in order", Visits),
        PlanInvariant.OfPlan("changes-while-open", "each change of fluid lies within its step, in order, while the bench is open, or it is told", Changes),
        PlanInvariant.OfPlan("plan-spans-its-steps", "the plan begins with its first step, not before it was asked for, and ends with its last", Spans),
        PlanInvariant.OfPlan("care-follows-closing", "what comes after closing is dated after closing, in order", Care),
    ];

    private static IEnumerable<Step> Dated(Plan plan) => plan.Steps.Where(s => s.Start is not null);

    private static IEnumerable<string> InOnePlace(Plan plan)
    {
        foreach (var step in plan.Steps.Where(s => s.Start is null != s.End is null)) yield return $"'{step.Id}' has one date only";
        foreach (var step in Dated(plan).Where(s => s.End!.Value.ToInstant() < s.Start!.Value.ToInstant())) yield return $"'{step.Id}' ends before it begins";
        foreach (var (before, after) in Dated(plan).Zip(Dated(plan).Skip(1)))
        {
            if (after.Start!.Value.ToInstant() < before.End!.Value.ToInstant()) yield return $"'{after.Id}' begins before '{before.Id}' ends";
        }

        foreach (var id in plan.Steps.CountBy(s => s.Id).Where(c => c.Value > 1)) yield return $"'{id.Key}' stands there twice";
    }

    private static IEnumerable<string> WithinWindows(Plan plan)
    {
        // A soak that runs over so that the body is fixed in time is told.
        var told = plan.Findings.Where(f => f.Id == "step-runs-over").Select(f => f.Subject).ToHashSet(StringComparer.Ordinal);
        foreach (var step in Dated(plan))
        {
            var lasts = step.End!.Value.ToInstant() - step.Start!.Value.ToInstant();

            // Dates are whole minutes, and so are windows on a plan: a least of 90.4 min lasts 91, and stands there as 90.
            if (lasts < step.Least) yield return $"'{step.Id}' lasts {lasts}, and at least {step.Least} is wanted";
            if (!told.Contains(step.Id) && step.Most is { } most && lasts > Duration.Max(most, step.Least) + Duration.FromMinutes(1))
                yield return $"'{step.Id}' lasts {lasts}, and at most {most} is allowed";
        }
    }

    private static IEnumerable<string> WhileOpen(Plan plan, PlanCase planCase)
    {
        var opening = planCase.Request.Bench.Bench.Opening;
        foreach (var step in Dated(plan).Where(s => s.HandsOn > Duration.Zero))
        {
            var (from, to) = (step.Start!.Value.ToInstant(), step.Start!.Value.ToInstant() + step.HandsOn);
            if (opening.Between(from, to).Total != to - from)
                yield return $"the {step.HandsOn} of '{step.Id}' from {step.Start} are not all within opening hours";
        }
    }

    private static IEnumerable<string> Visits(Plan plan, PlanCase planCase)
    {
        var opening = planCase.Request.Bench.Bench.Opening;
        foreach (var step in plan.Steps)
        {
            var visits = step.Inspections.Select(i => i.ToInstant()).ToList();
            if (!visits.SequenceEqual(visits.Distinct().Order())) yield return $"the visits of '{step.Id}' are out of order";
            foreach (var visit in visits)
            {
                if (visit < step.Start!.Value.ToInstant() || visit > step.End!.Value.ToInstant()) yield return $"a visit at {visit} lies outside '{step.Id}'";
                if (opening.Between(visit, visit + Duration.FromMinutes(1)).Total == Duration.Zero)
                    yield return $"nobody is there for the visit of '{step.Id}' at {visit}";
            }
        }
    }

    private static IEnumerable<string> Changes(Plan plan, PlanCase planCase)
    {
        var opening = planCase.Request.Bench.Bench.Opening;
        var told = plan.Findings.Where(f => f.Id == "change-while-closed").Select(f => f.Subject).ToHashSet(StringComparer.Ordinal);
        foreach (var step in Dated(plan).Where(s => s.Changes > 0))
        {
            var changes = step.ChangesAt.Select(i => i.ToInstant()).ToList();
            if (changes.Count != step.Changes && !told.Contains(step.Id))
                yield return $"'{step.Id}' has {step.Changes} changes, and {changes.Count} have a moment";
            if (!changes.SequenceEqual(changes.Distinct().Order())) yield return $"the changes of '{step.Id}' are out of order";
            foreach (var change in changes)
            {
                if (change <= step.Start!.Value.ToInstant() || change + step.Change > step.End!.Value.ToInstant())
                    yield return $"the change at {change} lies outside '{step.Id}'";
                if (opening.Between(change, change + step.Change).Total != step.Change)
                    yield return $"the bench is not open for the change of '{step.Id}' at {change}";
            }
        }
    }

    private static IEnumerable<string> Spans(Plan plan, PlanCase planCase)
    {
        var dated = Dated(plan).ToList();
        if (plan.Start?.ToInstant() != dated.Min(s => s.Start?.ToInstant())) yield return $"the plan begins {plan.Start}, its first step does not";
        if (plan.End?.ToInstant() != dated.Max(s => s.End?.ToInstant())) yield return $"the plan ends {plan.End}, its last step does not";
        var zone = planCase.Request.Bench.Bench.Opening.Zone;
        var asked = zone.AtLeniently(planCase.Request.Start);

        // In an hour that comes twice, either may be meant.
        if (plan.Start is { } start && start.ToInstant() < asked.ToInstant() - Duration.FromHours(1))
            yield return $"the plan begins {start}, and was not to begin before {asked}";
        if (plan.Zone != zone.Id) yield return $"the plan is on the clocks of {plan.Zone}, the bench on those of {zone.Id}";
        foreach (var step in dated.Where(s => zone.GetUtcOffset(s.Start!.Value.ToInstant()) != s.Start!.Value.Offset))
            yield return $"'{step.Id}' begins at an offset that {zone.Id} does not have then";
    }

    private static IEnumerable<string> Care(Plan plan)
    {
        var closed = plan.Steps.Where(s => s.Kind is StageKind.Seal or StageKind.House).Max(s => s.End?.Date);
        foreach (var care in plan.Care.Where(c => c.On < closed)) yield return $"'{care.What}' comes on {care.On}, before the vessel is closed on {closed}";
        var dates = plan.Care.Select(c => c.On ?? LocalDate.MaxIsoValue).ToList();
        if (!dates.SequenceEqual(dates.Order())) yield return "the care round is out of order";
    }
}
