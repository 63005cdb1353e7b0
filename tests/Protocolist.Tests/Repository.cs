namespace Protocolist.Tests;

/// <summary>Files of the repository, and what is built in it beside these tests.</summary>
internal static class Repository
{
    private static readonly string Root = FindRoot();

    public static string Otter => File("samples", "specimens", "harbour-otter.yaml");

    public static string SkerryPoint => File("samples", "benches", "skerry-point.yaml");

    /// <summary>A file or folder, by its path from the root.</summary>
    public static string File(params string[] path) => Path.Combine([Root, .. path]);

    /// <summary>What a project built: bin/CONFIGURATION/net10.0 is the same below the tests and below what they test.</summary>
    public static string Built(string folder, string project, string file)
    {
        var built = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        return File(folder, project, "bin", built.Parent!.Name, built.Name, file);
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (System.IO.File.Exists(Path.Combine(folder.FullName, "Protocolist.sln"))) return folder.FullName;
        }

        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
