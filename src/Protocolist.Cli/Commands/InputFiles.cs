using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Cli.Commands;

/// <summary>Files as texts, told by the names they were asked for. A file that cannot be read is a finding, not an exception.</summary>
internal sealed class InputFiles(string folder)
{
    /// <summary>Where a file lies.</summary>
    public string At(string path) => path.Length == 0 ? "" : Path.Combine(folder, path);

    public bool IsFolder(string path) => Directory.Exists(At(path));

    public Checked<SourceText> Read(string path)
    {
        try
        {
            return SourceText.Decode(path, File.ReadAllBytes(At(path)));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            var why = fault switch
            {
                FileNotFoundException or DirectoryNotFoundException => "there is no such file",
                UnauthorizedAccessException when IsFolder(path) => "this is a folder",
                UnauthorizedAccessException => "it may not be read",
                _ => fault.Message,
            };
            return new(null, [Finding.Error("unreadable-file", why, "check the path", new SourceSpan(path, 0, 0, 0, 0))]);
        }
    }

    /// <summary>A file as what is read from it; null where it cannot be, with findings that say why.</summary>
    public T? Read<T>(string path, Func<SourceText, Checked<T>> reader, List<Finding> findings)
        where T : class
    {
        var source = Read(path);
        findings.AddRange(source.Findings);
        if (source.Value is null) return null;
        var read = reader(source.Value);
        findings.AddRange(read.Findings);
        return read.Value;
    }

    /// <summary>The YAML files of a folder and of all folders in it, by name.</summary>
    public IEnumerable<string> YamlIn(string path) =>
        Directory.EnumerateFiles(At(path), "*", SearchOption.AllDirectories)
            .Select(f => Path.Combine(path, Path.GetRelativePath(At(path), f)))
            .Where(f => f.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || f.EndsWith(".yml", StringComparison.OrdinalIgnoreCase))
            .Order(StringComparer.Ordinal);

    /// <summary>The texts of house folders, and what could not be read.</summary>
    public (ImmutableArray<IReadOnlyList<SourceText>> Folders, ImmutableArray<Finding> Findings) HouseFolders(IEnumerable<string> paths)
    {
        var folders = ImmutableArray.CreateBuilder<IReadOnlyList<SourceText>>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var path in paths)
        {
            if (!IsFolder(path))
            {
                findings.Add(Finding.Error("unreadable-file", "there is no such folder", "check the path", new SourceSpan(path, 0, 0, 0, 0)));
                continue;
            }

            var read = YamlIn(path).Select(Read).ToList();
            findings.AddRange(read.SelectMany(r => r.Findings));
            folders.Add([.. read.Select(r => r.Value).OfType<SourceText>()]);
        }

        return (folders.DrainToImmutable(), findings.DrainToImmutable());
    }

    /// <summary>Writes a file beside its place and then puts it there, so that nobody ever sees half of it, whatever goes wrong.</summary>
    public void Write(string path, string text)
    {
        if (IsFolder(path)) throw new IOException($"'{path}' is a folder; name a file");
        if (Path.GetDirectoryName(Path.GetFullPath(At(path))) is { } holder && !Directory.Exists(holder)) throw new IOException($"there is no folder '{holder}' to write into; make it first");
        var beside = At(path) + ".part";
        try
        {
            File.WriteAllText(beside, text);
            File.Move(beside, At(path), overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
