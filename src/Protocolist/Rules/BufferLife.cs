using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>What an animal is kept in for good has a buffer that lasts.</summary>
internal static class BufferLife
{
    public const string Id = "buffer-does-not-last";
    public const string Source =
        "Simmons (\"by far the most stable buffer\", of phosphate); Bishop Museum (one month for sea water); Atkins 1922 (borax); "
        + "for jelly: Dawson, The Scyphozoan (sea-water formalin, renewed)";

    /// <summary>What is known of a buffering that does not last; null where it lasts for years, or the fluid needs none.</summary>
    public static BufferProfile? Limited(Fluid fluid) =>
        fluid.HasFormaldehyde && BufferGuide.Of(fluid.Buffering) is { LastsDays: not null } profile ? profile : null;

    /// <summary>Whether nothing lasts better: for jelly phosphate falls out with the salts of the sea, borax does harm, alcohol shrinks it.</summary>
    public static bool IsBestKnown(TaxonGroup group, Fluid fluid) => group.IsGelatinous && fluid.Buffering == Buffering.SeaWater;
}
