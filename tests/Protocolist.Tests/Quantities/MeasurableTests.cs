using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Tests.Quantities;

public class MeasurableTests
{
    // What a person reads off the tool that is used for such an amount (common practice).
    [Theory]
    [InlineData("2.4999999999 mL", "2.5 mL")]
    [InlineData("0.0004567 mL", "0.46 µL")]
    [InlineData("0.0123 mL", "12 µL")]
    [InlineData("0.4567 mL", "0.46 mL")]
    [InlineData("13.333333 mL", "13.3 mL")]
    [InlineData("123.4 mL", "123 mL")]
    [InlineData("987 mL", "985 mL")]
    [InlineData("999.9 mL", "1 L")]
    [InlineData("1.2345 L", "1.23 L")]
    [InlineData("12.345 L", "12.3 L")]
    [InlineData("123.45 L", "123 L")]
    [InlineData("0.3 mg", "0.3 mg")]
    [InlineData("13.5 mg", "14 mg")]
    [InlineData("99.7 mg", "0.1 g")]
    [InlineData("7.123 kg", "7.12 kg")]
    [InlineData("12.345 g", "12.3 g")]
    [InlineData("12.7 mm", "13 mm")]
    [InlineData("4.26 mm", "4.3 mm")]
    [InlineData("12.346 m", "12.35 m")]
    [InlineData("92.3 s", "92 s")]
    [InlineData("119.7 s", "2 min")]
    [InlineData("150 s", "2.5 min")]
    [InlineData("90 min", "90 min")]
    [InlineData("2.26 h", "2.5 h")]
    [InlineData("36 h", "36 h")]
    [InlineData("47.9 h", "2 d")]
    [InlineData("13.9 d", "14 d")]
    [InlineData("20.3 degC", "20.5 degC")]
    [InlineData("0.1 degC", "0 degC")]
    [InlineData("-0.1 degC", "0 degC")]
    [InlineData("69.97 %vol", "70 %vol")]
    [InlineData("0.004 %vol", "0.004 %vol")]
    [InlineData("40.04 g/L", "40 g/L")]
    [InlineData("885.561 kg/m3", "885.6 kg/m3")]
    [InlineData("100.2 mL/kg", "100 mL/kg")]
    [InlineData("0.333333333", "0.333")]
    [InlineData("123456789 L", "123457000 L")]
    [InlineData("-3.21 mL", "-3.2 mL")]
    [InlineData("0 mL", "0 µL")]
    public void One_quantity_is_rounded_to_what_can_be_measured(string exact, string shown)
    {
        Assert.Null(QuantityText.Read(exact, out var range));
        Assert.Equal(shown, Measurable.Text(range));
    }

    [Theory]
    [InlineData("2 to 5 mL", "2 to 5 mL")]
    [InlineData("9.8 to 21.4 d", "10 to 21 d")]
    [InlineData("4.98 to 5.02 mL", "5 mL")]
    [InlineData("0.5 mL to 20 L", "0.5 mL to 20 L")]
    [InlineData("at least 24 h", "at least 24 h")]
    [InlineData("at most 30 d", "at most 30 d")]
    [InlineData("at least 0 h", "any")]
    [InlineData("at least -5 m", "at least -5 m")]
    [InlineData("0 to 3 mL", "at most 3 mL")]
    [InlineData("-3 to 4 degC", "-3 to 4 degC")]
    [InlineData("2 to 8 degC", "2 to 8 degC")]
    [InlineData("0.0003 to 0.0004 %vol", "0.0003 %vol to 0.0004 %vol")]
    [InlineData("0.3 to 2 mg", "0.3 mg to 2 mg")]
    public void A_range_is_rounded_in_one_unit_and_shown_once_where_its_ends_agree(string exact, string shown)
    {
        Assert.Null(QuantityText.Read(exact, out var range));
        Assert.Equal(shown, Measurable.Text(range));
    }

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(double.NaN)]
    [InlineData(double.MaxValue)]
    public void What_has_no_size_is_said_to_be_without_limit(double si) =>
        Assert.Equal("without limit", Measurable.Text(si, Dimension.OfVolume));

    [Fact]
    public void A_size_of_no_usual_kind_is_shown_with_three_figures_in_SI_units()
    {
        Assert.Equal("0.123 mg/µm", Measurable.Text(0.123456, new Dimension(Mass: 1, Length: -1)));
        Assert.Equal("12300 kg^2", Measurable.Text(12345, new Dimension(Mass: 2)));
        Assert.Equal("4.94E-324 kg^2", Measurable.Text(double.Epsilon, new Dimension(Mass: 2)));
    }
}
