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
    private readonly string _file;
    private readonly ReadingLimits _limits;
    private readonly Scanner _scanner;
    private readonly Parser _parser;
    private readonly List<Finding> _findings;
    private int _nodes;

    private DocumentReader(SourceText source, string text, ReadingLimits limits, List<Finding> findings)
    {
        _file = source.Name;
        _limits = limits;
        _findings = findings;
        _scanner = new(new StringReader(text), skipComments: true);
        _parser = new(_scanner);
    }

    /// <summary>The tree, or null where the text cannot be read as one YAML document; with everything that is wrong with its form.</summary>
    public static Checked<DocumentNode> Read(SourceText source, ReadingLimits? limits = null)
    {
        limits ??= ReadingLimits.Standard;
        if (source.Text.Length > limits.Characters)
        {
            return new(null, [Finding.Error("file-too-long", string.Create(CultureInfo.InvariantCulture, $"the file has {source.Text.Length} characters; {limits.Characters} is the most"), "split it", SourceSpan.At(source.Name, 1, 1))]);
        }

        if (LeadingTab(source) is { } tab) return new(null, [tab]);
        var findings = new List<Finding>();
        var reader = new DocumentReader(source, source.Text.TrimStart('\uFEFF'), limits, findings);
        var root = reader.Whole();
        return new(root, [.. findings]);
    }

    private DocumentNode? Whole()
    {
        try
        {
            Next();
            Next();
            if (_parser.Current is StreamEnd)
            {
                _findings.Add(Finding.Error("empty-file", "the file is empty", "see the authoring guide for what belongs in it", SourceSpan.At(_file, 1, 1)));
                return null;
            }

            Next();
            var root = Node(0);
            Next();
            if (_parser.Current is DocumentStart second)
            {
                _findings.Add(Finding.Error("second-document", "a second document starts here", "keep one document a file; remove the '---'", At(second.Start)));
                return null;
            }

            return root;
        }
        catch (UnreadableException stop)
        {
            _findings.Add(stop.Finding);
        }
        catch (YamlException fault)
        {
            _findings.Add(YamlFault.Explain(fault.Message, At(fault.Start)));
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException or IndexOutOfRangeException or FormatException or OverflowException)
        {
            // The scanner lets these escape for some malformed input, such as a bracket that is never closed; the place it had reached is all there is.
            _findings.Add(YamlFault.Explain("", At(_scanner.CurrentPosition)));
        }

        return null;
    }

    private DocumentNode Node(int depth)
    {
        var current = _parser.Current!;
        if (++_nodes > _limits.Nodes) throw Stop("too-many-nodes", $"the file has more than {_limits.Nodes} parts", "split it", current);
        if (depth > _limits.Depth) throw Stop("nested-too-deeply", $"the file is nested more than {_limits.Depth} deep", "flatten it", current);
        if (current is NodeEvent { Anchor.IsEmpty: false }) throw Stop("anchors-not-allowed", "an anchor (&) stands here", "write the value out; shared values belong under 'values' or in a protocol to extend", current);
        if (current is NodeEvent { Tag.IsEmpty: false } tagged && tagged.Tag.Value != "!") throw Stop("tags-not-allowed", $"a tag ({tagged.Tag.Value}) stands here", "remove it", current);
        return current switch
        {
            Scalar scalar => ScalarOf(scalar),
            SequenceStart start => Sequence(start, depth),
            MappingStart start => Mapping(start, depth),
            AnchorAlias alias => throw Stop("aliases-not-allowed", $"an alias (*{alias.Value.Value}) stands here", "write the value out; shared values belong under 'values' or in a protocol to extend", alias),
            _ => throw Stop("yaml-syntax", "this cannot be read as YAML", "check brackets, quotes and indentation", current),
        };
    }

    private ScalarNode ScalarOf(Scalar scalar)
    {
        Next();
        var span = Span(scalar.Start, scalar.End);
        var plain = scalar.Style == ScalarStyle.Plain;
        var lead = plain ? 0 : 1;
        var isOneRun = span.Line == span.EndLine && span.EndColumn - span.Column == scalar.Value.Length + (2 * lead);
        var value = plain && scalar.Value is "~" or "null" ? "" : scalar.Value;
        return new(value, lead, isOneRun, span);
    }

    private SequenceNode Sequence(SequenceStart start, int depth)
    {
        Next();
        var items = ImmutableArray.CreateBuilder<DocumentNode>();
        while (_parser.Current is not SequenceEnd) items.Add(Node(depth + 1));
        Next();
        return new(items.DrainToImmutable(), Span(start.Start, start.End));
    }

    private MappingNode Mapping(MappingStart start, int depth)
    {
        Next();
        var entries = ImmutableArray.CreateBuilder<MappingEntry>();
        var seen = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        while (_parser.Current is not MappingEnd)
        {
            var keyEvent = _parser.Current!;
            if (Node(depth + 1) is not ScalarNode key) throw Stop("key-not-a-word", "a key must be a word", "check for a missing quote or bracket", keyEvent);
            var value = Node(depth + 1);
            if (seen.TryAdd(key.Value, key.Span)) entries.Add(new(key, value));
            else _findings.Add(Finding.Error("duplicate-key", $"'{key.Value}' stands here twice; the first is on line {seen[key.Value].Line.ToString(CultureInfo.InvariantCulture)}", "keep one of them", key.Span));
        }

        Next();
        return new(entries.DrainToImmutable(), Span(start.Start, start.End));
    }

    private void Next()
    {
        if (!_parser.MoveNext()) throw new InvalidOperationException("The stream of events ended early.");
    }

    private UnreadableException Stop(string id, string message, string remedy, ParsingEvent at) =>
        new(Finding.Error(id, message, remedy, Span(at.Start, at.End)));

    private SourceSpan At(Mark mark) => SourceSpan.At(_file, (int)Math.Max(1, mark.Line), (int)Math.Max(1, mark.Column));

    private SourceSpan Span(Mark start, Mark end) => new(_file, (int)start.Line, (int)start.Column, (int)end.Line, (int)end.Column);

    /// <summary>The parser blames the start of the mapping for a tab; the person needs the tab's own line.</summary>
    private static Finding? LeadingTab(SourceText source)
    {
        var line = 1;
        foreach (var text in source.Text.AsSpan().EnumerateLines())
        {
            var indent = text.Length - text.TrimStart(" \t").Length;
            var tab = text[..indent].IndexOf('\t');
            if (tab >= 0 && indent < text.Length && text[indent] != '#')
            {
                return Finding.Error("tab-indentation", "a tab stands in the indentation", "indent with spaces", SourceSpan.At(source.Name, line, tab + 1));
            }

            line++;
        }

        return null;
    }

    /// <summary>Carries a finding out of the recursion; never leaves this class.</summary>
    private sealed class UnreadableException(Finding finding) : Exception
    {
        public Finding Finding { get; } = finding;
    }
}
