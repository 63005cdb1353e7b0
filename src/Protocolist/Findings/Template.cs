using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using NodaTime;
using NodaTime.Text;

namespace Protocolist.Findings;

/// <summary>Fills the named places of a text with facts. What stands in a place is described at <see cref="Phrase"/>.</summary>
internal static class Template
{
    /// <summary>By their ISO numbers less one.</summary>
    private static readonly ImmutableArray<Phrase> Weekdays =
    [
        new("weekday.monday", "Mon"), new("weekday.tuesday", "Tue"), new("weekday.wednesday", "Wed"), new("weekday.thursday", "Thu"),
        new("weekday.friday", "Fri"), new("weekday.saturday", "Sat"), new("weekday.sunday", "Sun"),
    ];

    private static readonly Phrase And = new("joined.and", "and");
    private static readonly Phrase Or = new("joined.or", "or");

    /// <summary>How numbers and moments are shown, besides patterns of digits.</summary>
    private static readonly FrozenSet<string> OfNumbers = ["two", "amount", "clock", "times", "mix", "time", "minute", "day", "offset", "zoned"];

    private static readonly OffsetDateTimePattern Minute = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd HH':'mm");
    private static readonly OffsetDateTimePattern Day = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd");
    private static readonly OffsetDateTimePattern WithOffset = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd HH':'mm o<m>");
    private static readonly OffsetDateTimePattern Zoned = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd HH':'mm o<g>");

    /// <summary>The text with its places filled; a place without a fact stays empty.</summary>
    public static string Fill(string template, in Message message, Language language)
    {
        // A sentence that is a literal has no facts, and what looks like a place in it is its author's.
        if (message.Phrase is { Id.Length: 0 } or { IsWords: true } && ReferenceEquals(template, message.Phrase.English)) return template;
        var parts = message.Phrase is { } phrase && ReferenceEquals(template, phrase.English) ? phrase.Parts : PartsOf(template);
        if (parts is [{ Name.Length: 0 }]) return template;
        var text = new DefaultInterpolatedStringHandler(0, 0, null, stackalloc char[256]);
        foreach (var part in parts.AsSpan())
        {
            text.AppendLiteral(part.Literal);
            if (part.Name.Length == 0 || message.Find(part.Name) is not { } argument) continue;
            text.AppendLiteral(part.Words.Length > 0 ? Choose(part.Words, argument.Number) : Show(argument, part.Format, message, language));
        }

        return text.ToStringAndClear();
    }

    /// <summary>The names of the places, in the order of their first use.</summary>
    public static IReadOnlyList<string> PlacesOf(string template) =>
        [.. PartsOf(template).Where(p => p.Name.Length > 0).Select(p => p.Name).Distinct(StringComparer.Ordinal)];

    /// <summary>One fact as a place shows it.</summary>
    public static string Show(in Argument argument, string format, in Message message, Language language) => argument.Kind switch
    {
        ArgumentKind.Number => NumberText.Of(argument, format, message, language),
        ArgumentKind.Quantity => NumberText.OfQuantity(argument, format, message, language),
        ArgumentKind.Moment => format switch
        {
            "minute" => Minute.Format(argument.Moment),
            "day" => Day.Format(argument.Moment),
            "offset" => WithOffset.Format(argument.Moment),
            "zoned" => Zoned.Format(argument.Moment),
            _ => $"{Weekday(argument.Moment.Date, language)} {Minute.Format(argument.Moment)}",
        },
        ArgumentKind.Date =>
            format == "day" ? LocalDatePattern.Iso.Format(argument.Date) : $"{Weekday(argument.Date, language)} {LocalDatePattern.Iso.Format(argument.Date)}",
        ArgumentKind.Money => argument.Money?.ToString() ?? "",
        ArgumentKind.Message => Cased(argument.Message.ToString(language), format),
        ArgumentKind.List => Joined(argument, format, message, language),
        _ => Cased(argument.Text, format),
    };

    private static string Weekday(LocalDate day, Language language) => language.Of(Weekdays[(int)day.DayOfWeek - 1]);

    private static string Choose(string[] words, double number) => words[number == 1 ? 0 : Math.Min(1, words.Length - 1)];

    private static string Cased(string text, string format) => format switch
    {
        _ when text.Length == 0 => text,
        "sentence" => string.Concat(char.ToUpperInvariant(text[0]).ToString(), text[1..].TrimEnd('.'), "."),
        "a" => WithArticle(text),
        _ => text,
    };

    /// <summary>A noun with its article: <c>an eel</c>.</summary>
    public static string WithArticle(string noun) =>
        noun.Length > 0 && "aeio".Contains(noun[0], StringComparison.OrdinalIgnoreCase) ? $"an {noun}" : $"a {noun}";

    private static string Joined(in Argument list, string format, Message message, Language language)
    {
        var isQuoted = format.StartsWith('\'');
        var between = isQuoted ? format[1..] : format;
        List<string> shown = [.. list.List.Select(item => Show(item, "", message, language)).Select(item => isQuoted ? $"'{item}'" : item)];
        if (between is not ("and" or "or")) return string.Join(between.Length == 0 ? ", " : between, shown);
        var last = language.Of(between == "and" ? And : Or);
        return shown.Count < 2 ? string.Concat(shown) : $"{string.Join(", ", shown.Take(shown.Count - 1))} {last} {shown[^1]}";
    }

    /// <summary>A place's name, how it is shown, and words to choose from.</summary>
    private static (string Name, string Format, string[] Words) Split(string place)
    {
        var end = place.AsSpan().IndexOfAny(':', '|');
        if (end < 0) return (place, "", []);
        return place[end] == ':' ? (place[..end], place[(end + 1)..], []) : (place[..end], "", place[(end + 1)..].Split('|'));
    }

    /// <summary>A text's literals, each with the place that follows it; the last may have none.</summary>
    public static ImmutableArray<Part> PartsOf(string template)
    {
        var (at, parts) = (0, ImmutableArray.CreateBuilder<Part>());
        while (at < template.Length)
        {
            var open = template.IndexOf('{', at);
            if (open < 0) break;
            var close = template.IndexOf('}', open);
            if (close < 0) break;
            var (name, format, words) = Split(template[(open + 1)..close]);
            parts.Add(new(template[at..open], name, format, words));
            at = close + 1;
        }

        if (at < template.Length) parts.Add(new(template[at..], "", "", []));
        return parts.DrainToImmutable();
    }

    /// <summary>Whether a place of that format shows words, one or several: what stands between them, an article, a capital.</summary>
    public static bool IsOfWords(string format) =>
        format.Length == 0 || !(char.IsAsciiDigit(format[0]) || format.StartsWith("vs ", StringComparison.Ordinal) || OfNumbers.Contains(format));

    /// <summary>A literal and the place after it: its name, how it is shown, and words to choose from.</summary>
    internal readonly record struct Part(string Literal, string Name, string Format, string[] Words);
}
