using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Reading;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>A buffered formalin on the shelf still has the pH of its buffer.</summary>
internal static class PhDrift
{
    /// <summary>What a strip or a simple meter may be off by (common practice).</summary>
    private const double Doubt = 0.3;

    public static PlanCheck Check { get; } = new(
        "ph-drift",
        "the specimen: a buffer that is used up turns acid, and nobody sees it",
        "Bishop Museum (sea water: one month); Atkins 1922 (borax); Simmons (phosphate lasts); 0.3 for the reading and 30 d for borax common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "a buffered formalin on the shelf reads more than 0.3 of pH outside its buffer's band, or stands open, unmeasured, longer than its buffer lasts")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Formalin.IsEmpty || plan.Plan.Start?.Date is not { } on) yield break;
        foreach (var item in plan.Bench.Stock)
        {
            if (item is not { Kind: StockKind.Fluid, Buffering: { } word } || item.OnHand.Units == 0 || !EnumWords<Buffering>.All.Contains(word)) continue;
            var profile = BufferGuide.Of(EnumWords<Buffering>.Parse(word));
            if (item.Spent?.Ph is { } ph)
            {
                // Below the least pH of used formalin the reused fixative is told of already.
                if (ph >= SpentFluid.LeastPh && (ph < profile.PhLow - Doubt - 1e-9 || ph > profile.PhHigh + Doubt + 1e-9))
                    yield return Finding.Warning("ph-drift", Invariant($"'{item.Id}' reads pH {ph:0.0}; {(profile.Buffering == Buffering.None ? "unbuffered" : $"{word}-buffered")} formalin has {profile.PhLow:0.0} to {profile.PhHigh:0.0}, and a reading may be off by {Doubt}"), profile.Buffering == Buffering.None ? "measure again with a meter, or make it fresh" : "measure again with a meter; buffer it anew with the same buffer, or make it fresh", item.Where);
            }
            else if (profile.LastsDays is > 0 and var days && item.OpenedOn is { } opened && Period.DaysBetween(opened, on) is var age && age > days)
            {
                yield return Finding.Warning("ph-drift", Invariant($"'{item.Id}', {word}-buffered, has stood open for {Telling.Count(age, "day", "days")}, and no pH is noted; {Telling.Count(days, "day", "days")} is as long as that buffer is to be trusted"), "measure its pH and note it under 'ph:', or make it fresh", item.Where);
            }
        }
    }
}
