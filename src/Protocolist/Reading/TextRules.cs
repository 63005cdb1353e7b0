using System.Globalization;
using System.Text.Json;
using FluentValidation;
using FluentValidation.Results;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>What a text of somebody's may be, whether it comes from a file or from a program.</summary>
internal static class TextRules
{
    /// <summary>Longer than any name, place or number; a name of that length is not read, it is a fault.</summary>
    public const int LongestLine = 1_000;

    /// <summary>Three printed pages.</summary>
    public const int LongestProse = 10_000;

    /// <summary>What is wrong with a name, a place or a number: they stand on one line, or they could pass for lines of a sheet that say something else.</summary>
    public static (string Id, string Message, string Remedy)? OfLine(string key, string text) =>
        text.AsSpan().ContainsAny('\n', '\t') ? ("not-one-line", $"a line break or a tab stands in '{key}'", "write it on one line") : Of(key, text, LongestLine);

    /// <summary>What is wrong with a remark, which may run over several lines.</summary>
    public static (string Id, string Message, string Remedy)? OfProse(string key, string text) => Of(key, text, LongestProse);

    /// <summary>Of an object: the text must be one line; <c>null</c> passes.</summary>
    public static IRuleBuilderOptionsConditions<T, string?> IsLine<T>(this IRuleBuilder<T, string?> rule) => rule.Custom((text, context) => Add(context, text, OfLine));

    /// <summary>Of an object: the text may run over several lines; <c>null</c> passes.</summary>
    public static IRuleBuilderOptionsConditions<T, string?> IsProse<T>(this IRuleBuilder<T, string?> rule) => rule.Custom((text, context) => Add(context, text, OfProse));

    private static (string Id, string Message, string Remedy)? Of(string key, string text, int most)
    {
        if (text.Length > most) return ("text-too-long", string.Create(CultureInfo.InvariantCulture, $"'{key}' has {text.Length} characters; {most} is the most"), "shorten it");
        var unfit = ShownText.FirstUnfit(text);
        return unfit < 0 ? null : ("unreadable-character", $"the invisible character U+{(int)text[unfit]:X4} stands in '{key}'", "remove it");
    }

    private static void Add<T>(ValidationContext<T> context, string? text, Func<string, string, (string Id, string Message, string Remedy)?> rule)
    {
        if (text is null || rule(Key(context.PropertyPath), text) is not { } fault) return;
        context.AddFailure(new ValidationFailure(context.PropertyPath, fault.Message) { ErrorCode = fault.Id, CustomState = fault.Remedy });
    }

    /// <summary>The last part of a property's path as a key of a file.</summary>
    private static string Key(string path)
    {
        var name = path[(path.LastIndexOf('.') + 1)..];
        var bracket = name.IndexOf('[', StringComparison.Ordinal);
        return JsonNamingPolicy.KebabCaseLower.ConvertName(bracket < 0 ? name : name[..bracket]);
    }
}
