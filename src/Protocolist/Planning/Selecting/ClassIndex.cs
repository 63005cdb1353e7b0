using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning.Selecting;

/// <summary>A protocol with its class as what can be asked of a body.</summary>
internal sealed class Candidate
{
    private readonly ImmutableArray<(QuantityRange Limit, Func<BodyMeasure, double> Measure)> _limits;
    private readonly ImmutableArray<(ImmutableArray<string> Words, string Trait)> _words;

    private readonly Shelved _shelved;

    public Candidate(Shelved shelved)
    {
        _shelved = shelved;
        ClassText = Class.Said();
        Limits = Class.Limits.Count + Class.Words.Count;
        _limits = [.. Class.Limits.Select(l => (l.Value, Measuring(l.Key)))];
        _words = [.. Class.Words.Select(w => (w.Value, w.Key))];
    }

    public string Id => _shelved.Id;

    public SpecimenClass Class => _shelved.Class;

    /// <summary>The whole of it, read when it is first asked for.</summary>
    public Protocol Protocol => _shelved.Protocol;

    /// <summary>The class in words.</summary>
    public Message ClassText { get; }

    /// <summary>How many things the class limits.</summary>
    public int Limits { get; }

    /// <summary>Whether a body is of the class, the group aside.</summary>
    public bool Fits(BodyMeasure body)
    {
        foreach (var (limit, measure) in _limits)
        {
            if (!SpecimenClass.Within(limit, measure(body))) return false;
        }

        foreach (var (words, trait) in _words)
        {
            if (!words.Contains(SpecimenValues.Trait(body.Specimen, trait))) return false;
        }

        return true;
    }

    private static Func<BodyMeasure, double> Measuring(string key) => body => SpecimenValues.Measure(body, "specimen." + key).Middle;
}

/// <summary>The protocols of a shelf by the groups that they are for. Made once for a shelf. Immutable.</summary>
internal sealed class ClassIndex
{
    private readonly FrozenDictionary<string, ImmutableArray<Candidate>> _byGroup;
    private readonly FrozenDictionary<string, Candidate> _byId;

    public ClassIndex(Shelf shelf)
    {
        Kinds = shelf.Kinds;
        _byGroup = shelf.Shelved.Where(p => p.Class.IsForSpecimens).GroupBy(p => p.Class.Group, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.Select(p => new Candidate(p)).ToImmutableArray(), StringComparer.Ordinal);
        _byId = _byGroup.Values.SelectMany(c => c).ToFrozenDictionary(c => c.Id, StringComparer.Ordinal);
    }

    /// <summary>The kinds that the shelf was read by.</summary>
    public Kinds Kinds { get; }

    /// <summary>How near a class is: depth of its group in the tree first, then how many things it limits.</summary>
    public (int Depth, int Limits) Rank(SpecimenClass c) => (Kinds.Find(c.Group)?.Depth ?? -1, c.Limits.Count + c.Words.Count);

    /// <summary>A protocol that serves specimens.</summary>
    public Candidate Of(string id) => _byId[id];

    /// <summary>The groups that any protocol is for.</summary>
    public IEnumerable<string> Groups => _byGroup.Keys;

    /// <summary>The protocols for a group itself, not for those above it.</summary>
    public ImmutableArray<Candidate> For(TaxonGroup group) => _byGroup.TryGetValue(group.Id, out var candidates) ? candidates : [];

    /// <summary>The protocols for a group and for all those above it, the nearest first.</summary>
    public IEnumerable<Candidate> ForLine(TaxonGroup group)
    {
        for (var one = group; one is not null; one = one.Parent)
        {
            foreach (var candidate in For(one)) yield return candidate;
        }
    }
}
