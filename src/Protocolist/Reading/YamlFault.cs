using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>The YAML parser's complaints in words that a preparator understands.</summary>
internal static class YamlFault
{
    private const string Id = "yaml-syntax";

    private static readonly Phrase Unread = new("yaml-syntax", "this cannot be read as YAML");
    private static readonly Phrase UnreadRemedy = new("yaml-syntax.remedy", "check for a bracket or quote that is never closed, and the indentation");
    private static readonly Phrase OpenBracket = new(
        "yaml-syntax.open-bracket", "the '{bracket}' opened here is not closed where line {line} begins something else");
    private static readonly Phrase OpenBracketRemedy = new("yaml-syntax.open-bracket.remedy", "add the missing '{bracket}', or the comma between its parts");

    /// <summary>Looked through in this order; the first whose part stands in the parser's message speaks.</summary>
    private static readonly (string Part, Phrase Message, Phrase Remedy)[] Explanations =
    [
        ("did not find expected key", new("yaml-syntax.line-does-not-fit", "this line does not fit the lines above it"), new(
            "yaml-syntax.line-does-not-fit.remedy",
            "check its indentation, that a colon and a space follow each key, and that nothing follows a closing quote")),
        ("did not find expected '-' indicator", new("yaml-syntax.item-does-not-fit", "this line does not fit the list above it"), new(
            "yaml-syntax.item-does-not-fit.remedy",
            "start each item with '- ' at the same indentation")),
        ("multiline plain scalar, found invalid mapping", new("yaml-syntax.text-goes-on", "the line above was taken as text that goes on here"), new(
            "yaml-syntax.text-goes-on.remedy",
            "end each key with a colon and a space, and check the indentation")),
        ("found invalid mapping", new("yaml-syntax.second-colon", "a second colon stands in this value"), new(
            "yaml-syntax.second-colon.remedy",
            "put the value in quotes, or check the indentation of this line")),
        ("mapping values are not allowed", new("yaml-syntax.second-colon", "a second colon stands in this value"), new(
            "yaml-syntax.second-colon.remedy",
            "put the value in quotes, or check the indentation of this line")),
        ("could not find expected ':'", new("yaml-syntax.no-colon", "a key without a colon"), new(
            "yaml-syntax.no-colon.remedy",
            "write 'key: value', with a space after the colon")),
        ("did not find expected <document start>", new("yaml-syntax.outside", "text stands outside the document"), new(
            "yaml-syntax.outside.remedy",
            "check the indentation of this line")),
        ("cannot start any token", new(
            "yaml-syntax.value-start",
            "a value cannot start with this character"), new("yaml-syntax.value-start.remedy", "put the value in quotes")),
        ("scanning an anchor or alias", new(
            "yaml-syntax.value-start",
            "a value cannot start with this character"), new("yaml-syntax.value-start.remedy", "put the value in quotes")),
        ("scanning a tag", new(
            "yaml-syntax.value-start",
            "a value cannot start with this character"), new("yaml-syntax.value-start.remedy", "put the value in quotes")),
        ("scanning a directive", new("yaml-syntax.line-start", "a line cannot start with this character"), new(
            "yaml-syntax.line-start.remedy",
            "put the key in quotes, or remove the line")),
        ("incompatible YAML document", new(
            "yaml-syntax.version",
            "this asks for a version of YAML that is not known"), new("yaml-syntax.version.remedy", "remove the line")),
        ("unknown escape", new(
            "yaml-syntax.escape",
            "an unknown escape stands in a double-quoted text"), new("yaml-syntax.escape.remedy", "use single quotes")),
        ("multi-line double-quoted scalar", new(
            "yaml-syntax.open-quote",
            "a quote is opened and never closed"), new("yaml-syntax.open-quote.remedy", "close it")),
        ("found unexpected end of stream", new(
            "yaml-syntax.open-quote",
            "a quote is opened and never closed"), new("yaml-syntax.open-quote.remedy", "close it")),
        ("scanning a quoted scalar", new("yaml-syntax.open-quote", "a quote is opened and never closed"), new("yaml-syntax.open-quote.remedy", "close it")),
        ("scanning a block scalar", new(
            "yaml-syntax.block",
            "only an indentation figure or a sign can follow '|' or '>' on its line"), new(
                "yaml-syntax.block.remedy",
                "put the text on the lines below, or in quotes")),
        ("block sequence entries are not allowed", new("yaml-syntax.list-start", "a list cannot start here"), new(
            "yaml-syntax.list-start.remedy",
            "put the list on the lines below its key")),
        ("did not find expected node content", new(
            "yaml-syntax.no-value",
            "a value is missing here, or a bracket or comma stands here too many"), new("yaml-syntax.no-value.remedy", "remove it, or add the value")),
        ("did not find expected ',' or", new(
            "yaml-syntax.no-comma",
            "a comma or a closing bracket is missing before this"), new("yaml-syntax.no-comma.remedy", "add the comma or the bracket")),
    ];

    public static Finding Explain(string parserMessage, SourceSpan where)
    {
        foreach (var (part, message, remedy) in Explanations)
        {
            if (parserMessage.Contains(part, StringComparison.OrdinalIgnoreCase)) return Finding.Error(Id, message, remedy, where);
        }

        return Finding.Error(Id, Unread, UnreadRemedy, where);
    }

    /// <summary>A bracket that is still open on a later line, at which the parser gave up.</summary>
    public static Finding NeverClosed(char bracket, SourceSpan opened, int reachedLine) => Finding.Error(
        Id,
        OpenBracket.With(("bracket", bracket.ToString()), ("line", reachedLine)),
        OpenBracketRemedy.With(("bracket", bracket == '[' ? "]" : "}")),
        opened);
}
