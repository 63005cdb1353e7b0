using System.Text.RegularExpressions;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Tests.Protocols;

/// <summary>
/// Protocols with one fault each. The first two lines of each file say where and how the fault must be reported; they were written with
/// the fault, not taken from the program's output.
/// </summary>
public sealed partial class BrokenProtocolsTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Protocols", "broken");

    public static TheoryData<string> Files => [.. Directory.EnumerateFiles(Folder, "*.yaml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_fault_is_reported_once_at_its_place_with_its_remedy(string file)
    {
        var text = File.ReadAllText(Path.Combine(Folder, file));
        var expected = ExpectLine().Match(text);
        Assert.True(expected.Success, "the file says what to expect");

        var findings = Check(new SourceText(file, text), expected.Groups["strict"].Success);

        var finding = Assert.Single(findings);
        Assert.Equal(
            $"{expected.Groups["line"].Value}:{expected.Groups["column"].Value} {expected.Groups["severity"].Value} {expected.Groups["id"].Value}",
            $"{finding.Where.Line}:{finding.Where.Column} {finding.Severity.ToString().ToLowerInvariant()} {finding.Id}");
        Assert.NotEmpty(expected.Groups["remedy"].Value);
        Assert.Contains(expected.Groups["remedy"].Value, finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_corpus_has_at_least_sixty_faults_and_what_they_extend_is_sound()
    {
        Assert.True(Files.Count >= 60);
        Assert.Empty(FileCheck.Over([], Basis(), DateTimeZoneProviders.Tzdb, strict: true));
    }

    [Fact]
    public void What_is_said_of_each_fault_was_read_and_kept()
    {
        var text = new System.Text.StringBuilder();
        foreach (var file in Directory.EnumerateFiles(Folder, "*.yaml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal))
        {
            var source = File.ReadAllText(Path.Combine(Folder, file));
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{file}\n");
            foreach (var f in Check(new SourceText(file, source), ExpectLine().Match(source).Groups["strict"].Success))
                text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  {f.Message.ToString()}\n  remedy: {f.Remedy.ToString()}\n");
        }

        KeptText.Holds("Protocols/kept/broken.txt", text.ToString());
    }

    private static System.Collections.Immutable.ImmutableArray<Finding> Check(SourceText source, bool strict) =>
        FileCheck.Over(Basis(), [source], DateTimeZoneProviders.Tzdb, strict);

    private static SourceText[] Basis() =>
        [.. Directory.EnumerateFiles(Path.Combine(Folder, "basis"), "*.yaml").Select(f => new SourceText("basis/" + Path.GetFileName(f), File.ReadAllText(f)))];

    [GeneratedRegex(@"\A# expect (?<line>\d+):(?<column>\d+) (?<severity>\w+) (?<id>[a-z-]+)(?<strict> strict)?\r?\n# remedy (?<remedy>[^\r\n]*)")]
    private static partial Regex ExpectLine();
}
