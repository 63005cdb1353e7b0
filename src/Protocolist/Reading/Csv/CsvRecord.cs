using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Reading.Csv;

/// <summary>One cell and where it starts.</summary>
internal readonly record struct CsvField(string Text, int Line, int Column)
{
    /// <summary>The place for a finding about this cell.</summary>
    public SourceSpan In(string file) => SourceSpan.At(file, Line, Column);
}

/// <summary>One record, which may go over several lines where a cell is quoted; errors mean that its cells must not be used.</summary>
internal sealed record CsvRecord(int Line, ImmutableArray<CsvField> Fields, ImmutableArray<Finding> Findings)
{
    public bool IsSound => !Findings.Any(f => f.Severity == Severity.Error);

    /// <summary>What its cells hold and what is wrong with them, wherever they stand: two records of one digest are the same.</summary>
    public string Digest() => TextDigest.Of(Fields.Select(f => f.Text).Concat(Findings.Select(f => f.Id)));
}
