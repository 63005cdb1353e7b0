using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Reading;

namespace Protocolist.Checks.Fluids;

/// <summary>What a formalin is buffered with, as a word of a sentence.</summary>
internal static class BufferWords
{
    /// <summary>In the order of <see cref="Buffering"/>.</summary>
    private static readonly Phrase[] Words =
    [
        new("buffering.none", "nothing"),
        new("buffering.phosphate", "phosphate"),
        new("buffering.phosphate-sodium-hydroxide", "phosphate sodium hydroxide"),
        new("buffering.borax", "borax"),
        new("buffering.sea-water", "sea water"),
        new("buffering.hexamine", "hexamine"),
        new("buffering.marble-chips", "marble chips"),
    ];

    private static readonly Phrase Unbuffered = new("buffering.unbuffered", "unbuffered");
    private static readonly Phrase BufferedWith = new("buffering.with", "buffered with {buffering}");

    public static Phrase Of(Buffering buffering) => Words.At((int)buffering);

    /// <summary>A bench's word for it, after "is": <c>buffered with borax</c>, <c>unbuffered</c>.</summary>
    public static Message With(string word)
    {
        if (!EnumWords<Buffering>.All.Contains(word)) return BufferedWith.With(("buffering", word));
        var buffering = EnumWords<Buffering>.Parse(word);
        return buffering == Buffering.None ? Unbuffered : BufferedWith.With(("buffering", Of(buffering)));
    }
}
