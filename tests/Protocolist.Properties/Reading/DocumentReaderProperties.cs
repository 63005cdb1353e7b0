using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Reading;

namespace Protocolist.Properties.Reading;

public class DocumentReaderProperties
{
    private static readonly Gen<string> Text = Gen.Elements("7 kg", "a: b", "# no comment", "- item", "it's", "\"so\"", "", "null", "100 % w/v", "@home", "a\nb", "{x}", "tab\there", "µL ± 𝄞", " edge ", "\\");

    [Property(MaxTest = 500)]
    public Property Any_text_in_single_quotes_is_read_back_with_the_place_of_every_part() =>
        Prop.ForAll(Arb.From(Text.Where(t => !t.Contains('\n', StringComparison.Ordinal)).Zip(Gen.Choose(0, 8))), (pair) =>
        {
            var (text, indent) = pair;
            var yaml = $"outer:\n{new string(' ', indent + 1)}key: '{text.Replace("'", "''", StringComparison.Ordinal)}'\n";
            var read = DocumentReader.Read(new("t.yaml", yaml));
            Assert.Empty(read.Findings);
            var scalar = (ScalarNode)((MappingNode)((MappingNode)read.Value!).Find("outer")!.Value).Find("key")!.Value;
            Assert.Equal(text, scalar.Value);
            Assert.Equal((2, indent + 7), (scalar.Span.Line, scalar.Span.Column));
            for (var at = 0; at < text.Length && scalar.IsOneRun; at++)
            {
                var place = scalar.Part(at, 1);
                Assert.Equal(text[at], yaml.Split('\n')[place.Line - 1][place.Column - 1]);
            }
        });

    [Property(MaxTest = 300)]
    public Property The_kind_of_line_end_changes_no_place_and_no_finding() => Prop.ForAll(Documents(), yaml =>
    {
        var expected = Told(yaml);
        Assert.Equal(expected, Told(yaml.Replace("\n", "\r\n", StringComparison.Ordinal)));
        Assert.Equal(expected, Told("\uFEFF" + yaml));
        foreach (var culture in Cultures.Awkward) Assert.Equal(expected, Cultures.Under(culture, () => Told(yaml)));
    });

    private static Arbitrary<string> Documents() => Arb.From(
        from lines in Gen.ListOf(Gen.Elements("a: 1", "b: x", "  c: 2", "- i", "  - k", "d:", "e: [1, 2", "e: [1, 2]", "f: {g: 1}", "# note", "\th: 1", "i: @x", "a: 3", "j: 'open", "---", "k: &a 1", "", "l"))
        select string.Join('\n', lines) + "\n");

    private static string Told(string yaml)
    {
        var read = DocumentReader.Read(new("t.yaml", yaml));
        return string.Create(CultureInfo.InvariantCulture, $"{string.Join('\n', read.Findings)}\n{(read.Value is { } root ? Shape(root) : "nothing")}");
    }

    private static string Shape(DocumentNode node) => node switch
    {
        ScalarNode scalar => $"{scalar.Value}@{scalar.Span}",
        SequenceNode sequence => $"[{string.Join(',', sequence.Items.Select(Shape))}]@{sequence.Span}",
        MappingNode mapping => $"{{{string.Join(',', mapping.Entries.Select(e => $"{Shape(e.Key)}:{Shape(e.Value)}"))}}}@{mapping.Span}",
        _ => "",
    };
}
