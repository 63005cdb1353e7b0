using Protocolist.Findings;

namespace Protocolist.Fluids.Names;

/// <summary>Reads fluids as people write them, and says what is wrong with a text that is none.</summary>
internal static class FluidName
{
    private static readonly Phrase Missing = new("fluid-missing", "no fluid is named");
    private static readonly Phrase WriteAFluid = new("fluid-missing.remedy", "write a fluid such as 'ethanol 70 %vol'");
    private static readonly Phrase TooLong = new("unknown-fluid.too-long", "a fluid's name of {length} characters is too long");
    private static readonly Phrase Unknown = new("unknown-fluid", "no fluid called '{text}' is known");
    private static readonly Phrase WhichAlcohol = new("unknown-fluid.alcohol", "'{text}' does not say which alcohol");
    private static readonly Phrase SayWhichAlcohol = new("unknown-fluid.alcohol.remedy", "write 'ethanol' or 'isopropanol'; they are not mixed");
    private static readonly Phrase Comma = new("decimal-comma.fluid", "a comma stands in a number of '{text}'");
    private static readonly Phrase WriteAPoint = new("decimal-comma.fluid.remedy", "write the decimal sign as a point");
    private static readonly Phrase WithoutUnit = new("strength-missing.unit", "'{text}' has a number without its unit");
    private static readonly Phrase WriteTheBasis = new(
        "strength-missing.unit.remedy", "write the basis behind it, as in 'ethanol 70 %vol', 'formalin 10 %' or 'formaldehyde 4 % w/v'");

    private static readonly Phrase WithoutStrength = new("strength-missing", "'{text}' has no strength");
    private static readonly Phrase OutOfRange = new("strength-out-of-range", "'{text}' has a strength of {percent:0.###} %");
    private static readonly Phrase GiveAStrength = new("strength-out-of-range.remedy", "give a strength above 0 and up to 100 %");
    private static readonly Phrase Odd = new("unexpected-text.fluid", "'{extra}' makes no sense in '{text}'");
    private static readonly Phrase LeaveItOut = new("unexpected-text.fluid.remedy", "leave it out");

    /// <summary>Reads a name; see <see cref="Fluid.Read"/>.</summary>
    public static Checked<Fluid> Read(string text, SourceSpan where, SubstanceCatalogue known)
    {
        if (string.IsNullOrWhiteSpace(text)) return Fault("fluid-missing", Missing, WriteAFluid, where);
        if (text.Length > WrittenFluid.LongestText) return Fault("unknown-fluid", TooLong.With(("length", text.Length)), WriteAFluid, where);
        if (HasDecimalComma(text)) return Fault("decimal-comma", Comma.With(("text", text)), WriteAPoint, where);
        var written = new WrittenFluid(text, where);
        return Find(written, known, out var word) ? word.Substance.Read(written, word) : NotFound(written, known);
    }

    /// <summary>The fluid of a name, where nobody asks what is wrong; see <see cref="Fluid.Find"/>.</summary>
    public static Fluid? Find(string text, SubstanceCatalogue known)
    {
        if (text.Length > WrittenFluid.LongestText || HasDecimalComma(text)) return null;
        var written = new WrittenFluid(text, default);
        return Find(written, known, out var word) ? word.Substance.Read(written, word).Value : null;
    }

    /// <summary>No fluid, for one reason.</summary>
    public static Checked<Fluid> Fault(string id, Message message, Message remedy, SourceSpan where) => new(null, [Finding.Error(id, message, remedy, where)]);

    /// <summary>A strength is needed and not given.</summary>
    public static Checked<Fluid> NoStrength(in WrittenFluid written, Message remedy) =>
        Fault("strength-missing", WithoutStrength.With(("text", written.Text)), remedy, written.Where);

    /// <summary>Something stands after a comma that has no place there.</summary>
    public static Checked<Fluid> Leftover(in WrittenFluid written, Phrase? remedy = null) =>
        Fault("unexpected-text", Odd.With(("extra", written.Extra), ("text", written.Text)), remedy ?? LeaveItOut, written.Where);

    /// <summary>A strength that no fluid has.</summary>
    public static Checked<Fluid>? Outside(in WrittenFluid written, double percent) => percent is >= 0.001 and <= 100
        ? null
        : Fault("strength-out-of-range", OutOfRange.With(("text", written.Text), ("percent", percent)), GiveAStrength, written.Where);

    private static bool HasDecimalComma(string text)
    {
        for (var i = text.IndexOf(',', StringComparison.Ordinal); i >= 0 && i < text.Length - 1; i = text.IndexOf(',', i + 1))
        {
            if (i > 0 && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1])) return true;
        }

        return false;
    }

    private static bool Find(in WrittenFluid written, SubstanceCatalogue known, out FluidWord word)
    {
        Span<char> plain = stackalloc char[WrittenFluid.LongestText + 1];
        return known.TryGet(plain[..written.PlainWords(plain)], out word);
    }

    private static Checked<Fluid> NotFound(in WrittenFluid written, SubstanceCatalogue known)
    {
        var (text, words) = (written.Text, written.Words);
        if (known.TryGet(WrittenFluid.Plain(words.TrimEnd("0123456789. ".ToCharArray())), out _))
            return Fault("strength-missing", WithoutUnit.With(("text", text)), WriteTheBasis, written.Where);
        return words.Trim().ToLowerInvariant() is "alcohol" or "spirit" or "spirits"
            ? Fault("unknown-fluid", WhichAlcohol.With(("text", text)), SayWhichAlcohol, written.Where)
            : Fault("unknown-fluid", Unknown.With(("text", text)), words.Length == 0 ? WriteAFluid : Suggestion.For(words, known.Canonical), written.Where);
    }
}
