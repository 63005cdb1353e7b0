using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Plans;

/// <summary>Why a figure of a plan is what it is, down to what was given; or why a finding was made.</summary>
/// <param name="Id">The id of the figure or the finding.</param>
/// <param name="Value">What it came to; of a finding its severity.</param>
/// <param name="How">How it was made: a formula, a rule; of a finding what it says.</param>
/// <param name="Source">Where formula or rule come from; empty where nothing is said.</param>
public sealed record Explanation(string Id, Message Value, Message How, string Source)
{
    private static readonly Phrase Unknown = new("unknown-figure", "the plan has no figure '{figure}'");
    private static readonly Phrase FiguresOf = new("unknown-figure.of-step", "figures of '{step}': {figures}");
    private static readonly Phrase SuchAs = new("unknown-figure.such-as", "figures are called after what they belong to, such as {figures}{findings}");
    private static readonly Phrase FindingsToo = new("unknown-figure.findings", "; findings: {findings}");
    private static readonly Phrase Several = new("several-findings", "{count} findings");
    private static readonly Phrase EachBelow = new("several-findings.each", "each below");

    /// <summary>The place in a file that it comes from, where it comes from one.</summary>
    public SourceSpan Where { get; init; }

    /// <summary>A remark; of a finding what to do.</summary>
    public Message Note { get; init; }

    /// <summary>The parts of its formula with their values, the largest first.</summary>
    public ImmutableArray<ExplainedPart> Parts { get; init; } = [];

    /// <summary>What it was made from, each explained in turn. A figure that was explained further up is not repeated.</summary>
    public ImmutableArray<Explanation> Inputs { get; init; } = [];

    /// <summary>Explains a figure or a finding.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="figureId">The figure's id, such as <c>fix.last</c>, or a finding's, such as <c>wash-too-short</c>.</param>
    /// <returns>The tree of reasons, or an error finding <c>unknown-figure</c>.</returns>
    public static Checked<Explanation> Of(Plan plan, string figureId)
    {
        WholePlan.ThrowIfIncomplete(plan);
        ArgumentNullException.ThrowIfNull(figureId);
        if (plan.Figure(figureId) is { } figure) return new(Of(plan, figure, new(StringComparer.Ordinal)), []);
        List<Explanation> findings = [.. plan.Findings.Where(f => f.Id == figureId).Select(f => Of(plan, f))];
        return findings.Count switch
        {
            0 => new(null, [Finding.Error("unknown-figure", Unknown.With(Argument.Id("figure", figureId)), Known(plan, figureId))]),
            1 => new(findings[0], []),
            var count => new(new(figureId, Several.With(("count", count)), EachBelow, "") { Inputs = [.. findings] }, []),
        };
    }

    /// <summary>The near name, or the figures of the step it names, or one figure of each thing that has any.</summary>
    private static Message Known(Plan plan, string id)
    {
        if (Suggestion.Nearest(id, plan.Figures.Select(f => f.Id).Concat(plan.Findings.Select(f => f.Id))) is { } near) return Suggestion.Of(near);
        var bySubject = plan.Figures.GroupBy(f => f.Id.Split('.')[0], StringComparer.Ordinal).ToList();
        if (bySubject.Find(g => g.Key == id.Split('.')[0]) is { } alike)
            return FiguresOf.With(Argument.Id("step", alike.Key), Argument.Ids("figures", alike.Select(f => f.Id)));
        var findings = plan.Findings.Select(f => f.Id).Distinct(StringComparer.Ordinal).ToList();
        return SuchAs.With(
            Argument.Ids("figures", bySubject.Select(g => g.First().Id)),
            ("findings", findings.Count == 0 ? default : FindingsToo.With(Argument.Ids("findings", findings))));
    }

    /// <summary>A finding reads as a figure: its severity, what it says with its limit, the figures it rests on, its source, its remedy.</summary>
    private static Explanation Of(Plan plan, Finding finding)
    {
        var explained = new HashSet<string>(StringComparer.Ordinal) { finding.Id };
        return new(finding.Id, SeverityWords.Of(finding.Severity), finding.Message, finding.Source)
        {
            Note = finding.Remedy,
            Where = finding.Where,
            Inputs = [.. finding.Figures.Select(plan.Figure).OfType<Figure>().Select(f => Of(plan, f, explained))],
        };
    }

    private static Explanation Of(Plan plan, Figure figure, HashSet<string> explained)
    {
        var shown = new Explanation(figure.Id, Message.Text(figure.Value), figure.Formula, figure.Source) { Where = figure.Where, Note = figure.Note };
        return explained.Add(figure.Id)
            ? shown with
            {
                Parts = FormulaParts.Of(figure, plan),
                Inputs = [.. figure.Inputs.Select(plan.Figure).OfType<Figure>().Select(f => Of(plan, f, explained))],
            }
            : shown;
    }
}

/// <summary>A part of a formula and what it came to.</summary>
/// <param name="Text">The part, as it is written.</param>
/// <param name="Value">Its value, rounded for a person to read.</param>
public sealed record ExplainedPart(string Text, string Value);
