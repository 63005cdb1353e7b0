using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Reading.Csv;

/// <summary>One row under a table's heading.</summary>
internal sealed class CsvRow(CsvTable table, CsvRecord record, int number)
{
    /// <summary>The row's number below the heading, from 1.</summary>
    public int Number => number;

    public int Line => record.Line;

    public string Digest => record.Digest();

    /// <summary>Errors mean that no cell of this row should be used.</summary>
    public ImmutableArray<Finding> Findings { get; } = table.Judge(record);

    public bool IsSound => !Findings.Any(f => f.Severity == Severity.Error);

    /// <summary>The cell of a column; null where the table has no such column or the cell is blank.</summary>
    public CsvField? this[string column] =>
        table.IndexOf(column) is { } i && i < record.Fields.Length && !string.IsNullOrWhiteSpace(record.Fields[i].Text) ? record.Fields[i] : null;
}

/// <summary>Rows with named columns, streamed. Names are compared without regard to case, spaces, <c>-</c> and <c>_</c>.</summary>
internal sealed class CsvTable
{
    private static readonly Phrase OtherWidth = new("too-few-cells", "this row has {cells} cells, the heading {heading}");
    private static readonly Phrase OtherWidthRemedy = new(
        "too-few-cells.remedy", "put cells that hold the separator in quotes, and leave empty cells between separators");
    private static readonly Phrase NoHeading = new("empty-file.no-heading", "there is no heading");
    private static readonly Phrase NoHeadingRemedy = new("empty-file.no-heading.remedy", "start with a line of column names");
    private static readonly Phrase UnknownColumn = new("unknown-column", "the column '{column}' is not used");
    private static readonly Phrase ColumnTwice = new("column-twice", "the column '{column}' is given twice");
    private static readonly Phrase ColumnTwiceRemedy = new("column-twice.remedy", "keep one of them");
    private static readonly Phrase MissingColumn = new("missing-column", "there is no column '{column}'");
    private static readonly Phrase MissingColumnRemedy = new("missing-column.remedy", "the heading names: {names}");

    private readonly CsvReader reader;
    private readonly int width;
    private readonly FrozenDictionary<string, int> indexes;

    private CsvTable(CsvReader reader, CsvRecord heading, Dictionary<string, int> indexes) =>
        (this.reader, width, HeadingDigest, this.indexes) = (reader,
            heading.Fields.Length,
            heading.Digest(),
            indexes.ToFrozenDictionary(StringComparer.Ordinal));

    public string File => reader.File;

    public string HeadingDigest { get; }

    /// <summary>Reads the heading.</summary>
    /// <param name="reader">A reader at its start.</param>
    /// <param name="required">Columns that must be there.</param>
    /// <param name="optional">Columns that may be there.</param>
    /// <param name="aliases">Other names of those columns, such as the terms of Darwin Core.</param>
    /// <returns>The table, or null where a required column is missing; findings <c>empty-file</c>, <c>missing-column</c>, <c>column-twice</c>, and a note
    /// <c>unknown-column</c>.</returns>
    public static Checked<CsvTable> Open(
        CsvReader reader,
        IReadOnlyCollection<string> required,
        IReadOnlyCollection<string> optional,
        IReadOnlyDictionary<string, string> aliases)
    {
        if (reader.Read() is not { } heading)
            return new(null, [Finding.Error("empty-file", NoHeading, NoHeadingRemedy, SourceSpan.At(reader.File, 1, 1))]);
        var findings = heading.Findings.ToBuilder();
        var known = required.Concat(optional).Select(c => (From: c, To: c)).Concat(aliases.Select(a => (From: a.Key, To: a.Value)))
            .DistinctBy(p => Plain(p.From)).ToDictionary(p => Plain(p.From), p => p.To, StringComparer.Ordinal);
        var indexes = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (field, i) in heading.Fields.Select((f, i) => (f, i)))
        {
            if (!known.TryGetValue(Plain(field.Text), out var column))
                findings.Add(Finding.Note(
                    "unknown-column",
                    UnknownColumn.With(("column", field.Text.Trim())),
                    Suggestion.Nearest(field.Text.Trim(), known.Values.Distinct()) is { } near ? Suggestion.Of(near) : default,
                    field.In(reader.File)));
            else if (!indexes.TryAdd(column, i))
                findings.Add(Finding.Error("column-twice", ColumnTwice.With(("column", column)), ColumnTwiceRemedy, field.In(reader.File)));
        }

        foreach (var missing in required.Where(r => !indexes.ContainsKey(r)))
            findings.Add(Finding.Error(
                "missing-column",
                MissingColumn.With(("column", missing)),
                MissingColumnRemedy.With(Argument.Texts("names", heading.Fields.Take(24).Select(f => f.Text.Trim()))),
                SourceSpan.At(reader.File, heading.Line, 1)));
        var table = new CsvTable(reader, heading, indexes);
        return new(findings.Any(f => f.Severity == Severity.Error) ? null : table, findings.ToImmutable());
    }

    /// <summary>The rows, one at a time; can be gone through once.</summary>
    public IEnumerable<CsvRow> Rows()
    {
        for (var number = 1; reader.Read() is { } record; number++) yield return new CsvRow(this, record, number);
    }

    internal int? IndexOf(string column) => indexes.TryGetValue(column, out var i) ? i : null;

    internal ImmutableArray<Finding> Judge(CsvRecord record) => !record.IsSound || record.Fields.Length == width
        ? record.Findings
        : record.Findings.Add(Finding.Error(
            record.Fields.Length < width ? "too-few-cells" : "too-many-cells",
            OtherWidth.With(("cells", record.Fields.Length), ("heading", width)),
            OtherWidthRemedy,
            SourceSpan.At(File, record.Line, record.Fields.Length < width ? 1 : record.Fields[width].Column)));

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
