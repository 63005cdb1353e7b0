using System.Collections.Immutable;
using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning;
using Protocolist.Protocols;
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
    private static readonly Option<string?> By = new("--by") { Description = "Plan backwards: all is over on the morning of this day, as 2027-06-01, and a note says when to begin at the latest." };
    private static readonly Option<string> Format = new("--format") { Description = "text, json or ics (a calendar).", DefaultValueFactory = _ => "text" };
    private static readonly Option<bool> Json = new("--json") { Description = "Short for --format json." };
    private static readonly Option<string?> Out = new("--out") { Description = "Write to this file instead of standard output." };

    public static Command Build()
    {
        Format.AcceptOnlyFromAmong(PlanOutput.Formats);
        var command = new Command("plan", "Plans one specimen.") { SpecimenFile, BenchFile, HouseFolders, Start, By, Choose, Format, Json, Out };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var findings = new List<Finding>();
        var specimen = InputFiles.Read(options.GetRequiredValue(SpecimenFile), SpecimenReader.Read, findings);
        var bench = options.GetValue(BenchFile) is { } file ? InputFiles.Read(file, s => BenchReader.Read(s, DateTimeZoneProviders.Tzdb), findings) : Bench.Empty(DateTimeZone.Utc);
        var (folders, unread) = InputFiles.HouseFolders(options.GetValue(HouseFolders) ?? []);
        findings.AddRange(unread);
        var shelf = Shelf.BundledWith(folders);
        findings.AddRange(shelf.Findings.Where(f => f.Severity == Severity.Error));
        var start = StartOf(options.GetValue(Start), bench, findings);
        var by = options.GetValue(By) is { } day ? DayOf(day, findings) : null;
        var choices = Choices(options.GetValue(Choose) ?? [], findings);
        if (specimen is null || bench is null || start is null || findings.Any(f => f.Severity == Severity.Error)) return Exits.Unread(findings);
        var made = Planner.Plan(new(specimen, shelf, bench, start.Value) { Choices = choices, By = by });
        if (made.Value is not { } plan) return Exits.Unread(made.Findings);
        var text = PlanOutput.Of(plan, options.GetValue(Json) ? "json" : options.GetValue(Format));
        if (options.GetValue(Out) is { } path) InputFiles.Write(path, text);
        else Console.Out.Write(text);
        return plan.Startable ? Exits.Done : Exits.WithErrors;
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

    private static LocalDate? DayOf(string text, List<Finding> findings)
    {
        if (LocalDatePattern.Iso.Parse(text) is { Success: true } parsed) return parsed.Value;
        findings.Add(Finding.Error("bad-date", $"'{text}' is not a day", "write --by 2027-06-01"));
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
