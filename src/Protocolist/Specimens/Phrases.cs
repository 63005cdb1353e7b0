using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>Small words of the findings.</summary>
internal static class Phrases
{
    /// <summary>A noun with its article: <c>an eel</c>. A phrase writes <c>{group:a}</c> instead.</summary>
    public static string One(string noun) => noun.Length > 0 && "aeio".Contains(noun[0], StringComparison.OrdinalIgnoreCase) ? $"an {noun}" : $"a {noun}";

    /// <inheritdoc cref="One(string)"/>
    public static string One(Phrase noun) => One(noun.English);
}
