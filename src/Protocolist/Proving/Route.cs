using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>The stages that a protocol runs for a stretch of its class under one combination of choices and traits.</summary>
/// <param name="Words">The combination.</param>
/// <param name="Part">The stretch.</param>
/// <param name="Stages">The stages, in order.</param>
internal sealed record Route(WordCase Words, ClassPart Part, ImmutableArray<StageDefinition> Stages)
{
    /// <summary>All routes: the class is split until every condition is settled, or too fine to split and then settled for its middling specimen.</summary>
    public static IEnumerable<Route> Of(Subject subject, WordCase words, ClassPart part)
    {
        var over = subject.Over(part, words);
        var answers = subject.Protocol.Stages.Select(s => (Stage: s, Runs: over.Runs(s))).ToList();
        if (answers.All(a => a.Runs != Truth.Depends)) return [new(words, part, [.. answers.Where(a => a.Runs == Truth.Yes).Select(a => a.Stage)])];
        if (!part.Halves.IsEmpty) return part.Halves.SelectMany(h => Of(subject, words, h));
        return part.Witnesses.Select((_, witness) => new Route(words, part, At(subject, part, witness, words)));
    }

    private static ImmutableArray<StageDefinition> At(Subject subject, ClassPart part, int witness, WordCase words)
    {
        var at = subject.At(part, witness, words, 0);
        return [.. subject.Protocol.Stages.Where(s => at.Runs(s) != Truth.No)];
    }
}
