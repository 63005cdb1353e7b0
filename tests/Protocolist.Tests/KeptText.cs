using System.Text.RegularExpressions;

namespace Protocolist.Tests;

/// <summary>
/// Texts that a person has read once and that must not change unseen: what a check tells, what a plan of a sample says. They lie beside
/// the tests; after a change that is meant, run the tests once with PROTOCOLIST_KEEP=1, and read what version control shows as changed.
/// </summary>
internal static partial class KeptText
{
    [GeneratedRegex(@"[\d.]+")]
    private static partial Regex Digits { get; }

    /// <summary>Titled lines, of which each sentence stands once, with the numbers of its first case: what a person can read through.</summary>
    public static string EachOnce(IEnumerable<(string Title, IEnumerable<string> Lines)> cases)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var told = cases.Select(c => (string[])[c.Title, .. c.Lines.Where(l => seen.Add(Digits.Replace(l, "0")))]);
        return string.Join("\n\n", told.Where(t => t.Length > 1).Select(t => string.Join('\n', t)));
    }

    /// <summary>Compares with the file of that path below the tests' folder, line endings aside, and shows the first line that differs.</summary>
    public static void Holds(string path, string text)
    {
        var file = Repository.File(["tests", "Protocolist.Tests", .. path.Split('/')]);
        var now = text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
        if (Environment.GetEnvironmentVariable("PROTOCOLIST_KEEP") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, now);
            return;
        }

        Assert.True(File.Exists(file), $"{path} is not kept yet; run once with PROTOCOLIST_KEEP=1 and read it");
        var kept = File.ReadAllText(file).ReplaceLineEndings("\n");
        if (kept == now) return;
        var (was, is_) = (kept.Split('\n'), now.Split('\n'));
        var at = Enumerable.Range(0, Math.Max(was.Length, is_.Length)).First(i => was.ElementAtOrDefault(i) != is_.ElementAtOrDefault(i));
        Assert.Fail($"{path}, line {at + 1}\n kept: {was.ElementAtOrDefault(at) ?? "(no such line)"}\n  now: {is_.ElementAtOrDefault(at) ?? "(no such line)"}");
    }
}
