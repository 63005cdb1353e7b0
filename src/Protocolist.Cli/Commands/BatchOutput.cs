using Protocolist.Cli.Files;
using Protocolist.Findings;
using Protocolist.Planning.Batching;

namespace Protocolist.Cli.Commands;

/// <summary>Where the rows of a batch go: standard output, and the files that begin with the prefix of <c>--out</c>.</summary>
/// <param name="around">Where it is written.</param>
/// <param name="prefix">What the names of the files begin with.</param>
/// <param name="rows">The file of rows; null where none is asked for.</param>
/// <param name="json">Whether standard output is JSON.</param>
/// <param name="first">The record that the batch starts from.</param>
internal sealed class BatchOutput(Surroundings around, string? prefix, RowsFile? rows, bool json, BatchProgress first)
{
    /// <summary>Rows between two records of progress: a second or so of work, and the most that is done again after a crash.</summary>
    private const int Stride = 200;

    public int Rows { get; private set; } = first.Rows;

    public int RowsWithErrors { get; private set; } = first.RowsWithErrors;

    public JointNeeds Needs { get; } = new(first.Needs);

    /// <summary>Adds a row; why its progress could not be kept, or null.</summary>
    public Finding? Add(BatchRow row)
    {
        around.Output.WriteLine(json ? BatchText.Json(row) : BatchText.Line(row));
        foreach (var fault in BatchText.Errors(row)) around.Error.WriteLine(fault);
        rows?.Add(BatchText.Cells(row));
        if (row.Plan is { } plan) Needs.Add(plan);
        Rows = row.Number;
        if (!row.Startable) RowsWithErrors++;
        if (Rows % Stride != 0) return null;
        if (around.ErrorIsScreen) around.Error.Write($"\r{Rows} rows, {RowsWithErrors} with errors ");
        return Keep();
    }

    /// <summary>Puts the rows on the disk, then the record that counts them.</summary>
    public Finding? Keep()
    {
        if (prefix is null || rows is null) return null;
        var digest = rows.Flush();
        return around.Files.Write(
            BatchProgress.PathOf(prefix),
            (first with { Rows = Rows, RowsWithErrors = RowsWithErrors, RowsFileBytes = rows.Length, RowsFileDigest = digest, Needs = Needs.State }).Text());
    }

    /// <summary>Ends the line on which rows were counted.</summary>
    public void EndCount()
    {
        if (around.ErrorIsScreen && Rows >= Stride) around.Error.WriteLine();
    }
}
