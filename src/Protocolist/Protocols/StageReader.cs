using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Reads the stages of a protocol by the grammar's table.</summary>
internal sealed class StageReader(ExpressionReader expressions, SourceBook sources, Inherited? inherited, List<Finding> findings)
{
    private static readonly Phrase DuplicateStage = new("duplicate-stage", "two stages are called '{stage}'");
    private static readonly Phrase DuplicateStageRemedy = new("duplicate-stage.remedy", "give one of them another id");
    private static readonly Phrase UnknownStageKind = new("unknown-stage-kind", "there is no kind of stage '{word}'");
    private static readonly Phrase SuchAsEvery = new("missing-key.every.remedy", "add 'every: 3 d'");
    private static readonly Phrase UnknownWord = new("unknown-word.setting", "'{word}' is not {what} that is known");

    public ImmutableArray<StageDefinition> Read(IEnumerable<DocumentNode> items)
    {
        var stages = ImmutableArray.CreateBuilder<StageDefinition>();
        var ids = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var item in items)
        {
            if (Stage(item) is not { } stage) continue;
            if (ids.TryAdd(stage.Id, stage.Span)) stages.Add(stage);
            else findings.Add(Finding.Error("duplicate-stage", DuplicateStage.With(("stage", stage.Id)), DuplicateStageRemedy, stage.Span));
        }

        return stages.DrainToImmutable();
    }

    private StageDefinition? Stage(DocumentNode item)
    {
        if (item is MappingNode node && inherited?.Stage(node, expressions.Scope) is { } known) return known;
        if (Fields.Of(item, Named.Stage, findings) is not { } fields) return null;
        if (fields.Required("stage") is not { } word) return null;
        if (StageGrammar.Find(word.Value) is not { } shape)
        {
            var nearest = Suggestion.For(word.Value, [.. StageGrammar.Kinds.Select(k => k.Word)]);
            findings.Add(Finding.Error("unknown-stage-kind", UnknownStageKind.With(("word", word.Value)), nearest, word.Span));
            return null;
        }

        var id = fields.Scalar("id") ?? word;
        fields.Scalar("before");
        fields.Scalar("after");
        var named = new Fields((MappingNode)item, Named.TheStage(id.Value), findings);
        var settings = ImmutableArray.CreateBuilder<Setting>();
        foreach (var key in (ReadOnlySpan<string>)["stage", "id", "before", "after", "drop"]) named.Entry(key);
        foreach (var setting in shape.Settings.Concat(StageGrammar.Common))
        {
            if (named.Entry(setting.Key) is not { } entry)
            {
                if (!setting.Required) continue;
                named.Miss(setting.Key, where: word.Span);
                continue;
            }

            if ((inherited?.Setting(id.Value, shape.Kind, entry, expressions.Scope) ?? Setting(setting, entry, id.Value)) is { } read) settings.Add(read);
        }

        named.Finish(RenamedKeys.OfStages);
        if (!OwnNames.IsKebab(id.Value)) findings.Add(Names.NotKebab(Named.StageId, id));
        return new(shape.Kind, id.Value, settings.DrainToImmutable(), word.Span);
    }

    private Setting? Setting(SettingShape shape, MappingEntry entry, string stage)
    {
        var what = Named.KeyOf(shape.Key, Named.Key(stage));
        var span = entry.Key.Span;
        return shape.Form switch
        {
            SettingForm.Quantity => Of(shape.Key, expressions.Read(entry.Value, what, FormulaType.Of(shape.Dimension)), span),
            SettingForm.Condition => Of(shape.Key, expressions.Read(entry.Value, what, FormulaType.Truth), span),
            SettingForm.Fluid => Of(shape.Key, expressions.ReadFluid(entry.Value, what), span),
            SettingForm.Word => Of(shape.Key, expressions.ReadWord(entry.Value, what, [.. shape.Words]), span),
            SettingForm.Words => Words(shape, entry),
            SettingForm.Sites => Sites(shape.Key, entry, what),
            SettingForm.Watch => Watch(shape.Key, entry, what),
            SettingForm.Source => sources.Cite(entry.Value) is { } cited ? new TextSetting(shape.Key, [cited], span) : null,
            _ => Texts(shape.Key, entry),
        };
    }

    private static ExpressionSetting? Of(string key, Expression? expression, SourceSpan span) =>
        expression is null ? null : new(key, expression, span);

    private TextSetting? Texts(string key, MappingEntry entry)
    {
        var texts = new Fields(new([entry], entry.Value.Span), Named.Key(key), findings).Paragraphs(key);
        return texts.IsEmpty ? null : new(key, [.. texts.Select(t => t.Value)], entry.Key.Span);
    }

    private TextSetting? Words(SettingShape shape, MappingEntry entry)
    {
        var words = new Fields(new([entry], entry.Value.Span), Named.Key(shape.Key), findings).Texts(shape.Key);
        var known = words.Where(w => Known(w, [.. shape.Words], x => x, Named.WordFor(shape.Key)) is not null).Select(w => w.Value).ToImmutableArray();
        return known.IsEmpty ? null : new(shape.Key, known, entry.Key.Span);
    }

    private SitesSetting? Sites(string key, MappingEntry entry, Message what)
    {
        if (Fields.Of(entry.Value, what, findings) is not { } regions) return null;
        var sites = ImmutableArray.CreateBuilder<(string, Expression)>();
        foreach (var region in regions.Entries)
        {
            var read = expressions.Read(region.Value, Named.Site(region.Key.Value), FormulaType.Of(Dimension.OfVolume));
            if (read is not null) sites.Add((region.Key.Value, read));
        }

        return new(key, sites.DrainToImmutable(), entry.Key.Span);
    }

    private WatchSetting? Watch(string key, MappingEntry entry, Message what)
    {
        if (Fields.Of(entry.Value, what, findings) is not { } fields) return null;
        var every = fields.Entry("every") is { } rhythm ? expressions.Read(rhythm.Value, Named.KeyOf("every", what), FormulaType.Of(Dimension.OfTime)) : null;
        if (fields.Entry("every") is null) fields.Miss("every", SuchAsEvery, entry.Key.Span);
        var signs = ImmutableArray.CreateBuilder<(Sign, Remedy)>();
        if (fields.Nested("signs", Named.Signs(what)) is { } table)
        {
            foreach (var sign in table.Entries)
            {
                var seen = Known(sign.Key, Sign.All, s => s.Word, Named.Sign);
                var called = sign.Value is ScalarNode word ? Known(word, Remedy.All, r => r.Word, Named.Remedy) : null;
                if (seen is not null && called is not null) signs.Add((seen, called));
            }
        }

        fields.Finish();
        return every is null ? null : new(key, every, signs.DrainToImmutable(), entry.Key.Span);
    }

    private T? Known<T>(ScalarNode word, ImmutableArray<T> all, Func<T, string> wordOf, Message what)
        where T : class
    {
        if (all.FirstOrDefault(x => wordOf(x) == word.Value) is { } known) return known;
        findings.Add(Finding.Error(
            "unknown-word",
            UnknownWord.With(("word", word.Value), ("what", what)),
            Suggestion.For(word.Value, [.. all.Select(wordOf)]),
            word.Span));
        return null;
    }
}
