using System.Collections.Frozen;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>One folder of protocols by their ids, each looked at when it is first asked for.</summary>
internal sealed class ShelfLayer
{
    private static readonly Phrase DuplicateProtocol = new("duplicate-protocol", "'{protocol}' is the id of {file} too");
    private static readonly Phrase DuplicateProtocolRemedy = new("duplicate-protocol.remedy", "give one of them another id");

    private readonly FrozenDictionary<string, Lazy<ProtocolHeader>> _headers;

    public ShelfLayer(IEnumerable<KeyValuePair<string, Lazy<ProtocolHeader>>> headers) => _headers = headers.ToFrozenDictionary(StringComparer.Ordinal);

    public IEnumerable<string> Ids => _headers.Keys;

    public ProtocolHeader this[string id] => _headers[id].Value;

    public bool Contains(string id) => _headers.ContainsKey(id);

    /// <summary>A folder whose files were read.</summary>
    public static ShelfLayer Of(IEnumerable<ReadText> files, List<Finding> findings)
    {
        var headers = new Dictionary<string, Lazy<ProtocolHeader>>(StringComparer.Ordinal);
        foreach (var file in files.OrderBy(f => f.Source.Name, StringComparer.Ordinal))
        {
            if (ProtocolHeader.Read(file, findings) is not { } header) continue;
            if (headers.TryAdd(header.Id, new(header))) continue;
            var message = DuplicateProtocol.With(("protocol", header.Id), ("file", headers[header.Id].Value.Span.File));
            findings.Add(Finding.Error(DuplicateProtocol.Id, message, DuplicateProtocolRemedy, header.Span));
        }

        return new(headers);
    }
}
