using System.Globalization;
using System.Text.RegularExpressions;

namespace Protocolist.Sameness;

/// <summary>Sets two outputs side by side, section by section.</summary>
internal static partial class Difference
{
    private const int Shown = 3;

    /// <summary>Numbers are the same where no more than their sixth figure differs by one: what is summed in another order is rounded elsewhere.</summary>
    private const double Slack = 1e-5;

    /// <summary>The last place of amounts in the JSON of a plan; figures are exact and have none.</summary>
    private const double LastPlace = 0.00101;

    [GeneratedRegex(@"(?<![\w.-])-?\d+(?:\.\d+)?(?:[eE][-+]?\d+)?(?![\w.])")]
    private static partial Regex Numbers { get; }

    [GeneratedRegex(@"[^\t=,\n]+")]
    private static partial Regex Words { get; }

    public static int Run(string before, string after, string? renamedFile)
    {
        var renamed = Renames(renamedFile);
        var (old, now) = (Blocks(before).ToDictionary(b => b.Key, b => b.Sections, StringComparer.Ordinal), Blocks(after));
        var (different, same) = (new SortedDictionary<string, (int Count, List<string> Examples)>(StringComparer.Ordinal), 0);
        foreach (var (key, sections) in now)
        {
            if (!old.Remove(key, out var was))
            {
                Count("(not before)", key, "", "");
                continue;
            }

            var differs = false;
            foreach (var section in Facts.Sections)
            {
                var (left, right) = (Renamed(was.GetValueOrDefault(section, ""), renamed), sections.GetValueOrDefault(section, ""));
                if (left == right || Same(Lines(section, left), Lines(section, right), section == "figures" ? 0 : LastPlace)) continue;
                differs = true;
                var (gone, come) = (left.Split('\n').Except(right.Split('\n')), right.Split('\n').Except(left.Split('\n')));
                Count(section, key, string.Join("\n", gone.Take(6).Select(l => $"    - {l}")), string.Join("\n", come.Take(6).Select(l => $"    + {l}")));
            }

            if (!differs) same++;
        }

        foreach (var key in old.Keys) Count("(not after)", key, "", "");
        Console.WriteLine($"{same} the same{(different.Count == 0 ? "; nothing differs" : "")}");
        foreach (var (section, (count, examples)) in different) Console.WriteLine($"{section}: {count} differ\n{string.Join('\n', examples)}");

        return different.Count == 0 ? 0 : 1;

        void Count(string section, string key, string gone, string come)
        {
            var (count, examples) = different.GetValueOrDefault(section, (0, []));
            if (count < Shown) examples.Add(string.Join("\n", ((string[])[$"  {key}", gone, come]).Where(t => t.Length > 0)));
            different[section] = (count + 1, examples);
        }
    }

    /// <summary>Renamed lines may come to stand elsewhere; the order of steps is a fact.</summary>
    private static string[] Lines(string section, string text) =>
        section is "steps" or "head" ? text.Split('\n') : [.. text.Split('\n').Order(StringComparer.Ordinal)];

    /// <summary>Old id and new id a line, apart by a tab, or by a blank where neither has one inside.</summary>
    private static Dictionary<string, string> Renames(string? file) => file is null
        ? []
        : File.ReadLines(file).Where(l => l.Length > 0 && l[0] != '#')
            .Select(l => l.Split(l.Contains('\t', StringComparison.Ordinal) ? '\t' : ' ', 2, StringSplitOptions.TrimEntries))
            .ToDictionary(p => p[0], p => p[1], StringComparer.Ordinal);

    private static string Renamed(string text, Dictionary<string, string> renamed) =>
        renamed.Count == 0 ? text : Words.Replace(text, m => renamed.GetValueOrDefault(m.Value, m.Value));

    private static bool Same(string[] left, string[] right, double place) =>
        left.Length == right.Length && left.Zip(right).All(p => p.First == p.Second || SameLine(p.First, p.Second, place));

    private static bool SameLine(string left, string right, double place) =>
        string.Equals(Numbers.Replace(left, "#"), Numbers.Replace(right, "#"), StringComparison.Ordinal)
        && Numbers.Matches(left).Zip(Numbers.Matches(right)).All(p => Near(Number(p.First), Number(p.Second), place));

    private static double Number(Match match) => double.Parse(match.Value, CultureInfo.InvariantCulture);

    private static bool Near(double left, double right, double place) =>
        left.Equals(right) || Math.Abs(left - right) <= Math.Max(place, Slack * Math.Max(Math.Abs(left), Math.Abs(right)));

    private static IEnumerable<(string Key, Dictionary<string, string> Sections)> Blocks(string folder)
    {
        var (key, section, sections, body) = ("", "", new Dictionary<string, string>(StringComparer.Ordinal), new System.Text.StringBuilder());
        foreach (var line in File.ReadLines(Path.Combine(folder, "plans.txt")).Append("plan "))
        {
            if (line.StartsWith("plan ", StringComparison.Ordinal) || (line.StartsWith('[') && line.EndsWith(']')))
            {
                if (section.Length > 0) sections[section] = body.ToString();
                body.Clear();
                section = line[0] == '[' ? line[1..^1] : "";
                if (line[0] == '[') continue;
                if (key.Length > 0) yield return (key, sections);
                (key, sections) = (line["plan ".Length..], new(StringComparer.Ordinal));
            }
            else
            {
                body.Append(line).Append('\n');
            }
        }
    }
}
