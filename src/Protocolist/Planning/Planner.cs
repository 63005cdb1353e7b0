using Protocolist.Findings;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;

namespace Protocolist.Planning;

/// <summary>Turns one specimen into a plan: measure, select, draft, provision, schedule, review. Stateless; safe to use from several threads.</summary>
public static class Planner
{
    /// <summary>Makes the plan.</summary>
    /// <param name="request">Specimen, shelf, bench, start and choices.</param>
    /// <returns>
    /// The plan with all its findings. A plan with an error is returned all the same, marked not to be started. There is no plan,
    /// only findings, where the specimen cannot be measured or no one protocol serves it.
    /// </returns>
    public static Checked<Plan> Plan(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Make(request).Plan;
    }

    /// <summary>The plan with what stands behind it, for whoever has to date it beside others or to weigh it against other ways.</summary>
    internal static MadePlan Make(PlanRequest request)
    {
        var measured = MeasurePass.Run(request.Specimen);
        if (measured.Value is not { } body) return new(new(null, measured.Findings));
        var selected = SelectPass.Run(body, request.Shelf);
        if (selected.Value is not { } protocol) return new(new(null, [.. measured.Findings, .. selected.Findings]));
        var drafted = DraftPass.Run(body, protocol, request.Bench, request.Choices);
        if (drafted.Value is not { } draft) return new(new(null, [.. measured.Findings, .. selected.Findings, .. drafted.Findings]));
        var provisioned = ProvisionPass.Run(draft, PreparedStock.Of(request.Bench).On(request.Start.Date), request.Wishes);
        var scheduled = SchedulePass.Run(provisioned, request.Bench, new(request.Start) { By = request.By });
        var reviewed = ReviewPass.Run(
            scheduled,
            provisioned,
            request.Bench,
            [.. measured.Findings, .. selected.Findings, .. drafted.Findings, .. provisioned.Findings, .. scheduled.Findings]);
        var plan = reviewed.Value! with { Wishes = request.Wishes.IsEmpty() ? null : request.Wishes };
        return new(reviewed with { Value = plan }, scheduled.Draft, provisioned);
    }
}

/// <summary>A plan and what stands behind it; the rest is null where there is no plan.</summary>
/// <param name="Plan">The plan with its findings.</param>
/// <param name="Draft">The dated draft.</param>
/// <param name="Provisioned">What the fourth pass found, with the ways that it did not take.</param>
internal sealed record MadePlan(Checked<Plan> Plan, Draft? Draft = null, Provisioned? Provisioned = null);
