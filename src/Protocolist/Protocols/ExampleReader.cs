using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Reads the worked cases of a protocol.</summary>
/// <param name="choices">The protocol's choices.</param>
/// <param name="written">Every value, stage and setting that the file names, read or not: what could not be read has its own finding.</param>
/// <param name="book">The sources.</param>
/// <param name="findings">What is found.</param>
internal sealed class ExampleReader(ImmutableArray<ProtocolChoice> choices, Lazy<HashSet<string>> written, SourceBook book, List<Finding> findings)
{
    private static readonly Phrase SuchASpecimen = new("missing-key.specimen.remedy", "add 'specimen: {example}'");
    private static readonly Phrase UnknownValue = new("unknown-value.expected", "'{key}' is not a value or a setting of a stage here");

    public ImmutableArray<ProtocolExample> Read(
        ImmutableArray<DocumentNode> items,
        ImmutableArray<ValueDefinition> values,
        ImmutableArray<StageDefinition> stages)
    {
        var examples = ImmutableArray.CreateBuilder<ProtocolExample>();
        var known = items.IsEmpty ? [] : Known(values, stages).ToHashSet(StringComparer.Ordinal);
        foreach (var item in items)
        {
            if (Fields.Of(item, Named.Example, findings) is not { } fields) continue;
            var specimen = fields.Entry("specimen")?.Value as MappingNode;
            if (specimen is null) fields.Miss("specimen", SuchASpecimen.With(("example", "{mass: 9 kg}")), item.Span);
            var choose = Choose(fields);
            var expectations = ImmutableArray.CreateBuilder<Expectation>();
            if (fields.Nested("expect") is { } table)
            {
                foreach (var entry in table.Entries)
                {
                    if (table.Required(entry.Key.Value) is not { } text) continue;
                    if (known.Contains(entry.Key.Value)) expectations.Add(new(entry.Key.Value, text.Value, entry.Key.Span));
                    else if (!written.Value.Contains(entry.Key.Value) && !stages.IsEmpty)
                        findings.Add(Finding.Error(
                            "unknown-value",
                            UnknownValue.With(("key", entry.Key.Value)),
                            Suggestion.For(entry.Key.Value, [.. known]),
                            entry.Key.Span));
                }
            }

            var source = fields.Entry("source") is { } entrySource ? book.Cite(entrySource.Value) ?? "" : "";
            fields.Finish();
            if (specimen is not null) examples.Add(new(specimen, choose, expectations.DrainToImmutable(), source, item.Span));
        }

        return examples.DrainToImmutable();
    }

    private ImmutableDictionary<string, string> Choose(Fields fields)
    {
        var chosen = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (fields.Nested("choose") is not { } table) return chosen.ToImmutable();
        foreach (var choice in choices)
        {
            if (table.Word(choice.Name, choice.Options) is { } option) chosen[choice.Name] = option;
        }

        table.Finish();
        return chosen.ToImmutable();
    }

    /// <summary>Values, settings that are formulas, and stages themselves (expected as <c>present</c> or <c>absent</c>).</summary>
    private static IEnumerable<string> Known(ImmutableArray<ValueDefinition> values, ImmutableArray<StageDefinition> stages) =>
        values.Select(v => v.Name)
            .Concat(stages.Select(s => s.Id))
            .Concat(stages.SelectMany(s => s.Settings.OfType<ExpressionSetting>().Select(e => $"{s.Id}.{e.Key}")));
}
