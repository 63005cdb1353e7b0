using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;

namespace Protocolist.Quantities;

/// <summary>An amount of money in one currency: always a whole number of the currency's smallest unit, never a floating number.</summary>
/// <remarks>Arithmetic never overflows: beyond a million million million smallest units a sum stays there. It is for one currency only; two currencies in
/// one operation are a caller's bug and throw. Use <see cref="Into"/> with a rate first.</remarks>
public sealed record Money : IComparable<Money>
{
    /// <summary>The furthest amount from zero, in smallest units: ten million million, so that sums of many cannot overflow.</summary>
    internal const long MostMinor = 10_000_000_000_000;

    /// <summary>Where sums stop: no bench comes near, and a sum past it says no more than that the prices are absurd.</summary>
    private const long Furthest = 1_000_000_000_000_000_000;

    private Money(long minor, string currency) => (Minor, Currency) = (minor, currency);

    /// <summary>The amount in the currency's smallest unit: cents of EUR, whole JPY, fils of KWD.</summary>
    public long Minor { get; }

    /// <summary>The ISO 4217 code, three capitals.</summary>
    public string Currency { get; }

    /// <summary>The amount in the currency itself: <c>12.50</c> for 1250 cents.</summary>
    public decimal Amount => Minor / ScaleOf(Currency);

    /// <summary>Makes money from an amount that is a whole number of smallest units.</summary>
    /// <param name="amount">The amount, such as 12.5.</param>
    /// <param name="currency">An ISO 4217 code.</param>
    /// <returns>The money.</returns>
    /// <exception cref="ArgumentException">The code is not in ISO 4217, or the amount is finer than its smallest unit, or beyond ten million million
    /// smallest units.</exception>
    public static Money Of(decimal amount, string currency)
    {
        var minor = Math.Clamp(amount, -Furthest, Furthest) * ScaleOf(currency);
        return minor == decimal.Truncate(minor) && Math.Abs(minor) <= MostMinor
            ? new Money((long)minor, currency)
            : throw new ArgumentException($"{amount} {currency} is finer than the smallest unit, or too large.", nameof(amount));
    }

    /// <summary>Makes money from a number of smallest units.</summary>
    /// <param name="minor">Cents, fils, yen ...</param>
    /// <param name="currency">An ISO 4217 code.</param>
    /// <returns>The money.</returns>
    /// <exception cref="ArgumentException">The code is not in ISO 4217.</exception>
    public static Money OfMinor(long minor, string currency)
    {
        _ = ScaleOf(currency);
        return Within(minor, currency);
    }

    /// <summary>Rounds to the nearest smallest unit, halves away from zero, as invoices do.</summary>
    /// <param name="amount">Any amount.</param>
    /// <param name="currency">An ISO 4217 code.</param>
    /// <returns>The money.</returns>
    /// <exception cref="ArgumentException">The code is not in ISO 4217.</exception>
    public static Money Rounded(decimal amount, string currency) =>
        Within((Int128)decimal.Round(Math.Clamp(amount, -Furthest, Furthest) * ScaleOf(currency), 0, MidpointRounding.AwayFromZero), currency);

    /// <summary>No money, in a currency.</summary>
    /// <param name="currency">An ISO 4217 code.</param>
    /// <returns>Zero.</returns>
    public static Money Zero(string currency) => OfMinor(0, currency);

    /// <summary>The sum of any number of amounts.</summary>
    /// <param name="parts">The amounts, all in <paramref name="currency"/>.</param>
    /// <param name="currency">The currency of the sum, which an empty list needs too.</param>
    /// <returns>The sum.</returns>
    public static Money Sum(IEnumerable<Money> parts, string currency) => parts.Aggregate(Zero(currency), (sum, part) =>
        sum + (part ?? throw new ArgumentException("An amount is missing.", nameof(parts))));

    /// <summary>How many decimals a currency has: 2 for EUR, 0 for JPY, 3 for KWD; null for a code that is not in ISO 4217.</summary>
    /// <param name="currency">A code.</param>
    /// <returns>0, 2 or 3, or null.</returns>
    public static int? MinorUnits(string currency) =>
        currency is not null && Iso4217.Decimals.TryGetValue(currency, out var decimals) ? decimals : null;

