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

    /// <summary>The plan, and the dated draft behind it for whoever has to date it beside others.</summary>
    internal static (Checked<Plan> Plan, Draft? Draft) Make(PlanRequest request)
    {
        var measured = MeasurePass.Run(request.Specimen);
        if (measured.Value is not { } body) return (new(null, measured.Findings), null);
        var selected = SelectPass.Run(body, request.Shelf);
        if (selected.Value is not { } protocol) return (new(null, [.. measured.Findings, .. selected.Findings]), null);
        var drafted = DraftPass.Run(body, protocol, request.Bench, request.Choices);
        if (drafted.Value is not { } draft) return (new(null, [.. measured.Findings, .. selected.Findings, .. drafted.Findings]), null);
        var provisioned = ProvisionPass.Run(draft, request.Bench, request.Start.Date);
        var scheduled = SchedulePass.Run(provisioned, request.Bench, new(request.Start) { By = request.By });
        var reviewed = ReviewPass.Run(
            scheduled,
            provisioned,
            request.Bench,
            [.. measured.Findings, .. selected.Findings, .. drafted.Findings, .. provisioned.Findings, .. scheduled.Findings]);
        return (reviewed, scheduled.Draft);
    }
}
