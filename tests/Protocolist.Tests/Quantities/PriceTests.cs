using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Quantities;

public class PriceTests
{
    [Theory]
    [InlineData("12.50 EUR/L", "12.50 EUR/L")]
    [InlineData("12.5 EUR / L", "12.50 EUR/L")]
    [InlineData("0.0125 EUR/mL", "0.0125 EUR/mL")]
    [InlineData("1500 JPY/kg", "1500 JPY/kg")]
    [InlineData("3 KWD/piece", "3.000 KWD/piece")]
    [InlineData("30 EUR/h", "30.00 EUR/h")]
    public void Read_and_written_again_it_is_the_same(string text, string written)
    {
        var price = Price.Read(text).Value!;
        Assert.Equal(written, price.ToString());
        Assert.Equal(price, Price.Read(written).Value);
    }

    [Theory]
    [InlineData("12.50 EUR", "price-without-unit")]
    [InlineData("12.50/L", "price-without-currency")]
    [InlineData("12.50 EUR/ml", "unknown-price-unit")]
    [InlineData("12.50 EUR/", "unknown-price-unit")]
    [InlineData("-1 EUR/L", "negative-price")]
    [InlineData("free", "not-money")]
    public void Read_says_what_is_wrong(string text, string id) =>
        Assert.Equal(id, Assert.Single(Price.Read(text).Findings).Id);

    [Fact]
    public void For_multiplies_in_the_unit_of_the_price()
    {
        Assert.Equal("3.13 EUR", Price.Of(12.50m, "EUR", PriceUnit.Litre).For(Volume.FromMilliliters(250)).ToString());
        Assert.Equal("3.13 EUR", Price.Of(0.0125m, "EUR", PriceUnit.Millilitre).For(Volume.FromMilliliters(250)).ToString());
        Assert.Equal("2.60 EUR", Price.Of(0.40m, "EUR", PriceUnit.Gram).For(Mass.FromGrams(6.5)).ToString());
        Assert.Equal("12.50 EUR", Price.Of(30m, "EUR", PriceUnit.Hour).For(NodaTime.Duration.FromMinutes(25)).ToString());
        Assert.Equal("0.25 EUR", Price.Of(25m, "EUR", PriceUnit.Piece).For(0.01m).ToString());
        Assert.Throws<ArgumentException>(() => Price.Of(30m, "EUR", PriceUnit.Hour).For(Mass.FromGrams(1)));
    }
}
