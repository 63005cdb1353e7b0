using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
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

    /// <summary>What its cells hold and what is wrong with them, wherever they stand, as 32 hex digits of a SHA-256: two records of one digest are the same.</summary>
    public string Digest()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in Fields.Select(f => f.Text).Concat(Findings.Select(f => f.Id)))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(text));
            hash.AppendData([0xFF]); // no byte of UTF-8
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset().AsSpan(0, 16));
    }
}
