using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Protocols;

/// <summary>A merged tree to a protocol: every key known, every formula compiled against what it may use.</summary>
internal sealed class ProtocolReader(IReadOnlyDictionary<string, FormulaFunction> functions, Kinds kinds)
{
    private static readonly Phrase CountRevisions = new("missing-key.revision.remedy", "add 'revision: 1', and count it up with each change");
    private static readonly Phrase EmptyChoice = new("empty-choice", "the choice '{key}' has no options");
    private static readonly Phrase EmptyChoiceRemedy = new("empty-choice.remedy", "list what can be chosen, the default first");
    private static readonly Phrase DuplicateOption = new("duplicate-option", "'{key}' can be chosen twice");
    private static readonly Phrase DuplicateOptionRemedy = new("duplicate-option.remedy", "keep one of them");

    public Checked<Protocol> Read(MappingNode root, string file, ImmutableDictionary<string, ImmutableArray<string>> options, Inherited? inherited = null)
    {
        var findings = new List<Finding>();
        var fields = new Fields(root, Named.Protocol, findings);
        fields.Entry("format");
        fields.Entry("extends");
        fields.Entry("notes");
        var id = fields.Required("protocol");
        var revision = fields.Whole("revision", 1, 1_000_000);
        var title = fields.Required("title");
        var forClass = ClassReader.Read(fields, kinds, findings);
        var sources = Sources(fields);
        var book = new SourceBook(sources, findings);
        var choices = Choices(fields, findings);
        var names = new Dictionary<string, FormulaType>(SpecimenScope.Types, StringComparer.Ordinal);
        foreach (var choice in choices) names["choice." + choice.Name] = FormulaType.OneOf(options.GetValueOrDefault(choice.Name, choice.Options));

        // What a source says is part of what is inherited.
        if (inherited is not null && inherited.Protocol.Sources.Any(s => sources.GetValueOrDefault(s.Key) != s.Value)) inherited = null;
        var slots = new Dictionary<string, int>(inherited?.Protocol.Scope.Slots ?? ImmutableDictionary<string, int>.Empty, StringComparer.Ordinal);
        foreach (var name in SpecimenScope.Names.Select(n => n.Name).Concat(choices.Select(c => "choice." + c.Name))) slots.TryAdd(name, slots.Count);
        var scope = new FormulaScope(names, functions)
        {
            Slots = slots,
            Selectable = choices.ToImmutableDictionary(c => "choice." + c.Name, c => c.Options, StringComparer.Ordinal),
        };
        var (values, failed) = Values(fields, scope, names, slots, book, inherited, findings);
        var stages = new StageReader(new(scope, findings), book, inherited, findings).Read(fields.List("stages"));
        var house = new HouseCheckReader(book, findings);
        var checks = house.Checks(fields, scope, stages);
        var severities = HouseCheckReader.Severities(fields);
        var examples = new ExampleReader(choices, new(() => NamesIn(root)), book, findings).Read(fields.List("examples"), values, stages);
        var summary = fields.Prose("summary")?.Value ?? "";
        var cautions = fields.Paragraphs("cautions");
        if (revision is null && fields.Entry("revision") is null) fields.Miss("revision", CountRevisions, root.Span);
        fields.Finish(RenamedKeys.OfProtocols);

        // What uses a value that could not be read would only repeat that value's fault.
        findings.RemoveAll(f => f.Id == "unknown-value" && f.Message.Find("name") is { } name && failed.Contains(name.Text));
        if (id is null || title is null) return new(null, [.. findings]);
        return new(
            new(id.Value, revision ?? 0, title.Value, file)
            {
                Summary = summary,
                Cautions = [.. cautions.Select(c => c.Value).Distinct(StringComparer.Ordinal)],
                Choices = choices,
                Class = forClass,
                Sources = sources,
                Values = values,
                Stages = stages,
                Examples = examples,
                HouseChecks = checks,
                Severities = severities,
                Scope = scope,
                Span = id.Span,
                Places = PlacesIn(root),
            },
            [.. findings]);
    }

