using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>Why a figure of a plan is what it is, down to what was given.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Inputs">What it was made from, each explained in turn. A figure that was explained further up is not repeated.</param>
public sealed record Explanation(Figure Figure, ImmutableArray<Explanation> Inputs)
{
    /// <summary>The parts of its formula with their values, the largest first.</summary>
    public ImmutableArray<ExplainedPart> Parts { get; init; } = [];

    /// <summary>Explains a figure.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="figureId">The figure's id, such as <c>fix.last</c>.</param>
    /// <returns>The tree of reasons, or an error finding <c>unknown-figure</c>.</returns>
    public static Checked<Explanation> Of(Plan plan, string figureId)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(figureId);
        if (plan.Figure(figureId) is not { } figure)
        {
            return new(null, [Finding.Error("unknown-figure", $"the plan has no figure '{figureId}'", Suggestion.For(figureId, [.. plan.Figures.Select(f => f.Id)]))]);
        }

        return new(Of(plan, figure, new(StringComparer.Ordinal)), []);
    }

    private static Explanation Of(Plan plan, Figure figure, HashSet<string> explained)
    {
        if (!explained.Add(figure.Id)) return new(figure, []);
        return new Explanation(figure, [.. figure.Inputs.Select(plan.Figure).OfType<Figure>().Select(f => Of(plan, f, explained))]) { Parts = FormulaParts.Of(figure, plan) };
    }
}

/// <summary>A part of a formula and what it came to.</summary>
/// <param name="Text">The part, as it is written.</param>
/// <param name="Value">Its value, rounded for a person to read.</param>
public sealed record ExplainedPart(string Text, string Value);
