using System.Text;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>A text with the name it is spoken of by in findings. The library reads no files: whoever calls it does.</summary>
/// <param name="Name">The file's name as the user gave it.</param>
/// <param name="Text">Its content.</param>
public sealed record SourceText(string Name, string Text)
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly UTF8Encoding Lenient = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Makes a text from a file's bytes, which must be UTF-8 with or without a byte order mark.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="bytes">Its content.</param>
    /// <returns>The text, or an error finding <c>not-utf8</c>.</returns>
    public static Checked<SourceText> Decode(string name, ReadOnlySpan<byte> bytes)
    {
        ArgumentNullException.ThrowIfNull(name);
        try
        {
            return new(new(name, Strict.GetString(bytes)), []);
        }
        catch (DecoderFallbackException fault)
        {
            // Everything before the first bad byte is good, so its characters can be counted.
            var before = bytes[..Math.Clamp(fault.Index, 0, bytes.Length)];
            var lineStart = before.LastIndexOf((byte)'\n') + 1;
            var line = before.Count((byte)'\n') + 1;
            var column = Lenient.GetCharCount(before[lineStart..]) + 1;
            return new(null, [Finding.Error("not-utf8", "the file is not UTF-8 text", "save it as UTF-8", SourceSpan.At(name, line, column))]);
        }
    }
}
