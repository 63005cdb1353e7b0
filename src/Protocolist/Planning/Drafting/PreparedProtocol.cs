using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Checks.Cautions;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning.Drafting;

/// <summary>A value of a protocol, where it stands in the table of values, and the figure that it becomes.</summary>
internal sealed record PreparedValue(Expression Expression, int Slot, FigureOrigin Origin);

/// <summary>A choice of a protocol, where it stands in the table of values, and the figures that it becomes.</summary>
internal sealed record PreparedChoice(
    string Name,
    ImmutableArray<string> Words,
    ImmutableArray<FormulaValue> Options,
    int Slot,
    FigureOrigin Chosen,
    FigureOrigin ByDefault);

/// <summary>
/// A protocol ready to be planned with: names as places of a table, settings by key, fluids read, texts as messages. Made once, used by any number of
/// threads.
/// </summary>
internal sealed class PreparedProtocol
{
    private static readonly Phrase ChosenRule = new("figure.chosen", "chosen");
    private static readonly Phrase DefaultRule = new("figure.default", "the protocol's default");

    private readonly SubstanceCatalogue _substances;
    private readonly FrozenDictionary<string, Checked<Fluid>> _fluids;
    private readonly FrozenDictionary<Fluid, ImmutableArray<Message>> _fluidCautions;

    public PreparedProtocol(Protocol protocol, SubstanceCatalogue substances)
    {
        (Protocol, _substances) = (protocol, substances);
        var slots = protocol.Scope.Slots;
        TableSize = slots.Count;
        Values = [
            .. protocol.Values.Select(v => new PreparedValue(v.Expression, slots[v.Name], FigureOrigin.Of(v.Name, v.Expression, v.Source, v.Note, v.Span))),
        ];
        Choices =
        [
            .. protocol.Choices.Select(c =>
            {
                var origin = new FigureOrigin($"choice.{c.Name}", [], protocol.ToString());
                return new PreparedChoice(
                    c.Name,
                    c.Options,
                    [.. c.Options.Select(FormulaValue.Of)],
                    slots[$"choice.{c.Name}"],
                    origin with { Rule = ChosenRule },
                    origin with { Rule = DefaultRule });
            }),
        ];
        Defaults = protocol.Choices.ToImmutableSortedDictionary(c => c.Name, c => c.Options[0], StringComparer.Ordinal);
        Stages = [.. protocol.Stages.Select(PreparedStage.From)];
        FigureCount = Choices.Length + Values.Length + Stages.Sum(s => s.Settings.Length);
        Cautions = [.. protocol.Cautions.Select(Message.Text)];
        _fluids = protocol.Stages.Select(s => s.Expression("fluid")).OfType<Expression>().SelectMany(e => FluidWordsOf(
            e,
            protocol)).Distinct(StringComparer.Ordinal)
            .ToFrozenDictionary(w => w, w => Fluid.Read(w, known: substances), StringComparer.Ordinal);
        _fluidCautions = _fluids.Values.Select(f => f.Value).OfType<Fluid>().Distinct().ToFrozenDictionary(f => f, FluidCautions.Of);
    }

    public Protocol Protocol { get; }

    /// <summary>How many places the table of values has.</summary>
    public int TableSize { get; }

    /// <summary>The most figures that it gives a plan.</summary>
    public int FigureCount { get; }

    public ImmutableArray<PreparedValue> Values { get; }

    public ImmutableArray<PreparedChoice> Choices { get; }

    /// <summary>The first option of each choice.</summary>
    public ImmutableSortedDictionary<string, string> Defaults { get; }

    public ImmutableArray<PreparedStage> Stages { get; }

    public ImmutableArray<Message> Cautions { get; }

    /// <summary>The fluid of a word of this protocol.</summary>
    public Checked<Fluid> FluidOf(string word, SourceSpan where)
    {
        var known = _fluids.TryGetValue(word, out var read) ? read : Fluid.Read(word, known: _substances);
        return known.Findings.IsEmpty ? known : known with { Findings = [.. known.Findings.Select(f => f with { Where = where })] };
    }

    /// <summary>What can hurt a person in a fluid.</summary>
    public ImmutableArray<Message> CautionsOf(Fluid fluid) => _fluidCautions.TryGetValue(fluid, out var cautions) ? cautions : FluidCautions.Of(fluid);

    /// <summary>Every name that an expression for a fluid can come to.</summary>
    public static IEnumerable<string> FluidWordsOf(Expression expression, Protocol protocol) => expression switch
    {
        CaseExpression cases => cases.Cases.SelectMany(c => FluidWordsOf(c.Value, protocol)),
        FormulaExpression { Formula.Root: WordNode word } => [word.Word],
        FormulaExpression { Formula.Root: NameNode name } => protocol.Scope.Selectable.GetValueOrDefault(name.Name, name.Type.Words),
        _ => [],
    };
}
