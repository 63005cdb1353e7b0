using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>
/// Finds all routes of a protocol: its class is split until every condition is settled, or too fine to split and then settled for its specimens.
/// </summary>
internal sealed class Routing(Subject subject)
{
    private readonly ImmutableArray<Condition> _conditions =
    [
        .. subject.Protocol.Stages.Where(s => s.Expression("when") is not null).Select(s => new Condition(subject, s)),
    ];
    private readonly Dictionary<string, ImmutableArray<StageDefinition>> _stages = new(StringComparer.Ordinal);
    private readonly List<Route> _routes = [];

    public ImmutableArray<Route> Routes()
    {
        var which = new char[_conditions.Length];
        foreach (var words in subject.Words) Find(words, subject.Whole, which);
        return [.. _routes];
    }

    /// <param name="words">The combination.</param>
    /// <param name="part">The stretch.</param>
    /// <param name="which">Room to note which conditions hold.</param>
    private void Find(WordCase words, ClassPart part, char[] which)
    {
        if (IsSettled(words, part, which))
        {
            _routes.Add(new(words, part, Stages(which)));
        }
        else if (part.Halves.IsEmpty)
        {
            for (var witness = 0; witness < part.Witnesses.Length; witness++)
            {
                var at = subject.At(part, witness, words, 0);
                for (var i = 0; i < which.Length; i++) which[i] = at.Runs(_conditions[i].Stage) != Truth.No ? '1' : '0';
                _routes.Add(new(words, part, Stages(which)));
            }
        }
        else
        {
            foreach (var half in part.Halves) Find(words, half, which);
        }
    }

    private bool IsSettled(WordCase words, ClassPart part, char[] which)
    {
        for (var i = 0; i < which.Length; i++)
        {
            var runs = _conditions[i].Over(part, words);
            if (runs == Truth.Depends) return false;
            which[i] = runs == Truth.Yes ? '1' : '0';
        }

        return true;
    }

    private ImmutableArray<StageDefinition> Stages(char[] which)
    {
        var lookup = _stages.GetAlternateLookup<ReadOnlySpan<char>>();
        if (lookup.TryGetValue(which, out var known)) return known;
        var left = _conditions.Where((_, i) => which[i] == '0').Select(c => c.Stage).ToHashSet(ReferenceEqualityComparer.Instance);
        return lookup[which] = [.. subject.Protocol.Stages.Where(s => !left.Contains(s))];
    }

    /// <summary>Whether a stage that has a condition runs, worked out once for all combinations and stretches that are alike to it.</summary>
    private sealed class Condition(Subject subject, StageDefinition stage)
    {
        private readonly Dependence _dependence = new(subject, subject.Rests(stage.Expression("when")!));
        private readonly Dictionary<(int, int?), Truth> _known = [];

        public StageDefinition Stage => stage;

        public Truth Over(ClassPart part, WordCase words)
        {
            var key = _dependence.Key(part, words);
            return _known.TryGetValue(key, out var known) ? known : _known[key] = subject.Over(part, words).Runs(stage);
        }
    }
}
