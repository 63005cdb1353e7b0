using System.CommandLine;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Cli.Commands;

/// <summary><c>revise PLAN.json LOG.yaml</c>: the plan after what really happened.</summary>
internal static class ReviseCommand
{
    private static readonly Phrase BenchMissing = new(
        "bench-missing",
        "the plan was made for the bench '{bench}', and without it hours, stock and vessels would be forgotten");
    private static readonly Phrase BenchMissingRemedy = new("bench-missing.remedy", "give it with --bench");
    private static readonly Phrase UnknownZone = new("unknown-zone.plan", "the plan's zone '{zone}' is not known");
    private static readonly Phrase UnknownZoneRemedy = new("unknown-zone.plan.remedy", "make the plan again; a plan file is not edited by hand");

    private static readonly Argument<string> PlanFile = new("PLAN.json") { Description = "The plan, as 'plan --format json' or an earlier revision wrote it." };
    private static readonly Argument<string> LogFile = new("LOG.yaml") { Description = "The whole log so far." };
    private static readonly Option<string?> BenchFile = new("--bench") { Description = "The bench that the plan was made for." };
    private static readonly Option<string[]> HouseFolders = new("--protocols")
    {
        Description = "A folder of house protocols, laid over the bundled ones; may be repeated.",
        Arity = ArgumentArity.ZeroOrMore,
    };
    private static readonly Option<string> Format = new("--format")
    {
        Description = "changes (what changed and why), text, json, html, ics or csv.",
        DefaultValueFactory = _ => "changes",
    };
    private static readonly Option<string?> Out = new("--out")
    {
        Description =
            "Write the revised plan to this file, as JSON unless --format says otherwise; another file than PLAN.json, which stays as the "
                + "record of what was meant.",
    };

    public static Command Build()
    {
        Format.AcceptOnlyFromAmong(["changes", .. PlanOutput.Formats]);
        var command = new Command("revise", "Plans again after what really happened, and says what changed and why.")
        {
            PlanFile, LogFile, BenchFile, HouseFolders, Format, Out,
        };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var findings = new List<Finding>();
        var zoneAt = SourceSpan.At(options.GetRequiredValue(PlanFile), 1, 1);
        var plan = around.Files.Read(
            options.GetRequiredValue(PlanFile),
            text =>
            {
                zoneAt = PlaceOfZone(text);
                return PlanJson.Read(text);
            },
            findings);
        var bench = options.GetValue(BenchFile) is { } file
            ? around.Files.Read(file, s => BenchReader.Read(s, DateTimeZoneProviders.Tzdb), findings)
            : plan is null ? null : Bench.Empty(ZoneOf(plan, zoneAt, findings));
        if (plan is { Bench.Length: > 0 } && options.GetValue(BenchFile) is null)
            findings.Add(Finding.Error(BenchMissing.Id, BenchMissing.With(("bench", plan.Bench)), BenchMissingRemedy));
        var (folders, unread) = around.Files.HouseFolders(options.GetValue(HouseFolders) ?? []);
        findings.AddRange(unread);
        var shelf = Shelf.BundledWith(folders);
        findings.AddRange(shelf.Findings.Where(f => f.Severity == Severity.Error));
        var log = plan is null ? null : around.Files.Read(options.GetRequiredValue(LogFile), s => LogReader.Read(s, ZoneOf(plan, zoneAt, findings)), findings);
        if (options.GetValue(Out) is { } place && around.Files.Refusal(place) is { } refusal) findings.Add(refusal);
        if (plan is null || bench is null || log is null || findings.Any(f => f.Severity == Severity.Error)) return around.Unread(findings);
        var planner = new Planner(shelf);
        var revised = planner.Revise(plan, log, planner.Prepare(bench));
        if (revised.Value is not { } revision) return around.Unread(revised.Findings);

        // Where the plan itself is not shown, what its checks still have to say is said here; notes stand in the plan.
        var shows = options.GetValue(Format) != "changes";
        var said = findings.Concat(revised.Findings.Where(f => !revision.Plan.Findings.Contains(f) || (!shows && f.Severity > Severity.Note)));
        foreach (var finding in said.Distinct()) around.Error.WriteLine(finding);
        if (Write(around, revision, options.GetValue(Format)!, options.GetValue(Out)) is { } fault) return around.Unread([fault]);
        return revision.Plan.Startable ? Exits.Done : Exits.WithErrors;
    }

    private static Finding? Write(Surroundings around, Revision revision, string format, string? path)
    {
        if (format == "changes" || path is not null)
        {
            foreach (var change in revision.Changes) around.Output.WriteLine(change);
            if (revision.Changes.IsEmpty) around.Output.WriteLine("nothing changes");
        }

        if (format != "changes") return PlanOutput.Write(revision.Plan, format, path, around);
        return path is null ? null : PlanOutput.Write(revision.Plan, "json", path, around);
    }

    private static DateTimeZone ZoneOf(Plan plan, SourceSpan where, List<Finding> findings)
    {
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(plan.Zone) is { } zone) return zone;
        if (!findings.Exists(f => f.Id == "unknown-zone"))
            findings.Add(Finding.Error("unknown-zone", UnknownZone.With(("zone", plan.Zone)), UnknownZoneRemedy, where));
        return DateTimeZone.Utc;
    }

    /// <summary>Where the plan file names its zone.</summary>
    private static SourceSpan PlaceOfZone(SourceText text)
    {
        var at = Math.Max(0, text.Text.IndexOf("\"zone\":", StringComparison.Ordinal));
        var lineStart = text.Text.LastIndexOf('\n', at) + 1;
        return SourceSpan.At(text.Name, text.Text.AsSpan(0, at).Count('\n') + 1, at - lineStart + 1);
    }
}
