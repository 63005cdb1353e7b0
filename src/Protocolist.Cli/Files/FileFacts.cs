namespace Protocolist.Cli.Files;

/// <summary>What stands at a path.</summary>
internal enum FileSort
{
    Missing,
    Plain,
    Folder,

    /// <summary>A symbolic link, whatever it leads to.</summary>
    Link,

    /// <summary>A device, a pipe or a socket.</summary>
    Other,
}

/// <summary>A file's number on its device: the same by whatever name, link or spelling it was reached.</summary>
internal readonly record struct FileId(ulong Device, ulong Number);

/// <summary>What stands at a path, and which file it is; no number where the system does not tell it.</summary>
internal readonly record struct FileFacts(FileSort Sort, FileId? Id)
{
    /// <summary>Of what a path leads to.</summary>
    public static FileFacts Behind(string path) => NativeStat.Of(path, throughLinks: true) ?? Managed(path, throughLinks: true);

    /// <summary>Of what stands at a path itself.</summary>
    public static FileFacts At(string path) => NativeStat.Of(path, throughLinks: false) ?? Managed(path, throughLinks: false);

    private static FileFacts Managed(string path, bool throughLinks)
    {
        var info = new FileInfo(path);
        return new(
            !throughLinks && info.LinkTarget is not null ? FileSort.Link
                : Directory.Exists(path) ? FileSort.Folder
                : info.Exists ? FileSort.Plain
                : FileSort.Missing,
            null);
    }
}
