using System.Text;
using Protocolist.Findings;

namespace Protocolist;

/// <summary>A text with the name it is spoken of by in findings. The library reads no files: whoever calls it does.</summary>
/// <param name="Name">The file's name as the user gave it.</param>
/// <param name="Text">Its content.</param>
public sealed record SourceText(string Name, string Text)
{
    private static readonly Phrase FileTooLong = new("file-too-long.bytes", "the file has more than {most} bytes");
    private static readonly Phrase FileTooLongRemedy = new("file-too-long.remedy", "split it");
    private static readonly Phrase NotUtf8 = new("not-utf8", "the file is not UTF-8 text");
    private static readonly Phrase NotUtf8Remedy = new("not-utf8.remedy", "save it as UTF-8");

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly UTF8Encoding Lenient = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The most bytes that are read of one file: as many as the characters that a document may have can take.</summary>
    public const int MostBytes = 12_000_000;

    /// <summary>
    /// Makes a text from a stream of bytes, which must be UTF-8 with or without a byte order mark. Reads no more than one byte past the most that is
    /// allowed.
    /// </summary>
    /// <param name="name">The file's name.</param>
    /// <param name="bytes">Its content, from where the stream stands; the caller closes it.</param>
    /// <returns>The text, or an error finding: <c>file-too-long</c>, <c>not-utf8</c>.</returns>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static Checked<SourceText> Read(string name, Stream bytes)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(bytes);
        using var read = new MemoryStream();
        Span<byte> part = stackalloc byte[4096];
        while (read.Length <= MostBytes
            && bytes.Read(part[..(int)Math.Min(part.Length, MostBytes + 1 - read.Length)]) is > 0 and var count) read.Write(part[..count]);
        return Decode(name, read.GetBuffer().AsSpan(0, (int)read.Length));
    }

    /// <summary>Makes a text from a file's bytes, which must be UTF-8 with or without a byte order mark.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="bytes">Its content.</param>
    /// <returns>The text, or an error finding: <c>file-too-long</c>, <c>not-utf8</c>.</returns>
    public static Checked<SourceText> Decode(string name, ReadOnlySpan<byte> bytes)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (bytes.Length > MostBytes)
            return new(null, [Finding.Error("file-too-long", FileTooLong.With(("most", MostBytes)), FileTooLongRemedy, SourceSpan.At(name, 1, 1))]);
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
            return new(null, [Finding.Error("not-utf8", NotUtf8, NotUtf8Remedy, SourceSpan.At(name, line, column))]);
        }
    }
}
