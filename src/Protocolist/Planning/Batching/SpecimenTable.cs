using System.Collections.Immutable;
using System.Globalization;
using Protocolist.Findings;
using Protocolist.Reading;
using Protocolist.Reading.Csv;
using Protocolist.Specimens;

namespace Protocolist.Planning.Batching;

/// <summary>One row as a specimen, or what is wrong with it.</summary>
internal sealed record SpecimenRow(int Number, int Line, string Id, Specimen? Specimen, ImmutableArray<Finding> Findings)
{
    /// <summary>Where its number stands; where the row begins, if it has none.</summary>
    public SourceSpan IdAt { get; init; }

    /// <summary>The row's cells as 32 hex digits.</summary>
    public required string Digest { get; init; }
}

/// <summary>A table of specimens, read row by row with the rules of specimen files; every finding names its line and column.</summary>
internal sealed class SpecimenTable
{
    private static readonly Phrase MissingColumn = new("missing-column.of", "there is no column {what}");
    private static readonly Phrase MissingColumnRemedy = new("missing-column.of.remedy", "add {names}");
    private static readonly Phrase MissingId = new("missing-id", "the row has no number for its specimen");
    private static readonly Phrase MissingIdRemedy = new("missing-id.remedy", "give each specimen a number of its own");

    private readonly CsvTable table;
    private readonly DecimalSigns signs;
    private readonly Kinds kinds;

    private SpecimenTable(CsvTable table, Kinds kinds) => (this.table, this.kinds, signs) = (table, kinds, new(table.File));

    /// <summary>Reads the heading. Without an id, or without a group or taxon, no row can be planned: <c>missing-column</c>.</summary>
    public static Checked<SpecimenTable> Open(TextReader reader, string file, Kinds kinds)
    {
        var opened = CsvTable.Open(new CsvReader(reader, file), [], SpecimenColumns.All, ImmutableDictionary<string, string>.Empty);
        if (opened.Value is not { } table) return new(null, opened.Findings);
        bool Has(IEnumerable<SpecimenColumn> columns) => columns.Any(c => table.IndexOf(c.Name) is not null);
        var missing = ImmutableArray.CreateBuilder<Finding>();
        if (!Has(SpecimenColumns.Id)) missing.Add(Missing("for the specimen's number", "'specimen' or 'catalogNumber'"));
        if (!Has(SpecimenColumns.Ranks) && table.IndexOf("group") is null)
            missing.Add(Missing("for the sort of animal", "'group', or one of 'higher taxon', 'class', 'order', 'family'"));
        if (!Has(SpecimenColumns.Quantities.SelectMany(q => q.Columns))) missing.Add(Missing("with a measurement", "such as 'mass (g)' or 'length (mm)'"));
        return new(missing.Count > 0 ? null : new(table, kinds), [.. opened.Findings, .. missing]);

        Finding Missing(string what, string names) =>
            Finding.Error("missing-column", MissingColumn.With(("what", what)), MissingColumnRemedy.With(("names", names)), SourceSpan.At(file, 1, 1));
    }

    public string File => table.File;

    public string HeadingDigest => table.HeadingDigest;

    /// <summary>The rows, one at a time; can be gone through once.</summary>
    public IEnumerable<SpecimenRow> Rows() => table.Rows().Select(Read);

    private SpecimenRow Read(CsvRow row)
    {
        var id = First(row, SpecimenColumns.Id);
        var name = id?.Text.Trim() ?? "";
        if (!row.IsSound) return new(row.Number, row.Line, name, null, row.Findings) { Digest = row.Digest };
        var findings = row.Findings.ToList();
        if (id is null) findings.Add(Finding.Error("missing-id", MissingId, MissingIdRemedy, SourceSpan.At(table.File, row.Line, 1)));
        var entries = ImmutableArray.CreateBuilder<MappingEntry>();
        foreach (var (key, columns) in SpecimenColumns.Quantities)
        {
            if (FirstColumn(row, columns) is { } found && Quantity(found.Field, found.Column.Unit, findings) is { } text) Add(key, text, found.Field);
        }

        foreach (var (key, columns) in SpecimenColumns.Words)
            if (First(row, columns) is { } field && Word(key, field.Text.Trim()) is { Length: > 0 } word) Add(key, word, field);
        var taxa = SpecimenColumns.Ranks.Select(c => row[c.Name]).OfType<CsvField>().ToList();
        if (taxa.Count > 0) Add("higher-taxon", string.Join("; ", taxa.Select(t => t.Text.Trim())), taxa[^1]);
        if (First(row, SpecimenColumns.Places) is { } place) Add("where", place.Text.Trim(), place);
        var node = new MappingNode(entries.DrainToImmutable(), SourceSpan.At(table.File, row.Line, 1));
        var before = findings.Count;
        var specimen = SpecimenReader.ReadInline(node, name, "", findings);
        var unread = findings.Skip(before).Any(f => f.Severity == Severity.Error) || findings.Any(f => f.Severity == Severity.Error);
        findings.AddRange(ValidatorFindings.Of(kinds.Validator, specimen, node).Where(f => !(unread && f.Id is "no-measurement" or "missing-id")));
        return new(row.Number, row.Line, name, findings.Any(f => f.Severity == Severity.Error) ? null : specimen, [.. findings])
        {
            IdAt = id?.In(table.File) ?? SourceSpan.At(table.File, row.Line, 1),
            Digest = row.Digest,
        };

        void Add(string key, string value, CsvField field)
        {
            var span = field.In(table.File);
            var scalar = new ScalarNode(value, 0, false, span);
            DocumentNode node = key == "permits" && value.AsSpan().ContainsAny(';', '|')
                ? new SequenceNode(
                    [
                        .. value
                            .Split([';', '|'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                            .Select(p => new ScalarNode(p, 0, false, span)),
                    ],
                    span)
                : scalar;
            entries.Add(new(new ScalarNode(key, 0, false, span), node));
        }
    }

    /// <summary>The text of a quantity, with the column's unit behind a bare number; null where it cannot be read.</summary>
    private string? Quantity(CsvField field, string unit, List<Finding> findings)
    {
        var read = signs.Read(field);
        findings.AddRange(read.Findings);
        if (read.Value is not { } text) return null;
        return unit.Length > 0 && decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _)
            ? $"{text} {unit}"
            : text;
    }

    /// <summary>Words as specimen files have them: lower case for lists, the first day of a span, nothing for "unknown".</summary>
    private static string? Word(string key, string text) => key switch
    {
        "sex" or "life-stage" or "condition" or "intended-use" when text.ToLowerInvariant() is "unknown"
            or "undetermined"
            or "not recorded"
            or "indeterminate"
            or "n/a" => null,
        "sex" or "condition" or "intended-use" or "group" => text.ToLowerInvariant().Replace(' ', '-'),
        "life-stage" => text.ToLowerInvariant() switch
        {
            "subadult" or "immature" or "young" => "juvenile",
            "tadpole" or "nymph" => "larva",
            "fetus" or "foetus" => "embryo",
            var word => word
        },

        // An ISO date may bring a time or a second date with it.
        "found-on" when text.Length > 10 && text[10] is 'T' or '/' or ' ' => text[..10],
        _ => text,
    };

    private static CsvField? First(CsvRow row, ImmutableArray<SpecimenColumn> columns) => FirstColumn(row, columns)?.Field;

    private static (SpecimenColumn Column, CsvField Field)? FirstColumn(CsvRow row, ImmutableArray<SpecimenColumn> columns)
    {
        foreach (var column in columns)
            if (row[column.Name] is { } field) return (column, field);
        return null;
    }
}
