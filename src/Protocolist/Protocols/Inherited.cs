using Protocolist.Formulas;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>
/// What a protocol can take over, as it was read there, from the one that it extends: each value and setting that it leaves alone, as long as no name or
/// word in it means anything else here.
/// </summary>
internal sealed class Inherited
{
    private readonly Dictionary<string, (MappingEntry Entry, ValueDefinition Value)> _values;
    private readonly Dictionary<string, (MappingNode Node, StageDefinition Stage)> _stages;

    /// <param name="root">The tree of the protocol that is extended, with all that it extends merged into it.</param>
    /// <param name="protocol">What was read from it without any finding.</param>
    public Inherited(MappingNode root, Protocol protocol)
    {
        Protocol = protocol;
        var values = root.Find("values")?.Value as MappingNode;
        _values = protocol.Values.ToDictionary(v => v.Name, v => (values!.Find(v.Name)!, v), StringComparer.Ordinal);
        var stages = root.Find("stages") is { } entry ? Inheritance.Items(entry.Value).OfType<MappingNode>() : [];
        _stages = stages.Zip(protocol.Stages).ToDictionary(s => s.Second.Id, s => (s.First, s.Second), StringComparer.Ordinal);
    }

    public Protocol Protocol { get; }

    /// <summary>The value of an entry; null where it is to be read.</summary>
    public ValueDefinition? Value(MappingEntry entry, FormulaScope scope) =>
        _values.TryGetValue(entry.Key.Value, out var known) && ReferenceEquals(known.Entry, entry) && Stands(known.Value.Expression, scope)
            ? known.Value
            : null;

    /// <summary>The whole stage of a node; null where it is to be read.</summary>
    public StageDefinition? Stage(MappingNode node, FormulaScope scope) =>
        _stages.TryGetValue(Inheritance.IdOf(node), out var known) && ReferenceEquals(known.Node, node) && known.Stage.Settings.All(s => Stands(s, scope))
            ? known.Stage
            : null;

    /// <summary>A setting of a stage of that id and kind; null where it is to be read.</summary>
    public Setting? Setting(string stage, StageKind kind, MappingEntry entry, FormulaScope scope) =>
        _stages.TryGetValue(stage, out var known) && known.Stage.Kind == kind && ReferenceEquals(known.Node.Find(entry.Key.Value), entry)
            && known.Stage.Find(entry.Key.Value) is { } setting && Stands(setting, scope) ? setting : null;

    private static bool Stands(Setting setting, FormulaScope scope) => setting switch
    {
        TextSetting => true,
        ExpressionSetting s => Stands(s.Expression, scope),
        _ => setting.Expressions().All(e => Stands(e, scope)),
    };

    private static bool Stands(Expression expression, FormulaScope scope) => expression switch
    {
        FormulaExpression f => Stands(f.Formula.Root, scope),
        BandExpression b => Stands(b.By.Root, scope) && b.Bands.All(x => Stands(x.Formula.Root, scope)),
        CaseExpression c => Stands(c.By.Root, scope) && scope.Needed(c.By).All(w => c.Cases.Any(x => x.Word == w)) && c.Cases.All(x => Stands(x.Value, scope)),
        _ => false,
    };

    /// <summary>A word could be the name of a value here.</summary>
    private static bool Stands(FormulaNode node, FormulaScope scope) => node switch
    {
        LiteralNode => true,
        NameNode n => scope.Names.TryGetValue(n.Name, out var type)
            && type.Kind == n.Type.Kind
            && type.Dimension == n.Type.Dimension
            && type.Words.SequenceEqual(n.Type.Words),
        WordNode n => !scope.Names.ContainsKey(n.Word),
        PairNode n => Stands(n.Left, scope) && Stands(n.Right, scope),
        _ => node.Parts.All(p => Stands(p, scope)),
    };
}
