using System.Collections.Immutable;
using System.Globalization;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Benches;

/// <summary>Reads the shelf of a bench file, by the validator's own rules and with the places of what is wrong.</summary>
internal static class StockReader
{
    private static readonly Phrase BadRate = new("bad-rate.text", "'{text}' is not a rate of exchange");
    private static readonly Phrase BadRateRemedy = new("bad-rate.text.remedy", "write how much of the bench's currency one of it buys, as 0.92");
    private static readonly Phrase NeedsKind = new("missing-key.stock-kind", "a stock item is one of 'fluid', 'salt', 'consumable' or 'tool'");
    private static readonly Phrase NeedsKindRemedy = new("missing-key.stock-kind.remedy", "add 'fluid: ethanol 96 %vol', or the like");
    private static readonly Phrase AbsurdTime = new("absurd-time", "a supplier does not take {lead}");
    private static readonly Phrase AbsurdTimeRemedy = new("absurd-time.remedy", "give the time from the order to the delivery, such as 5 d");
    private static readonly Phrase AbsurdAmount = new("absurd-amount", "'{key}' cannot be {amount}");
    private static readonly Phrase AbsurdAmountRemedy = new("absurd-amount.remedy", "give one amount that a bench can hold");

    private static readonly (string Key, StockKind Kind)[] Kinds =
    [
        ("fluid", StockKind.Fluid),
        ("salt", StockKind.Salt),
        ("consumable", StockKind.Consumable),
        ("tool", StockKind.Tool),
    ];

    /// <summary>The items, each with the mapping it was read from.</summary>
    public static ImmutableArray<(StockItem Item, MappingNode Node)> Read(Fields bench, List<Finding> findings)
    {
        var items = ImmutableArray.CreateBuilder<(StockItem, MappingNode)>();
        foreach (var node in bench.List("stock"))
        {
            if (Fields.Of(node, Named.StockItem, findings) is { } fields && Item(fields, findings) is { } item) items.Add((item, (MappingNode)node));
        }

        return items.DrainToImmutable();
    }

    public static Price? Price(Fields fields, string key, List<Finding> findings)
    {
        if (fields.Scalar(key) is not { } scalar) return null;
        var price = Quantities.Price.Read(scalar.Value, scalar.Span);
        findings.AddRange(price.Findings);
        return price.Value;
    }

