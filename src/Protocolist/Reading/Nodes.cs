using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>One part of a YAML document that knows its place.</summary>
internal abstract record DocumentNode(SourceSpan Span);

/// <summary>A piece of text. Everything below it in meaning (numbers, dates, formulas) is read from the text, never guessed by YAML.</summary>
/// <param name="Value">The text without quotes.</param>
/// <param name="Lead">Characters between the span's start and the text: 1 for a quoted scalar.</param>
/// <param name="IsOneRun">Whether each character of the value stands one column after the one before, so that places inside it can be named.</param>
/// <param name="Span">From the first character, a quote included, to after the last.</param>
internal sealed record ScalarNode(string Value, int Lead, bool IsOneRun, SourceSpan Span) : DocumentNode(Span)
{
    /// <summary>Whether nothing was written.</summary>
    public bool IsEmpty => Value.Length == 0 && Lead == 0;

    /// <summary>The place of a stretch inside the text; the whole scalar where that cannot be told.</summary>
    public SourceSpan Part(int offset, int length) => IsOneRun ? Span.Within(Lead + offset, length) : Span;
}

internal sealed record SequenceNode(ImmutableArray<DocumentNode> Items, SourceSpan Span) : DocumentNode(Span);

internal sealed record MappingNode(ImmutableArray<MappingEntry> Entries, SourceSpan Span) : DocumentNode(Span)
{
    public MappingEntry? Find(string key)
    {
        foreach (var entry in Entries)
        {
            if (string.Equals(entry.Key.Value, key, StringComparison.Ordinal)) return entry;
        }

        return null;
    }
}

internal sealed record MappingEntry(ScalarNode Key, DocumentNode Value);
