using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace Protocolist.Sameness;

/// <summary>What one plan says in numbers, ids and instants, as lines of fields in sections. No sentence has a place here.</summary>
internal sealed class Facts(string key)
{
    /// <summary>The sections, in the order in which they are written.</summary>
    public static readonly string[] Sections =
        ["head", "steps", "recipes", "fluids", "purchases", "materials", "costs", "waste", "care", "changes", "findings", "figures", "words"];

    /// <summary>Sections whose order says nothing.</summary>
    private static readonly string[] Unordered = ["recipes", "fluids", "purchases", "materials", "waste", "care", "findings", "figures", "words"];

    private static readonly OffsetDateTimePattern Moment = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:sso<G>");

    private readonly Dictionary<string, List<string>> lines = new(StringComparer.Ordinal);

    public void Line(string section, params string[] fields)
    {
        if (!lines.TryGetValue(section, out var of)) lines[section] = of = [];
        of.Add(string.Join('\t', fields.Select(f => f.ReplaceLineEndings(" ").Replace('\t', ' '))));
    }

    /// <summary>Six significant figures.</summary>
    public static string Number(double? value) => value is { } number ? (number == 0 ? 0 : number).ToString("G6", CultureInfo.InvariantCulture) : "-";

    public static string Number(long value) => value.ToString(CultureInfo.InvariantCulture);

    public static string Number(decimal value) => Number((double)value);

    /// <summary>Nine, for what no person has to measure out.</summary>
    public static string Exact(double value) => (value == 0 ? 0 : value).ToString("G9", CultureInfo.InvariantCulture);

    public static string Time(OffsetDateTime? moment) => moment is { } some ? Moment.Format(some) : "-";

    public static string Day(LocalDate? day) => day is { } some ? LocalDatePattern.Iso.Format(some) : "-";

    public static string Minutes(Duration? time) => Number(time?.TotalMinutes);

    public static string List(IEnumerable<string> items) => string.Join(',', items);

    public static string Pairs(IEnumerable<KeyValuePair<string, string>> pairs) => List(pairs.Select(p => $"{p.Key}={p.Value}"));

    /// <summary>The text, and the line of digests that goes with it.</summary>
    public (string Text, string Digest) Write()
    {
        var (text, digest) = (new StringBuilder(), new StringBuilder(key));
        text.Append("plan ").Append(key).Append('\n');
        foreach (var section in Sections)
        {
            if (!lines.TryGetValue(section, out var of)) continue;
            if (Unordered.Contains(section)) of.Sort(StringComparer.Ordinal);
            var body = string.Concat(of.Select(l => l + "\n"));
            text.Append('[').Append(section).Append("]\n").Append(body);
            digest.Append('\t').Append(section).Append('=').Append(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(body)).AsSpan(0, 4)));
        }

        return (text.ToString(), digest.Append('\n').ToString());
    }
}
