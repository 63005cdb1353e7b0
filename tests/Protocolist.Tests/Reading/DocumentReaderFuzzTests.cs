using System.Diagnostics;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Tests.Reading;

public class DocumentReaderFuzzTests
{
    private static readonly string[] Tokens =
    [
        "[", "]", "{", "}", ":", ": ", "- ", ",", "\n", "\r\n", "\r", "\t", " ", "  ", "'", "\"", "#", "|", ">", "|9", "&a", "*a", "!", "!<", "!!", "%", "@", "`", "?", "? ", "---", "...",
        "\n---\n", "\n...\n", "~", "<<", "\\", "\0", "\u0085", "\u2028", "\uFEFF", "\uD83D", "é", "𝄞", "%YAML 1.1", "%TAG ! x\n", "null", "0", "a: ", "\n  ",
    ];

    private static readonly string[] Seeds =
    [
        "format: 1\nfor:\n  group: mammal\n  mass: 2 kg to 60 kg\nvalues:\n  reach: least(specimen.half-thickness, slit-spacing / 2)\n",
        "stages:\n  - stage: inject\n    sites: {abdomen: 5 to 10 mL, other: 2 to 5 mL}\n    note: |\n      wear\n      gloves\n  - stage: wash\n    when: choice.keeping is not formalin\n",
        "title: \"Large mammal, whole body\"\nsources: {practice: 'common practice', \"x\": y}\nlist: [a, [b, c], {d: e}]\nfolded: >-\n  one\n  two\n",
    ];

    // A fixed seed: the same inputs in the same order on every machine; the clock only ends the run.
    [Fact]
    public void No_exception_leaves_the_reader_and_every_place_lies_within_the_file()
    {
        var random = new Random(20_270_301);
        var clock = Stopwatch.StartNew();
        var (tried, refused) = (0, 0);
        while (tried < 1000 || (clock.ElapsedMilliseconds < 2000 && tried < 40_000))
        {
            var text = Mutated(Seeds[tried % Seeds.Length], random);
            tried++;
            Checked<DocumentNode> read;
            try
            {
                read = DocumentReader.Read(new("t.yaml", text));
            }
            catch (Exception escaped)
            {
                throw new InvalidOperationException($"{escaped.GetType().Name} for {Shown(text)}", escaped);
            }

            if (read.Value is null)
            {
                refused++;
                Assert.True(read.HasErrors, Shown(text));
            }
            else
            {
                Walk(read.Value, text);
            }

            foreach (var finding in read.Findings) AssertWithin(finding.Where, text);
        }

        // The mutations must neither all break the text nor all leave it whole.
        Assert.InRange(refused, tried / 10, tried * 19 / 20);
    }

    private static string Mutated(string seed, Random random)
    {
        var text = seed;
        for (var edits = random.Next(1, 6); edits > 0; edits--)
        {
            var at = random.Next(text.Length + 1);
            text = random.Next(4) switch
            {
                0 => text.Insert(at, Tokens[random.Next(Tokens.Length)]),
                1 => text[..at],
                2 => text.Remove(Math.Min(at, text.Length), Math.Min(random.Next(1, 4), text.Length - at)),
                _ => text.Insert(at, text[..Math.Min(text.Length, random.Next(40))]),
            };
        }

        return text;
    }

    private static void Walk(DocumentNode node, string text)
    {
        AssertWithin(node.Span, text);
        if (node is SequenceNode sequence)
        {
            foreach (var item in sequence.Items) Walk(item, text);
        }

        if (node is not MappingNode mapping) return;
        foreach (var (key, value) in mapping.Entries)
        {
            Walk(key, text);
            Walk(value, text);
        }
    }

    private static void AssertWithin(SourceSpan where, string text)
    {
        var lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        Assert.True(where.Line >= 1 && where.Line <= lines.Length, $"{where} in {Shown(text)}");
        Assert.True(where.Column >= 1 && where.Column <= lines[where.Line - 1].Length + 1, $"{where} in {Shown(text)}");
        Assert.True(where.EndLine >= where.Line && where.EndLine <= lines.Length, $"{where} in {Shown(text)}");
    }

    private static string Shown(string text) => text.Replace("\n", "⏎", StringComparison.Ordinal).Replace("\r", "␍", StringComparison.Ordinal);
}
