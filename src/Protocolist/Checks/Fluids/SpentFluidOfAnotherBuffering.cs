using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Reading;

namespace Protocolist.Checks.Fluids;

/// <summary>Kept fixative of another buffering is not poured to this one.</summary>
internal static class SpentFluidOfAnotherBuffering
{
    public static PlanCheck Check { get; } = new(
        "spent-fluid-of-another-buffering",
        "the specimen: two bufferings in one tub leave its acidity unknown",
        "common practice; white precipitate on topping up old formalin with neutral (Conservation DistList, 2007)",
        Find)
    {
        Speaks = [new(Severity.Warning, "used formalin on the shelf has another buffer than this plan's")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Formalin.IsEmpty) yield break;
        var own = EnumWords<Buffering>.Of(plan.Formalin[0].Fluid!.Buffering);
        foreach (var item in plan.Bench.Stock)
        {
            if (item is { Uses: > 0, Kind: StockKind.Fluid, Buffering: { } kept } && item.OnHand.Units > 0 && kept != own)
                yield return Finding.Warning("spent-fluid-of-another-buffering", $"'{item.Id}', used {Telling.Times(item.Uses)}, is {Name(kept)}; this plan's formalin is {Name(own)}", "keep it for a specimen of its own buffering; do not top up with it", item.Where).ByEach(plan.Formalin, "fluid");
        }
    }

    private static string Name(string buffering) => buffering == EnumWords<Buffering>.Of(Buffering.None) ? "unbuffered" : $"buffered with {buffering.Replace('-', ' ')}";
}
