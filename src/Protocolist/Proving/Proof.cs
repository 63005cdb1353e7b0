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
/// <param name="Question">What it could get wrong.</param>
/// <param name="Words">The combination of words.</param>
/// <param name="Benches">On how many of the benches it is tried.</param>
internal readonly record struct Proof(Subject Subject, Expression Expression, Question Question, WordCase Words, int Benches)
{
    /// <summary>Asks of a stretch.</summary>
    public Answer Ask(ClassPart part)
    {
        if (!Question.WitnessesOnly)
        {
            var over = Subject.Over(part, Words);
            if (!Question.MayFault(over, over.Evaluate(Expression))) return new(Verdict.Never);
        }

        for (var witness = 0; witness < part.Witnesses.Length; witness++)
        {
            for (var bench = 0; bench < Benches; bench++)
            {
                var at = Subject.At(part, witness, Words, bench);
                var value = at.Evaluate(Expression);
                if (Question.IsFault(at, part.Witnesses[witness], value)) return new(Verdict.Witnessed, part.Witnesses[witness], value);
            }
        }

        if (Question.WitnessesOnly) return new(Verdict.Never);
        if (part.Halves.IsEmpty) return new(Verdict.Open);
        var open = default(Answer);
        foreach (var half in part.Halves)
        {
            var answer = Ask(half);
            if (answer.Verdict == Verdict.Witnessed) return answer;
            if (answer.Verdict == Verdict.Open) open = answer;
        }

        return open;
    }
}
