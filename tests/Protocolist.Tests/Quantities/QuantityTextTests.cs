using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Tests.Quantities;

public class QuantityTextTests
{
    [Theory]
    [InlineData("2 to 5 mL", 2e-6, 5e-6)]
    [InlineData("2 mL to 5 mL", 2e-6, 5e-6)]
    [InlineData("500 mL to 2 L", 5e-4, 2e-3)]
    [InlineData(" 2  to\t5 mL ", 2e-6, 5e-6)]
    [InlineData("at least 24 h", 86400, double.PositiveInfinity)]
    [InlineData("at  least 24 h", 86400, double.PositiveInfinity)]
    [InlineData("at most 1 mo", 0, 2592000)]
    [InlineData("24 cm ± 1 cm", 0.23, 0.25)]
    [InlineData("24 ± 1 cm", 0.23, 0.25)]
    [InlineData("24 cm +- 10 mm", 0.23, 0.25)]
    [InlineData("24 cm +/- 1 cm", 0.23, 0.25)]
    [InlineData("0 to 0 mL", 0, 0)]
    [InlineData("-1 to 1 m", -1, 1)]
    public void Ranges_are_read_as_people_write_them(string text, double low, double high)
    {
        Assert.Null(QuantityText.Read(text, out var range));
        Assert.Equal(low, range.Low, 1e-15);
        if (double.IsInfinity(high)) Assert.Equal(high, range.High);
        else Assert.Equal(high, range.High, 1e-9);
    }

    [Fact]
    public void A_range_below_freezing_keeps_its_signs()
    {
        Assert.Null(QuantityText.Read("-25 to -18 degC", out var freezer));
        Assert.Equal(248.15, freezer.Low, 1e-12);
        Assert.Equal(255.15, freezer.High, 1e-12);
    }

    // Column: where the finding points, from 1.
    [Theory]
    [InlineData("", "bad-number", 1, "write a number and its unit, such as '250 mL'")]
    [InlineData("much", "bad-number", 1, "write a number and its unit, such as '250 mL'")]
    [InlineData("at least", "bad-number", 9, "write a number and its unit, such as '250 mL'")]
    [InlineData("at least much", "bad-number", 10, "write a number and its unit, such as '250 mL'")]
    [InlineData("2,5 mL", "decimal-comma", 2, "write the decimal sign as a point and leave thousands unseparated; a comma between arguments has a space behind it")]
    [InlineData("at most 2,5 mL", "decimal-comma", 10, "write the decimal sign as a point and leave thousands unseparated; a comma between arguments has a space behind it")]
    [InlineData("2-5 mL", "range-with-dash", 2, "write '2 to 5 mL'")]
    [InlineData("2 – 5 mL", "range-with-dash", 3, "write '2 to 5 mL'")]
    [InlineData("2 mL-5 mL", "range-with-dash", 5, "write '2 to 5 mL'")]
    [InlineData("2 mL — 5 mL", "range-with-dash", 6, "write '2 to 5 mL'")]
    [InlineData("5 to 2 mL", "reversed-range", 1, "put the lower end first")]
    [InlineData("2 to 5 mL to 7", "unexpected-text", 11, "write 'a to b', 'a ± b', 'at least a' or 'at most a'")]
    [InlineData("2 mL to 5 kg", "unlike-quantities", 1, "give both ends in units of one kind")]
    [InlineData("2 mL to 5", "unlike-quantities", 1, "give both ends in units of one kind")]
    [InlineData("20 degC ± 2 degC", "unlike-quantities", 9, "write the range as 'a to b'")]
    [InlineData("24 cm ± 5 %", "unlike-quantities", 7, "give both ends in units of one kind")]
    [InlineData("at most -5 mL", "reversed-range", 9, "write the range as 'a to b'")]
    [InlineData("5 mL or so", "unexpected-text", 6, "write 'a to b', 'a ± b', 'at least a' or 'at most a'")]
    [InlineData("10 mL / kg", "unexpected-text", 7, "write 'a to b', 'a ± b', 'at least a' or 'at most a'")]
    [InlineData("5 gal", "ambiguous-unit", 3, "say 'US gal' (3.785 L) or 'imp gal' (4.546 L)")]
    [InlineData("5 gallons", "ambiguous-unit", 3, "say 'US gal' (3.785 L) or 'imp gal' (4.546 L)")]
    [InlineData("8 fl oz", "ambiguous-unit", 3, "say 'US fl oz' (29.57 mL) or 'imp fl oz' (28.41 mL)")]
    [InlineData("5 ML", "ambiguous-unit", 3, "that is a million litres; a millilitre is 'mL'")]
    [InlineData("0.1 M", "ambiguous-unit", 5, "say 'mol/L' for a molar strength, 'min' or 'mo' for a time, 'm' for a length")]
    [InlineData("20 C", "ambiguous-unit", 4, "say 'degC'")]
    [InlineData("20 deg", "ambiguous-unit", 4, "say 'degC' or 'degF'")]
    [InlineData("5 mLL", "unknown-unit", 3, "did you mean 'mL'?")]
    [InlineData("5 KG", "unknown-unit", 3, "write 'kg'")]
    [InlineData("5 kgg", "unknown-unit", 3, "did you mean 'kg'?")]
    [InlineData("10 mL/kgg", "unknown-unit", 7, "did you mean 'kg'?")]
    [InlineData("2 to 5 mLL", "unknown-unit", 8, "did you mean 'mL'?")]
    [InlineData("2 weeks", "unknown-unit", 3, "write 'wk'")]
    [InlineData("3 Days", "unknown-unit", 3, "write 'd'")]
    [InlineData("6 inches", "unknown-unit", 3, "write 'in'")]
    [InlineData("3 blinks", "unknown-unit", 3, "units are written as mL, L, mm, cm, m, g, kg, min, h, d, wk, degC, %vol, mL/kg, g/L and the like")]
    [InlineData("5 degC/h", "temperature-in-ratio", 3, "give the temperature on its own")]
    [InlineData("-300 degC", "below-absolute-zero", 1, "check the figure and its unit")]
    [InlineData("1e400 mL", "bad-number", 1, "give at most 15 figures")]
    [InlineData("1e308 y", "bad-number", 1, "give at most 15 figures")]
    [InlineData("1e16", "bad-number", 1, "give at most 15 figures")]
    [InlineData("1 ± 1e300", "bad-number", 5, "give at most 15 figures")]
    [InlineData("10000000000000000000000000000000000000000 mL", "bad-number", 1, "give at most 15 figures")]
    public void A_fault_is_found_at_its_column_with_what_to_write_instead(string text, string id, int column, string remedy)
    {
        Assert.False(QuantityText.TryRead(text, Dimension.OfVolume, out _, out var finding));
        Assert.Equal(id, finding!.Id);
        Assert.Equal(column, finding.Where.Column);
        Assert.Equal(remedy, finding.Remedy.ToString());
    }

