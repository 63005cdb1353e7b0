using Protocolist.Findings;

namespace Protocolist.Cli.Files;

/// <summary>The YAML files of a folder and of all folders in it. What cannot be entered is a finding, and the rest goes on.</summary>
internal sealed class YamlFolder
{
    private static readonly Phrase TooMany = new("too-many-files", "there are more than {most} YAML files in this folder");
    private static readonly Phrase TooManyRemedy = new("too-many-files.remedy", "give the folder of the protocols alone");
    private static readonly Phrase NothingFound = new("nothing-found", "there is no YAML file in this folder");
    private static readonly Phrase NothingFoundRemedy = new("nothing-found.remedy", "check the path; the names of protocols end in .yaml or .yml");
    private static readonly Phrase LeadsBack = new("link-leads-back", "this link leads back to a folder that it lies in, and is not followed");
    private static readonly Phrase LeadsBackRemedy = new("link-leads-back.remedy", "remove the link");
    private static readonly Phrase NotReadable = new("unreadable-folder", "this folder may not be read");
    private static readonly Phrase NotReadableRemedy = new("unreadable-folder.remedy", "give the right to read it, or leave it out");

    /// <summary>More files than this are a folder given by mistake, such as the root of a disk.</summary>
    private const int MostFiles = 10_000;

    private readonly string root;
    private readonly List<string> files = [];
    private readonly List<Finding> findings = [];

    private YamlFolder(string root) => this.root = root;

    /// <summary>
    /// The paths from the folder on, by name; and findings: <c>unreadable-folder</c>, <c>too-many-files</c>, <c>nothing-found</c> (errors),
    /// <c>link-leads-back</c> (warning).
    /// </summary>
    /// <param name="root">Where the folder lies.</param>
    /// <param name="name">What it is called in findings.</param>
    public static (List<string> Files, List<Finding> Findings) Walk(string root, string name)
    {
        var walk = new YamlFolder(root);
        walk.Enter(root, name, []);
        if (walk.files.Count > MostFiles)
            walk.findings.Add(Finding.Error(TooMany.Id, TooMany.With(("most", MostFiles)), TooManyRemedy, At(name)));
        else if (walk.files.Count == 0 && walk.findings.Count == 0)
            walk.findings.Add(Finding.Error(NothingFound.Id, NothingFound, NothingFoundRemedy, At(name)));
        return ([.. walk.files.Take(MostFiles).Order(StringComparer.Ordinal)], walk.findings);
    }

    private void Enter(string folder, string name, HashSet<FileId> within)
    {
        if (files.Count > MostFiles) return;
        var id = FileFacts.Behind(folder).Id;
        if (id is { } known && !within.Add(known) || id is null && folder != root && FileFacts.At(folder).Sort == FileSort.Link)
        {
            findings.Add(Finding.Warning(LeadsBack.Id, LeadsBack, LeadsBackRemedy, At(name)));
            return;
        }

        List<string> entries;
        try
        {
            entries = [.. Directory.EnumerateFileSystemEntries(folder)];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            findings.Add(Finding.Error(
                NotReadable.Id,
                fault is UnauthorizedAccessException ? NotReadable : Message.Text(fault.Message),
                NotReadableRemedy,
                At(name)));
            entries = [];
        }

        foreach (var entry in entries)
        {
            var path = Path.GetFileName(entry);
            if (Directory.Exists(entry)) Enter(entry, Path.Combine(name, path), within);
            else if (path.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".yml", StringComparison.OrdinalIgnoreCase))
                files.Add(Path.GetRelativePath(root, entry));
        }

        if (id is { } done) within.Remove(done);
    }

    private static SourceSpan At(string name) => new(name, 0, 0, 0, 0);
}
