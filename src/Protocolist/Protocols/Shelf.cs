using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist;

/// <summary>All protocols at hand: the bundled ones, and house folders laid over them. Immutable; safe to share between threads.</summary>
public sealed class Shelf
{
    private static readonly Phrase UnknownProtocol = new("unknown-protocol", "there is no protocol '{id}' on the shelf");
    private static readonly Phrase UnknownProtocolRemedy = new("unknown-protocol.remedy", "take one that 'protocolist list protocols' names");
    private static readonly Phrase OverriddenProtocol = new("overridden-protocol", "'{id}' takes the place of the one in {file}");

    private static readonly Lazy<Shelf> TheBundled = new(() => Over([BundledProtocols.Layer], Kinds.Bundled, []));

    private readonly FrozenDictionary<string, Shelved> _byId;
    private readonly Lazy<ImmutableArray<Protocol>> _protocols;

    private Shelf(IEnumerable<Shelved> shelved, Kinds kinds, ImmutableArray<Finding> findings)
    {
        Kinds = kinds;
        Shelved = [.. shelved.OrderBy(p => p.Id, StringComparer.Ordinal)];
        Findings = findings;
        _byId = Shelved.ToFrozenDictionary(p => p.Id, StringComparer.Ordinal);
        _protocols = new(() => [.. Shelved.Select(s => s.Protocol)]);
    }

    /// <summary>
    /// Every protocol that could be read, by id in alphabetical order; those that only others extend too. A bundled one is read when it is first needed,
    /// here at the latest.
    /// </summary>
    public ImmutableArray<Protocol> Protocols => _protocols.Value;

    /// <summary>The kinds of animals and substances that it was read by, and that are planned with.</summary>
    public Kinds Kinds { get; }

    /// <summary>What was found while reading, each once, by file, line and column.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>What all its protocols say, as 32 hex digits: two shelves of one digest plan alike.</summary>
    public string Digest =>
        TextDigest.Of(Shelved.Select(s => BundledIndex.ById.TryGetValue(s.Id, out var indexed) && indexed.File == s.File ? indexed.Digest : s.Protocol.Digest));

    /// <summary>The protocols by their classes, read or not.</summary>
    internal ImmutableArray<Shelved> Shelved { get; }

    /// <summary>The protocols that come with the library.</summary>
    /// <returns>The bundled shelf.</returns>
    public static Shelf Bundled() => TheBundled.Value;

    /// <summary>The bundled protocols with house folders over them; a house protocol with the id of an earlier one takes its place.</summary>
    /// <param name="houseFolders">For each folder, later ones over earlier ones, the texts of its protocol files.</param>
    /// <returns>The shelf, with findings for every file that could not be read.</returns>
    public static Shelf BundledWith(params IReadOnlyList<IReadOnlyList<SourceText>> houseFolders)
    {
        ArgumentNullException.ThrowIfNull(houseFolders);
        return BundledWith(Kinds.Bundled, houseFolders);
    }

