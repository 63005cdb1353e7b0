using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Reading;

namespace Protocolist.Cli.Commands;

/// <summary>The bench, the shelf and the start that <c>compare</c> and <c>batch</c> share.</summary>
internal sealed record PlanInputs(Bench? Bench, Shelf Shelf, LocalDateTime? Start)
{
    public static Option<string?> BenchFile() => new("--bench") { Description = "The bench: stock, vessels, hours, zone." };

    public static Option<string[]> HouseFolders() => new("--protocols") { Description = "A folder of house protocols, laid over the bundled ones; may be repeated.", Arity = ArgumentArity.ZeroOrMore };

    public static Option<string?> StartOption() => new("--start") { Description = "The earliest start on the bench's clocks, as 2027-03-01T09:00; now, if not given." };

    public static PlanInputs Read(string? benchFile, string[]? folders, string? start, List<Finding> findings)
    {
        var bench = benchFile is null ? Benches.Bench.Empty(DateTimeZone.Utc) : File(benchFile, s => BenchReader.Read(s, DateTimeZoneProviders.Tzdb), findings);
        var (texts, unread) = InputFiles.HouseFolders(folders ?? []);
        findings.AddRange(unread);
        var shelf = Protocols.Shelf.BundledWith(texts);
        findings.AddRange(shelf.Findings.Where(f => f.Severity == Severity.Error));
        return new(bench, shelf, StartOf(start, bench, findings));
    }

    public static T? File<T>(string path, Func<SourceText, Checked<T>> reader, List<Finding> findings)
        where T : class
    {
        var source = InputFiles.Read(path);
        findings.AddRange(source.Findings);
        if (source.Value is null) return null;
        var read = reader(source.Value);
        findings.AddRange(read.Findings);
        return read.Value;
    }

    /// <summary>The start as given, or this minute on the bench's clocks.</summary>
    private static LocalDateTime? StartOf(string? text, Bench? bench, List<Finding> findings)
    {
        if (text is null)
        {
            var now = SystemClock.Instance.GetCurrentInstant().InZone(bench?.Opening.Zone ?? DateTimeZone.Utc).LocalDateTime;
            return new LocalDateTime(now.Year, now.Month, now.Day, now.Hour, now.Minute);
        }

        foreach (var pattern in (string[])["uuuu-MM-dd'T'HH:mm", "uuuu-MM-dd' 'HH:mm", "uuuu-MM-dd'T'HH:mm:ss"])
        {
            var parsed = LocalDateTimePattern.CreateWithInvariantCulture(pattern).Parse(text);
            if (parsed.Success) return parsed.Value;
        }

        findings.Add(Finding.Error("bad-start", $"'{text}' is not a moment to start", "write --start 2027-03-01T09:00"));
        return null;
    }
}
