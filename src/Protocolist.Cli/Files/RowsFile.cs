using System.Security.Cryptography;
using System.Text;
using Protocolist.Findings;
using Protocolist.Reading.Csv;

namespace Protocolist.Cli.Files;

/// <summary>
/// The rows of a batch while they come: they grow in a file of their own, which nobody else can write to meanwhile and which a stopped run goes on with, and
/// take their place when all are there.
/// </summary>
internal sealed class RowsFile : IDisposable
{
    private static readonly Phrase InProgress = new("batch-in-progress", "another run is writing these rows");
    private static readonly Phrase InProgressRemedy = new("batch-in-progress.remedy", "wait for it, or give another --out");
    private static readonly Phrase Unfinished = new("unfinished-run", "here are the rows of a run that was stopped");
    private static readonly Phrase UnfinishedRemedy = new("unfinished-run.remedy", "go on with --resume, or remove the file to begin anew");
    private static readonly Phrase Changed = new("rows-file-changed", "the rows that are done are not those that the record of progress counts");
    private static readonly Phrase ChangedRemedy = new("rows-file-changed.remedy", "begin anew without --resume");

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly string place;
    private readonly FileStream stream;
    private readonly IncrementalHash digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    private RowsFile(string prefix, FileStream stream) => (place, this.stream) = (PathOf(prefix), stream);

    /// <summary>Bytes so far.</summary>
    public long Length => stream.Position;

    public static string PathOf(string prefix) => prefix + ".rows.csv";

    public static string UnfinishedPathOf(string prefix) => prefix + ".rows.unfinished.csv";

    /// <summary>Starts a file with no rows; an error where a run was stopped that could go on, or one goes on just now.</summary>
    public static Checked<RowsFile> Begin(string prefix)
    {
        var opened = Lock(prefix);
        if (opened.Value is not { stream.Length: > 0 } rows) return opened;
        rows.Dispose();
        return new(null, [Finding.Error(Unfinished.Id, Unfinished, UnfinishedRemedy, At(UnfinishedPathOf(prefix)))]);
    }

    /// <summary>Goes on after the rows that are there; an error where they are not those that the record counts.</summary>
    public static Checked<RowsFile> GoOn(string prefix, long bytes, string expected)
    {
        // A run that ended has put its rows in their place; those are copied, so that they stay until there are more.
        var ended = !File.Exists(UnfinishedPathOf(prefix)) && FileFacts.At(PathOf(prefix)).Sort == FileSort.Plain;
        var opened = Lock(prefix);
        if (opened.Value is not { } rows) return opened;
        if (ended)
        {
            using var whole = File.OpenRead(PathOf(prefix));
            whole.CopyTo(rows.stream);
        }

        if (rows.Takes(bytes, expected)) return new(rows, []);
        if (ended) rows.Drop();
        else rows.Dispose();
        return new(null, [Finding.Error(Changed.Id, Changed, ChangedRemedy, At(ended ? PathOf(prefix) : UnfinishedPathOf(prefix)))]);
    }

    /// <summary>The last cell of each row that is there, without the heading's.</summary>
    public IEnumerable<string> LastCells()
    {
        stream.Position = 0;
        using var reader = new StreamReader(stream, Utf8, false, 65536, leaveOpen: true);
        var inQuotes = false;
        var isHeading = true;
        while (reader.ReadLine() is { } line)
        {
            inQuotes ^= line.AsSpan().Count('"') % 2 != 0;
            if (inQuotes) continue; // the row goes on in the next line
            if (!isHeading) yield return line[(line.LastIndexOf(',') + 1)..];
            isHeading = false;
        }

        stream.Position = stream.Length;
    }

    /// <summary>Adds a row.</summary>
    public void Add(IEnumerable<string> cells)
    {
        using var row = new StringWriter();
        CsvWriter.WriteRow(row, cells);
        var bytes = Utf8.GetBytes(row.ToString());
        digest.AppendData(bytes);
        stream.Write(bytes);
    }

    /// <summary>Puts what was written on the disk, and gives the digest of all of it.</summary>
    public string Flush()
    {
        stream.Flush(flushToDisk: true);
        return Convert.ToHexStringLower(digest.GetCurrentHash());
    }

    /// <summary>Puts the rows in their place.</summary>
    public void Keep()
    {
        Flush();
        if (!OperatingSystem.IsWindows() && File.Exists(place)) File.SetUnixFileMode(stream.SafeFileHandle, File.GetUnixFileMode(place));
        if (OperatingSystem.IsWindows()) Dispose();
        File.Move(stream.Name, place, overwrite: true);
    }

    /// <summary>Removes the file, where nothing was done with it.</summary>
    public void Drop()
    {
        Dispose();
        File.Delete(stream.Name);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        stream.Dispose();
        digest.Dispose();
    }

    private static Checked<RowsFile> Lock(string prefix)
    {
        var path = UnfinishedPathOf(prefix);
        try
        {
            return new(new(prefix, new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 65536)), []);
        }
        catch (IOException) when (File.Exists(path))
        {
            return new(null, [Finding.Error(InProgress.Id, InProgress, InProgressRemedy, At(path))]);
        }
    }

    /// <summary>Whether the first bytes are those of a digest; what follows them was written after the last record of progress, and is written again.</summary>
    private bool Takes(long bytes, string expected)
    {
        if (bytes < 0 || bytes > stream.Length) return false;
        stream.Position = 0;
        var part = new byte[65536];
        for (var left = bytes; left > 0;)
        {
            var count = stream.Read(part, 0, (int)Math.Min(part.Length, left));
            if (count == 0) return false;
            digest.AppendData(part, 0, count);
            left -= count;
        }

        if (Convert.ToHexStringLower(digest.GetCurrentHash()) != expected) return false;
        stream.SetLength(bytes);
        stream.Position = bytes;
        return true;
    }

    private static SourceSpan At(string path) => new(path, 0, 0, 0, 0);
}
