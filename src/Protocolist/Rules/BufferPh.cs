using Protocolist.Benches;
using Protocolist.Fluids.Buffers;

namespace Protocolist.Rules;

/// <summary>A buffered formalin on the shelf still has the pH of its buffer.</summary>
internal static class BufferPh
{
    public const string Id = "ph-drift";
    public const string Source =
        "Bishop Museum (sea water: one month); Atkins 1922 (borax); Simmons (phosphate lasts); 0.3 for the reading and 30 d for borax common practice";

    /// <summary>What a strip or a simple meter may be off by (common practice).</summary>
    public const double Doubt = 0.3;

    /// <summary>Whether a reading is not that of its buffer. Below the least pH of used formalin it is not used at all, which is told of already.</summary>
    public static bool HasDrifted(BufferProfile buffer, double ph) =>
        ph >= SpentFluid.LeastPh && (ph < buffer.PhLow - Doubt - 1e-9 || ph > buffer.PhHigh + Doubt + 1e-9);

    /// <summary>Whether it has stood open for longer than its buffer is to be trusted without a reading.</summary>
    public static bool IsPast(BufferProfile buffer, int daysOpen) => buffer.LastsDays is > 0 and var days && daysOpen > days;
}
