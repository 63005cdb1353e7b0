using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>What a question about all specimens of a stretch comes to.</summary>
internal enum Verdict
{
    /// <summary>It holds for none of them: the bounds show it.</summary>
    Never,

    /// <summary>It holds for a specimen that can be named.</summary>
    Witnessed,

    /// <summary>The bounds are too loose, and no specimen tried shows it.</summary>
    Open,
}

/// <summary>The answer, with the specimen that shows it.</summary>
/// <param name="Verdict">The answer.</param>
/// <param name="Body">The specimen, where one shows it.</param>
/// <param name="Value">What the expression gives for that specimen.</param>
internal readonly record struct Answer(Verdict Verdict, BodyMeasure? Body = null, FormulaValue Value = default);

/// <summary>Settles whether a value can be at fault for some specimen: by bounds, else by a witness, else by halving the stretch and asking again.</summary>
/// <param name="Subject">The protocol and its class.</param>
/// <param name="Expression">The value in question.</param>
/// <param name="MayFault">Whether bounds leave room for the fault.</param>
/// <param name="IsFault">Whether one specimen's value is at fault.</param>
/// <param name="WitnessesOnly">Whether bounds say nothing on this question: it is then asked of the stretch's specimens alone.</param>
internal sealed record Proof(Subject Subject, Expression Expression, Func<Case, FormulaValue, bool> MayFault, Func<Case, BodyMeasure, FormulaValue, bool> IsFault, bool WitnessesOnly = false)
{
    /// <summary>Asks of a stretch and one combination of words.</summary>
    public Answer Ask(ClassPart part, WordCase words, bool dependsOnBench)
    {
        var over = Subject.Over(part, words);
        if (!WitnessesOnly && !MayFault(over, over.Evaluate(Expression))) return new(Verdict.Never);
        for (var witness = 0; witness < part.Witnesses.Length; witness++)
        {
            for (var bench = 0; bench < (dependsOnBench ? Subject.Benches.Length : 1); bench++)
            {
                var at = Subject.At(part, witness, words, bench);
                var value = at.Evaluate(Expression);
                if (IsFault(at, part.Witnesses[witness], value)) return new(Verdict.Witnessed, part.Witnesses[witness], value);
            }
        }

        if (WitnessesOnly) return new(Verdict.Never);
        if (part.Halves.IsEmpty) return new(Verdict.Open);
        var answers = part.Halves.Select(h => Ask(h, words, dependsOnBench)).ToList();
        return answers.FirstOrDefault(a => a.Verdict == Verdict.Witnessed, answers.FirstOrDefault(a => a.Verdict == Verdict.Open));
    }
}
