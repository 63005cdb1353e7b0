using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>Small words of the findings.</summary>
internal static class Phrases
{
    /// <summary>A noun with its article: <c>an eel</c>.</summary>
    public static string One(string noun) => Findings.Template.WithArticle(noun);

    /// <inheritdoc cref="One(string)"/>
    public static string One(Phrase noun) => One(noun.English);
}
