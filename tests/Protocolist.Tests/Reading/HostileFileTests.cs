using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Tests.Reading;

/// <summary>Files that are wrong in one way each: the finding must be clear and stand where a person looks.</summary>
public class HostileFileTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Reading", "hostile");

    private static readonly Dictionary<string, (string Id, int Line, int Column, string Message)> Expected = new(StringComparer.Ordinal)
    {
        ["tab.yaml"] = ("tab-indentation", 4, 1, "a tab stands in the indentation"),
        ["tab-first-line-under-bom.yaml"] = ("tab-indentation", 2, 1, "a tab stands in the indentation"),
        ["bom-syntax.yaml"] = ("yaml-syntax", 1, 8, "a value cannot start with this character"),
        ["bom-duplicate.yaml"] = ("duplicate-key", 2, 1, "'format' stands here twice; the first is on line 1"),
        ["crlf.yaml"] = ("yaml-syntax", 3, 10, "a value cannot start with this character"),
        ["crlf-duplicate.yaml"] = ("duplicate-key", 3, 1, "'format' stands here twice; the first is on line 1"),
        ["second-document.yaml"] = ("second-document", 3, 1, "a second document starts here"),
        ["second-document-after-end.yaml"] = ("second-document", 3, 1, "a second document starts here"),
        ["empty.yaml"] = ("empty-file", 1, 1, "the file is empty"),
        ["only-comments.yaml"] = ("empty-file", 1, 1, "the file is empty"),
        ["only-dashes.yaml"] = ("empty-file", 1, 1, "the file is empty"),
        ["only-null.yaml"] = ("empty-file", 1, 1, "the file is empty"),
        ["only-a-bom.yaml"] = ("empty-file", 1, 1, "the file is empty"),
        ["alias.yaml"] = ("aliases-not-allowed", 4, 5, "an alias (*rinse) stands here"),
        ["undefined-alias-as-key.yaml"] = ("aliases-not-allowed", 1, 1, "an alias (*a) stands here"),
        ["anchor.yaml"] = ("anchors-not-allowed", 2, 10, "an anchor (&) stands here"),
        ["alias-bomb.yaml"] = ("anchors-not-allowed", 1, 4, "an anchor (&) stands here"),
        ["merge-key.yaml"] = ("aliases-not-allowed", 4, 7, "an alias (*base) stands here"),
        ["tag.yaml"] = ("tags-not-allowed", 1, 9, "a tag (tag:yaml.org,2002:int) stands here"),
        ["tag-to-a-type.yaml"] = ("tags-not-allowed", 1, 6, "a tag (!System.Diagnostics.Process) stands here"),
        ["forgotten-square-bracket.yaml"] = ("yaml-syntax", 2, 12, "the '[' opened here is not closed where line 3 begins something else"),
        ["forgotten-curly-bracket.yaml"] = ("yaml-syntax", 1, 8, "the '{' opened here is not closed where line 3 begins something else"),
        ["forgotten-bracket-at-end.yaml"] = ("yaml-syntax", 1, 10, "the '[' opened here is not closed where line 2 begins something else"),
        ["bracket-too-many.yaml"] = ("yaml-syntax", 1, 10, "a value is missing here, or a bracket or comma stands here too many"),
        ["missing-comma.yaml"] = ("yaml-syntax", 1, 22, "a comma or a closing bracket is missing before this"),
        ["double-comma.yaml"] = ("yaml-syntax", 1, 16, "a value is missing here, or a bracket or comma stands here too many"),
        ["wrong-indentation.yaml"] = ("yaml-syntax", 3, 2, "this line does not fit the lines above it"),
        ["wrong-list-indentation.yaml"] = ("yaml-syntax", 4, 4, "this line does not fit the list above it"),
        ["indented-too-far.yaml"] = ("yaml-syntax", 2, 8, "a second colon stands in this value"),
        ["list-under-map.yaml"] = ("yaml-syntax", 2, 1, "this line does not fit the lines above it"),
        ["list-on-key-line.yaml"] = ("yaml-syntax", 1, 9, "a list cannot start here"),
        ["no-colon.yaml"] = ("yaml-syntax", 2, 1, "this line does not fit the lines above it"),
        ["no-space-after-colon.yaml"] = ("yaml-syntax", 2, 6, "the line above was taken as text that goes on here"),
        ["second-colon.yaml"] = ("yaml-syntax", 1, 12, "a second colon stands in this value"),
        ["text-after-quote.yaml"] = ("yaml-syntax", 1, 16, "this line does not fit the lines above it"),
        ["double-quote-never-closed.yaml"] = ("yaml-syntax", 1, 8, "a quote is opened and never closed"),
        ["single-quote-never-closed.yaml"] = ("yaml-syntax", 1, 8, "a quote is opened and never closed"),
        ["unknown-escape.yaml"] = ("yaml-syntax", 1, 7, "an unknown escape stands in a double-quoted text"),
        ["percent-value.yaml"] = ("yaml-syntax", 1, 11, "a value cannot start with this character"),
        ["at-value.yaml"] = ("yaml-syntax", 1, 12, "a value cannot start with this character"),
        ["backtick-value.yaml"] = ("yaml-syntax", 1, 7, "a value cannot start with this character"),
        ["star-value.yaml"] = ("yaml-syntax", 1, 7, "a value cannot start with this character"),
        ["ampersand-value.yaml"] = ("yaml-syntax", 1, 7, "a value cannot start with this character"),
        ["percent-line.yaml"] = ("yaml-syntax", 2, 1, "a line cannot start with this character"),
        ["yaml-version-9.yaml"] = ("yaml-syntax", 1, 1, "this asks for a version of YAML that is not known"),
        ["block-text-on-its-line.yaml"] = ("yaml-syntax", 1, 7, "only an indentation figure or a sign can follow '|' or '>' on its line"),
        ["map-as-key.yaml"] = ("key-not-a-word", 2, 1, "a key must be a word"),
        ["list-as-key.yaml"] = ("key-not-a-word", 2, 1, "a key must be a word"),
        ["complex-key.yaml"] = ("key-not-a-word", 1, 3, "a key must be a word"),
        ["no-key.yaml"] = ("key-not-a-word", 2, 3, "a key must be a word"),
        ["duplicate-keys.yaml"] = ("duplicate-key", 4, 3, "'mass' stands here twice; the first is on line 2"),
        ["duplicate-in-quotes.yaml"] = ("duplicate-key", 2, 1, "'mass' stands here twice; the first is on line 1"),
        ["invalid-utf8.yaml"] = ("not-utf8", 2, 14, "the file is not UTF-8 text"),
        ["latin-1.yaml"] = ("not-utf8", 1, 10, "the file is not UTF-8 text"),
        ["cut-character.yaml"] = ("not-utf8", 1, 9, "the file is not UTF-8 text"),
        ["utf-16.yaml"] = ("not-utf8", 1, 1, "the file is not UTF-8 text"),
        ["nul.yaml"] = ("unreadable-character", 2, 9, "the invisible character U+0000 stands here"),
        ["escape-character.yaml"] = ("unreadable-character", 1, 8, "the invisible character U+001B stands here"),
        ["line-separator.yaml"] = ("unreadable-character", 1, 9, "the invisible character U+2028 stands here"),
        ["next-line.yaml"] = ("unreadable-character", 1, 9, "the invisible character U+0085 stands here"),
        ["surrogates.yaml"] = ("not-utf8", 1, 8, "the file is not UTF-8 text"),
        ["picture.yaml"] = ("not-utf8", 1, 1, "the file is not UTF-8 text"),
    };

    public static TheoryData<string> Files => [.. Expected.Keys];

    [Fact]
    public void Every_hostile_file_has_an_expectation() =>
        Assert.Equal(Expected.Keys.Order(StringComparer.Ordinal), Directory.GetFiles(Folder, "*.yaml").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Files))]
    public void A_hostile_file_gives_one_clear_finding_at_its_place(string file)
    {
        var (id, line, column, message) = Expected[file];
        var finding = Assert.Single(Read(File.ReadAllBytes(Path.Combine(Folder, file)), file));
        Assert.Equal((id, line, column, message), (finding.Id, finding.Where.Line, finding.Where.Column, finding.Message.ToString()));
        Assert.Equal(file, finding.Where.File);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.NotEmpty(finding.Remedy.ToString());
    }

    internal static IReadOnlyList<Finding> Read(byte[] bytes, string file)
    {
        var text = SourceText.Decode(file, bytes);
        return text.Value is { } decoded ? DocumentReader.Read(decoded).Findings : text.Findings;
    }
}
