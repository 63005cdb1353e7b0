using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Reads <c>checks:</c> and <c>severities:</c> of a protocol.</summary>
internal sealed class HouseCheckReader(SourceBook book, List<Finding> findings)
{
    private static readonly Phrase SuchACondition = new("missing-key.check.remedy", "add '{key}:', such as 'when: fix.last < 48 h'");

    private static readonly string[] Words = ["error", "warning", "note"];

    /// <summary>The checks of the house, by name. A condition may use all that the stages' formulas may, and every stage's settings besides.</summary>
    public ImmutableArray<HouseCheck> Checks(Fields protocol, FormulaScope scope, ImmutableArray<StageDefinition> stages)
    {
        if (protocol.Nested("checks") is not { } table) return [];
        var reader = new ExpressionReader(scope with { Names = PlanNames(scope, stages) }, findings);
        var checks = ImmutableArray.CreateBuilder<HouseCheck>();
        foreach (var entry in table.Entries)
        {
            if (!OwnNames.IsKebab(entry.Key.Value)) findings.Add(Names.NotKebab(Named.CheckId, entry.Key));
            if (table.Nested(entry.Key.Value, Named.TheCheck(entry.Key.Value)) is not { } fields) continue;
            var when = fields.Entry("when") is { } condition ? reader.Read(condition.Value, Named.Key("when"), FormulaType.Truth) : Missing(fields, "when");
            var severity = fields.Word("severity", Words) ?? (fields.Entry("severity") is null ? "warning" : null);
            var message = fields.RequiredProse("message")?.Value;
            var remedy = fields.RequiredProse("remedy")?.Value;
            var source = fields.Entry("source") is { } cited ? book.Cite(cited.Value) : "";
            fields.Finish();
            if (when is not null && severity is not null && message is not null && remedy is not null && source is not null)
            {
                ImmutableArray<string> names = [.. when.Names().Distinct(StringComparer.Ordinal)];
                checks.Add(new(entry.Key.Value, when, names, Weight(severity), message, remedy, source, entry.Key.Span));
            }
        }

        return checks.DrainToImmutable();
    }

    /// <summary>Other weights for bundled checks; each needs its written reason.</summary>
    public static ImmutableArray<SeverityChange> Severities(Fields protocol)
    {
        if (protocol.Nested("severities") is not { } table) return [];
        var changes = ImmutableArray.CreateBuilder<SeverityChange>();
        foreach (var entry in table.Entries)
        {
            if (table.Nested(entry.Key.Value, Named.TheSeverity(entry.Key.Value)) is not { } fields) continue;
            var severity = fields.Required("as") is null ? null : fields.Word("as", Words);
            var because = fields.RequiredProse("because")?.Value;
            fields.Finish();
            if (severity is not null && because is not null) changes.Add(new(entry.Key.Value, Weight(severity), because, entry.Key.Span));
        }

        return changes.DrainToImmutable();
    }

    private static Dictionary<string, FormulaType> PlanNames(FormulaScope scope, ImmutableArray<StageDefinition> stages)
    {
        var names = new Dictionary<string, FormulaType>(scope.Names, StringComparer.Ordinal);
        foreach (var stage in stages)
        {
            foreach (var setting in stage.Settings.OfType<ExpressionSetting>().Where(s => s.Key != "when"))
                names[$"{stage.Id}.{setting.Key}"] = setting.Expression.Type;
            var isFilled = stage.Expression("fluid") is not null || stage.Expression("ratio") is not null;
            if (isFilled) names[$"{stage.Id}.volume"] = FormulaType.Of(Dimension.OfVolume);
        }

        return names;
    }

    private static Expression? Missing(Fields fields, string key)
    {
        fields.Miss(key, SuchACondition.With(("key", key)), fields.Span);
        return null;
    }

    private static Severity Weight(string word) => word switch { "error" => Severity.Error, "warning" => Severity.Warning, _ => Severity.Note };
}
