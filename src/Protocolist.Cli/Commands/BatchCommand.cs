using System.CommandLine;
using System.Text;
using NodaTime;
using NodaTime.Text;
using Protocolist.Cli.Files;
using Protocolist.Findings;
using Protocolist.Planning.Batching;
using Protocolist.Reading.Csv;
using Protocolist.Sheets;

namespace Protocolist.Cli.Commands;

/// <summary><c>batch SPECIMENS.csv</c>: many specimens, one summary a line, one shopping list.</summary>
internal static class BatchCommand
{
    private static readonly Phrase OutMissing = new("out-missing", "--resume and --schedule write files");
    private static readonly Phrase OutNameless = new("out-missing.nameless", "--out names nothing");
    private static readonly Phrase GiveOut = new("out-missing.remedy", "give --out PREFIX");
    private static readonly Phrase NotResumed = new("schedule-is-not-resumed", "a joint schedule is made in one run");
    private static readonly Phrase NotResumedRemedy = new("schedule-is-not-resumed.remedy", "leave out --resume or --schedule");
    private static readonly Phrase EmptyTable = new("empty-table", "the table has a heading and no specimen below it");
    private static readonly Phrase EmptyTableRemedy = new("empty-table.remedy", "give a row for each specimen");
    private static readonly Phrase OtherInputs = new(
        "other-inputs",
        "the table's heading, the bench, the protocols, the choices or the start are not those of the run that was stopped");
    private static readonly Phrase OtherInputsRemedy = new("other-inputs.remedy", "begin anew without --resume");

    private static readonly Argument<string> Table = new("SPECIMENS.csv")
    {
        Description = "The specimens, one a row; columns by name, terms of Darwin Core understood.",
    };
    private static readonly Option<string?> BenchFile = SharedOptions.BenchFile();
    private static readonly Option<string[]> Folders = SharedOptions.HouseFolders();
    private static readonly Option<string?> Start = SharedOptions.StartOption();
    private static readonly Option<string[]> Choose = SharedOptions.ChooseOption("A choice for every protocol that leaves it");
    private static readonly Option<bool> Json = new("--json") { Description = "One line of JSON a row." };
    private static readonly Option<string?> Out = new("--out")
    {
        Description = "Write PREFIX.rows.csv, PREFIX.shopping.csv (with --json PREFIX.shopping.json too) and PREFIX.progress.json.",
    };
    private static readonly Option<bool> Resume = new("--resume") { Description = "Go on where PREFIX.progress.json ends. Needs --out." };
    private static readonly Option<bool> Schedule = new("--schedule")
    {
        Description = $"Date all plans on one bench, into PREFIX.schedule.csv; at most {JointSchedule.MostPlans} plans. Needs --out.",
    };

