using System.Collections.Immutable;
using System.Globalization;
using Protocolist.Findings;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Protocolist.Reading;

/// <summary>
/// YAML text to a tree that knows its places. Built from parser events one by one, because the library's own tree recurses
/// without a bound, loses the ends of collections and stops at the first fault.
/// </summary>
internal sealed class DocumentReader
{
    private static readonly Phrase TooManyNodes = new("too-many-nodes", "the file has more than {most} parts");
    private static readonly Phrase TooDeep = new("nested-too-deeply", "the file is nested more than {most} deep");
    private static readonly Phrase TooDeepRemedy = new("nested-too-deeply.remedy", "flatten it");
    private static readonly Phrase AnAnchor = new("anchors-not-allowed", "an anchor (&) stands here");
    private static readonly Phrase AnAlias = new("aliases-not-allowed", "an alias (*{alias}) stands here");
    private static readonly Phrase WriteItOut = new(
        "aliases-not-allowed.remedy", "write the value out wherever it is wanted; protocols share values under 'values', or extend one another");
    private static readonly Phrase ATag = new("tags-not-allowed", "a tag ({tag}) stands here");
    private static readonly Phrase ATagRemedy = new("tags-not-allowed.remedy", "remove it");
    private static readonly Phrase Unread = new("yaml-syntax", "this cannot be read as YAML");
    private static readonly Phrase UnreadRemedy = new("yaml-syntax.form.remedy", "check brackets, quotes and indentation");
    private static readonly Phrase KeyNotAWord = new("key-not-a-word", "a key must be a word");
    private static readonly Phrase KeyNotAWordRemedy = new("key-not-a-word.remedy", "check for a missing quote or bracket");
    private static readonly Phrase FileTooLong = new("file-too-long", "the file has {length} characters; {characters} is the most");
    private static readonly Phrase FileTooLongRemedy = new("file-too-long.remedy", "split it");
    private static readonly Phrase SecondDocument = new("second-document", "a second document starts here");
    private static readonly Phrase SecondDocumentRemedy = new("second-document.remedy", "keep one document a file; remove the '---'");
    private static readonly Phrase EmptyFile = new("empty-file", "the file is empty");
    private static readonly Phrase EmptyFileRemedy = new("empty-file.remedy", "see the authoring guide for what belongs in it");
    private static readonly Phrase TabIndentation = new("tab-indentation", "a tab stands in the indentation");
    private static readonly Phrase TabIndentationRemedy = new("tab-indentation.remedy", "indent with spaces");
    private static readonly Phrase KeyNotShort = new("key-not-a-word.long", "a key must be a short word on one line");
    private static readonly Phrase DuplicateKey = new("duplicate-key", "'{key}' stands here twice; the first is on line {to-string}");
    private static readonly Phrase DuplicateKeyRemedy = new("duplicate-key.remedy", "keep one of them");

    /// <summary>Longer than any key of ours or of an author's own.</summary>
    private const int LongestKey = 200;

    private readonly string _file;
    private readonly ReadingLimits _limits;
    private readonly TextLines _lines;
    private readonly Scanner _scanner;
    private readonly Parser _parser;
    private readonly List<Finding> _findings = [];
    private readonly Stack<(char Bracket, SourceSpan Where)> _open = [];
    private int _nodes;

    private DocumentReader(string file, string text, TextLines lines, ReadingLimits limits)
    {
        _file = file;
        _limits = limits;
        _lines = lines;

        // Without a last line break the scanner loses blanks at the end of a text.
        _scanner = new(new StringReader(text.EndsWith('\n') ? text : text + '\n'), skipComments: true);
        _parser = new(_scanner);
    }

    /// <summary>The tree, or null where the text cannot be read as one YAML document; with everything that is wrong with its form.</summary>
    public static Checked<DocumentNode> Read(SourceText source, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(source.Name);
        ArgumentNullException.ThrowIfNull(source.Text);
        limits ??= ReadingLimits.Standard;
        if (source.Text.Length > limits.Characters)
        {
            return new(
                null,
                [
                    Finding.Error(
                        "file-too-long",
                        FileTooLong.With(("length", source.Text.Length), ("characters", limits.Characters)),
                        FileTooLongRemedy,
                        SourceSpan.At(source.Name, 1, 1)),
                ]);
        }

        // An editor does not show a byte order mark, and counts no column for it.
        var text = source.Text.StartsWith('\uFEFF') ? source.Text[1..] : source.Text;
        var lines = new TextLines(source.Name, text);
        if (lines.UnreadableCharacter() is { } unreadable) return new(null, [unreadable]);
        var reader = new DocumentReader(source.Name, text, lines, limits);
        var root = reader.Whole();
        return new(root, [.. reader._findings]);
    }

