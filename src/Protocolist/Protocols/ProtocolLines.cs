using System.Collections.Concurrent;
using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Protocols;

/// <summary>Reads protocols with all that they extend; what several of them extend is merged and read once. Used by any number of threads.</summary>
internal sealed class ProtocolLines(ImmutableArray<ShelfLayer> layers, Kinds kinds)
{
    private static readonly Phrase CircularExtends = new("circular-extends", "'{wanted}' extends itself, and there is no other '{wanted}' below it");
    private static readonly Phrase CircularExtendsRemedy = new("circular-extends.remedy", "remove 'extends', or name another protocol");
    private static readonly Phrase NothingToExtend = new("unknown-protocol.extended", "there is no protocol '{wanted}' to extend");
    private static readonly Phrase CircularChain = new("circular-extends.chain", "'{protocol}' extends itself by way of {others:', }");
    private static readonly Phrase CircularChainRemedy = new("circular-extends.chain.remedy", "remove one 'extends'");
    private static readonly Phrase ExtendsTooDeep = new("extends-too-deep", "'{protocol}' extends more than {longest-line} protocols in a line");
    private static readonly Phrase ExtendsTooDeepRemedy = new("extends-too-deep.remedy", "flatten the line");

    private const int LongestLine = 8;

    private readonly ProtocolReader _reader = new(FormulaLibrary.ByName, kinds);
    private readonly ConcurrentDictionary<ProtocolHeader, Lazy<Merged>> _merged = new(ReferenceEqualityComparer.Instance);

    /// <summary>A protocol with all that it extends merged into it; null where that, or a file on the way, could not be read.</summary>
    public Checked<Protocol> Read(string id, int depth)
    {
        var findings = new List<Finding>();
        if (Line(layers[depth][id], depth, findings) is not { } line) return new(null, [.. findings]);
        var merged = Merge(line);
        return new(merged.Read.Value, [.. findings, .. merged.Findings, .. merged.Read.Findings]);
    }

    private Merged Merge(ImmutableArray<ProtocolHeader> line) => _merged.GetOrAdd(line[^1], _ => new Lazy<Merged>(() =>
    {
        var (own, findings) = (line[^1], new List<Finding>());
        var basis = line.Length > 1 ? Merge(line[..^1]) : null;
        var root = basis is null ? own.Root : Inheritance.Merge(basis.Root, own.Root, findings);
        var read = _reader.Read(root, own.Span.File, Inheritance.Options(line.Select(h => h.Root)), basis?.Inherited.Value);
        var isSound = !read.HasErrors && line.All(h => h.IsSound);
        var protocol = isSound ? read.Value! with { Texts = [.. line.Select(h => h.Source)], Extends = [.. line[..^1].Reverse().Select(h => h.Id)] } : null;
        return new(root, [.. basis?.Findings ?? [], .. findings], read with { Value = protocol });
    })).Value;

    /// <summary>A protocol and all that it extends, the farthest first; null where that cannot be found.</summary>
    private ImmutableArray<ProtocolHeader>? Line(ProtocolHeader header, int depth, List<Finding> findings)
    {
        var line = new List<ProtocolHeader> { header };
        var seen = new HashSet<(string, int)> { (header.Id, depth) };
        while (line[^1].Extends is { } wanted)
        {
            // A house protocol may extend the one of its own id that it takes the place of.
            var from = wanted == line[^1].Id ? depth - 1 : layers.Length - 1;
            while (from >= 0 && !layers[from].Contains(wanted)) from--;
            if (from < 0)
            {
                findings.Add(wanted == line[^1].Id
                    ? Finding.Error("circular-extends", CircularExtends.With(("wanted", wanted)), CircularExtendsRemedy, line[^1].ExtendsSpan)
                    : Finding.Error(
                        "unknown-protocol",
                        NothingToExtend.With(("wanted", wanted)),
                        Suggestion.For(wanted, [.. layers.SelectMany(l => l.Ids).Distinct()]),
                        line[^1].ExtendsSpan));
                return null;
            }

            if (!seen.Add((wanted, from)))
            {
                findings.Add(Finding.Error(
                    "circular-extends",
                    CircularChain.With(("protocol", header.Id), Argument.Ids("others", line.Skip(1).Select(h => h.Id))),
                    CircularChainRemedy,
                    line[^1].ExtendsSpan));
                return null;
            }

            if (line.Count >= LongestLine)
            {
                findings.Add(Finding.Error(
                    "extends-too-deep",
                    ExtendsTooDeep.With(("protocol", header.Id), ("longest-line", LongestLine)),
                    ExtendsTooDeepRemedy,
                    header.ExtendsSpan));
                return null;
            }

            depth = from;
            line.Add(layers[from][wanted]);
        }

        line.Reverse();
        return [.. line];
    }

    /// <summary>A protocol of a line.</summary>
    /// <param name="Root">Its tree with all that it extends merged into it.</param>
    /// <param name="Findings">Of the merging.</param>
    /// <param name="Read">What was read from the tree.</param>
    private sealed record Merged(MappingNode Root, ImmutableArray<Finding> Findings, Checked<Protocol> Read)
    {
        /// <summary>For those that extend it; nothing where anything was found.</summary>
        public Lazy<Inherited?> Inherited { get; } = new(() => Read.IsSound && Read.Findings.IsEmpty && Findings.IsEmpty ? new(Root, Read.Value) : null);
    }
}
