using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Reading;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Kept fixative of another buffering is not poured to this one.</summary>
internal static class SpentFluidOfAnotherBuffering
{
    private const string Id = "spent-fluid-of-another-buffering";
    private static readonly Phrase Other = new(Id, "'{stock}', used {uses:times}, is {kept}; this plan's formalin is {own}");
    private static readonly Phrase Keep = new("spent-fluid-of-another-buffering.remedy", "keep it for a specimen of its own buffering; do not top up with it");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: two bufferings in one tub leave its acidity unknown",
        OneBuffering.Source,
        Find)
    {
        Severities = [new(Severity.Warning, "used formalin on the shelf has another buffer than this plan's")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Formalin.IsEmpty) return found;
        string? own = null;
        foreach (var item in plan.Bench.Stock)
        {
            if (item is not { Uses: > 0, Kind: StockKind.Fluid, Buffering: { } kept } || item.OnHand.Units <= 0) continue;
            own ??= EnumWords<Buffering>.Of(plan.Formalin[0].Fluid!.Buffering);
            if (kept == own) continue;
            var message = Other.With(Argument.Id("stock", item.Id), ("uses", item.Uses), ("kept", BufferWords.With(kept)), ("own", BufferWords.With(own)));
            found = found.Add(Finding.Warning(Id, message, Keep, item.Where).ByEach(plan.Formalin, "fluid"));
        }

        return found;
    }
}
