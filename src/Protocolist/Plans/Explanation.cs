using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Plans;

/// <summary>Why a figure of a plan is what it is, down to what was given; or why a finding was made.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Inputs">What it was made from, each explained in turn. A figure that was explained further up is not repeated.</param>
public sealed record Explanation(Figure Figure, ImmutableArray<Explanation> Inputs)
{
    /// <summary>The parts of its formula with their values, the largest first.</summary>
    public ImmutableArray<ExplainedPart> Parts { get; init; } = [];

    /// <summary>Explains a figure or a finding.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="figureId">The figure's id, such as <c>fix.last</c>, or a finding's, such as <c>wash-too-short</c>.</param>
    /// <returns>The tree of reasons, or an error finding <c>unknown-figure</c>.</returns>
    public static Checked<Explanation> Of(Plan plan, string figureId)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(figureId);
        if (plan.Figure(figureId) is not { } figure)
        {
            if (plan.Findings.Where(f => f.Id == figureId).ToList() is { Count: > 0 } findings) return new(Of(plan, figureId, findings), []);
            return new(null, [Finding.Error("unknown-figure", $"the plan has no figure '{figureId}'", Known(plan, figureId))]);
        }

        return new(Of(plan, figure, new(StringComparer.Ordinal)), []);
    }

    /// <summary>The near name, or the figures of the step it names, or one figure of each thing that has any.</summary>
    private static string Known(Plan plan, string id)
    {
        if (Suggestion.Nearest(id, plan.Figures.Select(f => f.Id).Concat(plan.Findings.Select(f => f.Id))) is { } near) return $"did you mean '{near}'?";
        var bySubject = plan.Figures.GroupBy(f => f.Id.Split('.')[0], StringComparer.Ordinal).ToList();
        if (bySubject.Find(g => g.Key == id.Split('.')[0]) is { } alike) return $"figures of '{alike.Key}': {string.Join(", ", alike.Select(f => f.Id))}";
        var findings = plan.Findings.Select(f => f.Id).Distinct().ToList();
        return $"figures are called after what they belong to, such as {string.Join(", ", bySubject.Select(g => g.First().Id))}{(findings.Count == 0 ? "" : $"; findings: {string.Join(", ", findings)}")}";
    }

    /// <summary>A finding reads as a figure: its severity, what it says with its limit, the figures it rests on, its source, its remedy.</summary>
    private static Explanation Of(Plan plan, string id, List<Finding> findings)
    {
        var explained = findings.ConvertAll(f => Of(plan, new(f.Id, EnumWords<Severity>.Of(f.Severity), f.Message.ToString(), f.Figures, f.Source) { Note = f.Remedy.ToString(), Where = f.Where.ToString() }, new HashSet<string>(StringComparer.Ordinal)));
        return explained.Count == 1
            ? explained[0]
            : new(new(id, $"{explained.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)} findings", "each below", [], ""), [.. explained]);
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
