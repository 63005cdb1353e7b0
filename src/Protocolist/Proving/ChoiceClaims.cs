using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>Choices that change nothing, and stages that can never run.</summary>
internal sealed class ChoiceClaims(Subject subject)
{
    private static readonly Phrase NeverRun = new("stage-never-runs", "'{stage}' runs for no specimen of the class, whatever is chosen");
    private static readonly Phrase CorrectWhen = new("stage-never-runs.remedy", "correct its 'when', or remove the stage");
    private static readonly Phrase NoEffect = new("choice-without-effect", "no stage depends on the choice '{choice}'");
    private static readonly Phrase UseIt = new("choice-without-effect.remedy", "use it in a stage, or remove it");
    private static readonly Phrase SameSteps = new("options-alike", "'{option}' and '{twin}' of the choice '{choice}' lead to the same steps");
    private static readonly Phrase Differ = new("options-alike.remedy", "let a stage differ between them, or remove one");

    public IEnumerable<Finding> Findings()
    {
        var protocol = subject.Protocol;
        var run = subject.Routes.Select(r => r.Stages).Distinct().SelectMany(s => s).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);

        // A condition that came by way of 'extends' may speak of options that this class leaves out.
        foreach (var stage in protocol.Stages.Where(s => !run.Contains(s.Id)
            && s.Find("when")!.Span.File == protocol.File
            && subject.Words.All(w => NeverRuns(s, w, subject.Whole))))
        {
            yield return Finding.Warning("stage-never-runs", NeverRun.With(Argument.Id("stage", stage.Id)), CorrectWhen, stage.Expression("when")!.Span);
        }

        foreach (var choice in protocol.Choices.Where(c => subject.PlaceOf(c.Name).File == protocol.File && c.Options.Length > 1))
        {
            if (!protocol.Stages.Any(s => RestsOn(s, "choice." + choice.Name)))
            {
                yield return Finding.Warning("choice-without-effect", NoEffect.With(Argument.Id("choice", choice.Name)), UseIt, subject.PlaceOf(choice.Name));
                continue;
            }

            foreach (var finding in Alike(choice)) yield return finding;
        }
    }

    /// <summary>Whether bounds show it; that none of the specimens tried is among those it runs for would not be enough.</summary>
    private bool NeverRuns(StageDefinition stage, WordCase words, ClassPart part) => subject.Over(part, words).Runs(stage) switch
    {
        Truth.No => true,
        Truth.Yes => false,
        _ => !part.Halves.IsEmpty && part.Halves.All(h => NeverRuns(stage, words, h)),
    };

    /// <summary>Two options under which every stage is the same.</summary>
    private IEnumerable<Finding> Alike(ProtocolChoice choice)
    {
        var name = "choice." + choice.Name;
        var stages = subject.Protocol.Stages.Where(s => RestsOn(s, name)).ToList();
        for (var later = 1; later < choice.Options.Length; later++)
        {
            var option = choice.Options[later];
            var of = subject.Words.Where(w => w.Find(name) == option).ToList();
            var twin = choice.Options.Take(later).FirstOrDefault(o => of.TrueForAll(w => Same(w, w.With(name, o), stages)));
            if (twin is null) continue;
            var message = SameSteps.With(("option", option), ("twin", twin), Argument.Id("choice", choice.Name));
            yield return Finding.Warning("options-alike", message, Differ, subject.PlaceOf(choice.Name, option));
        }
    }

    private bool Same(WordCase a, WordCase b, List<StageDefinition> stages)
    {
        var (left, right) = (Case.Over(subject, subject.Whole, a), Case.Over(subject, subject.Whole, b));
        return stages.All(s => left.Runs(s) == right.Runs(s)
            && (left.Runs(s) == Truth.No || s.Settings.SelectMany(x => x.Expressions()).All(e => left.Evaluate(e) == right.Evaluate(e))));
    }

    private bool RestsOn(StageDefinition stage, string name) =>
        stage.Settings.SelectMany(s => s.Expressions()).Any(e => subject.Rests(e).Contains(name));
}