    public static Command Build()
    {
        var command = new Command("batch", "Plans many specimens.") { Table, BenchFile, Folders, Start, Choose, Json, Out, Resume, Schedule };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var files = around.Files;
        var findings = new List<Finding>();
        var (prefix, resume, schedule, json) = (options.GetValue(Out), options.GetValue(Resume), options.GetValue(Schedule), options.GetValue(Json));
        if (prefix is null && (resume || schedule)) findings.Add(Finding.Error(OutMissing.Id, OutMissing, GiveOut));
        if (prefix?.Length == 0) findings.Add(Finding.Error(OutMissing.Id, OutNameless, GiveOut));
        if (resume && schedule) findings.Add(Finding.Error(NotResumed.Id, NotResumed, NotResumedRemedy));
        if (findings.Count > 0) return around.Unread(findings);

        // The record is no input that must stay: the run goes on with it.
        var done = resume ? new RunFiles(around.Folder, around.Input).Read(BatchProgress.PathOf(prefix!), BatchProgress.Read, findings) : null;
        var inputs = SharedOptions.Read(around, options.GetValue(BenchFile), options.GetValue(Folders), options.GetValue(Start) ?? done?.Start, findings);
        var choices = SharedOptions.Choices(options.GetValue(Choose), findings);
        if (inputs is not { Bench: { } bench, Start: { } start } || findings.Any(f => f.Severity == Severity.Error)) return around.Unread(findings);
        var path = options.GetRequiredValue(Table);
        var table = files.Open(path);
        if (table.Value is not { } bytes) return around.Unread(table.Findings);
        using var csv = new StreamReader(bytes, new UTF8Encoding(false, throwOnInvalidBytes: false), detectEncodingFromByteOrderMarks: true, 65536);
        var planner = new Planner(inputs.Shelf);
        var opened = Batch.Open(csv, path, new(planner, planner.Prepare(bench), start) { Choices = choices });
        if (opened.Value is not { } batch) return around.Unread(opened.Findings);
        foreach (var finding in opened.Findings.Where(f => f.Severity != Severity.Error)) around.Error.WriteLine(finding);

        var startText = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss").Format(start);
        var digest = BatchProgress.Digest([startText, batch.HeadingDigest, .. inputs.Texts, .. choices.Select(c => $"{c.Key}={c.Value}")]);
        if (done is not null && done.Inputs != digest)
            return around.Unread([Finding.Error(OtherInputs.Id, OtherInputs, OtherInputsRemedy)]);
        if (prefix is not null && PathsOf(prefix, json, schedule).Select(files.Refusal).FirstOrDefault(r => r is not null) is { } refusal)
            return around.Unread([refusal]);
        var kept = prefix is null
            ? null
            : done is null ? RowsFile.Begin(files.At(prefix)) : RowsFile.GoOn(files.At(prefix), done.RowsFileBytes, done.RowsFileDigest);
        if (kept is { Value: null }) return around.Unread(kept.Findings);
        using var rows = kept?.Value;
        if (done is null) rows?.Add(BatchText.Heading);
        else if (batch.PassOver(rows!.LastCells().Take(done.Rows)) is { } edited) return around.Unread([edited]);
        var output = new BatchOutput(
            around,
            prefix,
            rows,
            json,
            done ?? new(BatchProgress.CurrentFormat, startText, digest, 0, 0, 0, "", new JointNeeds().State));

        using var stop = new StopSignals();
        using var dated = schedule ? new ScheduleFile(around, prefix!, bench, start) : null;
        var fault = output.Keep();
        foreach (var row in batch.Rows())
        {
            fault ??= output.Add(row);
            if (row.Fault is { } ours && options.GetValue<bool>(Exits.FaultDetails)) around.Error.Write($"{ours}\n");
            dated?.Add(row);
            if (fault is not null || stop.Asked) break;
        }

        fault ??= output.Keep();
        output.EndCount();
        if (fault is not null) return around.Unread([fault]);
        if (stop.Asked)
        {
            around.Error.WriteLine($"protocolist: stopped after row {output.Rows}{(prefix is null ? "" : "; --resume goes on from there")}");
            return Exits.WithErrors;
        }

        if (prefix is not null && Shop(around, prefix, output.Needs.List(bench, start.Date), json) is { } unwritten) return around.Unread([unwritten]);
        dated?.Keep();
        rows?.Keep();
        if (output.Rows == 0)
        {
            around.Error.WriteLine(Finding.Error(EmptyTable.Id, EmptyTable, EmptyTableRemedy, SourceSpan.At(path, 1, 1)));
            return Exits.WithErrors;
        }

        return output.RowsWithErrors > 0 ? Exits.WithErrors : Exits.Done;
    }

    /// <summary>All that a batch may write.</summary>
    private static IEnumerable<string> PathsOf(string prefix, bool json, bool schedule) =>
    [
        RowsFile.PathOf(prefix), RowsFile.UnfinishedPathOf(prefix), BatchProgress.PathOf(prefix), ShoppingPathOf(prefix, "csv"),
        .. json ? [ShoppingPathOf(prefix, "json")] : Array.Empty<string>(), .. schedule ? [ScheduleFile.PathOf(prefix)] : Array.Empty<string>(),
    ];

    private static string ShoppingPathOf(string prefix, string form) => $"{prefix}.shopping.{form}";

    private static Finding? Shop(Surroundings around, string prefix, JointList list, bool asJson)
    {
        if (asJson && around.Files.Write(ShoppingPathOf(prefix, "json"), ShoppingJson.Of(list)) is { } fault) return fault;
        if (around.Files.Write(ShoppingPathOf(prefix, "csv"), ShoppingList.Write(list.Purchases)) is { } unwritten) return unwritten;
        foreach (var finding in list.Findings.Where(f => f.Severity != Severity.Note)) around.Error.WriteLine(finding);
        if (list.Cost is { } cost) around.Error.WriteLine($"to buy for all together: {cost}");
        return null;
    }

    /// <summary>The joint schedule as a file.</summary>
    private sealed class ScheduleFile : IDisposable
    {
        private readonly TextWriter error;
        private readonly JointSchedule schedule;
        private readonly OutputFile file;
        private readonly StreamWriter writer;

        public ScheduleFile(Surroundings around, string prefix, Benches.Bench bench, LocalDateTime start)
        {
            error = around.Error;
            schedule = new(bench, start);
            file = new(around.Files.At(PathOf(prefix)));
            writer = new(file.Stream, new UTF8Encoding(false), leaveOpen: true);
            CsvWriter.WriteRow(writer, ["specimen", "step", "title", "start", "end"]);
        }

        public static string PathOf(string prefix) => prefix + ".schedule.csv";

        public void Add(BatchRow row)
        {
            var dated = schedule.Add(row);
            foreach (var finding in dated.Findings.Where(f => f.Severity != Severity.Note)) error.WriteLine($"{row.SpecimenId}: {finding}");
            foreach (var step in dated.Value ?? [])
                CsvWriter.WriteRow(writer, [step.SpecimenId, step.StepId, step.Title, BatchText.Moment(step.Start), BatchText.Moment(step.End)]);
        }

        public void Keep()
        {
            writer.Flush();
            file.Keep();
        }

        public void Dispose() => file.Dispose();
    }
}
