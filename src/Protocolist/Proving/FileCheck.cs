using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Proving;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist;

/// <summary>Checks files of every kind together: protocols against the bundled shelf, their worked examples, specimens, benches.</summary>
public static class FileCheck
{
    private static readonly string[] Names = ["protocol", "specimen", "bench", "log"];

    /// <summary>Checks files.</summary>
    /// <param name="sources">The texts; what each is, its keys say.</param>
    /// <param name="zones">The time zones by id.</param>
    /// <param name="strict">Whether to list numbers without a source as warnings.</param>
    /// <param name="proveAll">Whether to prove those protocols too that are the bundled ones, word by word, and were proved when the library was made.</param>
    /// <param name="kinds">The taxon groups and substances that there are; null for the bundled ones.</param>
    /// <returns>All findings, by file, line and column.</returns>
    public static ImmutableArray<Finding> Run(
        IEnumerable<SourceText> sources, IDateTimeZoneProvider zones, bool strict = false, bool proveAll = false, Kinds? kinds = null)
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(zones);
        var known = kinds ?? Kinds.Bundled;
        return Over(read => Shelf.OverBundled([read], known), sources, zones, known, strict, p => proveAll || !BundledIndex.IsProved(p));
    }

    /// <summary>The same, over other protocols than the bundled ones.</summary>
    internal static ImmutableArray<Finding> Over(IReadOnlyList<SourceText> folder, IEnumerable<SourceText> sources, IDateTimeZoneProvider zones, bool strict) =>
        Over(read => Shelf.OfRead([folder.Select(ReadText.Of), read], Kinds.Bundled), sources, zones, Kinds.Bundled, strict, _ => true);

    private static ImmutableArray<Finding> Over(
        Func<IReadOnlyList<ReadText>, Shelf> shelfOf,
        IEnumerable<SourceText> sources,
        IDateTimeZoneProvider zones,
        Kinds kinds,
        bool strict,
        Func<Protocol, bool> isToBeProved)
    {
        var findings = new List<Finding>();
        var protocols = new List<ReadText>();
        foreach (var source in sources)
        {
            var text = ReadText.Of(source);
            switch (KindOf(text))
            {
                case "specimen":
                    findings.AddRange(SpecimenReader.Check(source, kinds));
                    break;
                case "log":
                    findings.AddRange(LogReader.Read(source, DateTimeZone.Utc).Findings);
                    break;
                case "bench":
                    findings.AddRange(BenchReader.Read(source, zones, kinds.Substances).Findings);
                    break;
                default:
                    protocols.Add(text);
                    break;
            }
        }

        if (protocols.Count > 0)
        {
            var shelf = shelfOf(protocols);
            var names = protocols.Select(p => p.Source.Name).ToHashSet(StringComparer.Ordinal);
            findings.AddRange(shelf.Findings.Where(f => names.Contains(f.Where.File)));

            // What an inherited line is warned of is its own file's business; an error may well come of what was changed here.
            var fluids = new FluidWords(kinds.Substances);
            var proved = shelf.Shelved
                .Where(s => names.Contains(s.File))
                .Select(s => s.Protocol)
                .Where(isToBeProved)
                .SelectMany(p => ProtocolCheck.Of(p, kinds, strict, fluids));
            findings.AddRange(proved.Where(f => f.Severity == Severity.Error || !f.Where.IsKnown || names.Contains(f.Where.File)));
            findings.AddRange(ShelfCheck.Of(shelf, names));
        }

        return [
            .. findings
                .DistinctBy(f => (f.Id, f.Where, f.Message))
                .OrderBy(f => f.Where.File, StringComparer.Ordinal)
                .ThenBy(f => f.Where.Line)
                .ThenBy(f => f.Where.Column),
        ];
    }

    /// <summary>What a file is: the key that names it.</summary>
    private static string KindOf(ReadText text) =>
        text.Document.Value is MappingNode mapping ? Array.Find(Names, k => mapping.Find(k) is not null) ?? "protocol" : "protocol";
}
