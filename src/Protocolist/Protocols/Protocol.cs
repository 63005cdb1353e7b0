using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Reading;

namespace Protocolist;

/// <summary>How one taxon-size class is preserved: a protocol file with all it inherits, every formula checked. Immutable.</summary>
public sealed record Protocol
{
    internal Protocol(string id, int revision, string title, string file)
    {
        Id = id;
        Revision = revision;
        Title = title;
        File = file;
    }

    /// <summary>Its name on the shelf, kebab-case.</summary>
    public string Id { get; }

    /// <summary>The authors' count of its revisions, printed on every plan.</summary>
    public int Revision { get; }

    /// <summary>What a person calls it.</summary>
    public string Title { get; }

    /// <summary>The file it was read from.</summary>
    public string File { get; }

    /// <summary>A sentence or two on what it is for.</summary>
    public string Summary { get; internal init; } = "";

    /// <summary>What can hurt a person or the specimen throughout.</summary>
    public ImmutableArray<string> Cautions { get; internal init; } = [];

    /// <summary>The choices a person has, each with its options; the first option is the default.</summary>
    public ImmutableArray<ProtocolChoice> Choices { get; internal init; } = [];

    /// <summary>Whether it serves specimens, or is only there for others to extend.</summary>
    public bool IsForSpecimens => Class.IsForSpecimens;

    /// <summary>Which specimens it serves, in words: <c>mammal, mass 2 to 60 kg</c>.</summary>
    public string ClassText => Class.ToString();

    /// <summary>Which specimens it is for.</summary>
    internal SpecimenClass Class { get; init; } = SpecimenClass.Nothing;

    /// <summary>Key → citation.</summary>
    internal ImmutableDictionary<string, string> Sources { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Named values in an order in which each uses only earlier ones.</summary>
    internal ImmutableArray<ValueDefinition> Values { get; init; } = [];

    internal ImmutableArray<StageDefinition> Stages { get; init; } = [];

    internal ImmutableArray<ProtocolExample> Examples { get; init; } = [];

    internal ImmutableArray<HouseCheck> HouseChecks { get; init; } = [];

    internal ImmutableArray<SeverityChange> Severities { get; init; } = [];

    /// <summary>The names its formulas may use.</summary>
    internal FormulaScope Scope { get; init; } = FormulaScope.Empty;

    internal SourceSpan Span { get; init; }

    /// <summary>The files that it was read from: the farthest that it extends first, its own last.</summary>
    internal ImmutableArray<SourceText> Texts { get; init; } = [];

    /// <summary>The ids of what it extends, the nearest first.</summary>
    internal ImmutableArray<string> Extends { get; init; } = [];

    /// <summary>What it and all that it extends say, wherever the files lie, as 32 hex digits of a SHA-256: two protocols of one digest are the same.</summary>
    internal string Digest => TextDigest.Of(Texts.Select(t => t.Text));

    /// <summary>
    /// Where things stand that have no place of their own here: <c>for</c>, <c>for.mass</c>, <c>choices.keeping</c>, <c>choices.keeping.ethanol</c>.
    /// </summary>
    internal ImmutableDictionary<string, SourceSpan> Places { get; init; } = ImmutableDictionary<string, SourceSpan>.Empty;

    /// <summary>The id and revision, as a plan cites it.</summary>
    /// <returns>Text such as <c>mammal-large, revision 3</c>.</returns>
    public override string ToString() => $"{Id}, revision {Revision}";
}

/// <summary>Something the person may decide.</summary>
/// <param name="Name">Kebab-case, such as <c>keeping</c>.</param>
/// <param name="Options">What can be chosen; the first is the default.</param>
public sealed record ProtocolChoice(string Name, ImmutableArray<string> Options);

/// <summary>A named value of a protocol.</summary>
internal sealed record ValueDefinition(string Name, Expression Expression, string Source, string Note, SourceSpan Span);

/// <summary>A worked case that the protocol must reproduce.</summary>
internal sealed record ProtocolExample(
    MappingNode Specimen,
    ImmutableDictionary<string, string> Choose,
    ImmutableArray<Expectation> Expectations,
    string Source,
    SourceSpan Span);

/// <summary>One expected value: <c>fix.last: 10 d to 21 d</c>.</summary>
/// <param name="Name">A value's name, or a stage's id, a dot and a setting.</param>
/// <param name="Text">What is expected.</param>
/// <param name="Span">Where that stands.</param>
internal sealed record Expectation(string Name, string Text, SourceSpan Span);