    /// <summary>Where the class and the choices stand, in the file that gave them.</summary>
    private static ImmutableDictionary<string, SourceSpan> PlacesIn(MappingNode root)
    {
        var places = ImmutableDictionary.CreateBuilder<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var part in (ReadOnlySpan<string>)["for", "choices"])
        {
            if (root.Find(part) is not { Value: MappingNode table } entry) continue;
            places[part] = entry.Key.Span;
            foreach (var (key, value) in table.Entries.Select(e => (e.Key, e.Value)))
            {
                places[$"{part}.{key.Value}"] = key.Span;
                foreach (var option in (value as SequenceNode)?.Items.OfType<ScalarNode>() ?? [])
                    places.TryAdd($"{part}.{key.Value}.{option.Value}", option.Span);
            }
        }

        return places.ToImmutable();
    }

    private static ImmutableDictionary<string, string> Sources(Fields fields)
    {
        var sources = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (fields.Nested("sources") is { } table)
        {
            foreach (var entry in table.Entries)
            {
                if (table.RequiredProse(entry.Key.Value) is { } citation) sources[entry.Key.Value] = citation.Value;
            }
        }

        return sources.ToImmutable();
    }

    private static ImmutableArray<ProtocolChoice> Choices(Fields fields, List<Finding> findings)
    {
        if (fields.Nested("choices") is not { } table) return [];
        var choices = ImmutableArray.CreateBuilder<ProtocolChoice>();
        foreach (var entry in table.Entries)
        {
            var options = table.Texts(entry.Key.Value);
            if (!OwnNames.IsKebab(entry.Key.Value)) findings.Add(Names.NotKebab(Named.ChoiceName, entry.Key));
            if (options.IsEmpty) findings.Add(Finding.Error("empty-choice", EmptyChoice.With(("key", entry.Key.Value)), EmptyChoiceRemedy, entry.Key.Span));
            foreach (var twice in options.GroupBy(o => o.Value, StringComparer.Ordinal).Where(g => g.Count() > 1))
                findings.Add(Finding.Error("duplicate-option", DuplicateOption.With(("key", twice.Key)), DuplicateOptionRemedy, twice.Last().Span));
            if (!options.IsEmpty) choices.Add(new(entry.Key.Value, [.. options.Select(o => o.Value).Distinct(StringComparer.Ordinal)]));
        }

        return choices.DrainToImmutable();
    }

    private static (ImmutableArray<ValueDefinition> Values, HashSet<string> Failed) Values(
        Fields fields,
        FormulaScope scope,
        Dictionary<string, FormulaType> names,
        Dictionary<string, int> slots,
        SourceBook book,
        Inherited? inherited,
        List<Finding> findings)
    {
        if (fields.Nested("values") is not { } table) return ([], []);
        var values = ImmutableArray.CreateBuilder<ValueDefinition>();
        var failed = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in ValueOrder.Sort(table.Entries, findings))
        {
            var name = entry.Key.Value;
            if (!OwnNames.IsKebab(name)) findings.Add(Names.NotKebab(Named.ValueName, entry.Key));
            if (inherited?.Value(entry, scope) is { } known)
            {
                names[name] = known.Expression.Type;
                values.Add(known);
                continue;
            }

            if (new ExpressionReader(scope, findings).Read(entry.Value, Named.Key(name), null) is not { } expression)
            {
                failed.Add(name);
                continue;
            }

            names[name] = expression.Type;
            slots.TryAdd(name, slots.Count);
            values.Add(new(name, expression, SourceOf(entry, book), NoteOf(entry), entry.Key.Span));
        }

        return (values.DrainToImmutable(), failed);
    }

    /// <summary>Values, stages and settings by name, those too that could not be read; nothing where no stages are given at all.</summary>
    private static HashSet<string> NamesIn(MappingNode root)
    {
        var values = (root.Find("values")?.Value as MappingNode)?.Entries.Select(e => e.Key.Value) ?? [];
        var stages = (root.Find("stages")?.Value as SequenceNode)?.Items.OfType<MappingNode>() ?? [];
        return [.. values, .. stages.Select(Inheritance.IdOf), .. stages.SelectMany(s => s.Entries.Select(e => $"{Inheritance.IdOf(s)}.{e.Key.Value}"))];
    }

    private static string SourceOf(MappingEntry entry, SourceBook book) =>
        (entry.Value as MappingNode)?.Find("source") is { } source ? book.Cite(source.Value) ?? "" : "";

    private static string NoteOf(MappingEntry entry) =>
        (entry.Value as MappingNode)?.Find("note")?.Value is ScalarNode note ? note.Value : "";
}
