using System.Text.Json;
using FluentValidation;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>What a text of somebody's may be, whether it comes from a file or from a program.</summary>
internal static class TextRules
{
    private static readonly Phrase NotOneLine = new("not-one-line", "a line break or a tab stands in '{key}'");
    private static readonly Phrase NotOneLineRemedy = new("not-one-line.remedy", "write it on one line");
    private static readonly Phrase TooLong = new("text-too-long", "'{key}' has {length} characters; {most} is the most");
    private static readonly Phrase TooLongRemedy = new("text-too-long.remedy", "shorten it");
    private static readonly Phrase Invisible = new("unreadable-character.value", "the invisible character {character} stands in '{key}'");
    private static readonly Phrase InvisibleRemedy = new("unreadable-character.value.remedy", "remove it");

    /// <summary>Longer than any name, place or number; a name of that length is not read, it is a fault.</summary>
    private const int LongestLine = 1_000;

    /// <summary>Three printed pages.</summary>
    private const int LongestProse = 10_000;

    /// <summary>
    /// What is wrong with a name, a place or a number: they stand on one line, or they could pass for lines of a sheet that say something else.
    /// </summary>
    public static Finding? OfLine(string key, string text) =>
        text.AsSpan().ContainsAny('\n', '\t') ? Finding.Error("not-one-line", NotOneLine.With(("key", key)), NotOneLineRemedy) : Of(key, text, LongestLine);

    /// <summary>What is wrong with a remark, which may run over several lines.</summary>
    public static Finding? OfProse(string key, string text) => Of(key, text, LongestProse);

    /// <summary>Of an object: the text must be one line; <c>null</c> passes.</summary>
    public static IRuleBuilderOptionsConditions<T, string?> IsLine<T>(this IRuleBuilder<T, string?> rule) =>
        rule.Custom((text, context) => Add(context, text, OfLine));

    /// <summary>Of an object: the text may run over several lines; <c>null</c> passes.</summary>
    public static IRuleBuilderOptionsConditions<T, string?> IsProse<T>(this IRuleBuilder<T, string?> rule) =>
        rule.Custom((text, context) => Add(context, text, OfProse));

    private static Finding? Of(string key, string text, int most)
    {
        if (text.Length > most) return Finding.Error("text-too-long", TooLong.With(("key", key), ("length", text.Length), ("most", most)), TooLongRemedy);
        var unfit = ShownText.FirstUnfit(text);
        return unfit < 0
            ? null
            : Finding.Error("unreadable-character", Invisible.With(("character", $"U+{(int)text[unfit]:X4}"), ("key", key)), InvisibleRemedy);
    }

    private static void Add<T>(ValidationContext<T> context, string? text, Func<string, string, Finding?> rule)
    {
        if (text is not null && rule(Key(context.PropertyPath), text) is { } fault) context.AddFailure(ValidatorFindings.Failure(fault, context.PropertyPath));
    }

    /// <summary>The last part of a property's path as a key of a file.</summary>
    private static string Key(string path)
    {
        var name = path[(path.LastIndexOf('.') + 1)..];
        var bracket = name.IndexOf('[', StringComparison.Ordinal);
        return JsonNamingPolicy.KebabCaseLower.ConvertName(bracket < 0 ? name : name[..bracket]);
    }
}
