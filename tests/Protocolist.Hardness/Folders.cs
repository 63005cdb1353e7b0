namespace Protocolist.Hardness;

/// <summary>Where things are.</summary>
internal static class Folders
{
    private static readonly string Root = Find();

    public static string Of(params string[] path) => Path.Combine([Root, .. path]);

    public static string Text(params string[] path) => File.ReadAllText(Of(path)).ReplaceLineEndings("\n");

    /// <summary>The built program beside this one.</summary>
    public static string Program
    {
        get
        {
            var built = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
            return Of("src", "Protocolist.Cli", "bin", built.Parent!.Name, built.Name, OperatingSystem.IsWindows() ? "protocolist.exe" : "protocolist");
        }
    }

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Protocolist.sln"))) return folder.FullName;
        }

        throw new InvalidOperationException("This runs in the repository only.");
    }
}
