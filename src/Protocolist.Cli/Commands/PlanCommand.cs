using System.Collections.Immutable;
using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Sheets;
using Protocolist.Specimens;

namespace Protocolist.Cli.Commands;

/// <summary><c>plan SPECIMEN.yaml</c>: the main job.</summary>
internal static class PlanCommand
{
    private static readonly Argument<string> SpecimenFile = new("SPECIMEN.yaml") { Description = "The specimen." };
    private static readonly Option<string?> BenchFile = new("--bench") { Description = "The bench: stock, vessels, hours, zone." };
    private static readonly Option<string[]> HouseFolders = new("--protocols") { Description = "A folder of house protocols, laid over the bundled ones; may be repeated.", Arity = ArgumentArity.ZeroOrMore };
    private static readonly Option<string?> Start = new("--start") { Description = "The earliest start on the bench's clocks, as 2027-03-01T09:00; now, if not given." };
    private static readonly Option<string[]> Choose = new("--choose") { Description = "A choice that the protocol leaves, as keeping=ethanol; may be repeated.", Arity = ArgumentArity.ZeroOrMore };
    private static readonly Option<string> Format = new("--format") { Description = "text or json.", DefaultValueFactory = _ => "text" };
    private static readonly Option<bool> Json = new("--json") { Description = "Short for --format json." };
    private static readonly Option<string?> Out = new("--out") { Description = "Write to this file instead of standard output." };

    public static Command Build()
    {
        Format.AcceptOnlyFromAmong("text", "json");
        var command = new Command("plan", "Plans one specimen.") { SpecimenFile, BenchFile, HouseFolders, Start, Choose, Format, Json, Out };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var findings = new List<Finding>();
        var specimen = Read(options.GetRequiredValue(SpecimenFile), SpecimenReader.Read, findings);
        var bench = options.GetValue(BenchFile) is { } file ? Read(file, s => BenchReader.Read(s, DateTimeZoneProviders.Tzdb), findings) : Bench.Empty(DateTimeZone.Utc);
        var (folders, unread) = InputFiles.HouseFolders(options.GetValue(HouseFolders) ?? []);
        findings.AddRange(unread);
        var shelf = Shelf.BundledWith(folders);
        findings.AddRange(shelf.Findings.Where(f => f.Severity == Severity.Error));
        var start = StartOf(options.GetValue(Start), bench, findings);
        var choices = Choices(options.GetValue(Choose) ?? [], findings);
        if (specimen is null || bench is null || start is null || findings.Any(f => f.Severity == Severity.Error)) return Exits.Unread(findings);
        var made = Planner.Plan(new(specimen, shelf, bench, start.Value) { Choices = choices });
        if (made.Value is not { } plan) return Exits.Unread(made.Findings);
        var text = options.GetValue(Json) || options.GetValue(Format) == "json" ? PlanJson.Write(plan) : TextSheet.Write(plan);
        if (options.GetValue(Out) is { } path) InputFiles.Write(path, text);
        else Console.Out.Write(text);
        return plan.Startable ? Exits.Done : Exits.WithErrors;
    }

    private static T? Read<T>(string path, Func<Reading.SourceText, Checked<T>> reader, List<Finding> findings)
        where T : class
    {
        var source = InputFiles.Read(path);
        findings.AddRange(source.Findings);
        if (source.Value is null) return null;
        var read = reader(source.Value);
        findings.AddRange(read.Findings);
        return read.Value;
    }

    /// <summary>The start as given, or this minute on the bench's clocks: the one place where a clock is read.</summary>
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

    private static ImmutableSortedDictionary<string, string> Choices(IEnumerable<string> given, List<Finding> findings)
    {
        var choices = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var choice in given)
        {
            var at = choice.IndexOf('=', StringComparison.Ordinal);
            if (at > 0) choices[choice[..at].Trim()] = choice[(at + 1)..].Trim();
            else findings.Add(Finding.Error("bad-choice", $"'{choice}' is not a choice", "write --choose keeping=ethanol"));
        }

        return choices.ToImmutable();
    }
}
