using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Planning.Drafting;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>What can be said of a protocol before any animal is at stake.</summary>
internal static class ProtocolCheck
{
    private static readonly Phrase UnknownRegion = new("unknown-region.stage", "'{stage}' names '{name}', which {group:a} does not have");
    private static readonly Phrase Unsourced = new("unsourced", "the value '{name}' has no source");
    private static readonly Phrase UnsourcedRemedy = new("unsourced.remedy", "add 'source:', be it 'common practice' or 'from memory'");
    private static readonly Phrase UnsourcedStage = new("unsourced.stage", "the stage '{stage}' has no source");

    /// <param name="protocol">The protocol.</param>
    /// <param name="kinds">The groups and substances that there are.</param>
    /// <param name="strict">Whether to say what could not be decided and what has no source.</param>
    /// <param name="fluids">Fluids by the words that protocols use for them.</param>
    public static IEnumerable<Finding> Of(Protocol protocol, Kinds kinds, bool strict, FluidWords fluids)
    {
        foreach (var finding in Checks.SeverityChanges.Faults(protocol)) yield return finding;
        var examples = protocol.Examples.SelectMany(e => ExampleCheck.Of(e, protocol, kinds));
        foreach (var finding in FluidNames(protocol, fluids).Concat(examples)) yield return finding;
        if (Subject.Of(protocol, kinds) is { } subject)
        {
            var proved = Regions(subject)
                .Concat(new WholeRange(subject).Findings(strict))
                .Concat(new RouteClaims(subject, fluids).Findings())
                .Concat(new ChoiceClaims(subject).Findings());
            foreach (var finding in proved.DistinctBy(f => (f.Id, f.Where))) yield return finding;
        }

        if (!strict) yield break;
        foreach (var finding in WithoutSource(protocol)) yield return finding;
    }

    /// <summary>Every fluid that any choice can lead to must be one that the chemistry knows.</summary>
    private static IEnumerable<Finding> FluidNames(Protocol protocol, FluidWords fluids) =>
        from stage in protocol.Stages
        where stage.Expression("fluid") is not null
        from name in PreparedProtocol.FluidWordsOf(stage.Expression("fluid")!, protocol)
        from finding in fluids.Read(name).Findings
        select finding with { Where = stage.Expression("fluid")!.Span };

    /// <summary>Body regions that the class's group does not have.</summary>
    private static IEnumerable<Finding> Regions(Subject subject) =>
        from stage in subject.Protocol.Stages
        from name in stage.Texts("places").Concat((stage.Find("sites") as SitesSetting)?.Sites.Select(s => s.Region) ?? [])
        where name != "other" && !subject.Group.Regions.Any(r => r.IsNamed(name))
        select Finding.Warning(
            "unknown-region",
            UnknownRegion.With(Argument.Id("stage", stage.Id), ("name", name), ("group", subject.Group.Name)),
            Suggestion.For(name, [.. subject.Group.Regions.Select(r => r.Id)]),
            (stage.Find("places") ?? stage.Find("sites"))!.Span);

    private static IEnumerable<Finding> WithoutSource(Protocol protocol)
    {
        foreach (var value in protocol.Values.Where(v => v.Source.Length == 0 && !IsOnlyNames(v.Expression)))
            yield return Finding.Warning("unsourced", Unsourced.With(("name", value.Name)), UnsourcedRemedy, value.Span);
        foreach (var stage in protocol.Stages.Where(s => s.Source.Length == 0 && s.Settings.OfType<ExpressionSetting>().Any(e => !IsOnlyNames(e.Expression))))
            yield return Finding.Warning("unsourced", UnsourcedStage.With(("stage", stage.Id)), UnsourcedRemedy, stage.Span);
    }

    /// <summary>A formula without a number of its own needs no source of its own.</summary>
    private static bool IsOnlyNames(Expression expression) =>
        expression is FormulaExpression { Formula: var formula } && !formula.Nodes.Any(n => n is LiteralNode);
}
