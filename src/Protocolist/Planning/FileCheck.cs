using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Logs;
using Protocolist.Planning.Proving;
using Protocolist.Protocols;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>Checks files of every kind together: protocols against the bundled shelf, their worked examples, specimens, benches.</summary>
public static class FileCheck
{
    private static readonly string[] Kinds = ["protocol", "specimen", "bench", "log"];

    /// <summary>Checks files.</summary>
    /// <param name="sources">The texts; what each is, its keys say.</param>
    /// <param name="zones">The time zones by id.</param>
    /// <param name="strict">Whether to list numbers without a source as warnings.</param>
    /// <returns>All findings, by file, line and column.</returns>
    public static ImmutableArray<Finding> Run(IEnumerable<SourceText> sources, IDateTimeZoneProvider zones, bool strict = false)
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(zones);
        return Over([BundledProtocols.Sources()], sources, zones, strict);
    }

    /// <summary>The same, over other protocols than the bundled ones.</summary>
    internal static ImmutableArray<Finding> Over(IReadOnlyList<IReadOnlyList<SourceText>> folders, IEnumerable<SourceText> sources, IDateTimeZoneProvider zones, bool strict)
    {
        var findings = new List<Finding>();
        var protocols = new List<ReadText>();
        SourceText[] given = [.. sources];
        var read = AllCores.Each(given, ReadText.Of);
        foreach (var (source, text) in given.Zip(read))
        {
            switch (KindOf(text))
            {
                case "specimen":
                    findings.AddRange(SpecimenReader.Read(source).Findings);
                    break;
                case "log":
                    findings.AddRange(LogReader.Read(source, DateTimeZone.Utc).Findings);
                    break;
                case "bench":
                    findings.AddRange(BenchReader.Read(source, zones).Findings);
                    break;
                default:
                    protocols.Add(text);
                    break;
            }
        }

        if (protocols.Count > 0)
        {
            // Who checks the bundled folder itself has each of its files twice.
            var known = given.Zip(read).DistinctBy(r => r.First).ToDictionary(r => r.First, r => r.Second);
            var shelf = Shelf.OfRead([.. folders.Select(f => AllCores.Each(f, s => known.TryGetValue(s, out var text) ? text : ReadText.Of(s))), protocols]);
            var names = protocols.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
            findings.AddRange(shelf.Findings.Where(f => names.Contains(f.Where.File)));

            // What an inherited line is warned of is its own file's business; an error may well come of what was changed here.
            var proved = AllCores.Each([.. shelf.Protocols.Where(p => names.Contains(p.File))], p => ProtocolCheck.Of(p, strict).ToList());
            findings.AddRange(proved.SelectMany(f => f).Where(f => f.Severity == Severity.Error || !f.Where.IsKnown || names.Contains(f.Where.File)));
            findings.AddRange(ShelfCheck.Of(shelf, names));
        }

        return [.. findings.DistinctBy(f => (f.Id, f.Where, f.Message)).OrderBy(f => f.Where.File, StringComparer.Ordinal).ThenBy(f => f.Where.Line).ThenBy(f => f.Where.Column)];
    }

    /// <summary>What a file is: the key that names it.</summary>
    private static string KindOf(ReadText text) =>
        text.Document.Value is MappingNode mapping ? Array.Find(Kinds, k => mapping.Find(k) is not null) ?? "protocol" : "protocol";
}
