using Protocolist.Findings;
using Protocolist.Planning.Making;
using Protocolist.Plans;

namespace Protocolist.Planning.Deciding;

/// <summary>
/// What the person left open is decided: of all ways the one that does least harm in the declared order. Provisioning, dating and the checks are run for
/// each way that is weighed; what a step can settle for itself (its soak, its vessel among those that do no more harm) is settled there.
/// </summary>
internal static class DecidePass
{
    /// <summary>The plan of a request that can be planned; else why it cannot.</summary>
    public static Checked<Plan> Plan(this Pipeline pipeline, PlanRequest request) =>
        request.Refusals() is { IsEmpty: false } refusals ? new(null, refusals) : pipeline.Make(request).Plan;

    /// <summary>The plan with what stands behind it, for whoever has to date it beside others.</summary>
    /// <param name="pipeline">The passes.</param>
    /// <param name="request">Specimen, bench, start and choices.</param>
    /// <param name="by">The protocol to plan by; null for the one that serves the specimen.</param>
    public static MadePlan Make(this Pipeline pipeline, PlanRequest request, Protocol? by = null)
    {
        var asked = pipeline.Ask(request, by);
        return asked.Value is { } question ? Run(question) : new(new(null, asked.Findings));
    }

    public static MadePlan Run(Question question)
    {
        var search = new Search(question);
        if (search.Least() is not { } least) return search.Unplanned!;
        var made = DecisionWriting.Of(least, search, question);
        return PriceOfWishes.Of(least, question) is { } price ? Told(made, price) : made;
    }

    private static MadePlan Told(MadePlan made, Finding note)
    {
        var plan = made.Plan.Value!;
        plan = plan with { Findings = [.. plan.Findings, note] };
        return made with { Plan = new(plan, plan.Findings) };
    }
}
