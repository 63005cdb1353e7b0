namespace Protocolist.Notation;

/// <summary>A name as an id: letters and digits, the rest hyphens.</summary>
internal static class Slug
{
    public static string Of(string name)
    {
        var letters = new string([.. name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) || c == '.' ? c : ' ')]);
        return string.Join('-', letters.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
