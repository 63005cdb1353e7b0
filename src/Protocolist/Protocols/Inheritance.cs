using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>
/// What <c>extends</c> does, on the trees: scalars and named entries of the extending file override, stages override by id, cautions
/// add up, examples are not inherited. Every node keeps the file and line it came from.
/// </summary>
internal static class Inheritance
{
    private static readonly Phrase UnknownStage = new("unknown-stage", "there is no stage '{stage}' to drop");
    private static readonly Phrase NoSuchPlace = new("unknown-stage.here", "there is no stage '{place}' here");

    private static readonly string[] Named = ["for", "sources", "choices", "values", "checks", "severities"];
    private static readonly string[] NotInherited = ["format", "protocol", "revision", "extends", "examples"];

    public static MappingNode Merge(MappingNode basis, MappingNode extending, List<Finding> findings)
    {
        var entries = extending.Entries.Select(e => basis.Find(e.Key.Value) is { } old ? Combine(old, e, findings) : e).ToList();
        entries.AddRange(basis.Entries.Where(e => extending.Find(e.Key.Value) is null && !NotInherited.Contains(e.Key.Value)));
        return new([.. entries], extending.Span);
    }

    /// <summary>
    /// Every option that any protocol of a line gives for each choice. A class may narrow a choice; the conditions that it inherits
    /// may still speak of the options it left out.
    /// </summary>
    public static ImmutableDictionary<string, ImmutableArray<string>> Options(IEnumerable<MappingNode> line) => line
        .SelectMany(root => (root.Find("choices")?.Value as MappingNode)?.Entries ?? [])
        .GroupBy(e => e.Key.Value, StringComparer.Ordinal)
        .ToImmutableDictionary(
            g => g.Key,
            g => g.SelectMany(e => Items(e.Value)).OfType<ScalarNode>().Select(o => o.Value).Distinct(StringComparer.Ordinal).ToImmutableArray(),
            StringComparer.Ordinal);

    private static MappingEntry Combine(MappingEntry old, MappingEntry own, List<Finding> findings)
    {
        var key = own.Key.Value;
        if (NotInherited.Contains(key)) return own;
        if (Named.Contains(key) && old.Value is MappingNode a && own.Value is MappingNode b) return new(own.Key, Override(a, b));
        if (key == "stages" && old.Value is SequenceNode basis && own.Value is SequenceNode extending) return new(own.Key, Stages(basis, extending, findings));
        if (key == "cautions") return new(own.Key, new SequenceNode([.. Items(old.Value), .. Items(own.Value)], own.Value.Span));
        return own;
    }

    /// <summary>The items of a list; a single value counts as a list of one.</summary>
    public static ImmutableArray<DocumentNode> Items(DocumentNode node) => node is SequenceNode list ? list.Items : [node];

    /// <summary>Entries of the basis in their order with the new values in place, then what is new.</summary>
    private static MappingNode Override(MappingNode basis, MappingNode own) => new(
        [.. basis.Entries.Select(e => own.Find(e.Key.Value) ?? e), .. own.Entries.Where(e => basis.Find(e.Key.Value) is null)],
        own.Span);

    private static SequenceNode Stages(SequenceNode basis, SequenceNode own, List<Finding> findings)
    {
        var stages = basis.Items.ToList();
        foreach (var item in own.Items)
        {
            if (item is not MappingNode stage)
            {
                stages.Add(item);
                continue;
            }

            var at = IndexOf(stages, IdOf(stage));
            if (IsYes(stage, "drop")) Drop(stages, at, stage, findings);
            else if (at < 0) Insert(stages, stage, findings);
            else stages[at] = Override((MappingNode)stages[at], stage);
        }

        return new([.. stages], own.Span);
    }

    private static void Drop(List<DocumentNode> stages, int at, MappingNode stage, List<Finding> findings)
    {
        if (at >= 0) stages.RemoveAt(at);
        else
            findings.Add(Finding.Error(
                "unknown-stage",
                UnknownStage.With(("stage", IdOf(stage))),
                Suggestion.For(IdOf(stage), Ids(stages)),
                (stage.Find("id") ?? stage.Find("stage"))?.Value.Span ?? stage.Span));
    }

    private static void Insert(List<DocumentNode> stages, MappingNode stage, List<Finding> findings)
    {
        foreach (var (key, offset) in (ReadOnlySpan<(string, int)>)[("before", 0), ("after", 1)])
        {
            if (stage.Find(key)?.Value is not ScalarNode place) continue;
            var at = IndexOf(stages, place.Value);
            if (at >= 0)
            {
                stages.Insert(at + offset, stage);
                return;
            }

            findings.Add(Finding.Error("unknown-stage", NoSuchPlace.With(("place", place.Value)), Suggestion.For(place.Value, Ids(stages)), place.Span));
        }

        stages.Add(stage);
    }

    private static int IndexOf(List<DocumentNode> stages, string id) => stages.FindIndex(s => s is MappingNode m && IdOf(m) == id);

    private static List<string> Ids(List<DocumentNode> stages) => [.. stages.OfType<MappingNode>().Select(IdOf)];

    private static bool IsYes(MappingNode stage, string key) => stage.Find(key)?.Value is ScalarNode { Value: "yes" or "true" };

    /// <summary>A stage's id; its kind where it has none of its own.</summary>
    public static string IdOf(MappingNode stage) =>
        (stage.Find("id") ?? stage.Find("stage"))?.Value is ScalarNode scalar ? scalar.Value : "";
}