    /// <summary>The same value in another currency, rounded to its smallest unit (halves away from zero).</summary>
    /// <param name="currency">The other currency's ISO 4217 code.</param>
    /// <param name="rate">How much of the other one buys; above 0, at most a thousand million.</param>
    /// <returns>The converted money.</returns>
    public Money Into(string currency, decimal rate)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rate);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rate, 1_000_000_000);
        return Rounded(Amount * rate, currency);
    }

    /// <summary>
    /// Splits this over parts in proportion to weights, so that the parts add up to exactly this. Units left over by rounding down go to the largest
    /// remainders, the earlier part first.
    /// </summary>
    /// <param name="weights">0 or more each; where all are 0, the first part takes everything.</param>
    /// <returns>One amount a weight, in their order.</returns>
    /// <exception cref="ArgumentException">There is no weight, or one is negative.</exception>
    public ImmutableArray<Money> Allocate(IReadOnlyList<decimal> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        if (weights.Count == 0 || weights.Any(w => w < 0)) throw new ArgumentException("Weights are needed, none negative.", nameof(weights));
        // Scaled to shares of 1 first: the product with a large amount of cents then stays within what a decimal holds.
        var total = weights.Sum();
        var exact = weights.Select((w, i) => total == 0 ? (i == 0 ? Minor : 0m) : w / total * Minor).ToArray();
        var parts = exact.Select(e => (long)decimal.Floor(e)).ToArray();
        var over = Minor - parts.Sum();
        var byRemainder = Enumerable.Range(0, parts.Length).Where(i => over == 0 || total == 0 || weights[i] > 0)
            .OrderByDescending(i => exact[i] - parts[i]).ThenBy(i => i).ToArray();
        for (var i = 0; over > 0; i = (i + 1) % byRemainder.Length, over--) parts[byRemainder[i]]++;
        // A share such as 1/3 is itself rounded in its 28th decimal, which may tip a floor over the total.
        for (var i = byRemainder.Length - 1; over < 0; i--, over++) parts[byRemainder[i]]--;
        return [.. parts.Select(p => new Money(p, Currency))];
    }

    /// <summary>Adds.</summary><param name="a">One.</param><param name="b">Other, in the same currency.</param><returns>The sum.</returns>
    public static Money operator +(Money a, Money b) => Within((Int128)a.Minor + b.In(a.Currency), a.Currency);

    /// <summary>Subtracts.</summary><param name="a">One.</param><param name="b">Other, in the same currency.</param><returns>The difference.</returns>
    public static Money operator -(Money a, Money b) => Within((Int128)a.Minor - b.In(a.Currency), a.Currency);

    /// <summary>So many times.</summary><param name="a">Money.</param><param name="times">How often.</param><returns>The product.</returns>
    public static Money operator *(Money a, long times) => Within((Int128)a.Minor * times, a.Currency);

    /// <summary>Less.</summary><param name="a">One.</param><param name="b">Other, in the same currency.</param><returns>Whether.</returns>
    public static bool operator <(Money a, Money b) => a.CompareTo(b) < 0;

    /// <summary>More.</summary><param name="a">One.</param><param name="b">Other, in the same currency.</param><returns>Whether.</returns>
    public static bool operator >(Money a, Money b) => a.CompareTo(b) > 0;

    /// <summary>Not more.</summary><param name="a">One.</param><param name="b">Other, in the same currency.</param><returns>Whether.</returns>
    public static bool operator <=(Money a, Money b) => a.CompareTo(b) <= 0;

    /// <summary>Not less.</summary><param name="a">One.</param><param name="b">Other, in the same currency.</param><returns>Whether.</returns>
    public static bool operator >=(Money a, Money b) => a.CompareTo(b) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Money? other) => other is null ? 1 : Minor.CompareTo(other.In(Currency));

    /// <summary><c>12.50 EUR</c>, with all decimals of the currency.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Amount.ToString("F" + MinorUnits(Currency), CultureInfo.InvariantCulture) + " " + Currency;

    internal static decimal ScaleOf(string currency) => MinorUnits(currency) switch
    {
        0 => 1,
        2 => 100,
        3 => 1000,
        _ => throw new ArgumentException($"'{currency}' is not an ISO 4217 currency code.", nameof(currency)),
    };

    private static Money Within(Int128 minor, string currency) => new((long)Int128.Clamp(minor, -Furthest, Furthest), currency);

    private long In(string currency) => string.Equals(Currency, currency, StringComparison.Ordinal)
        ? Minor
        : throw new InvalidOperationException($"{this} and {currency} are two currencies; convert one at a rate first.");
}

/// <summary>The currencies of ISO 4217 (list one, current currencies) and their decimals.</summary>
internal static class Iso4217
{
    /// <summary>
    /// Code to decimals. From memory of the maintenance agency's list one as of 2025; funds, metals and testing codes left out, because nothing is bought
    /// with them.
    /// </summary>
    public static FrozenDictionary<string, int> Decimals { get; } = Table(
        (0, "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF"),
        (3, "BHD IQD JOD KWD LYD OMR TND"),
        (2, "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP CVE CZK DKK DOP DZD"),
        (2, "EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL"),
        (2, "MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG"),
        (2, "SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG"));

    private static FrozenDictionary<string, int> Table(params (int Decimals, string Codes)[] rows) =>
        rows.SelectMany(r => r.Codes.Split(' ').Select(code => (code, r.Decimals))).ToFrozenDictionary(p => p.code, p => p.Decimals, StringComparer.Ordinal);
}
