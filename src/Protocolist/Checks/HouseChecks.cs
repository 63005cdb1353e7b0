using Protocolist.Findings;
using Protocolist.Formulas;

namespace Protocolist.Checks;

/// <summary>The checks that an institution wrote into its protocols.</summary>
internal static class HouseChecks
{
    /// <summary>What they find. A condition about a stage that the plan leaves out has nothing to say.</summary>
    public static IEnumerable<Finding> Of(ReviewCase plan)
    {
        foreach (var check in plan.Protocol.HouseChecks)
        {
            var names = check.When.Names().Distinct(StringComparer.Ordinal).ToArray();
            if (Array.Exists(names, n => plan.ValueOf(n) is null)) continue;
            var answer = check.When.Evaluate(new(name => plan.ValueOf(name)!.Value)).Truth;
            if (answer == Truth.No) continue;
            var said = string.Join(", ", names.Select(n => $"{n} is {plan.ValueOf(n)}"));
            var message = $"{check.Message}{(answer == Truth.Depends ? ", for a part of the range" : "")} ({check.When.Text}; here {said})";
            yield return new Finding(check.Id, check.Severity, message, check.Remedy)
            {
                Where = check.Span,
                Figures = [.. names],
                Source = check.Source.Length > 0 ? check.Source : $"a check of the house, in {plan.Protocol.Id}",
            };
        }
    }
}
