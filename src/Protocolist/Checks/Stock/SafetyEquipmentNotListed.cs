using Protocolist.Benches.Stock;
using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>Gloves, goggles, eye wash, sharps box and spill kit are at hand where they are needed.</summary>
internal static class SafetyEquipmentNotListed
{
    private static readonly (string What, string[] Words, bool ForFluid)[] Equipment =
    [
        ("gloves", ["glove"], true),
        ("goggles or a face shield", ["goggle", "face shield", "safety glasses"], true),
        ("an eye wash", ["eye wash", "eyewash"], true),
        ("a spill kit", ["spill", "absorbent"], true),
        ("a sharps box", ["sharps"], false),
    ];

    public static PlanCheck Check { get; } = new(
        "safety-equipment-not-on-shelf",
        "people: what is not within reach is not used",
        "29 CFR 1910.1048 (eye wash within reach, gloves, goggles); Simmons, AIC/FAIC storage book (neoprene gloves, apron); sharps box: common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "the bench lists its gear, and eye wash, gloves, goggles or what else the plan asks for is not among it")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Formalin.IsEmpty && !plan.Opens) yield break;

        // A bench that lists no gear at all says nothing about it; the cautions of the steps do.
        if (!plan.Bench.Stock.Any(i => i.Kind is StockKind.Consumable or StockKind.Tool)) yield break;
        var missing = new List<string>();
        foreach (var (what, words, forFluid) in Equipment)
        {
            if (forFluid ? plan.Formalin.IsEmpty : !plan.Opens) continue;
            if (!plan.Bench.Stock.Any(i => Array.Exists(words, w => i.Substance.Contains(w, StringComparison.OrdinalIgnoreCase)))) missing.Add(what);
        }

        if (missing.Count > 0)
            yield return Finding.Warning("safety-equipment-not-on-shelf", $"the bench lists its gear, and lacks {Telling.And(missing)}", "have them within reach before a bottle is opened, and list them");
    }
}
