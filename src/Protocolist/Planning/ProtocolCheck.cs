using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Planning.Proving;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>What can be said of a protocol before any animal is at stake.</summary>
internal static class ProtocolCheck
{
    public static IEnumerable<Finding> Of(Protocol protocol, bool strict)
    {
        foreach (var finding in Checks.SeverityChanges.Faults(protocol)) yield return finding;
        foreach (var finding in FluidNames(protocol).Concat(protocol.Examples.SelectMany(e => ExampleCheck.Of(e, protocol)))) yield return finding;
        if (Subject.Of(protocol) is { } subject)
        {
            var proved = Regions(subject).Concat(new WholeRange(subject).Findings(strict)).Concat(new RouteClaims(subject).Findings()).Concat(new ChoiceClaims(subject).Findings());
            foreach (var finding in proved.DistinctBy(f => (f.Id, f.Where))) yield return finding;
        }

        if (!strict) yield break;
        foreach (var finding in Unsourced(protocol)) yield return finding;
    }

    /// <summary>Every fluid that any choice can lead to must be one that the chemistry knows.</summary>
    private static IEnumerable<Finding> FluidNames(Protocol protocol) =>
        from stage in protocol.Stages
        where stage.Expression("fluid") is not null
        from name in WordsOf(stage.Expression("fluid")!, protocol)
        from finding in Fluid.Read(name, stage.Expression("fluid")!.Span).Findings
        select finding;

    private static IEnumerable<string> WordsOf(Expression expression, Protocol protocol) => expression switch
    {
        CaseExpression cases => cases.Cases.SelectMany(c => WordsOf(c.Value, protocol)),
        FormulaExpression { Formula.Root: WordNode word } => [word.Word],
        FormulaExpression { Formula.Root: NameNode name } => protocol.Scope.Selectable.GetValueOrDefault(name.Name, name.Type.Words),
        _ => [],
    };

    /// <summary>Body regions that the class's group does not have.</summary>
    private static IEnumerable<Finding> Regions(Subject subject) =>
        from stage in subject.Protocol.Stages
        from name in stage.Texts("places").Concat((stage.Find("sites") as SitesSetting)?.Sites.Select(s => s.Region) ?? [])
        where name != "other" && !subject.Group.Regions.Any(r => r.IsNamed(name))
        select Finding.Warning("unknown-region", $"'{stage.Id}' names '{name}', which {Phrases.One(subject.Group.Name)} does not have", Suggestion.For(name, [.. subject.Group.Regions.Select(r => r.Id)]), (stage.Find("places") ?? stage.Find("sites"))!.Span);

    private static IEnumerable<Finding> Unsourced(Protocol protocol)
    {
        foreach (var value in protocol.Values.Where(v => v.Source.Length == 0 && !IsOnlyNames(v.Expression)))
            yield return Finding.Warning("unsourced", $"the value '{value.Name}' has no source", "add 'source:', be it 'common practice' or 'from memory'", value.Span);
        foreach (var stage in protocol.Stages.Where(s => s.Source.Length == 0 && s.Settings.OfType<ExpressionSetting>().Any(e => !IsOnlyNames(e.Expression))))
            yield return Finding.Warning("unsourced", $"the stage '{stage.Id}' has no source", "add 'source:', be it 'common practice' or 'from memory'", stage.Span);
    }

    /// <summary>A formula without a number of its own needs no source of its own.</summary>
    private static bool IsOnlyNames(Expression expression) => expression is FormulaExpression { Formula: var formula } && !HasNumber(formula.Root);

    private static bool HasNumber(FormulaNode node) => node is LiteralNode || node.Parts.Any(HasNumber);
}
