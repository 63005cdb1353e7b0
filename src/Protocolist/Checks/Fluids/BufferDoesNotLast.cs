using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>What an animal is kept in for good has a buffer that lasts.</summary>
internal static class BufferDoesNotLast
{
    public static PlanCheck Check { get; } = new(
        "buffer-does-not-last",
        "the specimen: sea water, borax and chips buffer for weeks, then the jar turns acid, or clears and bleaches what is in it",
        "Simmons (\"by far the most stable buffer\", of phosphate); Bishop Museum (one month for sea water); Atkins 1922 (borax); for jelly: Dawson, The Scyphozoan (sea-water formalin, renewed)",
        Find)
    {
        Speaks =
        [
            new(Severity.Warning, "the final jar holds formalin whose buffer lasts for a limited time only"),
            new(Severity.Note, "a jelly is kept in sea-water formalin, for which nothing better is known"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid.HasFormaldehyde: true } house) yield break;
        var profile = BufferGuide.Of(house.Fluid.Buffering);
        if (profile.LastsDays is not { } days) yield break;

        // For jelly nothing lasts better: phosphate falls out with the salts of the sea, borax does harm, alcohol shrinks it.
        if (plan.Group.IsGelatinous && house.Fluid.Buffering == Buffering.SeaWater)
            yield return Finding.Note("buffer-does-not-last", Invariant($"'{house.Id}' keeps it in {house.Fluid.Name}, the usual fluid for jelly, whose pH is not to be trusted after {days} days"), "read its pH at every round, and renew the fluid below 7").At(house, "fluid");
        else if (house.Fluid.Buffering == Buffering.None)
            yield return Finding.Warning("buffer-does-not-last", Invariant($"'{house.Id}' keeps it for good in {house.Fluid.Name}, which has no buffer and a pH of {profile.PhLow:0.0} to {profile.PhHigh:0.0}; it {profile.Cannot}"), "keep it in phosphate-buffered formalin, or in alcohol").At(house, "fluid");
        else
            yield return Finding.Warning("buffer-does-not-last", Invariant($"'{house.Id}' keeps it for good in {house.Fluid.Name}, whose pH of {profile.PhLow:0.0} to {profile.PhHigh:0.0} is not to be trusted after {Telling.Count(days, "day", "days")}; it {profile.Cannot}"), "keep it in phosphate-buffered formalin, or in alcohol").At(house, "fluid");
    }
}
