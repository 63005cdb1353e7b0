using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Benches.Disposal;

/// <summary>Reads what it costs to be rid of waste: <c>disposal: {formaldehyde: 3.20 EUR/L, alcohol: 1.10 EUR/L, sharps: 0.20 EUR/piece}</c>.</summary>
internal static class DisposalReader
{
    private static readonly Phrase Counted = new("priced-by-another-measure.counted", "'{key}' waste is counted, and {price} is no price for that");
    private static readonly Phrase Poured = new("priced-by-another-measure.poured", "'{key}' waste is measured by volume, and {price} is no price for that");

    private static readonly Phrase CountedRemedy = new(
        "priced-by-another-measure.counted.remedy",
        "give a price by the piece, as 0.20 EUR/piece, or the price of a full container under 'waste: containers:'");

    private static readonly Phrase AbsurdPrice = new("absurd-price.disposal", "disposal cannot cost {price}");
    private static readonly Phrase AbsurdPriceRemedy = new("absurd-price.disposal.remedy", "check the figure and the currency");
    private static readonly Phrase PouredRemedy = new("priced-by-another-measure.poured.remedy", "give a price by volume, as 3.20 EUR/L");

    public static ImmutableDictionary<WasteClass, Price> Read(Fields bench, List<Finding> findings)
    {
        var prices = ImmutableDictionary.CreateBuilder<WasteClass, Price>();
        if (bench.Nested("disposal") is not { } table) return prices.ToImmutable();

        // The two drums that most places have; a class's own word says it more finely and comes after.
        if (Price(table, "formaldehyde", isSolid: false, findings) is { } formaldehyde)
            prices[WasteClass.Formaldehyde] = prices[WasteClass.FormaldehydeAndAlcohol] = formaldehyde;
        if (Price(table, "alcohol", isSolid: false, findings) is { } alcohol) prices[WasteClass.FlammableAlcohol] = prices[WasteClass.DiluteAlcohol] = alcohol;
        foreach (var @class in Enum.GetValues<WasteClass>().Where(c => c != WasteClass.Formaldehyde))
            if (Price(table, EnumWords<WasteClass>.Of(@class), Waste.IsSolid(@class), findings) is { } price) prices[@class] = price;
        table.Finish();
        return prices.ToImmutable();
    }

    private static Price? Price(Fields table, string key, bool isSolid, List<Finding> findings)
    {
        if (table.Scalar(key) is not { } text) return null;
        var read = Quantities.Price.Read(text.Value, text.Span);
        findings.AddRange(read.Findings);
        if (read.Value is not { } price) return null;
        if (Misfit(key, isSolid, price) is not { } fault) return price;
        findings.Add(fault with { Where = text.Span });
        return null;
    }

    /// <summary>Why a price cannot be one for a sort of waste.</summary>
    public static Finding? Misfit(string key, bool isSolid, Price price)
    {
        if (price.Rate > StockLimits.MostPrice) return Finding.Error("absurd-price", AbsurdPrice.With(("price", price.ToString())), AbsurdPriceRemedy);
        var fits = isSolid ? price.Per is PriceUnit.Piece : price.Per is PriceUnit.Litre or PriceUnit.Millilitre or PriceUnit.CubicMetre;
        return fits ? null : Finding.Error(
            "priced-by-another-measure",
            (isSolid ? Counted : Poured).With(Argument.Id("key", key), ("price", price.ToString())),
            isSolid ? CountedRemedy : PouredRemedy);
    }
}
