using System.Buffers;
using System.Security.Cryptography;
using System.Text;

namespace Protocolist.Reading;

/// <summary>What texts hold, as 32 hex digits of a SHA-256: texts of one digest are the same, one by one.</summary>
internal static class TextDigest
{
    public static string Of(IEnumerable<string> texts)
    {
        var bytes = new ArrayBufferWriter<byte>(512);
        foreach (var text in texts)
        {
            Encoding.UTF8.GetBytes(text, bytes);
            bytes.Write<byte>([0xFF]); // no byte of UTF-8
        }

        return Convert.ToHexStringLower(SHA256.HashData(bytes.WrittenSpan).AsSpan(0, 16));
    }
}
