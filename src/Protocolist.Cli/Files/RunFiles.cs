using System.Collections.Immutable;
using System.Text;
using Protocolist.Findings;

namespace Protocolist.Cli.Files;

/// <summary>
/// The files of one run: what it reads is remembered, so that nothing that it writes takes the place of an input. A file that cannot be used is a finding.
/// </summary>
internal sealed class RunFiles(string folder, Func<Stream> standardInput)
{
    private static readonly Phrase NoFileNamed = new("file.none-named", "no file is named");
    private static readonly Phrase MayNotBeRead = new("file.unreadable", "it may not be read");
    private static readonly Phrase ReadAlready = new("file.standard-input-read", "standard input is read already, and can be read once");
    private static readonly Phrase ByItsName = new("file.standard-input-read.remedy", "give the other file by its name");
    private static readonly Phrase NoSuchFile = new("file.missing", "there is no such file");
    private static readonly Phrase ThisIsFolder = new("file.folder", "this is a folder");
    private static readonly Phrase ThisIsDevice = new("file.device", "this is a device, a pipe or a socket");
    private static readonly Phrase GivePlain = new("file.device.remedy", "give a plain file, or - for standard input");
    private static readonly Phrase NoSuchFolder = new("file.no-folder", "there is no such folder");
    private static readonly Phrase TargetIsFolder = new("out.folder", "'{path}' is a folder");
    private static readonly Phrase IsLink = new("out.link", "'{path}' is a link, and would be lost");
    private static readonly Phrase IsLinkRemedy = new("out.link.remedy", "name the file that it leads to");
    private static readonly Phrase IsDevice = new("out.device", "'{path}' is a device, a pipe or a socket");
    private static readonly Phrase IsDeviceRemedy = new("out.device.remedy", "name a file, or leave --out away to write to standard output");
    private static readonly Phrase IsInput = new("out.input", "'{path}' is an input of this very run, and would be lost");
    private static readonly Phrase NoFolder = new("out.no-folder", "there is no folder '{path}' to write into");
    private static readonly Phrase MakeIt = new("out.no-folder.remedy", "make it first");
    private static readonly Phrase MayNotBeWritten = new("out.unwritable", "it may not be written");
    private static readonly Phrase CheckPath = new("file.remedy", "check the path");
    private static readonly Phrase NameAnother = new("out.remedy", "name another file");

    /// <summary>The name of standard input on the command line.</summary>
    private const string StandardInput = "-";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly HashSet<FileId> inputs = [];
    private readonly HashSet<string> inputPaths = new(StringComparer.OrdinalIgnoreCase);
    private bool standardInputIsRead;

    /// <summary>Where a file lies.</summary>
    public string At(string path) => path.Length == 0 ? "" : Path.Combine(folder, path);

    public bool IsFolder(string path) => Directory.Exists(At(path));

