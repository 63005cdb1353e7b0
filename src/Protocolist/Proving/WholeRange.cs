using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>
/// Asks of every value and setting of a protocol, over all specimens of its class and every combination of choices, what it could get wrong.
/// A fault is claimed only with a specimen that shows it; what the bounds leave open is a note.
/// </summary>
internal sealed class WholeRange(Subject subject)
{
    private static readonly Phrase Value = new("proof.value", "the value '{name}'");
    private static readonly Phrase OfStage = new("proof.setting", "'{key}' of '{stage}'");
    private static readonly Phrase Site = new("proof.site", "a site in '{region}' of '{stage}'");
    private static readonly Phrase WatchEvery = new("proof.watch-every", "'every' of 'watch' of '{stage}'");
    private static readonly Phrase Witnessed = new("proof", "{what} {says} for {who}{value}");
    private static readonly Phrase ItsValue = new("proof.its-value", ": {value}");
    private static readonly Phrase Undecided = new(
        "undecided",
        "whether {what} {says} for some specimen of the class could not be decided; none of the specimens tried shows it");

    private static readonly Phrase Simpler = new("undecided.remedy", "a simpler formula, or a narrower class, can be decided");

    private readonly HashSet<(string, SourceSpan)> _said = [];

    /// <summary>What could go wrong.</summary>
    /// <param name="strict">Whether to say what could not be decided.</param>
    public IEnumerable<Finding> Findings(bool strict)
    {
        var values = subject.Protocol.Values
            .Where(v => v.Expression.Type.Kind == FormulaKind.Quantity)
            .Select(v => new Asked(subject, null, "", () => Value.With(Argument.Id("name", v.Name)), v.Expression))
            .ToList();
        foreach (var words in subject.Words)
        {
            foreach (var value in values)
            {
                if (!value.IsNew(subject.Whole, words)) continue;
                foreach (var finding in Ask(value, subject.Whole, words, strict)) yield return finding;
            }
        }

        var ofStage = new Dictionary<StageDefinition, ImmutableArray<Asked>>(ReferenceEqualityComparer.Instance);
        var ofRoute = new Dictionary<ImmutableArray<StageDefinition>, ImmutableArray<Asked>>();
        foreach (var route in subject.Routes)
        {
            if (!ofRoute.TryGetValue(route.Stages, out var settings)) settings = ofRoute[route.Stages] = [.. route.Stages.SelectMany(s => AskedOf(s, ofStage))];
            foreach (var setting in settings)
            {
                if (!setting.IsNew(route.Part, route.Words)) continue;
                foreach (var finding in Ask(setting, route.Part, route.Words, strict)) yield return finding;
            }
        }
    }

    private ImmutableArray<Asked> AskedOf(StageDefinition stage, Dictionary<StageDefinition, ImmutableArray<Asked>> known) =>
        known.TryGetValue(stage, out var asked) ? asked : known[stage] = [.. stage.Settings.SelectMany(s => AskedOf(s, stage))];

    private IEnumerable<Asked> AskedOf(Setting setting, StageDefinition stage) => setting switch
    {
        ExpressionSetting { Expression.Type.Kind: FormulaKind.Quantity } s => [
            new(subject, stage, s.Key, () => OfStage.With(Argument.Id("key", s.Key), Argument.Id("stage", stage.Id)), s.Expression),
        ],
        SitesSetting s => s.Sites.Select(x => new Asked(
            subject,
            stage,
            s.Key,
            () => Site.With(Argument.Id("region", x.Region), Argument.Id("stage", stage.Id)),
            x.PerSite)),
        WatchSetting s => [new(subject, stage, s.Key, () => WatchEvery.With(Argument.Id("stage", stage.Id)), s.Every)],
        _ => [],
    };

    private IEnumerable<Finding> Ask(Asked asked, ClassPart part, WordCase words, bool strict)
    {
        foreach (var question in asked.Questions)
        {
            if (_said.Contains((question.Id, asked.Expression.Span))) continue;
            var answer = new Proof(subject, asked.Expression, question, words, asked.DependsOnBench ? Subject.Benches.Length : 1).Ask(part);
            if (Say(question, answer, asked, words, strict) is not { } finding) continue;
            _said.Add((question.Id, asked.Expression.Span));
            yield return finding;

            // What is negative or without limit would only be said again in other words.
            if (answer.Verdict == Verdict.Witnessed) yield break;
        }
    }

    private Finding? Say(Question question, Answer answer, Asked asked, WordCase words, bool strict)
    {
        if (answer.Verdict == Verdict.Never) return null;
        Argument what = ("what", asked.What), says = ("says", question.Says);
        if (answer.Verdict == Verdict.Witnessed)
        {
            var value = question.HidesValue ? default : ItsValue.With(("value", answer.Value.Quantity));
            var message = Witnessed.With(what, says, ("who", subject.Describe(answer.Body!, words, asked.Matter)), ("value", value));
            return new Finding(question.Id, question.Severity, message, question.Remedy) { Where = asked.Expression.Span };
        }

        if (answer.Verdict != Verdict.Open || !strict || question.IsForSlips) return null;
        return Finding.Note("undecided", Undecided.With(what, says), Simpler, asked.Expression.Span);
    }
}