    private DocumentNode? Whole()
    {
        try
        {
            Next();
            Next();
            if (_parser.Current is StreamEnd) return Empty();
            Next();
            var root = Node(0);
            Next();
            if (_parser.Current is DocumentStart second)
                _findings.Add(Finding.Error("second-document", SecondDocument, SecondDocumentRemedy, At(second.Start)));
            return root is ScalarNode { IsEmpty: true } ? Empty() : root;
        }
        catch (UnreadableException stop)
        {
            _findings.Add(stop.Finding);
        }
        catch (YamlException fault)
        {
            _findings.Add(Explain(fault.Message, fault.Start));
        }
        catch (Exception fault) when (fault is InvalidOperationException
            or ArgumentException
            or IndexOutOfRangeException
            or FormatException
            or OverflowException)
        {
            // The scanner lets these escape for some malformed input, such as a bracket that is never closed; the place it had reached is all there is.
            _findings.Add(Explain("", _scanner.CurrentPosition));
        }

        return null;
    }

    private DocumentNode? Empty()
    {
        _findings.Add(Finding.Error("empty-file", EmptyFile, EmptyFileRemedy, SourceSpan.At(_file, 1, 1)));
        return null;
    }

    private Finding Explain(string parserMessage, Mark mark)
    {
        var where = At(mark);
        if (parserMessage.Contains(" tab ", StringComparison.Ordinal) && _lines.TabInIndentation(mark.Line) is { } tab)
            return Finding.Error("tab-indentation", TabIndentation, TabIndentationRemedy, tab);
        var named = parserMessage.Length > 0 && !parserMessage.Contains("did not find expected ',' or", StringComparison.Ordinal);
        return !named && _open.TryPeek(out var open) && open.Where.Line < where.Line
            ? YamlFault.NeverClosed(open.Bracket, open.Where, where.Line)
            : YamlFault.Explain(parserMessage, where);
    }

    private DocumentNode Node(int depth)
    {
        var current = _parser.Current!;
        if (++_nodes > _limits.Nodes) throw Stop("too-many-nodes", TooManyNodes.With(("most", _limits.Nodes)), FileTooLongRemedy, current);
        if (depth > _limits.Depth) throw Stop("nested-too-deeply", TooDeep.With(("most", _limits.Depth)), TooDeepRemedy, current);
        if (current is NodeEvent { Anchor.IsEmpty: false }) throw Stop("anchors-not-allowed", AnAnchor, WriteItOut, current);
        if (current is NodeEvent { Tag.IsEmpty: false } tagged && tagged.Tag.Value != "!")
            throw Stop("tags-not-allowed", ATag.With(("tag", Excerpt.Of(tagged.Tag.Value))), ATagRemedy, current);
        return current switch
        {
            Scalar scalar => ScalarOf(scalar),
            SequenceStart start => Sequence(start, depth),
            MappingStart start => Mapping(start, depth),
            AnchorAlias alias => throw Stop("aliases-not-allowed", AnAlias.With(("alias", Excerpt.Of(alias.Value.Value))), WriteItOut, alias),
            _ => throw Stop("yaml-syntax", Unread, UnreadRemedy, current),
        };
    }

    private ScalarNode ScalarOf(Scalar scalar)
    {
        Next();
        var span = Span(scalar.Start, scalar.End);
        var plain = scalar.Style == ScalarStyle.Plain;
        if (plain || scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted) FindTabs(span);
        var lead = plain ? 0 : 1;
        var isOneRun = span.Line == span.EndLine && span.EndColumn - span.Column == scalar.Value.Length + (2 * lead);
        var value = plain && scalar.Value is "~" or "null" ? "" : scalar.Value;
        var node = new ScalarNode(value, lead, isOneRun, span);

        // An escape such as "\e" brings in what the text itself must not hold.
        var unfit = ShownText.FirstUnfit(value);
        if (unfit >= 0) _findings.Add(TextLines.Unfit(value[unfit], node.Part(unfit, 1)));
        return unfit < 0 ? node : node with { Value = ShownText.Lines(value) };
    }

