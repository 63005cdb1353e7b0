using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Cli.Commands;

/// <summary><c>plan SPECIMEN.yaml</c>: the main job.</summary>
internal static class PlanCommand
{
    private static readonly Phrase BadDate = new("bad-date.option", "'{text}' is not a day");
    private static readonly Phrase BadDateRemedy = new("bad-date.option.remedy", "write --by 2027-06-01");

    private static readonly Argument<string> SpecimenFile = new("SPECIMEN.yaml") { Description = "The specimen." };
    private static readonly Option<string?> BenchFile = SharedOptions.BenchFile();
    private static readonly Option<string[]> Folders = SharedOptions.HouseFolders();
    private static readonly Option<string?> Start = SharedOptions.StartOption();
    private static readonly Option<string[]> Choose = SharedOptions.ChooseOption("A choice that the protocol leaves");
    private static readonly Option<string[]> Vessel = SharedOptions.VesselOption();
    private static readonly Option<string[]> Supply = SharedOptions.SupplyOption();
    private static readonly Option<string[]> Soak = SharedOptions.SoakOption();
    private static readonly Option<string[]> On = SharedOptions.OnOption();
    private static readonly Option<string?> By = new("--by")
    {
        Description = "Plan backwards: all is over on the morning of this day, as 2027-06-01, and a note says when to begin at the latest.",
    };
    private static readonly Option<string> Format = new("--format")
    {
        Description = "text, json, html (a page to print), ics (a calendar) or csv (one row a step).",
        DefaultValueFactory = _ => "text",
    };
    private static readonly Option<bool> Json = new("--json") { Description = "Short for --format json." };
    private static readonly Option<string?> Out = new("--out") { Description = "Write to this file instead of standard output." };

    public static Command Build()
    {
        Format.AcceptOnlyFromAmong(PlanOutput.Formats);
        var command = new Command("plan", "Plans one specimen.")
        {
            SpecimenFile, BenchFile, Folders, Start, By, Choose, Vessel, Supply, Soak, On, Format, Json, Out,
        };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var findings = new List<Finding>();
        var specimen = around.Files.Read(options.GetRequiredValue(SpecimenFile), SpecimenReader.Read, findings);
        var shared = SharedOptions.Read(around, options.GetValue(BenchFile), options.GetValue(Folders), options.GetValue(Start), findings);
        var by = options.GetValue(By) is { } day ? DayOf(day, findings) : null;
        var choices = SharedOptions.Choices(options.GetValue(Choose), findings);
        var wishes = SharedOptions.Wishes(options.GetValue(Vessel), options.GetValue(Supply), options.GetValue(Soak), options.GetValue(On), findings);
        if (options.GetValue(Out) is { } place && around.Files.Refusal(place) is { } refusal) findings.Add(refusal);
        if (specimen is null || shared is not { Bench: { } bench, Start: { } start } || findings.Any(f => f.Severity == Severity.Error))
            return around.Unread(findings);
        var made = new Planner(shared.Shelf).Plan(new(specimen, bench, start) { Choices = choices, Wishes = wishes, By = by });
        if (made.Value is not { } plan) return around.Unread(made.Findings);
        var format = options.GetValue(Json) ? "json" : options.GetValue(Format);
        if (PlanOutput.Write(plan, format, options.GetValue(Out), around) is { } fault) return around.Unread([fault]);
        return plan.Startable ? Exits.Done : Exits.WithErrors;
    }

    private static LocalDate? DayOf(string text, List<Finding> findings)
    {
        if (LocalDatePattern.Iso.Parse(text) is { Success: true } parsed) return parsed.Value;
        findings.Add(Finding.Error("bad-date", BadDate.With(("text", text)), BadDateRemedy));
        return null;
    }
}