    /// <summary>What other currencies are worth in the bench's own: <c>exchange-rates: {USD: 0.92}</c>.</summary>
    public static ImmutableDictionary<string, decimal> ExchangeRates(Fields fields, List<Finding> findings)
    {
        var rates = ImmutableDictionary.CreateBuilder<string, decimal>();
        if (fields.Nested("exchange-rates") is not { } table) return rates.ToImmutable();
        foreach (var entry in table.Entries)
        {
            var (code, text) = (entry.Key.Value, table.Scalar(entry.Key.Value)?.Value);
            if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var rate)) rates[code] = rate;
            else if (text is not null) findings.Add(Finding.Error("bad-rate", BadRate.With(("text", Excerpt.Of(text))), BadRateRemedy, entry.Key.Span));
        }

        table.Finish();
        return rates.ToImmutable();
    }

    private static StockItem? Item(Fields fields, List<Finding> findings)
    {
        var named = Kinds.Select(k => (k.Kind, Name: fields.Scalar(k.Key))).Where(k => k.Name is not null).ToList();
        if (named.Count != 1)
        {
            findings.Add(Finding.Error("missing-key", NeedsKind, NeedsKindRemedy, fields.Span));
            return null;
        }

        var (kind, name) = named[0];
        var amountKind = kind switch { StockKind.Fluid => AmountKind.Volume, StockKind.Salt => AmountKind.Mass, _ => AmountKind.Count };
        var item = new StockItem
        {
            Id = fields.Scalar("id")?.Value ?? name!.Value.Replace(' ', '-'),
            Kind = kind,
            Substance = name!.Value,
            Strength = fields.Scalar("strength")?.Value,
            Hydrate = fields.Scalar("hydrate")?.Value,
            Buffering = fields.Scalar("buffering")?.Value,
            OnHand = Amount(fields, "on-hand", amountKind, findings) ?? Benches.Amount.Zero(amountKind),
            IsByThePair = fields.YesNo("by-the-pair") ?? false,
            OpenedOn = fields.Date("opened"),
            Expires = fields.Date("expires"),
            Uses = fields.Whole("uses", 0, 1000) ?? 0,
            UsesAllowed = fields.Whole("uses-allowed", 0, 1000),
            Spent = Spent(fields),
            Packs = Packs(fields, amountKind, findings),
            Worth = Price(fields, "worth", findings),
            Wear = Wear(fields),
            Where = name.Span,
        };
        fields.Finish();
        return item;
    }

    private static Wear? Wear(Fields fields)
    {
        var lasts = fields.Whole("lasts-uses", 1, 100_000);
        var used = fields.Whole("used-so-far", 0, 100_000);
        return lasts is { } uses ? new(uses, used ?? 0) : null;
    }

    private static SpentFluid? Spent(Fields fields)
    {
        var ph = fields.Quantity("ph", Dimension.None);
        var isClear = fields.YesNo("clear");
        return ph is null && isClear is null ? null : new(ph?.Middle, isClear ?? true);
    }

    private static ImmutableArray<Pack> Packs(Fields item, AmountKind kind, List<Finding> findings)
    {
        var packs = ImmutableArray.CreateBuilder<Pack>();
        foreach (var node in item.List("packs"))
        {
            if (Fields.Of(node, Named.Pack, findings) is not { } fields) continue;
            fields.Required("size");
            var size = Amount(fields, "size", kind, findings);
            var price = fields.Scalar("price") is { } text ? MoneyText.Read(text.Value, text.Span) : null;
            if (price is not null) findings.AddRange(price.Findings);
            var lead = LeadDays(fields, findings);
            fields.Finish();
            if (size is not null) packs.Add(new(size.Value, price?.Value, lead));
        }

        return packs.DrainToImmutable();
    }

    /// <summary>Whole calendar days from the order to the day it is there; a part of a day is a day.</summary>
    public static int LeadDays(Fields fields, List<Finding> findings)
    {
        if (fields.Quantity("lead", Dimension.OfTime) is not { } lead) return 0;
        var days = Math.Ceiling(lead.High / 86400);
        if (lead.Low >= 0 && days <= StockLimits.MostLeadDays) return (int)days;
        findings.Add(Finding.Error("absurd-time", AbsurdTime.With(("lead", lead)), AbsurdTimeRemedy, fields.Entry("lead")!.Value.Span));
        return 0;
    }

    private static Amount? Amount(Fields fields, string key, AmountKind kind, List<Finding> findings)
    {
        var dimension = kind switch { AmountKind.Volume => Dimension.OfVolume, AmountKind.Mass => Dimension.OfMass, _ => Dimension.None };
        if (fields.Quantity(key, dimension) is not { } range) return null;
        var most = kind == AmountKind.Volume ? 1e3 : kind == AmountKind.Mass ? 1e6 : 1e9;
        if (!range.IsPoint || Math.Abs(range.High) > most || kind == AmountKind.Count && range.Low != Math.Floor(range.Low))
        {
            findings.Add(Finding.Error("absurd-amount", AbsurdAmount.With(("key", key), ("amount", range)), AbsurdAmountRemedy, fields.Entry(key)!.Value.Span));
            return null;
        }

        return kind switch
        {
            AmountKind.Volume => Benches.Amount.Of(Volume.FromCubicMeters(range.Low)),
            AmountKind.Mass => Benches.Amount.Of(Mass.FromKilograms(range.Low)),
            _ => Benches.Amount.Of((long)range.Low),
        };
    }
}