    [Fact]
    public void A_quantity_of_another_kind_is_refused_with_both_kinds_named()
    {
        Assert.False(QuantityText.TryRead("5 kg", Dimension.OfVolume, out _, out var finding));
        Assert.Equal("wrong-dimension", finding!.Id);
        Assert.Equal("'5 kg' is a mass; a volume is wanted here", finding.Message.ToString());
    }

    [Fact]
    public void A_finding_stays_one_short_line_however_long_the_text()
    {
        Assert.False(QuantityText.TryRead($"5 {new string('q', 1_000_000)}", Dimension.OfVolume, out _, out var finding));
        Assert.True(finding!.ToString().Length < 400);
        Assert.False(QuantityText.TryRead($"5{new string('\n', 1000)}kg", Dimension.OfVolume, out _, out finding));
        Assert.DoesNotContain('\n', finding!.ToString());
    }

    [Theory]
    [InlineData("2 to 5 mL")]
    [InlineData("at least 24 h")]
    [InlineData("at most 30 d")]
    [InlineData("7.2 kg")]
    [InlineData("885.56 kg/m3")]
    [InlineData("10 mL/kg")]
    [InlineData("-20 degC")]
    [InlineData("70 %vol")]
    [InlineData("0.1 mol/L")]
    [InlineData("0.25")]
    public void What_is_written_is_the_text_that_was_read(string text)
    {
        Assert.Null(QuantityText.Read(text, out var range));
        Assert.Equal(text, range.ToString());
    }

    [Fact]
    public void A_range_without_a_finite_end_says_so()
    {
        Assert.Equal("anything", new QuantityRange(double.NegativeInfinity, double.PositiveInfinity, Dimension.OfMass).ToString());
        Assert.Equal("at most 5 kg", new QuantityRange(double.NegativeInfinity, 5, Dimension.OfMass).ToString());
    }
}
