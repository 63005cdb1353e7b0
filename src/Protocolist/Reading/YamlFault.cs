using System.Globalization;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>The YAML parser's complaints in words that a preparator understands.</summary>
internal static class YamlFault
{
    private const string Id = "yaml-syntax";

    /// <summary>Looked through in this order; the first whose part stands in the parser's message speaks.</summary>
    private static readonly (string Part, string Message, string Remedy)[] Explanations =
    [
        ("did not find expected key", "this line does not fit the lines above it", "check its indentation, that a colon and a space follow each key, and that nothing follows a closing quote"),
        ("did not find expected '-' indicator", "this line does not fit the list above it", "start each item with '- ' at the same indentation"),
        ("multiline plain scalar, found invalid mapping", "the line above was taken as text that goes on here", "end each key with a colon and a space, and check the indentation"),
        ("found invalid mapping", "a second colon stands in this value", "put the value in quotes, or check the indentation of this line"),
        ("mapping values are not allowed", "a second colon stands in this value", "put the value in quotes, or check the indentation of this line"),
        ("could not find expected ':'", "a key without a colon", "write 'key: value', with a space after the colon"),
        ("did not find expected <document start>", "text stands outside the document", "check the indentation of this line"),
        ("cannot start any token", "a value cannot start with this character", "put the value in quotes"),
        ("scanning an anchor or alias", "a value cannot start with this character", "put the value in quotes"),
        ("scanning a tag", "a value cannot start with this character", "put the value in quotes"),
        ("scanning a directive", "a line cannot start with this character", "put the key in quotes, or remove the line"),
        ("incompatible YAML document", "this asks for a version of YAML that is not known", "remove the line"),
        ("unknown escape", "an unknown escape stands in a double-quoted text", "use single quotes"),
        ("multi-line double-quoted scalar", "a quote is opened and never closed", "close it"),
        ("found unexpected end of stream", "a quote is opened and never closed", "close it"),
        ("scanning a quoted scalar", "a quote is opened and never closed", "close it"),
        ("scanning a block scalar", "only an indentation figure or a sign can follow '|' or '>' on its line", "put the text on the lines below, or in quotes"),
        ("block sequence entries are not allowed", "a list cannot start here", "put the list on the lines below its key"),
        ("did not find expected node content", "a value is missing here, or a bracket or comma stands here too many", "remove it, or add the value"),
        ("did not find expected ',' or", "a comma or a closing bracket is missing before this", "add the comma or the bracket"),
    ];

    public static Finding Explain(string parserMessage, SourceSpan where)
    {
        foreach (var (part, message, remedy) in Explanations)
        {
            if (parserMessage.Contains(part, StringComparison.OrdinalIgnoreCase)) return Finding.Error(Id, message, remedy, where);
        }

        return Finding.Error(Id, "this cannot be read as YAML", "check for a bracket or quote that is never closed, and the indentation", where);
    }

    /// <summary>A bracket that is still open on a later line, at which the parser gave up.</summary>
    public static Finding NeverClosed(char bracket, SourceSpan opened, int reachedLine) => Finding.Error(
        Id,
        string.Create(CultureInfo.InvariantCulture, $"the '{bracket}' opened here is not closed where line {reachedLine} begins something else"),
        $"add the missing '{(bracket == '[' ? ']' : '}')}', or the comma between its parts",
        opened);
}
