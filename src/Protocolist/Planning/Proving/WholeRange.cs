using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Quantities;

namespace Protocolist.Planning.Proving;

/// <summary>
/// Asks of every value and setting of a protocol, over all specimens of its class and every combination of choices, what it could get wrong.
/// A fault is claimed only with a specimen that shows it; what the bounds leave open is a note.
/// </summary>
internal sealed class WholeRange(Subject subject)
{
    private readonly HashSet<(string, SourceSpan)> _said = [];
    private readonly Dictionary<Expression, Asked> _asked = new(ReferenceEqualityComparer.Instance);

    /// <summary>What could go wrong.</summary>
    /// <param name="strict">Whether to say what could not be decided.</param>
    public IEnumerable<Finding> Findings(bool strict)
    {
        foreach (var words in subject.Words)
        {
            foreach (var value in subject.Protocol.Values)
            {
                foreach (var finding in Ask(value.Expression, "", null, $"the value '{value.Name}'", subject.Whole, words, subject.Rests(value.Expression), strict)) yield return finding;
            }
        }

        foreach (var route in subject.Routes)
        {
            foreach (var stage in route.Stages)
            {
                foreach (var (key, what, expression) in stage.Settings.Values.SelectMany(s => Parts(s, stage)))
                {
                    foreach (var finding in Ask(expression, key, stage, what, route.Part, route.Words, subject.Rests(stage, expression), strict)) yield return finding;
                }
            }
        }
    }

    /// <summary>What there is to ask of an expression, and of which words and stretches it was asked.</summary>
    private sealed record Asked(ImmutableArray<Question> Questions, HashSet<(string Words, ClassPart? Part)> Of);

    private static IEnumerable<(string Key, string What, Expression Expression)> Parts(Setting setting, StageDefinition stage) => setting switch
    {
        ExpressionSetting s => [(s.Key, $"'{s.Key}' of '{stage.Id}'", s.Expression)],
        SitesSetting s => s.Sites.Select(x => (s.Key, $"a site in '{x.Region}' of '{stage.Id}'", x.PerSite)),
        WatchSetting s => [(s.Key, $"'every' of 'watch' of '{stage.Id}'", s.Every)],
        _ => [],
    };

    private IEnumerable<Finding> Ask(Expression expression, string key, StageDefinition? stage, string what, ClassPart part, WordCase words, ImmutableHashSet<string> matter, bool strict)
    {
        if (expression.Type.Kind != FormulaKind.Quantity) yield break;
        var dependsOnSize = matter.Any(n => n.StartsWith("specimen.", StringComparison.Ordinal)) || key is "dose" or "sites" or "length" or "depth" or "spacing";
        var mattering = string.Join('|', words.Words.Where(w => matter.Contains(w.Key)).Select(w => w.Value));
        if (!_asked.TryGetValue(expression, out var asked)) asked = _asked[expression] = new([.. Questions.For(expression, key, stage, subject)], []);
        if (!asked.Of.Add((mattering, dependsOnSize ? part : null))) yield break;
        foreach (var question in asked.Questions)
        {
            if (_said.Contains((question.Id, expression.Span))) continue;
            var answer = new Proof(subject, expression, question.MayFault, question.IsFault, question.PointsOnly).Ask(part, words, matter.Contains("bench.temperature") || matter.Contains("bench.cold"));
            if (Say(question, answer, what, expression, words, matter, strict) is not { } finding) continue;
            _said.Add((question.Id, expression.Span));
            yield return finding;

            // What is negative or without limit would only be said again in other words.
            if (answer.Verdict == Verdict.Witnessed) yield break;
        }
    }

    private Finding? Say(Question question, Answer answer, string what, Expression expression, WordCase words, ImmutableHashSet<string> matter, bool strict) => answer.Verdict switch
    {
        Verdict.Witnessed => new Finding(question.Id, question.Severity, $"{what} {question.Says(answer.Value)} for {subject.Describe(answer.Body!, words, matter)}{(question.HidesValue ? "" : $": {Measurable.Text(answer.Value.Quantity)}")}", question.Remedy) { Where = expression.Span },
        Verdict.Open when strict && !question.IsForSlips => Finding.Note("undecided", $"whether {what} {question.Says(answer.Value)} for some specimen of the class could not be decided; none of the specimens tried shows it", "a simpler formula, or a narrower class, can be decided", expression.Span),
        _ => null,
    };
}
