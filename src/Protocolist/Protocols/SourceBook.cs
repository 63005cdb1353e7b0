using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>The sources a protocol names, and the two that need no entry: <c>common practice</c> and <c>from memory</c>.</summary>
internal sealed class SourceBook(ImmutableDictionary<string, string> citations, List<Finding> findings)
{
    private static readonly Phrase UnknownSource = new("unknown-source", "'{key}' is not under 'sources'");

    public const string CommonPractice = "common practice";
    public const string FromMemory = "from memory";

    /// <summary>The citation for a key; null with a finding where it is unknown.</summary>
    public string? Cite(DocumentNode node)
    {
        if (node is not ScalarNode key)
        {
            var cited = node is SequenceNode list ? list.Items.Select(Cite).ToList() : [null];
            return cited.Contains(null) ? null : string.Join("; ", cited);
        }

        if (key.Value is CommonPractice or FromMemory) return key.Value;
        if (citations.TryGetValue(key.Value, out var citation)) return citation;
        findings.Add(Finding.Error(
            "unknown-source",
            UnknownSource.With(("key", key.Value)),
            Suggestion.For(key.Value, [.. citations.Keys, CommonPractice, FromMemory]),
            key.Span));
        return null;
    }
}
