using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Planning.Purchasing;

/// <summary>What other currencies are worth in the plan's own. No rate is ever looked up or assumed.</summary>
/// <param name="Currency">The plan's currency, an ISO 4217 code.</param>
/// <param name="Rates">Of another currency's code: how much of the plan's currency one of it buys; above 0.</param>
public sealed record ExchangeRates(string Currency, ImmutableDictionary<string, decimal> Rates)
{
    /// <summary>One currency only.</summary>
    /// <param name="currency">Its ISO 4217 code.</param>
    /// <returns>Rates that convert nothing.</returns>
    public static ExchangeRates None(string currency) => new(currency, ImmutableDictionary<string, decimal>.Empty);

    /// <summary>Money in the plan's currency, rounded to its smallest coin; null where a rate is lacking.</summary>
    /// <param name="money">Money in any currency.</param>
    /// <returns>The same in <see cref="Currency"/>, or null.</returns>
    public Money? Convert(Money money) =>
        string.Equals(money.Currency, Currency, StringComparison.Ordinal) ? money
        : Rates.TryGetValue(money.Currency, out var rate) && rate > 0 ? money.Into(Currency, rate)
        : null;

    /// <summary>The finding for money that cannot be converted.</summary>
    internal Finding Lacking(string currency, string what) => Finding.Error(
        "two-currencies",
        $"{what} is priced in {currency}, the plan in {Currency}, and there is no rate",
        $"state how much {Currency} one {currency} buys, or price it in {Currency}");
}
