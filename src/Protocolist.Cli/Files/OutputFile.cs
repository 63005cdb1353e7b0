namespace Protocolist.Cli.Files;

/// <summary>
/// A file that is whole or not there: it grows under a name of its own beside its place, and takes its place, with the mode of the file that
/// stood there, only when it is kept. Dropped before that, it leaves nothing behind.
/// </summary>
internal sealed class OutputFile : IDisposable
{
    private readonly string place;
    private readonly string beside;
    private readonly FileStream stream;
    private bool kept;

    /// <summary>Starts a file; fails as opening a file does.</summary>
    public OutputFile(string path)
    {
        place = Path.GetFullPath(path);
        beside = Path.Combine(Path.GetDirectoryName(place)!, $".protocolist-{Guid.NewGuid():N}.part");
        UnixFileMode? mode = null;
        if (File.Exists(place))
        {
            // Putting a file in the place of another asks no leave of the other: one that may not be written is found by opening it.
            using var old = new FileStream(place, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);
            if (!OperatingSystem.IsWindows()) mode = File.GetUnixFileMode(old.SafeFileHandle);
        }

        stream = new(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        try
        {
            if (mode is { } bits && !OperatingSystem.IsWindows()) File.SetUnixFileMode(stream.SafeFileHandle, bits);
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    /// <summary>Where to write.</summary>
    public Stream Stream => stream;

    /// <summary>Puts the file on the disk and then in its place.</summary>
    public void Keep()
    {
        stream.Flush(flushToDisk: true);
        stream.Dispose();
        File.Move(beside, place, overwrite: true);
        kept = true;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        stream.Dispose();
        if (!kept) File.Delete(beside);
    }
}
