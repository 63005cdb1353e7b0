using System.Collections.Immutable;

namespace Protocolist.Testing;

/// <summary>A generated input file as a list of entries, so that a counter-example shrinks entry by entry and stays a good file. Immutable.</summary>
public sealed class FileSketch
{
    /// <summary>Makes a file of entries.</summary>
    /// <param name="name">The name by which findings speak of it.</param>
    /// <param name="entries">Its entries in order.</param>
    public FileSketch(string name, params IEnumerable<SketchEntry> entries)
    {
        Name = name;
        Entries = [.. entries];
    }

    /// <summary>The name by which findings speak of it.</summary>
    public string Name { get; }

    /// <summary>Its entries in order.</summary>
    public ImmutableArray<SketchEntry> Entries { get; }

    /// <summary>The file's text.</summary>
    public string Text => string.Concat(Entries.Select(e => e.Lines));

    /// <summary>The file as the readers take it.</summary>
    public SourceText Source => new(Name, Text);

    /// <summary>A file that does not shrink, such as an institution's own bench.</summary>
    /// <param name="source">Its text.</param>
    /// <returns>A sketch of that one text.</returns>
    public static FileSketch Of(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new(source.Name, new SketchEntry(source.Text, IsNeeded: true));
    }

    /// <summary>The same file with its entries, and the items of its lists, the other way round.</summary>
    /// <returns>A file that means the same.</returns>
    public FileSketch Reversed() => new(Name, Entries.Reverse().Select(e => e with { Items = [.. e.Items.Reverse()] }));

    /// <summary>Smaller files: an entry or an item of a list left out, or said more simply.</summary>
    /// <returns>The candidates.</returns>
    public IEnumerable<FileSketch> Shrink()
    {
        for (var i = 0; i < Entries.Length; i++)
        {
            var entry = Entries[i];
            if (!entry.IsNeeded) yield return new(Name, Entries.RemoveAt(i));
            foreach (var simpler in entry.Shrink()) yield return new(Name, Entries.SetItem(i, simpler));
        }
    }

    /// <summary>The file's text.</summary>
    /// <returns><see cref="Text"/>.</returns>
    public override string ToString() => Text;
}

/// <summary>One entry of a file: a line, or the line above a list with the list's items.</summary>
/// <param name="Text">The line.</param>
/// <param name="IsNeeded">Whether the file is no good without it.</param>
public sealed record SketchEntry(string Text, bool IsNeeded = false)
{
    /// <summary>The items of the list below the line, each a line of its own.</summary>
    public ImmutableArray<string> Items { get; init; } = [];

    /// <summary>Lines that say the same more simply, the simplest first.</summary>
    public ImmutableArray<string> Simpler { get; init; } = [];

    internal string Lines => string.Concat(Items.Prepend(Text).Select(l => l.EndsWith('\n') ? l : l + "\n"));

    internal IEnumerable<SketchEntry> Shrink()
    {
        foreach (var simpler in Simpler) yield return new(simpler, IsNeeded);
        if (Items.Length > 4) yield return this with { Items = Items[..(Items.Length / 2)] };
        if (Items.Length < 2) yield break;
        for (var i = 0; i < Items.Length; i++) yield return this with { Items = Items.RemoveAt(i) };
    }
}
