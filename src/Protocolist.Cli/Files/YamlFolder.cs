using Protocolist.Findings;

namespace Protocolist.Cli.Files;

/// <summary>The YAML files of a folder and of all folders in it. What cannot be entered is a finding, and the rest goes on.</summary>
internal sealed class YamlFolder
{
    /// <summary>More files than this are a folder given by mistake, such as the root of a disk.</summary>
    private const int MostFiles = 10_000;

    private readonly string root;
    private readonly List<string> files = [];
    private readonly List<Finding> findings = [];

    private YamlFolder(string root) => this.root = root;

    /// <summary>The paths from the folder on, by name; and findings: <c>unreadable-folder</c>, <c>too-many-files</c>, <c>nothing-found</c> (errors), <c>link-leads-back</c> (warning).</summary>
    /// <param name="root">Where the folder lies.</param>
    /// <param name="name">What it is called in findings.</param>
    public static (List<string> Files, List<Finding> Findings) Walk(string root, string name)
    {
        var walk = new YamlFolder(root);
        walk.Enter(root, name, []);
        if (walk.files.Count > MostFiles)
            walk.findings.Add(Finding.Error("too-many-files", $"there are more than {MostFiles} YAML files in this folder", "give the folder of the protocols alone", At(name)));
        else if (walk.files.Count == 0 && walk.findings.Count == 0)
            walk.findings.Add(Finding.Error("nothing-found", "there is no YAML file in this folder", "check the path; the names of protocols end in .yaml or .yml", At(name)));
        return ([.. walk.files.Take(MostFiles).Order(StringComparer.Ordinal)], walk.findings);
    }

    private void Enter(string folder, string name, HashSet<FileId> within)
    {
        if (files.Count > MostFiles) return;
        var id = FileFacts.Behind(folder).Id;
        if (id is { } known && !within.Add(known) || id is null && folder != root && FileFacts.At(folder).Sort == FileSort.Link)
        {
            findings.Add(Finding.Warning("link-leads-back", "this link leads back to a folder that it lies in, and is not followed", "remove the link", At(name)));
            return;
        }

        List<string> entries;
        try
        {
            entries = [.. Directory.EnumerateFileSystemEntries(folder)];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            findings.Add(Finding.Error("unreadable-folder", fault is UnauthorizedAccessException ? "this folder may not be read" : fault.Message, "give the right to read it, or leave it out", At(name)));
            entries = [];
        }

        foreach (var entry in entries)
        {
            var path = Path.GetFileName(entry);
            if (Directory.Exists(entry)) Enter(entry, Path.Combine(name, path), within);
            else if (path.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".yml", StringComparison.OrdinalIgnoreCase)) files.Add(Path.GetRelativePath(root, entry));
        }

        if (id is { } done) within.Remove(done);
    }

    private static SourceSpan At(string name) => new(name, 0, 0, 0, 0);
}
