using System.Text;
using Protocolist.Planning.Batching;
using Protocolist.Reading.Csv;

namespace Protocolist.Cli.Commands;

/// <summary>Where the rows of a batch go: standard output, and the files that begin with the prefix of <c>--out</c>.</summary>
internal sealed class BatchOutput : IDisposable
{
    /// <summary>Rows between two records of progress: a second or so of work, and the most that is done again after a crash.</summary>
    private const int Stride = 200;

    private readonly Surroundings around;
    private readonly string? prefix;
    private readonly bool json;
    private readonly Func<int, int, long, JointNeedsState, BatchProgress> progress;
    private readonly FileStream? rows;
    private readonly TextWriter? writer;

    public BatchOutput(Surroundings around, string? prefix, bool json, BatchProgress? done, Func<int, int, long, JointNeedsState, BatchProgress> progress)
    {
        (this.around, this.prefix, this.json, this.progress) = (around, prefix, json, progress);
        Rows = done?.Rows ?? 0;
        RowsWithErrors = done?.RowsWithErrors ?? 0;
        Needs = done is null ? new() : new(done.Needs);
        if (prefix is null) return;
        rows = new FileStream(around.Files.At(prefix + ".rows.csv"), done is null ? FileMode.Create : FileMode.OpenOrCreate, FileAccess.Write);

        // What was written after the last record of progress is written again.
        rows.SetLength(Math.Min(rows.Length, done?.RowsFileBytes ?? 0));
        rows.Seek(0, SeekOrigin.End);
        writer = new StreamWriter(rows, new UTF8Encoding(false), 65536, leaveOpen: true);
        if (rows.Length == 0) CsvWriter.WriteRow(writer, BatchText.Heading);
    }

    public int Rows { get; private set; }

    public int RowsWithErrors { get; private set; }

    public JointNeeds Needs { get; }

    public void Add(BatchRow row)
    {
        around.Output.WriteLine(json ? BatchText.Json(row) : BatchText.Line(row));
        foreach (var fault in BatchText.Errors(row)) around.Error.WriteLine(fault);
        if (writer is not null) CsvWriter.WriteRow(writer, BatchText.Cells(row));
        if (row.Plan is { } plan) Needs.Add(plan);
        Rows = row.Number;
        if (!row.Startable) RowsWithErrors++;
        if (Rows % Stride != 0) return;
        Keep();
        if (around.ErrorIsScreen) around.Error.Write($"\r{Rows} rows, {RowsWithErrors} with errors ");
    }

    /// <summary>Puts the rows on the disk, then the record that around.ErrorIsScreen them.</summary>
    public void Keep()
    {
        if (prefix is null || rows is null || writer is null) return;
        writer.Flush();
        rows.Flush(flushToDisk: true);
        progress(Rows, RowsWithErrors, rows.Length, Needs.State).Write(around.Files, prefix);
    }

    public void Dispose()
    {
        if (around.ErrorIsScreen && Rows >= Stride) around.Error.WriteLine();
        writer?.Dispose();
        rows?.Dispose();
    }
}
