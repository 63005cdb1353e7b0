using System.Collections.Immutable;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>The protocol files that travel inside the library.</summary>
internal static class BundledProtocols
{
    private const string Prefix = "protocols/";

    private static readonly Lazy<ShelfLayer> Indexed = new(() =>
        new(BundledIndex.ById.Values.Select(p => KeyValuePair.Create(p.Id, new Lazy<ProtocolHeader>(() => HeaderOf(p))))));

    /// <summary>The bundled protocols by the index, each read when it is first asked for.</summary>
    public static ShelfLayer Layer => Indexed.Value;

    /// <summary>All of them.</summary>
    public static ImmutableArray<SourceText> Sources() =>
        [
            .. typeof(BundledProtocols).Assembly
                .GetManifestResourceNames()
                .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(n => new SourceText(n, Text(n))),
        ];

    /// <summary>The text of a file that travels in the library.</summary>
    public static string Text(string name)
    {
        using var reader = new StreamReader(typeof(BundledProtocols).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }

    private static ProtocolHeader HeaderOf(IndexedProtocol indexed) =>
        ProtocolHeader.Read(
            ReadText.Of(new(indexed.File, Text(indexed.File))),
            []) ?? throw new InvalidOperationException($"The bundled {indexed.File} is not what the index says.");
}
