using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Benches.Disposal;

/// <summary>Reads what a bench file says of its waste: <c>containers</c>, <c>drains</c>, <c>keep-fixative</c>.</summary>
internal static class WasteReader
{
    private static readonly Phrase ToTheDrain = new("hazardous-waste-to-the-drain", "the bench sends {class} waste to the drain under '{permit}'");
    private static readonly Phrase ToTheDrainRemedy = new(
        "hazardous-waste-to-the-drain.remedy", "make sure that the permission covers just this; else collect it");
    private static readonly Phrase ByHalves = new("container-without-price", "the container for {class} waste needs both what it holds and what it costs full");
    private static readonly Phrase CountedRemedy = new("container-without-price.counted.remedy", "write 'holds: 100' and 'price: 14.00 EUR'");
    private static readonly Phrase PouredRemedy = new("container-without-price.poured.remedy", "write 'holds: 25 L' and 'price: 60.00 EUR'");

    public static WasteRules Read(Fields bench, List<Finding> findings)
    {
        if (bench.Nested("waste") is not { } table) return WasteRules.CollectAll;
        var prices = ImmutableDictionary.CreateBuilder<WasteClass, ContainerPrice>();
        var containers = ByClass(table, "containers", prices, findings);
        var drains = ByClass(table, "drains", null, findings);
        var rules = new WasteRules(containers, drains) { ContainerPrices = prices.ToImmutable() };
        if (table.Nested("keep-fixative") is { } keep)
        {
            rules = rules with { FixativeKeptIn = keep.Required("in")?.Value, FixativeUses = keep.Whole("uses", 1, 100) ?? rules.FixativeUses };
            keep.Finish();
        }

        table.Finish();
        return rules;
    }

    private static ImmutableDictionary<WasteClass, string> ByClass(
        Fields waste, string key, ImmutableDictionary<WasteClass, ContainerPrice>.Builder? prices, List<Finding> findings)
    {
        var named = ImmutableDictionary.CreateBuilder<WasteClass, string>();
        if (waste.Nested(key) is not { } table) return named.ToImmutable();
        foreach (var @class in Enum.GetValues<WasteClass>())
        {
            if (prices is not null && table.Entry(EnumWords<WasteClass>.Of(@class))?.Value is MappingNode node)
            {
                var container = new Fields(node, Named.Container, findings);
                if (container.Required("name") is { } name && !string.IsNullOrWhiteSpace(name.Value)) named[@class] = name.Value.Trim();
                if (Price(container, @class, findings) is { } price) prices[@class] = price;
                container.Finish();
                continue;
            }

            if (table.Scalar(EnumWords<WasteClass>.Of(@class)) is not { } text) continue;
            if (!string.IsNullOrWhiteSpace(text.Value)) named[@class] = text.Value.Trim();
            if (key == "drains" && @class is WasteClass.Formaldehyde or WasteClass.FormaldehydeAndAlcohol or WasteClass.FlammableAlcohol)
            {
                var said = ToTheDrain.With(("class", Waste.Words(@class)), ("permit", text.Value.Trim()));
                findings.Add(Finding.Warning(ToTheDrain.Id, said, ToTheDrainRemedy, text.Span));
            }
        }

        table.Finish();
        return named.ToImmutable();
    }

    /// <summary>What a full container costs; null where nothing is said, or one half of it only.</summary>
    private static ContainerPrice? Price(Fields container, WasteClass @class, List<Finding> findings)
    {
        var isSolid = Waste.IsSolid(@class);
        var holds = container.Quantity("holds", isSolid ? Dimension.None : Dimension.OfVolume);
        var price = container.Scalar("price") is { } text ? MoneyText.Read(text.Value, text.Span) : null;
        findings.AddRange(price?.Findings ?? []);
        if (holds is null && price is null) return null;
        if (holds is { IsPoint: true, Low: > 0 and < 1e9 } size && price?.Value is { Minor: >= 0 } money)
        {
            var amount = isSolid ? Amount.Of((long)size.Low) : Amount.Of(UnitsNet.Volume.FromCubicMeters(Math.Min(size.Low, 1000)));
            if (amount.Units > 0) return new(amount, money);
        }

        if (price is not { Value: null })
            findings.Add(Finding.Error(ByHalves.Id, ByHalves.With(("class", Waste.Words(@class))), isSolid ? CountedRemedy : PouredRemedy, container.Span));
        return null;
    }
}