    /// <summary>A file as text.</summary>
    public Checked<SourceText> Read(string path)
    {
        var opened = Open(path);
        if (opened.Value is not { } stream) return new(null, opened.Findings);
        using (stream)
        {
            try
            {
                return SourceText.Read(path, stream);
            }
            catch (IOException fault)
            {
                return new(null, [Unreadable(path, Message.Text(fault.Message))]);
            }
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

    /// <summary>A plain file, or standard input for <c>-</c>, as bytes. What would never end or never begin (a device, a pipe by name) is not opened.</summary>
    public Checked<Stream> Open(string path)
    {
        if (path == StandardInput)
        {
            if (standardInputIsRead) return new(null, [Unreadable(path, ReadAlready, ByItsName)]);
            standardInputIsRead = true;
            return new(standardInput(), []);
        }

        try
        {
            if (path.Length == 0) return new(null, [Unreadable("''", NoFileNamed)]);
            var facts = FileFacts.Behind(At(path));
            if (facts.Sort == FileSort.Missing) return new(null, [Unreadable(path, NoSuchFile)]);
            if (facts.Sort == FileSort.Folder) return new(null, [Unreadable(path, ThisIsFolder)]);
            if (facts.Sort == FileSort.Other) return new(null, [Unreadable(path, ThisIsDevice, GivePlain)]);
            if (facts.Id is { } id) inputs.Add(id);
            inputPaths.Add(Path.GetFullPath(At(path)));
            return new(new FileStream(At(path), FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete), []);
        }
        catch (Exception fault) when (IsOfFiles(fault))
        {
            return new(null, [Unreadable(path, fault is UnauthorizedAccessException ? MayNotBeRead : Message.Text(fault.Message))]);
        }
    }

    /// <summary>The texts of the YAML files of a folder and of all folders in it, by name; what could not be read is a finding, and the rest goes on.</summary>
    public List<SourceText> ReadFolder(string path, List<Finding> findings)
    {
        if (!IsFolder(path))
        {
            findings.Add(Unreadable(path, NoSuchFolder));
            return [];
        }

        var (names, told) = YamlFolder.Walk(At(path), path);
        var read = names.Select(n => Read(Path.Combine(path, n))).ToList();
        findings.AddRange(told.Concat(read.SelectMany(r => r.Findings)));
        return [.. read.Select(r => r.Value).OfType<SourceText>()];
    }

    /// <summary>The texts of house folders, and what could not be read.</summary>
    public (ImmutableArray<IReadOnlyList<SourceText>> Folders, ImmutableArray<Finding> Findings) HouseFolders(IEnumerable<string> paths)
    {
        var findings = new List<Finding>();
        ImmutableArray<IReadOnlyList<SourceText>> folders = [.. paths.Select(p => ReadFolder(p, findings))];
        return (folders, [.. findings]);
    }

    /// <summary>Why an output cannot go to a place: it would take the place of an input, of a link, of a device or of a folder. Null where it can.</summary>
    public Finding? Refusal(string path)
    {
        try
        {
            if (path.Length == 0) return Unwritable("''", NoFileNamed);
            if (FileFacts.At(At(path)) is { Sort: not FileSort.Missing } there)
            {
                if (there.Sort == FileSort.Folder) return Unwritable(path, TargetIsFolder.With(("path", path)));
                if (there.Sort == FileSort.Link) return Unwritable(path, IsLink.With(("path", path)), IsLinkRemedy);
                if (there.Sort == FileSort.Other) return Unwritable(path, IsDevice.With(("path", path)), IsDeviceRemedy);
                if (there.Id is { } id ? inputs.Contains(id) : inputPaths.Contains(Path.GetFullPath(At(path))))
                    return Unwritable(path, IsInput.With(("path", path)));
            }

            var above = Path.GetDirectoryName(Path.GetFullPath(At(path)));
            if (Path.EndsInDirectorySeparator(path) || above is null) return Unwritable(path, TargetIsFolder.With(("path", path)));
            return Directory.Exists(above) ? null : Unwritable(path, NoFolder.With(("path", above)), MakeIt);
        }
        catch (Exception fault) when (IsOfFiles(fault))
        {
            return Unwritable(path, Message.Text(fault.Message));
        }
    }

    /// <summary>Writes a file whole or not at all; why it could not be, or null.</summary>
    public Finding? Write(string path, string text) => Write(path, file => file.Stream.Write(Utf8.GetBytes(text)));

    /// <summary>The same, for a file that grows.</summary>
    public Finding? Write(string path, Action<OutputFile> fill)
    {
        if (Refusal(path) is { } refusal) return refusal;
        // Asked to stop, the program ends the file first.
        using var stop = new StopSignals();
        try
        {
            using var file = new OutputFile(At(path));
            fill(file);
            file.Keep();
            return null;
        }
        catch (Exception fault) when (IsOfFiles(fault))
        {
            return Unwritable(path, fault is UnauthorizedAccessException ? MayNotBeWritten : Message.Text(fault.Message));
        }
    }

    private static bool IsOfFiles(Exception fault) => fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;

    private static Finding Unreadable(string path, Message why, Message remedy = default) =>
        Finding.Error("unreadable-file", why, remedy.IsEmpty ? CheckPath : remedy, new SourceSpan(path, 0, 0, 0, 0));

    private static Finding Unwritable(string path, Message why, Message remedy = default) =>
        Finding.Error("unwritable-file", why, remedy.IsEmpty ? NameAnother : remedy, new SourceSpan(path, 0, 0, 0, 0));
}
