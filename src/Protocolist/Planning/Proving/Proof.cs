using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Planning.Proving;

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
/// <param name="PointsOnly">Whether bounds say nothing on this question: it is then asked of the stretch's specimens alone.</param>
internal sealed record Proof(Subject Subject, Expression Expression, Func<Case, FormulaValue, bool> MayFault, Func<Case, BodyMeasure, FormulaValue, bool> IsFault, bool PointsOnly = false)
{
    /// <summary>A usual bench first, so that the witness is an everyday one; then the coldest and the warmest that people work at.</summary>
    private static readonly ImmutableArray<BenchTemperatures> Temperatures =
    [
        BenchTemperatures.Usual,
        BenchTemperatures.Usual with { Room = Temperature.FromDegreesCelsius(5), Cold = Temperature.FromDegreesCelsius(0) },
        BenchTemperatures.Usual with { Room = Temperature.FromDegreesCelsius(35), Cold = Temperature.FromDegreesCelsius(10) },
    ];

    /// <summary>Asks of a stretch and one combination of words.</summary>
    public Answer Ask(ClassPart part, WordCase words, bool dependsOnBench)
    {
        var over = Subject.Over(part, words);
        if (!PointsOnly && !MayFault(over, over.Evaluate(Expression))) return new(Verdict.Never);
        foreach (var body in part.Witnesses)
        {
            foreach (var temperatures in dependsOnBench ? Temperatures : Temperatures[..1])
            {
                var at = Case.At(Subject, body, words, temperatures);
                var value = at.Evaluate(Expression);
                if (IsFault(at, body, value)) return new(Verdict.Witnessed, body, value);
            }
        }

        if (PointsOnly) return new(Verdict.Never);
        if (part.Halves.IsEmpty) return new(Verdict.Open);
        var answers = part.Halves.Select(h => Ask(h, words, dependsOnBench)).ToList();
        return answers.FirstOrDefault(a => a.Verdict == Verdict.Witnessed, answers.FirstOrDefault(a => a.Verdict == Verdict.Open));
    }
}
