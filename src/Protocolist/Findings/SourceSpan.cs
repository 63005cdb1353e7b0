using System.Globalization;

namespace Protocolist.Findings;

/// <summary>A place in an input file. Lines and columns count from 1; columns count UTF-16 code units.</summary>
/// <remarks><c>default</c> means "no place known"; see <see cref="IsKnown"/>.</remarks>
/// <param name="File">The file as the caller named it, or a name such as <c>protocols/mammals/mammal-large.yaml</c> for a bundled one.</param>
/// <param name="Line">First line, from 1.</param>
/// <param name="Column">First column, from 1.</param>
/// <param name="EndLine">Last line.</param>
/// <param name="EndColumn">The column after the last character.</param>
public readonly record struct SourceSpan(string File, int Line, int Column, int EndLine, int EndColumn)
{
    /// <summary>Makes a span of no width.</summary>
    /// <param name="file">The file's name.</param>
    /// <param name="line">Line, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <returns>A span that starts and ends at that place.</returns>
    public static SourceSpan At(string file, int line, int column) => new(file, line, column, line, column);

    /// <summary>Whether this names a place at all.</summary>
    public bool IsKnown => Line > 0;

    /// <summary>Where it begins, with no width.</summary>
    internal SourceSpan Start => At(File, Line, Column);

    /// <summary>The span <paramref name="offset"/> columns further on the same line, <paramref name="length"/> wide.</summary>
    /// <param name="offset">Columns to move, 0 or more.</param>
    /// <param name="length">Width of the new span, 0 or more.</param>
    /// <returns>A span on the first line of this one.</returns>
    internal SourceSpan Within(int offset, int length) =>
        new(File, Line, Column + offset, Line, Column + offset + length);

    /// <summary><c>file:line:column</c>, or the file alone where no place is known.</summary>
    /// <returns>The text that stands before a finding's message.</returns>
    public override string ToString() => IsKnown
        ? string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}")
        : File ?? "";
}
