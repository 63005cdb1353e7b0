using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Tests.Reading;

public class DocumentReaderTests
{
    [Fact]
    public void A_tree_knows_its_places()
    {
        var root = (MappingNode)Root("for:\n  mass: 2 kg to 60 kg\n  sites: [thigh, 'fore arm']\n");
        var inner = (MappingNode)root.Find("for")!.Value;
        var mass = (ScalarNode)inner.Find("mass")!.Value;
        Assert.Equal(new SourceSpan("t.yaml", 2, 9, 2, 22), mass.Span);
        Assert.Equal(new SourceSpan("t.yaml", 2, 14, 2, 16), mass.Part(5, 2));
        var arm = (ScalarNode)((SequenceNode)inner.Find("sites")!.Value).Items[1];
        Assert.Equal("fore arm", arm.Value);
        Assert.Equal(new SourceSpan("t.yaml", 3, 24, 3, 27), arm.Part(5, 3));
    }

    [Theory]
    [InlineData("a: 'it''s'", "it's", 4, 11)]
    [InlineData("a: \"tab\\there\"", "tab\there", 4, 15)]
    [InlineData("a: one\n  two", "one two", 4, 6)]
    [InlineData("a: |\n  one\n  two\n", "one\ntwo\n", 4, 1)]
    public void Where_characters_do_not_stand_one_by_one_the_whole_text_is_named(string yaml, string value, int column, int endColumn)
    {
        var scalar = (ScalarNode)((MappingNode)Root(yaml)).Find("a")!.Value;
        Assert.Equal(value, scalar.Value);
        Assert.Equal(scalar.Span, scalar.Part(3, 1));
        Assert.Equal((column, endColumn), (scalar.Span.Column, scalar.Span.EndColumn));
    }

    [Theory]
    [InlineData("no")]
    [InlineData("007")]
    [InlineData("1e3")]
    [InlineData("2027-03-01")]
    [InlineData("0x1F")]
    [InlineData("12:30:00")]
    public void Nothing_is_guessed_from_the_look_of_a_text(string text) =>
        Assert.Equal(text, ((ScalarNode)((MappingNode)Root($"a: {text}")).Find("a")!.Value).Value);

    [Theory]
    [InlineData("a:\nb: 1")]
    [InlineData("a: ~\nb: 1")]
    [InlineData("a: null\nb: 1")]
    [InlineData("a: # later\nb: 1")]
    public void A_value_left_out_is_empty_and_stands_in_its_keys_line(string yaml)
    {
        var value = (ScalarNode)((MappingNode)Root(yaml)).Find("a")!.Value;
        Assert.True(value.IsEmpty);
        Assert.Equal(1, value.Span.Line);
        Assert.False(((ScalarNode)((MappingNode)Root("a: ''")).Find("a")!.Value).IsEmpty);
    }

    [Fact]
    public void A_tab_is_at_home_in_a_block_of_text_and_between_tokens() =>
        Assert.Equal("\tcode\n", ((ScalarNode)((MappingNode)Root("a: |\n  \tcode\nb:\t1\n")).Find("a")!.Value).Value);

    [Fact]
    public void All_duplicates_are_found_at_once_and_the_first_of_each_stays()
    {
        var read = DocumentReader.Read(new("t.yaml", "a: 1\nb: {c: 1, c: 2}\na: 3\nb: 4\n"));
        Assert.Equal(["2:11", "3:1", "4:1"], read.Findings.Select(f => $"{f.Where.Line}:{f.Where.Column}"));
        Assert.Equal("1", ((ScalarNode)((MappingNode)read.Value!).Find("a")!.Value).Value);
    }

    [Fact]
    public void A_second_document_leaves_the_first_to_be_checked()
    {
        var read = DocumentReader.Read(new("t.yaml", "a: 1\n---\nb: 2\n"));
        Assert.Equal("second-document", Assert.Single(read.Findings).Id);
        Assert.NotNull(((MappingNode)read.Value!).Find("a"));
    }

    [Theory]
    [InlineData("[", 100_000)]
    [InlineData("{a: ", 100_000)]
    [InlineData("- ", 100_000)]
    [InlineData("? ", 100_000)]
    public void Depth_is_limited_long_before_the_stack_is(string open, int times)
    {
        var finding = Assert.Single(DocumentReader.Read(new("t.yaml", string.Concat(Enumerable.Repeat(open, times)))).Findings);
        Assert.Equal("nested-too-deeply", finding.Id);
        Assert.Equal(1, finding.Where.Line);
    }

    [Fact]
    public void Depth_of_64_is_still_read() =>
        Assert.Empty(DocumentReader.Read(new("t.yaml", new string('[', 64) + new string(']', 64))).Findings);

    [Fact]
    public void Length_is_limited_to_four_million_characters()
    {
        var most = $"a: {new string('x', ReadingLimits.Standard.Characters - 3)}";
        Assert.Empty(DocumentReader.Read(new("t.yaml", most)).Findings);
        var finding = Assert.Single(DocumentReader.Read(new("t.yaml", most + "x")).Findings);
        Assert.Equal("file-too-long", finding.Id);
        Assert.Equal("the file has 4000001 characters; 4000000 is the most", finding.Message.ToString());
    }

    [Fact]
    public void Parts_are_limited_to_two_hundred_thousand()
    {
        // The list itself is the first part.
        var most = string.Concat(Enumerable.Repeat("- x\n", ReadingLimits.Standard.Nodes - 1));
        Assert.Empty(DocumentReader.Read(new("t.yaml", most)).Findings);
        var finding = Assert.Single(DocumentReader.Read(new("t.yaml", most + "- x\n")).Findings);
        Assert.Equal(("too-many-nodes", 200_000, 3), (finding.Id, finding.Where.Line, finding.Where.Column));
    }

    [Fact]
    public void A_key_of_a_million_letters_is_refused_in_one_short_line()
    {
        var finding = Assert.Single(DocumentReader.Read(new("t.yaml", $"{new string('k', 1_000_000)}: 1")).Findings);
        Assert.True(finding.ToString().Length < 300);
    }

    private static DocumentNode Root(string yaml)
    {
        var read = DocumentReader.Read(new("t.yaml", yaml));
        Assert.Empty(read.Findings);
        return read.Value!;
    }
}