    /// <summary>The same, of other kinds than the bundled ones.</summary>
    /// <param name="kinds">The taxon groups and substances that there are.</param>
    /// <param name="houseFolders">For each folder, later ones over earlier ones, the texts of its protocol files.</param>
    /// <returns>The shelf, with findings for every file that could not be read.</returns>
    public static Shelf BundledWith(Kinds kinds, params IReadOnlyList<IReadOnlyList<SourceText>> houseFolders)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(houseFolders);
        return OverBundled([.. houseFolders.Select(f => f.Select(ReadText.Of))], kinds);
    }

    /// <summary>A shelf of these folders only.</summary>
    /// <param name="folders">For each folder, later ones over earlier ones, the texts of its protocol files.</param>
    /// <returns>The shelf, with findings for every file that could not be read.</returns>
    public static Shelf Of(params IReadOnlyList<IReadOnlyList<SourceText>> folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        return Of(Kinds.Bundled, folders);
    }

    /// <summary>The same, of other kinds than the bundled ones.</summary>
    /// <param name="kinds">The taxon groups and substances that there are.</param>
    /// <param name="folders">For each folder, later ones over earlier ones, the texts of its protocol files.</param>
    /// <returns>The shelf, with findings for every file that could not be read.</returns>
    public static Shelf Of(Kinds kinds, params IReadOnlyList<IReadOnlyList<SourceText>> folders)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(folders);
        return OfRead([.. folders.Select(f => f.Select(ReadText.Of))], kinds);
    }

    /// <summary>The same, over texts that were read already.</summary>
    internal static Shelf OfRead(IReadOnlyList<IEnumerable<ReadText>> folders, Kinds kinds)
    {
        var findings = new List<Finding>();
        return Over([.. folders.Select(f => ShelfLayer.Of(f, findings))], kinds, findings);
    }

    /// <summary>The bundled protocols with folders over them that were read already.</summary>
    internal static Shelf OverBundled(IReadOnlyList<IEnumerable<ReadText>> folders, Kinds kinds)
    {
        var findings = new List<Finding>();
        return Over([BundledProtocols.Layer, .. folders.Select(f => ShelfLayer.Of(f, findings))], kinds, findings);
    }

    private static Shelf Over(ImmutableArray<ShelfLayer> layers, Kinds kinds, List<Finding> findings)
    {
        var lines = new ProtocolLines(layers, kinds);
        var indexed = new List<Shelved>();
        var others = new List<(string Id, int Depth)>();
        foreach (var (id, depth) in Topmost(layers, findings))
        {
            if (IndexOf(id, depth, layers) is { } known) indexed.Add(new(id, known.File, known.Class, new Lazy<Protocol>(() => lines.Read(id, depth).Value!)));
            else others.Add((id, depth));
        }

        var read = others.ConvertAll(top => lines.Read(top.Id, top.Depth));
        findings.AddRange(read.SelectMany(r => r.Findings));
        return new(indexed.Concat(read.Select(r => r.Value).OfType<Protocol>().Select(p => new Shelved(p))), kinds, [.. InOrder(findings)]);
    }

    /// <summary>What the index says of a protocol; null where it is not bundled, or a house protocol takes the place of something that it extends.</summary>
    private static IndexedProtocol? IndexOf(string id, int depth, ImmutableArray<ShelfLayer> layers) =>
        layers[depth] == BundledProtocols.Layer
            && BundledIndex.ById[id] is var known
            && !known.Line.Any(above => layers.AsSpan()[(depth + 1)..].ToArray().Any(l => l.Contains(above)))
            ? known
            : null;

    /// <summary>The protocol of that id, or null.</summary>
    /// <param name="id">Its kebab-case id.</param>
    /// <returns>The protocol, or null when the shelf has none of that id that could be read.</returns>
    /// <exception cref="ArgumentNullException">There is no id.</exception>
    public Protocol? Find(string id) => _byId.GetValueOrDefault(id)?.Protocol;

    /// <summary>What to say when there is no protocol of an id.</summary>
    /// <param name="id">The id that was asked for.</param>
    /// <returns>An error <c>unknown-protocol</c> that names the nearest id.</returns>
    internal Finding NotFound(string id) =>
        Finding.Error(
            "unknown-protocol",
            UnknownProtocol.With(("id", Excerpt.Of(id))),
            Suggestion.Nearest(id, _byId.Keys) is { } near ? Suggestion.Of(near) : UnknownProtocolRemedy);

    private static IEnumerable<(string Id, int Depth)> Topmost(ImmutableArray<ShelfLayer> layers, List<Finding> findings)
    {
        foreach (var id in layers.SelectMany(l => l.Ids).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList())
        {
            var depths = Enumerable.Range(0, layers.Length).Where(d => layers[d].Contains(id)).ToList();
            foreach (var under in depths.SkipLast(1).Where(d => layers[d][id].Span.File != layers[depths[^1]][id].Span.File))
                findings.Add(Finding.Note(
                    "overridden-protocol",
                    OverriddenProtocol.With(("id", id), ("file", layers[under][id].Span.File)),
                    where: layers[depths[^1]][id].Span));
            yield return (id, depths[^1]);
        }
    }

    /// <summary>A fault in a file that many extend is one fault.</summary>
    private static IEnumerable<Finding> InOrder(List<Finding> findings) => findings
        .DistinctBy(f => (f.Id, f.Where, f.Message))
        .OrderBy(f => f.Where.File, StringComparer.Ordinal)
        .ThenBy(f => f.Where.Line)
        .ThenBy(f => f.Where.Column)
        .ThenBy(f => f.Id, StringComparer.Ordinal);
}
