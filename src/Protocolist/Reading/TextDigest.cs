using System.Security.Cryptography;
using System.Text;

namespace Protocolist.Reading;

/// <summary>What texts hold, as 32 hex digits of a SHA-256: texts of one digest are the same, one by one.</summary>
internal static class TextDigest
{
    public static string Of(IEnumerable<string> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in texts)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(text));
            hash.AppendData([0xFF]); // no byte of UTF-8
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset().AsSpan(0, 16));
    }
}
