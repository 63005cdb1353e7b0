using System.Globalization;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Tests.Quantities;

public class MoneyTests
{
    [Theory]
    [InlineData("12.50 EUR", 1250)]
    [InlineData("12.5 EUR", 1250)]
    [InlineData("  7 GBP ", 700)]
    [InlineData("-0.01 USD", -1)]
    [InlineData("1500 JPY", 1500)]
    [InlineData("1.234 KWD", 1234)]
    public void Read_takes_a_number_and_a_code(string text, long minor)
    {
        var read = MoneyText.Read(text);
        Assert.Empty(read.Findings);
        Assert.Equal(minor, read.Value!.Minor);
    }

    [Theory]
    [InlineData("12.50", "price-without-currency")]
    [InlineData("12.50 euro", "unknown-currency")]
    [InlineData("12.50 eur", "unknown-currency")]
    [InlineData("12,50 EUR", "not-money")]
    [InlineData("1.5 JPY", "finer-than-the-smallest-coin")]
    [InlineData("1.001 EUR", "finer-than-the-smallest-coin")]
    [InlineData("EUR", "not-money")]
    [InlineData("", "not-money")]
    [InlineData("1e5 EUR", "not-money")]
    [InlineData("99999999999999999999 EUR", "not-money")]
    [InlineData("9000000000000 KWD", "not-money")]
    public void Read_says_what_is_wrong(string text, string id)
    {
        var finding = Assert.Single(MoneyText.Read(text).Findings);
        Assert.Equal(id, finding.Id);
        Assert.NotEmpty(finding.Remedy.ToString());
    }

    /// <summary>Decimals as ISO 4217 gives them (maintenance agency's list one).</summary>
    [Theory]
    [InlineData("JPY", 0)]
    [InlineData("KRW", 0)]
    [InlineData("ISK", 0)]
    [InlineData("XOF", 0)]
    [InlineData("EUR", 2)]
    [InlineData("GBP", 2)]
    [InlineData("USD", 2)]
    [InlineData("CHF", 2)]
    [InlineData("KWD", 3)]
    [InlineData("BHD", 3)]
    [InlineData("TND", 3)]
    [InlineData("XAU", null)]
    [InlineData("ABC", null)]
    public void MinorUnits_are_those_of_the_standard(string code, int? decimals) => Assert.Equal(decimals, Money.MinorUnits(code));

    [Fact]
    public void Text_is_the_same_in_every_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("1234567.80 EUR", Money.Of(1234567.8m, "EUR").ToString());
            Assert.Equal("1500 JPY", Money.Of(1500, "JPY").ToString());
            Assert.Equal("0.005 KWD", Money.OfMinor(5, "KWD").ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Allocate_gives_the_odd_cents_to_the_largest_remainders()
    {
        var parts = Money.Of(10, "EUR").Allocate([1, 1, 1]);
        Assert.Equal([334L, 333, 333], parts.Select(p => p.Minor));
        Assert.Equal([0L, 667, 333], Money.Of(10, "EUR").Allocate([0, 2, 1]).Select(p => p.Minor));
        Assert.Equal([1000L, 0], Money.Of(10, "EUR").Allocate([0, 0]).Select(p => p.Minor));
        Assert.Equal(-1000L, Money.Of(-10, "EUR").Allocate([1, 1, 1]).Sum(p => p.Minor));
    }

    [Fact]
    public void Two_currencies_do_not_add_up()
    {
        var euro = Money.Of(1, "EUR");
        var yen = Money.Of(1, "JPY");
        Assert.Throws<InvalidOperationException>(() => euro + yen);
        Assert.Throws<InvalidOperationException>(() => euro < yen);
        Assert.Throws<ArgumentException>(() => Money.Of(1, "eur"));
        Assert.Throws<ArgumentException>(() => Money.Of(0.005m, "EUR"));
    }

    [Theory]
    [InlineData("0.005", 1)]
    [InlineData("0.0049", 0)]
    [InlineData("-0.005", -1)]
    [InlineData("0.015", 2)]
    public void Rounded_takes_halves_away_from_zero(string amount, long cents) =>
        Assert.Equal(cents, Money.Rounded(decimal.Parse(amount, CultureInfo.InvariantCulture), "EUR").Minor);

    [Fact]
    public void Into_rounds_to_the_other_currency() =>
        Assert.Equal("1604 JPY", Money.Of(10, "EUR").Into("JPY", 160.37m).ToString());
}
