using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace Protocolist.Tests.Sheets;

/// <summary>An event, or a part of one, as it was read.</summary>
internal sealed record Component(string Name)
{
    public List<(string Name, string Parameters, string Value)> Lines { get; } = [];

    public List<Component> Parts { get; } = [];

    public string this[string name] => Lines.Find(l => l.Name == name).Value ?? "";

    public string Text(string name) => CalendarReader.Unescaped(this[name]);
}

/// <summary>
/// Reads calendars by RFC 5545 alone: unfolds, nests, unescapes, and works local times out by the file's own VTIMEZONE (of which
/// it knows observances without recurrence), with no zone database and no other library's reader.
/// </summary>
internal sealed class CalendarReader
{
    private CalendarReader(Component calendar) => Calendar = calendar;

    public Component Calendar { get; }

    public IEnumerable<Component> Events => Calendar.Parts.Where(p => p.Name == "VEVENT");

    public static CalendarReader Read(string text)
    {
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line));
        var open = new Stack<Component>();
        open.Push(new("file"));
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            var (head, value) = (line[..colon], line[(colon + 1)..]);
            if (head == "BEGIN")
            {
                var part = new Component(value);
                open.Peek().Parts.Add(part);
                open.Push(part);
            }
            else if (head == "END")
            {
                Assert.Equal(value, open.Pop().Name);
            }
            else
            {
                var semicolon = head.IndexOf(';', StringComparison.Ordinal);
                open.Peek().Lines.Add(semicolon < 0 ? (head, "", value) : (head[..semicolon], head[(semicolon + 1)..], value));
            }
        }

        return new(Assert.Single(Assert.Single(open).Parts));
    }

    public static string Unescaped(string value)
    {
        var text = new StringBuilder();
        for (var i = 0; i < value.Length; i++)
        {
            // RFC 5545, 3.3.11: what has to be escaped never stands bare.
            Assert.False(value[i] is ',' or ';', value);
            text.Append(value[i] != '\\' ? value[i] : value[++i] switch { 'n' or 'N' => '\n', '\\' or ',' or ';' => value[i], _ => throw new FormatException(value) });
        }

        return text.ToString();
    }

    public Instant Moment(Component of, string name)
    {
        var (_, parameters, value) = of.Lines.Find(l => l.Name == name);
        if (value.EndsWith('Z')) return Local(value[..^1]).InUtc().ToInstant();
        var zone = Assert.Single(Calendar.Parts, p => p.Name == "VTIMEZONE" && $"TZID={p["TZID"]}" == parameters);
        var local = Local(value);

        // The last observance that began by this local time, read on the clock before it; RFC 5545, 3.6.5.
        var holds = zone.Parts.Where(p => Local(p["DTSTART"]) <= local).MaxBy(p => Local(p["DTSTART"]));
        return local.WithOffset(Shift(holds!["TZOFFSETTO"])).ToInstant();
    }

    private static LocalDateTime Local(string value) => LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss").Parse(value).Value;

    private static Offset Shift(string value) => Offset.FromSeconds(
        (value[0] == '-' ? -1 : 1) * ((int.Parse(value[1..3], CultureInfo.InvariantCulture) * 3600) + (int.Parse(value[3..5], CultureInfo.InvariantCulture) * 60)));
}
