using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Planning.Provisioning.Purchasing;

/// <summary>What other currencies are worth in the plan's own. No rate is ever looked up or assumed.</summary>
/// <param name="Currency">The plan's currency, an ISO 4217 code.</param>
/// <param name="Rates">Of another currency's code: how much of the plan's currency one of it buys; above 0.</param>
internal sealed record ExchangeRates(string Currency, ImmutableDictionary<string, decimal> Rates)
{
    private static readonly Phrase NoRate = new("two-currencies", "{what} is priced in {currency}, the plan in {own}, and there is no rate");
    private static readonly Phrase NoRateRemedy = new("two-currencies.remedy", "state how much {own} one {currency} buys, or price it in {own}");
    private static readonly Phrase Quoted = new("two-currencies.item", "'{item}'");

    /// <summary>One currency only: rates that convert nothing.</summary>
    public static ExchangeRates None(string currency) => new(currency, ImmutableDictionary<string, decimal>.Empty);

    /// <summary>Money in the plan's currency, rounded to its smallest coin; null where a rate is lacking.</summary>
    public Money? Convert(Money money) =>
        string.Equals(money.Currency, Currency, StringComparison.Ordinal) ? money
        : Rates.TryGetValue(money.Currency, out var rate) && rate > 0 ? money.Into(Currency, rate)
        : null;

    /// <summary>The finding for money that cannot be converted.</summary>
    public Finding Lacking(string currency, Message what)
    {
        var (foreign, own) = ((Argument)("currency", currency), (Argument)("own", Currency));
        return Finding.Error(NoRate.Id, NoRate.With(("what", what), foreign, own), NoRateRemedy.With(foreign, own));
    }

    /// <summary>The finding for a stock, a vessel or a material whose price cannot be converted.</summary>
    public Finding LackingOf(string currency, Message item) => Lacking(currency, Quoted.With(("item", item)));
}
