using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Benches.Disposal;

/// <summary>Reads what a bench file says of its waste: <c>containers</c>, <c>drains</c>, <c>keep-fixative</c>.</summary>
internal static class WasteReader
{
    public static WasteRules Read(Fields bench, List<Finding> findings)
    {
        if (bench.Nested("waste", "'waste'") is not { } table) return WasteRules.CollectAll;
        var containers = ByClass(table, "containers", findings);
        var drains = ByClass(table, "drains", findings);
        var rules = new WasteRules(containers, drains);
        if (table.Nested("keep-fixative", "'keep-fixative'") is { } keep)
        {
            rules = rules with { FixativeKeptIn = keep.Required("in")?.Value, FixativeUses = keep.Whole("uses", 1, 100) ?? rules.FixativeUses };
            keep.Finish();
        }

        table.Finish();
        return rules;
    }

    private static ImmutableDictionary<WasteClass, string> ByClass(Fields waste, string key, List<Finding> findings)
    {
        var named = ImmutableDictionary.CreateBuilder<WasteClass, string>();
        if (waste.Nested(key, $"'{key}'") is not { } table) return named.ToImmutable();
        foreach (var @class in Enum.GetValues<WasteClass>())
        {
            if (table.Scalar(EnumWords<WasteClass>.Of(@class)) is not { } text) continue;
            if (!string.IsNullOrWhiteSpace(text.Value)) named[@class] = text.Value.Trim();
            if (key == "drains" && @class is WasteClass.Formaldehyde or WasteClass.FormaldehydeAndAlcohol or WasteClass.FlammableAlcohol)
                findings.Add(Finding.Warning("hazardous-waste-to-the-drain", $"the bench sends {Waste.Words(@class.ToString())} waste to the drain under '{text.Value.Trim()}'", "make sure that the permission covers just this; else collect it", text.Span));
        }

        table.Finish();
        return named.ToImmutable();
    }
}
