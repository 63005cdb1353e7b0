using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Checks;

/// <summary>The checks that an institution wrote into its protocols.</summary>
internal static class HouseChecks
{
    private static readonly Phrase Holds = new("house-check", "{message}{part} ({when}; here {values})");
    private static readonly Phrase InPart = new("house-check.in-part", ", for a part of the range");
    private static readonly Phrase Value = new("house-check.value", "{name} is {value}");

    /// <summary>What they find. A condition about a stage that the plan leaves out has nothing to say.</summary>
    public static ImmutableArray<Finding> Of(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var check in plan.Protocol.HouseChecks)
        {
            if (Of(check, plan) is { } finding) found = found.Add(finding);
        }

        return found;
    }

    private static Finding? Of(HouseCheck check, ReviewCase plan)
    {
        var values = new FormulaValue[check.Names.Length];
        for (var i = 0; i < values.Length; i++)
        {
            if (plan.ValueOf(check.Names[i]) is not { } value) return null;
            values[i] = value;
        }

        var answer = check.When.Evaluate(new(name => values[check.Names.IndexOf(name)])).Truth;
        if (answer == Truth.No) return null;
        var said = Argument.Messages("values", check.Names.Zip(values, (name, value) => Value.With(Argument.Id("name", name), Fact(value))));
        var message = Holds.With(("message", check.Message), ("part", answer == Truth.Depends ? InPart : default(Message)), ("when", check.When.Text), said);
        return new(check.Id, check.Severity, message, Message.Text(check.Remedy))
        {
            Where = check.Span,
            Figures = check.Names,
            Source = check.Source.Length > 0 ? check.Source : $"a check of the house, in {plan.Protocol.Id}",
        };
    }

    private static Argument Fact(FormulaValue value) => value.Kind == FormulaKind.Quantity ? ("value", value.Quantity) : ("value", value.ToString());
}
