using Protocolist.Findings;

namespace Protocolist.Fluids;

/// <summary>Reads fluids as people write them.</summary>
internal static class FluidName
{
    private const int LongestText = 120;
    private const int StrongestStockByMass = 50;

    // 50 % by mass is 55.3 g in 100 mL beside 20 % methanol and more beside less (Walker's tables): what every stock can hold.
    private const int StrongestStockPerVolume = 54;

    /// <summary>Reads a name; see <see cref="Fluid.Read"/>.</summary>
    public static Checked<Fluid> Read(string text, SourceSpan where)
    {
        if (string.IsNullOrWhiteSpace(text)) return Fault("fluid-missing", "no fluid is named", "write a fluid such as 'ethanol 70 %vol'", where);
        if (text.Length > LongestText) return Fault("unknown-fluid", $"a fluid's name of {text.Length} characters is too long", "write a fluid such as 'ethanol 70 %vol'", where);
        for (var i = 1; i < text.Length - 1; i++)
        {
            if (text[i] == ',' && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1]))
                return Fault("decimal-comma", $"a comma stands in a number of '{text}'", "write the decimal sign as a point", where);
        }

        var parts = FluidNameParts.Of(text.Trim());
        if (!FluidWords.TryGet(parts.Words, out var word))
        {
            if (FluidWords.TryGet(parts.Words.TrimEnd("0123456789. ".ToCharArray()), out _))
                return Fault("strength-missing", $"'{text}' has a number without its unit", "write the basis behind it, as in 'ethanol 70 %vol', 'formalin 10 %' or 'formaldehyde 4 % w/v'", where);
            return parts.Words.Trim().ToLowerInvariant() is "alcohol" or "spirit" or "spirits"
                ? Fault("unknown-fluid", $"'{text}' does not say which alcohol", "write 'ethanol' or 'isopropanol'; they are not mixed", where)
                : Fault("unknown-fluid", $"no fluid called '{text}' is known", FluidSuggestion(parts.Words), where);
        }

        return word.Kind switch
        {
            FluidKind.Water or FluidKind.DistilledWater or FluidKind.TapWater or FluidKind.SeaWater => WaterOf(text, parts, word, where),
            FluidKind.Ethanol or FluidKind.Isopropanol => AlcoholOf(text, parts, word, where),
            FluidKind.FormaldehydeStock => StockOf(text, parts, where),
            _ => WorkingOf(text, parts, word, where),
        };
    }

    private static Checked<Fluid> WaterOf(string text, FluidNameParts parts, FluidWord word, SourceSpan where)
    {
        if (parts.Percent is not null) return Fault("strength-out-of-place", $"'{text}' gives water a strength", word.Kind is FluidKind.SeaWater ? "leave the percentage out; salt is given as in 'sea water, salinity 35'" : "leave the percentage out", where);
        if (word.Kind is FluidKind.SeaWater)
        {
            if (Salinity(text, parts, where, out var salinity) is { } fault) return fault;
            return new(Fluid.SeaWater(salinity), []);
        }

        if (parts.Extra.Length > 0) return Leftover(text, parts, where);
        return new(word.Kind switch { FluidKind.Water => Fluid.Water, FluidKind.TapWater => Fluid.TapWater, _ => Fluid.DistilledWater }, []);
    }

    private static Checked<Fluid> AlcoholOf(string text, FluidNameParts parts, FluidWord word, SourceSpan where)
    {
        var example = word.Kind is FluidKind.Ethanol ? "ethanol 70 %vol" : "isopropanol 70 %vol";
        if (parts.Extra.Length > 0) return Leftover(text, parts, where);
        if (parts.Percent is not { } percent) return Fault("strength-missing", $"'{text}' has no strength", $"write it as '{example}'", where);
        if (Outside(text, percent, where) is { } outside) return outside;
        if (parts.Basis is StrengthBasis.WeightPerVolume or StrengthBasis.PartsOfStock)
            return Fault("strength-basis-unfit", $"'{text}' gives an alcohol on a basis that is not used for it", $"give %vol or %mass, as in '{example}'", where);

        var basis = parts.Basis is StrengthBasis.Mass ? StrengthBasis.Mass : StrengthBasis.Volume;
        var fluid = word.Kind is FluidKind.Ethanol ? Fluid.Ethanol(percent, basis) : Fluid.Isopropanol(percent, basis);
        if (parts.Basis is not StrengthBasis.None) return new(fluid, []);
        var byMass = word.Kind is FluidKind.Ethanol ? Fluid.Ethanol(percent, StrengthBasis.Mass) : Fluid.Isopropanol(percent, StrengthBasis.Mass);
        return new(fluid, [Finding.Warning("strength-basis-missing", $"'{text}' does not say by volume or by mass; read as %vol ({FluidNameText.Number(byMass.AlcoholVolumePercent, 1)} %vol it would be by mass)", $"write '{fluid.Name}'", where)]);
    }

    private static Checked<Fluid> StockOf(string text, FluidNameParts parts, SourceSpan where)
    {
        const string example = "formaldehyde stock 37 %mass";
        if (parts.Percent is not { } percent) return Fault("strength-missing", $"'{text}' has no strength", $"read it off the bottle and write it as '{example}'", where);
        var methanol = parts.Methanol;
        if (string.Equals(parts.Extra, "methanol-free", StringComparison.OrdinalIgnoreCase)) methanol = 0;
        else if (parts.Extra.Length > 0 && methanol is null) return Leftover(text, parts, where, "write 'methanol 10 %mass' or 'methanol-free' there, or nothing");
        if (methanol is > 20) return Fault("strength-out-of-range", $"'{text}' has more methanol than any stock", "give 0 to 20 %mass", where);
        if (parts.Basis is StrengthBasis.Volume or StrengthBasis.PartsOfStock)
            return Fault("strength-basis-unfit", $"'{text}' gives a stock on a basis that is not used for it", $"give %mass or % w/v, as in '{example}'", where);

        var basis = parts.Basis is StrengthBasis.WeightPerVolume ? StrengthBasis.WeightPerVolume : StrengthBasis.Mass;
        var most = basis is StrengthBasis.Mass ? StrongestStockByMass : StrongestStockPerVolume;
        if (!(percent >= Fluid.WeakestStock && percent <= most))
            return Fault("strength-out-of-range", $"'{text}' is no stock: {FluidNameText.Number(percent, 3)} % is outside {FluidNameText.Number(Fluid.WeakestStock, 0)} to {most}", $"write '{example}', or 'formaldehyde 4 % w/v' for a working solution", where);
        var fluid = Fluid.FormaldehydeStock(percent, basis, methanol ?? 100 * Formaldehyde.ReferenceMethanol);
        return parts.Basis is StrengthBasis.None
            ? new(fluid, [Finding.Warning("strength-basis-missing", $"'{text}' does not say by mass or by volume; read as %mass, {FluidNameText.Number(fluid.FormaldehydeGramsPerLitre!.Value, 0)} g/L", $"write '{fluid.Name}', or '% w/v'", where)])
            : new(fluid, []);
    }

    private static Checked<Fluid> WorkingOf(string text, FluidNameParts parts, FluidWord word, SourceSpan where)
    {
        var salinity = Fluids.SeaWater.OceanSalinity;
        if (word.Buffering is Buffering.SeaWater)
        {
            if (Salinity(text, parts, where, out salinity) is { } fault) return fault;
        }
        else if (parts.Extra.Length > 0)
        {
            return Leftover(text, parts, where);
        }

        if (parts.Percent is not { } percent) return Fault("strength-missing", $"'{text}' has no strength", word.IsFormalin ? "write it as 'formalin 10 %', parts of stock" : "write it as 'formaldehyde 4 % w/v'", where);
        if (Outside(text, percent, where) is { } outside) return outside;
        if (percent > Fluid.StrongestWorking) return TooStrong(text, percent, parts.Basis, where);
        if (parts.Basis is StrengthBasis.Volume && !word.IsFormalin)
        {
            return Fault("strength-basis-unfit", $"'{text}' gives formaldehyde by volume, which may mean parts of stock or its own content",
                $"write '{Fluid.Formalin(percent, word.Buffering, salinity).Name}' or '{Fluid.FormaldehydeWeightPerVolume(percent, word.Buffering, salinity).Name}'", where);
        }

        if (parts.Basis is StrengthBasis.PartsOfStock || (word.IsFormalin && parts.Basis is StrengthBasis.None or StrengthBasis.Volume))
        {
            var formalin = Fluid.Formalin(percent, word.Buffering, salinity);
            return parts.Basis is StrengthBasis.None && FluidNameText.IsAmbiguous(percent) ? new(formalin, [Ambiguous(text, formalin, where)]) : new(formalin, []);
        }

        var perVolume = parts.Basis is StrengthBasis.Mass ? OfMass(percent, word.Buffering, salinity) : percent;
        if (perVolume > Fluid.StrongestWorking) return TooStrong(text, percent, parts.Basis, where);
        var fluid = Fluid.FormaldehydeWeightPerVolume(perVolume, word.Buffering, salinity);
        return parts.Basis is StrengthBasis.None
            ? new(fluid, [Finding.Warning("strength-basis-missing", $"'{text}' does not say on which basis; read as % w/v", $"write '{fluid.Name}'", where)])
            : new(fluid, []);
    }

    private static Finding Ambiguous(string text, Fluid formalin, SourceSpan where) => Finding.Warning(
        "ambiguous-formalin-strength",
        $"'{text}' may mean {FluidNameText.Number(formalin.Strength, 2)} parts of stock in 100, which is {FluidNameText.Number(formalin.FormaldehydeGramsPerLitre!.Value, 1)} g/L formaldehyde (taken here), or {FluidNameText.Number(formalin.Strength, 2)} % formaldehyde, which is {FluidNameText.Number(1000 * formalin.Strength / Fluid.ReferenceStock.FormaldehydeGramsPerLitre!.Value, 1)} parts",
        $"say which is meant: '{formalin.Name}' or '{Fluid.FormaldehydeWeightPerVolume(formalin.Strength, formalin.Buffering, Math.Max(2, formalin.Salinity)).Name}'",
        where);

    /// <summary>Percent w/v of percent by mass, through the density, which hangs on the strength itself: each round gains two digits.</summary>
    private static double OfMass(double percent, Buffering buffering, double salinity)
    {
        var perVolume = percent;
        for (var round = 0; round < 8; round++)
            perVolume = percent * Fluid.FormaldehydeWeightPerVolume(Math.Min(perVolume, Fluid.StrongestWorking), buffering, salinity).DensityAt(20) / 1000;
        return perVolume;
    }

    private static Checked<Fluid> TooStrong(string text, double percent, StrengthBasis basis, SourceSpan where)
    {
        var isPerVolume = basis is StrengthBasis.WeightPerVolume;
        var bottle = percent <= (isPerVolume ? StrongestStockPerVolume : StrongestStockByMass)
            ? $"write 'formaldehyde stock {FluidNameText.Number(percent, 3)} {(isPerVolume ? "% w/v" : "%mass")}' if it is the bottle's own strength"
            : "write 'formaldehyde stock 37 %mass', or what the bottle's label says";
        return Fault("strength-out-of-range", $"'{text}' is as strong as a stock, not as a working solution", $"{bottle}; '100 % formalin' is the stock", where);
    }

    private static Checked<Fluid>? Salinity(string text, FluidNameParts parts, SourceSpan where, out double salinity)
    {
        salinity = Fluids.SeaWater.OceanSalinity;
        if (parts.Extra.Length == 0) return null;
        if (parts.Salinity is not { } given) return Leftover(text, parts, where, "write 'salinity 35' there, or nothing");
        salinity = given;
        return given is >= 2 and <= Fluids.SeaWater.HighestSalinity
            ? null
            : Fault("salinity-out-of-range", $"a salinity of {FluidNameText.Number(given, 3)} is outside 2 to 42", "give the practical salinity of the sea water", where);
    }

    private static Checked<Fluid>? Outside(string text, double percent, SourceSpan where) => percent >= 0.001 && percent <= 100
        ? null
        : Fault("strength-out-of-range", $"'{text}' has a strength of {FluidNameText.Number(percent, 3)} %", "give a strength above 0 and up to 100 %", where);

    private static Checked<Fluid> Leftover(string text, FluidNameParts parts, SourceSpan where, string remedy = "leave it out") =>
        Fault("unexpected-text", $"'{parts.Extra}' makes no sense in '{text}'", remedy, where);

    private static Checked<Fluid> Fault(string id, Message message, Message remedy, SourceSpan where) => new(null, [Finding.Error(id, message, remedy, where)]);

    private static Message FluidSuggestion(string words) => words.Length == 0 ? "write a fluid such as 'ethanol 70 %vol'" : Suggestion.For(words, FluidWords.Canonical);
}
