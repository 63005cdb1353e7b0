using System.Collections.Immutable;
using System.Reflection;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>The protocol files that travel inside the library.</summary>
internal static class BundledProtocols
{
    private const string Prefix = "protocols/";

    public static ImmutableArray<SourceText> Sources()
    {
        var assembly = Assembly.GetExecutingAssembly();
        var names = assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal);
        return [.. names.Select(n => new SourceText(n, Text(assembly, n)))];
    }

    private static string Text(Assembly assembly, string name)
    {
        using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
