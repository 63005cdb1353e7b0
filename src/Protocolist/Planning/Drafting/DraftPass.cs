using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Planning.Measuring;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning.Drafting;

/// <summary>Third pass: the protocol's stages become steps with fluids, amounts, sites and durations for this body.</summary>
internal static class DraftPass
{
    private static readonly Phrase NoSteps = new("no-steps", "'{protocol}' has no stage for this specimen");
    private static readonly Phrase NoStepsRemedy = new("no-steps.remedy", "check its 'when' conditions");
    private static readonly Phrase UnknownChoice = new("unknown-choice", "'{protocol}' leaves no choice called '{choice}'");
    private static readonly Phrase UnknownOption = new("unknown-option", "'{option}' cannot be chosen for '{choice}'");
    private static readonly Phrase Impossible = new("impossible-amount", "'{figure}' comes out negative or without a limit for this specimen");
    private static readonly Phrase ImpossibleRemedy = new("impossible-amount.remedy", "check the measurements, and the formula in the protocol");

    /// <summary>Drafts the steps.</summary>
    /// <param name="body">The body.</param>
    /// <param name="prepared">The protocol.</param>
    /// <param name="bench">The bench.</param>
    /// <param name="wanted">The choices that a person made.</param>
    /// <param name="settled">Those that the planner settled; null for the first option of each.</param>
    /// <param name="wishes">What a person insists on beside; null for nothing.</param>
    public static Checked<Draft> Run(
        BodyMeasure body,
        PreparedProtocol prepared,
        Bench bench,
        ImmutableSortedDictionary<string, string> wanted,
        ImmutableSortedDictionary<string, string>? settled = null,
        PlanWishes? wishes = null)
    {
        var findings = new List<Finding>();
        if (Choose(prepared, wanted, findings) is not { } choices) return new(null, [.. findings]);
        if (settled is not null) choices = choices.SetItems(settled);
        var table = SpecimenValues.Table(prepared.TableSize, body, bench.Temperatures);
        var inputs = new FormulaInputs(table);
        var figures = new List<Figure>(prepared.FigureCount + GivenFigures.Count);
        GivenFigures.AddBody(body, figures);
        foreach (var choice in prepared.Choices)
        {
            var option = choices[choice.Name];
            table[choice.Slot] = choice.Options[choice.Words.IndexOf(option)];
            figures.Add((wanted.ContainsKey(choice.Name) ? choice.Chosen : choice.ByDefault).Of(table[choice.Slot]));
        }

        GivenFigures.AddBench(bench, figures);
        foreach (var value in prepared.Values)
        {
            var result = value.Expression.Evaluate(inputs);
            table[value.Slot] = result;
            figures.Add(value.Origin.Of(result));
            if (IsImpossible(result)) findings.Add(NotFinite(value.Origin, Severity.Warning));
        }

        var steps = ImmutableArray.CreateBuilder<DraftStep>(prepared.Stages.Length);
        var forbidden = BodyKind.Of(body).Forbids;
        foreach (var written in prepared.Stages)
        {
            var stage = written.For(forbidden);
            if (stage.When is { } when && when.Evaluate(inputs).Truth == Truth.No) continue;
            var first = figures.Count;
            foreach (var setting in stage.Settings)
            {
                var figure = setting.Figure(inputs);
                if (IsImpossible(figure.Answer)) findings.Add(NotFinite(setting.Origin, Severity.Error));
                figures.Add(figure);
            }

            if (new StepDrafting(stage, CollectionsMarshal.AsSpan(figures)[first..], inputs, body, prepared, findings).Step() is { } step) steps.Add(step);
            else figures.RemoveRange(first, figures.Count - first);
        }

        if (steps.Count == 0)
            findings.Add(Finding.Error("no-steps", NoSteps.With(Argument.Id("protocol", prepared.Protocol.Id)), NoStepsRemedy, prepared.Protocol.Span));
        var drafted = WishedTimes.In(steps.DrainToImmutable(), wishes ?? PlanWishes.None, findings);
        var fixation = FixationTime.Of(drafted, body, bench);
        findings.AddRange(fixation.Findings);
        if (fixation.Value is { } core)
        {
            figures.Add(FixationTime.Figure(core));
            drafted = SoakChoice.Of(drafted, core, wishes ?? PlanWishes.None, figures);
        }

        return new(new(body, prepared, choices, drafted, [.. figures]) { Fixation = fixation.Value }, [.. findings]);
    }

    /// <summary>The choices as decided, defaults filled in; null where something was chosen that cannot be.</summary>
    private static ImmutableSortedDictionary<string, string>? Choose(
        PreparedProtocol prepared,
        ImmutableSortedDictionary<string, string> wanted,
        List<Finding> findings)
    {
        if (wanted.IsEmpty) return prepared.Defaults;
        foreach (var (name, option) in wanted)
        {
            var choice = prepared.Protocol.Choices.FirstOrDefault(c => c.Name == name);
            if (choice is null)
            {
                findings.Add(Finding.Error(
                    "unknown-choice",
                    UnknownChoice.With(Argument.Id("protocol", prepared.Protocol.Id), ("choice", name)),
                    Suggestion.For(name, [.. prepared.Protocol.Choices.Select(c => c.Name)])));
            }
            else if (!choice.Options.Contains(option))
            {
                findings.Add(Finding.Error("unknown-option", UnknownOption.With(("option", option), ("choice", name)), Suggestion.For(option, choice.Options)));
            }
        }

        return findings.Count > 0 ? null : prepared.Defaults.SetItems(wanted);
    }

    /// <summary>An amount below nothing, or one that no number bounds from below.</summary>
    private static bool IsImpossible(FormulaValue value) =>
        value.Kind == FormulaKind.Quantity
            && (value.Quantity.Low < 0 || double.IsPositiveInfinity(value.Quantity.Low))
            && value.Quantity.Dimension != Dimension.OfTemperature;

    private static Finding NotFinite(FigureOrigin figure, Severity severity) =>
        new("impossible-amount", severity, Impossible.With(Argument.Id("figure", figure.Id)), ImpossibleRemedy) { Where = figure.Where, Subject = figure.Id };
}
