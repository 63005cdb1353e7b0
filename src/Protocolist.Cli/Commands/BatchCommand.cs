using System.CommandLine;
using System.Text;
using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Planning.Batching;
using Protocolist.Reading.Csv;
using Protocolist.Sheets;

namespace Protocolist.Cli.Commands;

/// <summary><c>batch SPECIMENS.csv</c>: many specimens, one summary a line, one shopping list.</summary>
internal static class BatchCommand
{
    private static readonly Argument<string> Table = new("SPECIMENS.csv") { Description = "The specimens, one a row; columns by name, terms of Darwin Core understood." };
    private static readonly Option<string?> BenchFile = SharedOptions.BenchFile();
    private static readonly Option<string[]> Folders = SharedOptions.HouseFolders();
    private static readonly Option<string?> Start = SharedOptions.StartOption();
    private static readonly Option<string[]> Choose = SharedOptions.ChooseOption("A choice for every protocol that leaves it");
    private static readonly Option<bool> Json = new("--json") { Description = "One line of JSON a row." };
    private static readonly Option<string?> Out = new("--out") { Description = "Write PREFIX.rows.csv, PREFIX.shopping.csv (with --json PREFIX.shopping.json too) and PREFIX.progress.json." };
    private static readonly Option<bool> Resume = new("--resume") { Description = "Go on where PREFIX.progress.json ends. Needs --out." };
    private static readonly Option<bool> Schedule = new("--schedule") { Description = $"Date all plans on one bench, into PREFIX.schedule.csv; at most {JointSchedule.MostPlans} plans. Needs --out." };

    public static Command Build()
    {
        var command = new Command("batch", "Plans many specimens.") { Table, BenchFile, Folders, Start, Choose, Json, Out, Resume, Schedule };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var findings = new List<Finding>();
        var (prefix, resume, schedule) = (options.GetValue(Out), options.GetValue(Resume), options.GetValue(Schedule));
        if (prefix is null && (resume || schedule)) findings.Add(Finding.Error("out-missing", "--resume and --schedule write files", "give --out PREFIX"));
        if (resume && schedule) findings.Add(Finding.Error("schedule-is-not-resumed", "a joint schedule is made in one run", "leave out --resume or --schedule"));
        var done = resume && prefix is not null ? BatchProgress.Read(around.Files, prefix) : null;
        if (resume && prefix is not null && done is null) findings.Add(Finding.Error("nothing-to-resume", $"'{BatchProgress.PathOf(prefix)}' is not there or not readable", "run once without --resume"));
        var inputs = SharedOptions.Read(around, options.GetValue(BenchFile), options.GetValue(Folders), options.GetValue(Start) ?? done?.Start, findings);
        var choices = SharedOptions.Choices(options.GetValue(Choose), findings);
        if (inputs is not { Bench: { } bench, Start: { } start } || findings.Any(f => f.Severity == Severity.Error)) return around.Unread(findings);
        var path = options.GetRequiredValue(Table);
        var table = around.Files.At(path);
        if (!File.Exists(table)) return around.Unread([Finding.Error("unreadable-file", "there is no such file", "check the path", new SourceSpan(path, 0, 0, 0, 0))]);
        var startText = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss").Format(start);
        var digest = BatchProgress.Digest([
            startText, HeadingOf(table), options.GetValue(BenchFile) is { } benchFile ? File.ReadAllText(around.Files.At(benchFile)) : "",
            .. inputs.Shelf.Protocols.Select(p => p.ToString()), .. choices.Select(c => $"{c.Key}={c.Value}"),
        ]);
        if (done is not null && done.Inputs != digest) return around.Unread([Finding.Error("other-inputs", "the table's heading, the bench, the protocols, the choices or the start are not those of the run that was stopped", "start again without --resume")]);

        using var csv = new StreamReader(table, new UTF8Encoding(false, throwOnInvalidBytes: false), detectEncodingFromByteOrderMarks: true, 65536);
        var opened = Batch.Open(csv, path, new(inputs.Shelf, bench, start) { Choices = choices });
        if (opened.Value is not { } batch) return around.Unread(opened.Findings);
        foreach (var finding in opened.Findings.Where(f => f.Severity != Severity.Error)) around.Error.WriteLine(finding);

        using var stop = new CancellationTokenSource();
        ConsoleCancelEventHandler onCancel = (_, e) => { e.Cancel = true; stop.Cancel(); };
        Console.CancelKeyPress += onCancel;
        try
        {
            using var output = new BatchOutput(around, prefix, options.GetValue(Json), done, (rows, errors, bytes, needs) => new(BatchProgress.CurrentFormat, startText, digest, rows, errors, bytes, needs));
            using var dated = schedule ? new ScheduleFile(around, prefix!, bench, start) : null;
            foreach (var row in batch.Rows(output.Rows))
            {
                output.Add(row);
                dated?.Add(row);
                if (stop.IsCancellationRequested) break;
            }

            output.Keep();
            if (stop.IsCancellationRequested)
            {
                around.Error.WriteLine($"protocolist: stopped after row {output.Rows}{(prefix is null ? "" : "; --resume goes on from there")}");
                return Exits.WithErrors;
            }

            if (prefix is not null) Shop(around, prefix, output.Needs.List(bench, start.Date), options.GetValue(Json));
            return output.RowsWithErrors > 0 ? Exits.WithErrors : Exits.Done;
        }
        finally
        {
            Console.CancelKeyPress -= onCancel;
        }
    }

    private static void Shop(Surroundings around, string prefix, JointList list, bool asJson)
    {
        if (asJson) around.Files.Write(prefix + ".shopping.json", ShoppingJson.Of(list));
        around.Files.Write(prefix + ".shopping.csv", ShoppingList.Write(list.Purchases));
        foreach (var finding in list.Findings.Where(f => f.Severity != Severity.Note)) around.Error.WriteLine(finding);
        if (list.Cost is { } cost) around.Error.WriteLine($"to buy for all together: {cost}");
    }

    private static string HeadingOf(string path)
    {
        using var reader = new StreamReader(path);
        return reader.ReadLine() ?? "";
    }

    /// <summary>The joint schedule as a file.</summary>
    private sealed class ScheduleFile : IDisposable
    {
        private readonly TextWriter error;
        private readonly JointSchedule schedule;
        private readonly StreamWriter writer;

        public ScheduleFile(Surroundings around, string prefix, Benches.Bench bench, LocalDateTime start)
        {
            error = around.Error;
            schedule = new(bench, start);
            writer = new(around.Files.At(prefix + ".schedule.csv"), false, new UTF8Encoding(false));
            CsvWriter.WriteRow(writer, ["specimen", "step", "title", "start", "end"]);
        }

        public void Add(BatchRow row)
        {
            var dated = schedule.Add(row);
            foreach (var finding in dated.Findings.Where(f => f.Severity != Severity.Note)) error.WriteLine($"{row.SpecimenId}: {finding}");
            foreach (var step in dated.Value ?? []) CsvWriter.WriteRow(writer, [step.SpecimenId, step.StepId, step.Title, BatchText.Moment(step.Start), BatchText.Moment(step.End)]);
        }

        public void Dispose() => writer.Dispose();
    }
}
