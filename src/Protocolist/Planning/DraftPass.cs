using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>Third pass: the protocol's stages become steps with fluids, amounts, sites and durations for this body.</summary>
internal static class DraftPass
{
    public static Checked<Draft> Run(BodyMeasure body, Protocol protocol, Bench bench, ImmutableSortedDictionary<string, string> wanted)
    {
        var findings = new List<Finding>();
        if (Choose(protocol, wanted, findings) is not { } choices) return new(null, [.. findings]);
        var inputs = new PlanInputs(body, bench.Temperatures, choices, ImmutableDictionary<string, FormulaValue>.Empty);
        var figures = new List<Figure>(GivenFigures.Of(body, bench, protocol, wanted, choices));
        foreach (var value in protocol.Values)
        {
            var result = value.Expression.Evaluate(inputs.AsFormulaInputs());
            inputs = inputs.With(value.Name, result);
            figures.Add(FigureOrigin.Of(value.Name, value.Expression, value.Source, value.Note, value.Span).Of(result));
            if (Impossible(result)) findings.Add(NotFinite(value.Name, value.Span, warning: true));
        }

        var steps = ImmutableArray.CreateBuilder<DraftStep>();
        foreach (var stage in protocol.Stages)
        {
            var when = stage.Expression("when")?.Evaluate(inputs.AsFormulaInputs()).Truth ?? Truth.Yes;
            if (when == Truth.No) continue;
            var stageFigures = StageFigures(stage, inputs, findings);
            figures.AddRange(stageFigures);
            steps.Add(StepDraft.Of(stage, body, inputs, findings) with { Figures = [.. stageFigures.Select(f => f.Id)] });
        }

        if (steps.Count == 0) findings.Add(Finding.Error("no-steps", $"'{protocol.Id}' has no stage for this specimen", "check its 'when' conditions", protocol.Span));
        var drafted = steps.DrainToImmutable();
        var fixation = FixationReckoning.Of(drafted, body, bench);
        findings.AddRange(fixation.Findings);
        if (fixation.Value is { } core) figures.Add(FixationReckoning.Figure(core));
        return new(new(body, protocol, choices, drafted, [.. figures.DistinctBy(f => f.Id)]) { Fixation = fixation.Value }, [.. findings]);
    }

    /// <summary>The choices as decided, defaults filled in; null where something was chosen that cannot be.</summary>
    private static ImmutableSortedDictionary<string, string>? Choose(Protocol protocol, ImmutableSortedDictionary<string, string> wanted, List<Finding> findings)
    {
        foreach (var (name, option) in wanted)
        {
            var choice = protocol.Choices.FirstOrDefault(c => c.Name == name);
            if (choice is null) findings.Add(Finding.Error("unknown-choice", $"'{protocol.Id}' leaves no choice called '{name}'", Suggestion.For(name, [.. protocol.Choices.Select(c => c.Name)])));
            else if (!choice.Options.Contains(option)) findings.Add(Finding.Error("unknown-option", $"'{option}' cannot be chosen for '{name}'", Suggestion.For(option, choice.Options)));
        }

        return findings.Count > 0
            ? null
            : protocol.Choices.ToImmutableSortedDictionary(c => c.Name, c => wanted.GetValueOrDefault(c.Name, c.Options[0]), StringComparer.Ordinal);
    }

    private static List<Figure> StageFigures(StageDefinition stage, PlanInputs inputs, List<Finding> findings)
    {
        var figures = new List<Figure>();
        foreach (var setting in stage.Settings.OfType<ExpressionSetting>().Where(s => s.Key != "when").OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            var id = $"{stage.Id}.{setting.Key}";
            var value = setting.Expression.Evaluate(inputs.AsFormulaInputs());
            if (Impossible(value)) findings.Add(NotFinite(id, setting.Span, warning: false));
            figures.Add(FigureOrigin.Of(id, setting.Expression, stage.Source, "", setting.Span).Of(value));
        }

        return figures;
    }

    /// <summary>An amount below nothing, or one that no number bounds from below.</summary>
    private static bool Impossible(FormulaValue value) =>
        value.Kind == FormulaKind.Quantity && value.Quantity.Dimension != Dimension.OfTemperature && (value.Quantity.Low < 0 || double.IsPositiveInfinity(value.Quantity.Low));

    private static Finding NotFinite(string id, SourceSpan span, bool warning)
    {
        var finding = Finding.Error("impossible-amount", $"'{id}' comes out negative or without a limit for this specimen", "check the measurements, and the formula in the protocol", span) with { Subject = id };
        return warning ? finding with { Severity = Severity.Warning } : finding;
    }
}
