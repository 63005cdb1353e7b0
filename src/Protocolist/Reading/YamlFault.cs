using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>The YAML parser's complaints in words that a preparator understands.</summary>
internal static class YamlFault
{
    private static readonly (string Part, string Message, string Remedy)[] Explanations =
    [
        ("did not find expected key", "this line does not fit the lines above it", "check its indentation, and that a colon and a space follow each key"),
        ("did not find expected '-' indicator", "this line does not fit the list above it", "start each item with '- ' at the same indentation"),
        ("did not find expected ',' or", "a bracket opened before is not closed here", "add the missing ']' or '}', or a comma between the parts"),
        ("could not find expected ':'", "a key without a colon", "write 'key: value', with a space after the colon"),
        ("did not find expected <document start>", "text stands outside the document", "check the indentation of this line"),
        ("cannot start any token", "a value cannot start with this character", "put the value in quotes"),
        ("found unexpected end of stream", "a quote is opened and never closed", "close it"),
        ("Mapping values are not allowed", "a second colon stands in this line", "put the value in quotes, or move it to a line of its own"),
        ("mapping values are not allowed", "a second colon stands in this line", "put the value in quotes, or move it to a line of its own"),
        ("block sequence entries are not allowed", "a list cannot start here", "put the list on the lines below its key"),
        ("unknown escape", "an unknown escape stands in a double-quoted text", "use single quotes"),
        ("while scanning a quoted scalar", "a quote is opened and never closed", "close it"),
    ];

    public static Finding Explain(string parserMessage, SourceSpan where)
    {
        foreach (var (part, message, remedy) in Explanations)
        {
            if (parserMessage.Contains(part, StringComparison.OrdinalIgnoreCase)) return Finding.Error("yaml-syntax", message, remedy, where);
        }

        return Finding.Error("yaml-syntax", "this cannot be read as YAML", "check for a bracket or quote that is never closed, and the indentation", where);
    }
}
