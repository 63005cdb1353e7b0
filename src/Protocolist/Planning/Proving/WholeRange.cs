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
    private readonly Dictionary<StageDefinition, ImmutableArray<Asked>> _asked = new(ReferenceEqualityComparer.Instance);

    /// <summary>What could go wrong.</summary>
    /// <param name="strict">Whether to say what could not be decided.</param>
    public IEnumerable<Finding> Findings(bool strict)
    {
        var values = subject.Protocol.Values.Where(v => v.Expression.Type.Kind == FormulaKind.Quantity).Select(v => new Asked(subject, null, "", $"the value '{v.Name}'", v.Expression)).ToList();
        foreach (var words in subject.Words)
        {
            foreach (var finding in values.Where(v => v.IsNew(subject.Whole, words)).SelectMany(v => Ask(v, subject.Whole, words, strict))) yield return finding;
        }

        foreach (var route in subject.Routes)
        {
            foreach (var stage in route.Stages)
            {
                if (!_asked.TryGetValue(stage, out var settings)) settings = _asked[stage] = [.. AskedOf(stage)];
                foreach (var setting in settings)
                {
                    if (!setting.IsNew(route.Part, route.Words)) continue;
                    foreach (var finding in Ask(setting, route.Part, route.Words, strict)) yield return finding;
                }
            }
        }
    }

    private IEnumerable<Asked> AskedOf(StageDefinition stage) =>
        from setting in stage.Settings
        from part in Parts(setting, stage)
        where part.Expression.Type.Kind == FormulaKind.Quantity
        select new Asked(subject, stage, part.Key, part.What, part.Expression);

    private static IEnumerable<(string Key, string What, Expression Expression)> Parts(Setting setting, StageDefinition stage) => setting switch
    {
        ExpressionSetting s => [(s.Key, $"'{s.Key}' of '{stage.Id}'", s.Expression)],
        SitesSetting s => s.Sites.Select(x => (s.Key, $"a site in '{x.Region}' of '{stage.Id}'", x.PerSite)),
        WatchSetting s => [(s.Key, $"'every' of 'watch' of '{stage.Id}'", s.Every)],
        _ => [],
    };

    private IEnumerable<Finding> Ask(Asked asked, ClassPart part, WordCase words, bool strict)
    {
        foreach (var question in asked.Questions)
        {
            if (_said.Contains((question.Id, asked.Expression.Span))) continue;
            var answer = new Proof(subject, asked.Expression, question.MayFault, question.IsFault, question.PointsOnly).Ask(part, words, asked.DependsOnBench);
            if (Say(question, answer, asked, words, strict) is not { } finding) continue;
            _said.Add((question.Id, asked.Expression.Span));
            yield return finding;

            // What is negative or without limit would only be said again in other words.
            if (answer.Verdict == Verdict.Witnessed) yield break;
        }
    }

    private Finding? Say(Question question, Answer answer, Asked asked, WordCase words, bool strict) => answer.Verdict switch
    {
        Verdict.Witnessed => new Finding(question.Id, question.Severity, $"{asked.What} {question.Says(answer.Value)} for {subject.Describe(answer.Body!, words, asked.Matter)}{(question.HidesValue ? "" : $": {Measurable.Text(answer.Value.Quantity)}")}", question.Remedy) { Where = asked.Expression.Span },
        Verdict.Open when strict && !question.IsForSlips => Finding.Note("undecided", $"whether {asked.What} {question.Says(answer.Value)} for some specimen of the class could not be decided; none of the specimens tried shows it", "a simpler formula, or a narrower class, can be decided", asked.Expression.Span),
        _ => null,
    };
}
