using System.Text;
using FluentValidation;
using FluentValidation.Results;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>What a validator of objects says, at the place in the file where the property was given.</summary>
internal static class ValidatorFindings
{
    /// <summary>What a rule says where it is broken: message and remedy as facts, the id as its error code.</summary>
    public static IRuleBuilderOptions<T, TProperty> Says<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, string id, Func<T, Message> message, Func<T, Message> remedy) =>
        rule.WithErrorCode(id).WithMessage(id).WithState(value => new Told(message(value), remedy(value)));

    /// <summary>One broken rule as a finding without a place.</summary>
    public static Finding Of(ValidationFailure failure)
    {
        var told = failure.CustomState switch
        {
            Told state => state,
            Message remedy => new(failure.ErrorMessage, remedy),
            var remedy => new(failure.ErrorMessage, remedy as string ?? ""),
        };
        return new(failure.ErrorCode, SeverityOf(failure), told.Message, told.Remedy);
    }

    /// <summary>A broken rule of another object, under a property of this one.</summary>
    public static ValidationFailure Failure(Finding finding, string property) =>
        new(property, finding.Id) { ErrorCode = finding.Id, CustomState = new Told(finding.Message, finding.Remedy), Severity = (FluentValidation.Severity)(2 - (int)finding.Severity) };

    private static Findings.Severity SeverityOf(ValidationFailure failure) => failure.Severity switch
    {
        FluentValidation.Severity.Error => Findings.Severity.Error,
        FluentValidation.Severity.Warning => Findings.Severity.Warning,
        _ => Findings.Severity.Note,
    };

    private sealed record Told(Message Message, Message Remedy);

    public static IEnumerable<Finding> Of<T>(AbstractValidator<T> validator, T value, MappingNode node)
    {
        foreach (var failure in validator.Validate(value).Errors)
        {
            yield return Of(failure) with { Where = Place(failure.PropertyName, node) };
        }
    }

    /// <summary>The key that a property path such as <c>Packs[1].Price</c> was read from; the nearest enclosing one where it was not given.</summary>
    private static SourceSpan Place(string path, MappingNode node)
    {
        DocumentNode at = node;
        var span = node.Entries.IsEmpty ? node.Span : node.Entries[0].Key.Span;
        foreach (var part in path.Split('.'))
        {
            var bracket = part.IndexOf('[', StringComparison.Ordinal);
            var name = bracket < 0 ? part : part[..bracket];
            if (at is not MappingNode mapping || mapping.Find(Kebab(name)) is not { } entry) return span;
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

    private static string Kebab(string name)
    {
        var kebab = new StringBuilder();
        foreach (var c in name)
        {
            if (char.IsUpper(c) && kebab.Length > 0) kebab.Append('-');
            kebab.Append(char.ToLowerInvariant(c));
        }

        return kebab.ToString();
    }
}
