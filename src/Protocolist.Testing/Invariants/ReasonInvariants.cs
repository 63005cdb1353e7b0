using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Testing.Invariants;

/// <summary>What holds of the figures and the findings of a plan.</summary>
internal static partial class ReasonInvariants
{
    public static ImmutableArray<PlanInvariant> All { get; } =
    [
        PlanInvariant.OfPlan("figures-are-grounded", "every figure's inputs are figures of the plan, and no figure comes from itself", Grounded),
        PlanInvariant.OfPlan("figures-are-explained", "every figure explains itself down to what was given", Explained),
        PlanInvariant.OfPlan("steps-name-their-figures", "every figure that a step names is there", Named),
        PlanInvariant.OfPlan("findings-by-gravity", "the gravest finding stands first, and a plan may be started when none is an error", ByGravity),
        PlanInvariant.OfPlan(
            "findings-say-what-to-do",
            "every finding has an id that explains itself, and every error and warning says what to do",
            SayWhatToDo),
        new(
            "no-plan-without-a-reason",
            "where there is no plan, an error says why",
            c => c.Made is { Value: null, HasErrors: false } ? ["there is no plan, and no error says why"] : []),
        PlanInvariant.OfPlan("findings-come-with-the-plan", "what is returned beside the plan is what stands on it", (
            plan,
            c) => plan.Findings.SequenceEqual(c.Made.Findings) ? [] : ["the findings differ from the plan's"]),
    ];

    [GeneratedRegex("^[a-z][a-z0-9]*(-[a-z0-9]+)+$")]
    private static partial Regex Kebab { get; }

    private static IEnumerable<string> Grounded(Plan plan)
    {
        foreach (var twice in plan.Figures.CountBy(f => f.Id).Where(c => c.Value > 1)) yield return $"there are two figures '{twice.Key}'";
        foreach (var figure in plan.Figures)
        {
            foreach (var input in figure.Inputs.Where(i => plan.Figure(i) is null)) yield return $"'{figure.Id}' comes from '{input}', which is not there";
            if (ComesFrom(plan, figure, figure.Id, [])) yield return $"'{figure.Id}' comes from itself";
            if (figure.Value.Length == 0 || figure.Formula.IsEmpty) yield return $"'{figure.Id}' is '{figure.Value}' by '{figure.Formula}'";
        }
    }

    private static bool ComesFrom(Plan plan, Figure figure, string id, HashSet<string> seen) =>
        figure.Inputs.Any(i => i == id || (seen.Add(i) && plan.Figure(i) is { } input && ComesFrom(plan, input, id, seen)));

    private static IEnumerable<string> Explained(Plan plan)
    {
        foreach (var figure in plan.Figures)
        {
            if (Explanation.Of(plan, figure.Id).Value is not { } explanation) yield return $"'{figure.Id}' is not explained";
            else if (explanation.Id != figure.Id
                || explanation.Value.ToString() != figure.Value
                || explanation.Inputs.Length != figure.Inputs.Count(i => plan.Figure(i) is not null))
                yield return $"'{figure.Id}' is explained by {explanation.Inputs.Length} of its {figure.Inputs.Length} inputs";
        }
    }

    private static IEnumerable<string> Named(Plan plan) =>
        from step in plan.Steps
        from id in step.Figures
        where plan.Figure(id) is null
        select $"'{step.Id}' names the figure '{id}', which is not there";

    private static IEnumerable<string> ByGravity(Plan plan)
    {
        if (!plan.Findings.Select(f => f.Severity).SequenceEqual(plan.Findings.Select(f => f.Severity).OrderDescending()))
            yield return "the findings are out of order";
        if (plan.Startable == plan.Findings.Any(f => f.Severity == Severity.Error))
            yield return $"startable is {plan.Startable} with {plan.Findings.Count(f => f.Severity == Severity.Error)} errors";
        if (plan.Startable && plan.Start is null) yield return "the plan may be started, and has no date";
        if (plan.Findings.Distinct().Count() != plan.Findings.Length) yield return "a finding stands there twice";
    }

    private static IEnumerable<string> SayWhatToDo(Plan plan)
    {
        foreach (var finding in plan.Findings)
        {
            if (!Kebab.IsMatch(finding.Id)) yield return $"'{finding.Id}' is not an id that explains itself";
            if (finding.Message.IsEmpty) yield return $"'{finding.Id}' says nothing";
            if (finding.Severity != Severity.Note && finding.Remedy.IsEmpty) yield return $"'{finding.Id}' does not say what to do: {finding.Message}";
            if (finding.Subject.Length > 0 && finding.Severity == Severity.Error && finding.Subject.Contains('\n', StringComparison.Ordinal))
                yield return $"'{finding.Id}' is about more than one thing";
        }
    }
}
