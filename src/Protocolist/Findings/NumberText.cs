using System.Globalization;
using Protocolist.Quantities;

namespace Protocolist.Findings;

/// <summary>Numbers and quantities as a place of a phrase shows them.</summary>
internal static class NumberText
{
    private static readonly Phrase Once = new("times.once", "once");
    private static readonly Phrase Twice = new("times.twice", "twice");
    private static readonly Phrase Times = new("times.more", "{count} times");
    private static readonly Phrase NoTime = new("no-time", "no time");

    /// <summary>No number needs more decimals to be told from its limit.</summary>
    private const int MostDecimals = 6;

    /// <summary>A bare number: <c>0.#</c>, <c>0 vs limit</c>, <c>times</c>; with up to six decimals where nothing is said.</summary>
    public static string Of(in Argument number, string format, in Message message, Language language)
    {
        if (format == "times") return (number.Number switch { 1 => Once, 2 => Twice, _ => Times.With(number.Named("count")) }).ToString(language);
        return Against(format, message) is (var plain, { } other)
            ? Apart(number.Number, other.Number, DecimalsOf(plain))
            : Rounded(number.Number, format.Length == 0 ? "0.######" : format);
    }

    /// <summary>A quantity: rounded to what can be measured out, in a unit that is asked for, on a clock, as when mixing, or against a limit.</summary>
    public static string OfQuantity(in Argument argument, string format, in Message message, Language language)
    {
        if (format.Length == 0) return Measurable.Text(argument.Quantity);
        if (format == "mix" && MixingAmount.Text(argument.Quantity.Middle, argument.Dimension) is { } mixed) return mixed;
        if (format == "clock") return Clock(argument.Quantity.Middle, language);
        if (format == "amount") return AmountText.Of(argument.Quantity.Middle, argument.Dimension);
        if (format == "time") return TimeOfDay(argument.Quantity.Middle);
        var (plain, other) = Against(format, message);
        var space = plain.LastIndexOf(' ');
        if (space < 0) return other is { } limit ? Apart(argument.Quantity, limit.Quantity) : Range(argument.Quantity.Low, argument.Quantity.High, plain);
        var (number, symbol) = (plain[..space], plain[(space + 1)..]);
        var unit = UnitOf(symbol);
        return other is { } told
            ? $"{Apart(unit.FromSi(argument.Quantity.Middle), unit.FromSi(told.Quantity.Middle), DecimalsOf(number))} {symbol}"
            : $"{Range(unit.FromSi(argument.Quantity.Low), unit.FromSi(argument.Quantity.High), number)} {symbol}";
    }

    /// <summary>The unit that a place names: a symbol of the list, one over another, or days in full.</summary>
    private static Unit UnitOf(string symbol) =>
        symbol == "days" ? UnitTable.Get("d")
        : symbol.IndexOf('/', StringComparison.Ordinal) is > 0 and var per ? UnitTable.Get(symbol[..per]).Per(UnitTable.Get(symbol[(per + 1)..]))
        : UnitTable.Get(symbol);

    private static string Range(double low, double high, string format) =>
        Rounded(low, format) is var from && Rounded(high, format) is var to && from == to ? from : $"{from} to {to}";

    /// <summary>Days, hours and minutes, the last rounded up: <c>2 d 4 h</c>.</summary>
    private static string Clock(double seconds, Language language)
    {
        var minutes = (long)Math.Ceiling((seconds / 60) - 1e-9);
        (long Count, string Unit)[] parts = [(minutes / 1440, "d"), (minutes / 60 % 24, "h"), (minutes % 60, "min")];
        return minutes <= 0 ? language.Of(NoTime) : Spelt(parts);
    }

    /// <summary>Time since midnight: <c>08:30</c>; the end of a day is <c>24:00</c>.</summary>
    private static string TimeOfDay(double seconds)
    {
        var minutes = (int)(seconds / 60);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:00}:{minutes % 60:00}");
    }

    private static string Spelt(IEnumerable<(long Count, string Unit)> parts) =>
        string.Join(' ', parts.Where(p => p.Count > 0).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Count} {p.Unit}")));

    /// <summary>The format and the fact that a number is to be told apart from: <c>0.# vs least</c>.</summary>
    private static (string Plain, Argument? Other) Against(string format, in Message message)
    {
        var at = format.IndexOf("vs ", StringComparison.Ordinal);
        return at < 0 ? (format, null) : (format[..at].TrimEnd(), message.Find(format[(at + 3)..]));
    }

    private static int DecimalsOf(string format) => format.IndexOf('.', StringComparison.Ordinal) is >= 0 and var point ? format.Length - point - 1 : 0;

    /// <summary>A number with as many decimals as it takes to tell it from another: 4.99 is not "5, below 5". Alike where they are equal.</summary>
    private static string Apart(double value, double other, int decimals)
    {
        for (var places = decimals; places <= MostDecimals; places++)
        {
            var format = "0." + new string('#', places);
            if (Rounded(value, format) is var said && said != Rounded(other, format)) return said;
        }

        return Rounded(value, "0." + new string('#', decimals));
    }

    /// <summary>A quantity that is past a limit: rounded, or finer where that reads as the limit itself.</summary>
    private static string Apart(QuantityRange value, QuantityRange limit)
    {
        var said = Measurable.Text(value);
        if (said != Measurable.Text(limit) || value == limit) return said;
        if (value.Dimension == Dimension.OfTime) return ToTheSecond(value.Middle, inDays: said.EndsWith('d'));
        if (Fine(value.Dimension) is not { } unit) return said;
        var (fine, most) = (Apart(unit.FromSi(value.Middle), unit.FromSi(limit.Middle), 1), Apart(unit.FromSi(limit.Middle), unit.FromSi(value.Middle), 1));
        return fine == most ? said : $"{fine} {unit.Symbol}";
    }

    private static string ToTheSecond(double seconds, bool inDays)
    {
        var whole = (long)seconds;
        var days = inDays ? whole / 86400 : 0;
        return Spelt([(days, "d"), ((whole - (86400 * days)) / 3600, "h"), (whole / 60 % 60, "min"), (whole % 60, "s")]);
    }

    private static Unit? Fine(Dimension dimension) =>
        dimension == Dimension.OfVolume ? UnitTable.Get("L")
        : dimension == Dimension.OfLength ? UnitTable.Get("mm")
        : dimension == Dimension.OfMass ? UnitTable.Get("kg")
        : null;

    private static string Rounded(double value, string format) =>
        format == "two" ? TwoFigures(value) : value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>How an estimate is written: 76, 0.85 or 12000. Two figures are all that it is worth.</summary>
    private static string TwoFigures(double value)
    {
        if (value is not (> 1e-12 and < 1e15)) return value.ToString(CultureInfo.InvariantCulture);
        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 1);
        return ((decimal)(Math.Round(value / step) * step)).ToString("0.############", CultureInfo.InvariantCulture);
    }
}
