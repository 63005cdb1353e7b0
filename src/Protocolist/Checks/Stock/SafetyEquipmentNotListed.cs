using System.Buffers;
using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Checks.Stock;

/// <summary>Gloves, goggles, eye wash, sharps box and spill kit are at hand where they are needed.</summary>
internal static class SafetyEquipmentNotListed
{
    private const string Id = "safety-equipment-not-on-shelf";
    private static readonly Phrase Lacks = new(Id, "the bench lists its gear, and lacks {gear:and}");
    private static readonly Phrase WithinReach = new("safety-equipment-not-on-shelf.remedy", "have them within reach before a bottle is opened, and list them");

    private static readonly (Phrase What, SearchValues<string> Words, bool ForFluid)[] Equipment =
    [
        (new("safety-equipment-not-on-shelf.gloves", "gloves"), AnyOf("glove"), true),
        (new("safety-equipment-not-on-shelf.goggles", "goggles or a face shield"), AnyOf("goggle", "face shield", "safety glasses"), true),
        (new("safety-equipment-not-on-shelf.eye-wash", "an eye wash"), AnyOf("eye wash", "eyewash"), true),
        (new("safety-equipment-not-on-shelf.spill-kit", "a spill kit"), AnyOf("spill", "absorbent"), true),
        (new("safety-equipment-not-on-shelf.sharps-box", "a sharps box"), AnyOf("sharps"), false),
    ];

    public static PlanCheck Check { get; } = new(
        Id,
        "people: what is not within reach is not used",
        "29 CFR 1910.1048 (eye wash within reach, gloves, goggles); Simmons, AIC/FAIC storage book (neoprene gloves, apron); sharps box: common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "the bench lists its gear, and eye wash, gloves, goggles or what else the plan asks for is not among it")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var (hasFormalin, opens) = (!plan.Formalin.IsEmpty, plan.Opens);

        // A bench that lists no gear at all says nothing about it; the cautions of the steps do.
        if ((!hasFormalin && !opens) || !ListsGear(plan)) return [];
        var missing = new List<Message>();
        foreach (var (what, words, forFluid) in Equipment)
        {
            if (!(forFluid ? hasFormalin : opens) || Lists(plan, words)) continue;
            if (forFluid || !plan.Bench.WasteRules.Containers.ContainsKey(WasteClass.Sharps)) missing.Add(what);
        }

        return missing.Count > 0 ? [Finding.Warning(Id, Lacks.With(Argument.Messages("gear", missing)), WithinReach)] : [];
    }

    private static bool ListsGear(ReviewCase plan)
    {
        foreach (var item in plan.Bench.Stock)
        {
            if (item.Kind is StockKind.Consumable or StockKind.Tool) return true;
        }

        return false;
    }

    private static bool Lists(ReviewCase plan, SearchValues<string> words)
    {
        foreach (var item in plan.Bench.Stock)
        {
            if (item.Substance.AsSpan().ContainsAny(words)) return true;
        }

        return false;
    }

    private static SearchValues<string> AnyOf(params ReadOnlySpan<string> words) => SearchValues.Create(words, StringComparison.OrdinalIgnoreCase);
}
