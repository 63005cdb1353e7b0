using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Proving;

/// <summary>A protocol whose whole class is looked at: its class as a stretch, the combinations it tells apart, and what each expression rests on.</summary>
internal sealed class Subject
{
    private static readonly Phrase Trait = new("proof.trait", "{name} '{word}'");
    private static readonly Phrase WithTraits = new("proof.with-traits", "{who} with {traits: and }");

    private readonly Dictionary<Expression, IReadOnlySet<string>> _rests = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(int Part, int Words), Case> _overs = [];
    private readonly Dictionary<(int Part, int Witness, int Words, int Bench), Case> _ats = [];

    private Subject(Protocol protocol, TaxonGroup group, ClassPart whole)
    {
        (Protocol, Group, Whole) = (protocol, group, whole);
        Definitions = protocol.Values.ToFrozenDictionary(v => v.Name, StringComparer.Ordinal);
        Words = WordCase.Of(protocol);
        Routes = new Routing(this).Routes();
    }

    /// <summary>A usual bench first, so that the witness is an everyday one; then the coldest and the warmest that people work at.</summary>
    public static readonly ImmutableArray<BenchTemperatures> Benches =
    [
        BenchTemperatures.Usual,
        BenchTemperatures.Usual with { Room = Temperature.FromDegreesCelsius(5), Cold = Temperature.FromDegreesCelsius(0) },
        BenchTemperatures.Usual with { Room = Temperature.FromDegreesCelsius(35), Cold = Temperature.FromDegreesCelsius(10) },
    ];

    public Protocol Protocol { get; }

    public TaxonGroup Group { get; }

    public ClassPart Whole { get; }

    public FrozenDictionary<string, ValueDefinition> Definitions { get; }

    public ImmutableArray<WordCase> Words { get; }

    public ImmutableArray<Route> Routes { get; }

    /// <summary>Null where the protocol serves no specimens, or a group that nobody knows.</summary>
    public static Subject? Of(Protocol protocol, Kinds kinds) =>
        kinds.Find(protocol.Class.Group) is { } group && ClassPart.Whole(protocol.Class, group) is { } whole ? new(protocol, group, whole) : null;

    /// <summary>Bounds over a stretch; kept, so that all that is asked of it shares its named values.</summary>
    public Case Over(ClassPart part, WordCase words)
    {
        if (_overs.TryGetValue((part.Number, words.Number), out var known)) return known;
        return _overs[(part.Number, words.Number)] = Case.Over(this, part, words);
    }

    /// <summary>One witness of a stretch on one of the benches; kept likewise.</summary>
    public Case At(ClassPart part, int witness, WordCase words, int bench)
    {
        var key = (part.Number, witness, words.Number, bench);
        if (_ats.TryGetValue(key, out var known)) return known;
        return _ats[key] = Case.At(this, part.Witnesses[witness], words, Benches[bench]);
    }

    /// <summary>The given names (of specimen, bench and choices) that an expression rests on, through named values.</summary>
    public IReadOnlySet<string> Rests(Expression expression)
    {
        if (_rests.TryGetValue(expression, out var known)) return known;
        var found = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in expression.Names())
        {
            if (Definitions.TryGetValue(name, out var value)) found.UnionWith(Rests(value.Expression));
            else found.Add(name);
        }

        return _rests[expression] = found;
    }

    /// <summary>What a setting of a stage rests on, the stage's own condition included.</summary>
    public IReadOnlySet<string> Rests(StageDefinition stage, Expression expression) =>
        stage.Expression("when") is { } when ? Both(Rests(expression), Rests(when)) : Rests(expression);

    public static IReadOnlySet<string> Both(IReadOnlySet<string> a, IReadOnlySet<string> b) =>
        b.Count == 0 ? a : a.Count == 0 ? b : a.Union(b).ToHashSet(StringComparer.Ordinal);

    /// <summary>A specimen as a person would name it, with those decisions and traits that matter here.</summary>
    public Message Describe(BodyMeasure body, WordCase words, IReadOnlySet<string> matter)
    {
        var told = new List<Message>();
        foreach (var (name, word) in words.Words)
        {
            if (!matter.Contains(name) || word == SpecimenScope.Unknown) continue;
            told.Add(Trait.With(Argument.Id("name", name[(name.IndexOf('.', StringComparison.Ordinal) + 1)..]), Argument.Id("word", word)));
        }

        return told.Count == 0 ? Whole.Describe(body) : WithTraits.With(("who", Whole.Describe(body)), Argument.Messages("traits", told));
    }

    /// <summary>The place of a choice or, where named, of one of its options.</summary>
    public SourceSpan PlaceOf(string choice, string? option = null) =>
        Protocol.Places.GetValueOrDefault(option is null ? $"choices.{choice}" : $"choices.{choice}.{option}", Protocol.Span);
}
