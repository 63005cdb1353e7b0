using Protocolist.Findings;

namespace Protocolist.Tests;

/// <summary>Messages as a person reads them, for tests that hold words.</summary>
internal static class Said
{
    /// <summary>A sentence of a made-up finding or step.</summary>
    public static Message Of(string sentence) => Message.Text(sentence);

    /// <summary>The English words of each.</summary>
    public static string[] Texts(this IEnumerable<Message> messages) => [.. messages.Select(m => m.ToString())];

    /// <summary>The English words, joined as the sheets join reasons.</summary>
    public static string Text(this IEnumerable<Message> messages) => string.Join("; ", messages.Texts());
}