    private SequenceNode Sequence(SequenceStart start, int depth)
    {
        Next();
        var isFlow = start.Style == SequenceStyle.Flow;
        if (!isFlow) FindTabBefore(start.Start);
        if (isFlow) _open.Push(('[', At(start.Start)));
        var items = ImmutableArray.CreateBuilder<DocumentNode>();
        while (_parser.Current is not SequenceEnd) items.Add(Node(depth + 1));
        return new(items.DrainToImmutable(), End(isFlow, start));
    }

    private MappingNode Mapping(MappingStart start, int depth)
    {
        Next();
        var isFlow = start.Style == MappingStyle.Flow;
        if (!isFlow) FindTabBefore(start.Start);
        if (isFlow) _open.Push(('{', At(start.Start)));
        var entries = ImmutableArray.CreateBuilder<MappingEntry>();
        var seen = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        while (_parser.Current is not MappingEnd)
        {
            var keyEvent = _parser.Current!;
            var keyNode = Node(depth + 1);

            // A key left out has no place of its own; its value has.
            if (keyNode is not ScalarNode { IsEmpty: false } key)
                throw Stop("key-not-a-word", KeyNotAWord, KeyNotAWordRemedy, keyNode is ScalarNode ? _parser.Current! : keyEvent);
            var value = Node(depth + 1);

            // The parser places a value that is left out somewhere on the next line; its key is where a person looks.
            if (value is ScalarNode { IsEmpty: true } left && left.Span.EndColumn == left.Span.Column) value = left with { Span = key.Span };
            if (key.Value.Length > LongestKey || key.Value.AsSpan().ContainsAny('\n', '\t'))
            {
                _findings.Add(Finding.Error("key-not-a-word", KeyNotShort, KeyNotAWordRemedy, key.Span));
                continue;
            }

            if (seen.TryAdd(key.Value, key.Span)) entries.Add(new(key, value));
            else
                _findings.Add(Finding.Error(
                    "duplicate-key",
                    DuplicateKey.With(("key", Excerpt.Of(key.Value)), ("to-string", seen[key.Value].Line.ToString(CultureInfo.InvariantCulture))),
                    DuplicateKeyRemedy,
                    key.Span));
        }

        return new(entries.DrainToImmutable(), End(isFlow, start));
    }

    /// <summary>Passes over the end of a collection.</summary>
    private SourceSpan End(bool isFlow, ParsingEvent start)
    {
        if (isFlow)
        {
            _open.Pop();
            FindTabs(Span(start.Start, _parser.Current!.End));
        }

        Next();
        return Span(start.Start, start.End);
    }

    /// <summary>A tab at the beginning of a line that goes on with what began on another: YAML forbids most of them, and the parser lets them pass.</summary>
    private void FindTabs(SourceSpan span)
    {
        for (var line = span.Line + 1; line <= span.EndLine; line++)
        {
            if (_lines.BeginsWithTab(line))
                _findings.Add(Finding.Error("tab-indentation", TabIndentation, TabIndentationRemedy, SourceSpan.At(_file, line, 1)));
        }
    }

    /// <summary>A tab between a dash and what begins behind it on the same line, which by that is indented by a tab.</summary>
    private void FindTabBefore(Mark start)
    {
        if (_lines.TabBefore(start.Line, start.Column) is { } column)
            _findings.Add(Finding.Error("tab-indentation", TabIndentation, TabIndentationRemedy, SourceSpan.At(_file, (int)start.Line, column)));
    }

    private void Next()
    {
        if (!_parser.MoveNext()) throw new InvalidOperationException("The stream of events ended early.");
    }

    private UnreadableException Stop(string id, Message message, Message remedy, ParsingEvent at) =>
        new(Finding.Error(id, message, remedy, Span(at.Start, at.End)));

    private SourceSpan At(Mark mark)
    {
        var (line, column) = _lines.Nearest(mark.Line, mark.Column);
        return SourceSpan.At(_file, line, column);
    }

    private SourceSpan Span(Mark start, Mark end)
    {
        var (from, to) = (_lines.Nearest(start.Line, start.Column), _lines.Nearest(end.Line, end.Column));
        return new(_file, from.Line, from.Column, to.Line, to.Column);
    }

    /// <summary>Carries a finding out of the recursion; never leaves this class.</summary>
    private sealed class UnreadableException(Finding finding) : Exception
    {
        public Finding Finding { get; } = finding;
    }
}
