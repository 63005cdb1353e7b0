using System.Collections.Immutable;
using System.Text.Json;
using FluentValidation;
using FluentValidation.Results;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>What a validator of objects says, as findings: the error code is the id, the state of a failure what is said.</summary>
internal static class ValidatorFindings
{
    /// <summary>Keys of our files that are not called as their property is.</summary>
    private static readonly ImmutableDictionary<string, string> OtherKeys = ImmutableDictionary.CreateRange<string, string>(StringComparer.Ordinal,
    [
        new("shape", "inside"), new("opened-on", "opened"), new("lead-days", "lead"), new("loss-per-year", "loses-a-year"), new("vessels-in-use", "in-use"),
        new("opening", "hours"), new("disposal-prices", "disposal"), new("waste-rules", "waste"),
    ]);

    /// <summary>What a rule says where it is broken: message and remedy as facts, the id as its error code.</summary>
    public static IRuleBuilderOptions<T, TProperty> Says<T, TProperty>(
        this IRuleBuilderOptions<T, TProperty> rule, string id, Func<T, Message> message, Func<T, Message> remedy) =>
        rule.WithErrorCode(id).WithMessage(id).WithState(value => new Told(message(value), remedy(value)));

    /// <summary>The same of a rule for each item of a list, or of one whose words tell the value.</summary>
    public static IRuleBuilderOptions<T, TProperty> Says<T, TProperty>(
        this IRuleBuilderOptions<T, TProperty> rule, string id, Func<T, TProperty, Message> message, Message remedy) =>
        rule.WithErrorCode(id).WithMessage(id).WithState((value, property) => new Told(message(value, property), remedy));

    /// <summary>One broken rule as a finding without a place.</summary>
    public static Finding Of(ValidationFailure failure)
    {
        var told = (Told)failure.CustomState;
        return new(failure.ErrorCode, SeverityOf(failure), told.Message, told.Remedy);
    }

    /// <summary>A broken rule of another object, under a property of this one.</summary>
    public static ValidationFailure Failure(Finding finding, string property) => new(property, finding.Id)
    {
        ErrorCode = finding.Id,
        CustomState = new Told(finding.Message, finding.Remedy),
        Severity = (FluentValidation.Severity)(2 - (int)finding.Severity),
    };

    /// <summary>Of an object that comes from no file; the subject is the property's path in kebab-case, such as <c>stock[2].packs[0].price</c>.</summary>
    public static ImmutableArray<Finding> Of<T>(AbstractValidator<T> validator, T value) =>
        [.. validator.Validate(value).Errors.Select(f => Of(f) with { Subject = Kebab(f.PropertyName) })];

    /// <summary>Of an object that was read from a mapping: at the key that each property was read from.</summary>
    public static IEnumerable<Finding> Of<T>(AbstractValidator<T> validator, T value, MappingNode node) =>
        validator.Validate(value).Errors.Select(f => Of(f) with { Where = Place(f.PropertyName, node) });

    /// <summary>The key that a property path such as <c>Packs[1].Price</c> was read from; the nearest enclosing one where it was not given.</summary>
    public static SourceSpan Place(string path, MappingNode node)
    {
        DocumentNode at = node;
        var span = node.Entries.IsEmpty ? node.Span : node.Entries[0].Key.Span;
        foreach (var part in Kebab(path).Split('.'))
        {
            var bracket = part.IndexOf('[', StringComparison.Ordinal);
            var name = bracket < 0 ? part : part[..bracket];
            if (at is not MappingNode mapping || mapping.Find(OtherKeys.GetValueOrDefault(name, name)) is not { } entry) return span;
            span = entry.Key.Span;
            at = entry.Value;
            if (bracket >= 0 && at is SequenceNode list && int.TryParse(part.AsSpan(bracket + 1).TrimEnd(']'), out var index) && index < list.Items.Length)
            {
                at = list.Items[index];
                span = at.Span;
            }
        }

        return span;
    }

    /// <summary>A path such as <c>Stock[2].Packs[0].Price</c> taken apart after its first part, where that has a number.</summary>
    public static (string List, int Index, string Below) Numbered(string path)
    {
        var bracket = path.IndexOf('[', StringComparison.Ordinal);
        var end = path.IndexOf(']', StringComparison.Ordinal);
        return bracket < 0 || path.AsSpan(0, bracket).Contains('.') || !int.TryParse(path.AsSpan(bracket + 1, end - bracket - 1), out var index)
            ? ("", 0, path)
            : (path[..bracket], index, path[(end + 1)..].TrimStart('.'));
    }

    /// <summary>The key that a property of the outermost object is read from.</summary>
    public static string KeyOf(string property) => Kebab(property) is var name ? OtherKeys.GetValueOrDefault(name, name) : "";

    private static Findings.Severity SeverityOf(ValidationFailure failure) => failure.Severity switch
    {
        FluentValidation.Severity.Error => Findings.Severity.Error,
        FluentValidation.Severity.Warning => Findings.Severity.Warning,
        _ => Findings.Severity.Note,
    };

    private static string Kebab(string path) => string.Join('.', path.Split('.').Select(JsonNamingPolicy.KebabCaseLower.ConvertName));

    private sealed record Told(Message Message, Message Remedy);
}
