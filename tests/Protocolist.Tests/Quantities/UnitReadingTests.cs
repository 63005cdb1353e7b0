using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Tests.Quantities;

public class UnitReadingTests
{
    public static TheoryData<string, double, Dimension> EveryUnit => new()
    {
        { "10 µL", 1e-8, Dimension.OfVolume }, // U+00B5, the micro sign
        { "10 μL", 1e-8, Dimension.OfVolume }, // U+03BC, the Greek letter
        { "10 uL", 1e-8, Dimension.OfVolume },
        { "10 mL", 1e-5, Dimension.OfVolume },
        { "10 ml", 1e-5, Dimension.OfVolume },
        { "10mL", 1e-5, Dimension.OfVolume },
        { "3 cL", 3e-5, Dimension.OfVolume },
        { "3 dL", 3e-4, Dimension.OfVolume },
        { "1.5 L", 1.5e-3, Dimension.OfVolume },
        { "1.5 l", 1.5e-3, Dimension.OfVolume },
        { "5 cc", 5e-6, Dimension.OfVolume },
        { "5 cm3", 5e-6, Dimension.OfVolume },
        { "5 cm³", 5e-6, Dimension.OfVolume },
        { "5 mm3", 5e-9, Dimension.OfVolume },
        { "0.3 m3", 0.3, Dimension.OfVolume },
        { "1 US fl oz", 2.95735295625e-5, Dimension.OfVolume },
        { "1 imp fl oz", 2.84130625e-5, Dimension.OfVolume },
        { "1 US gal", 3.785411784e-3, Dimension.OfVolume },
        { "1 imp gal", 4.54609e-3, Dimension.OfVolume },
        { "13 mm", 0.013, Dimension.OfLength },
        { "75 cm", 0.75, Dimension.OfLength },
        { "2 m", 2, Dimension.OfLength },
        { "40 µm", 4e-5, Dimension.OfLength },
        { "0.5 in", 0.0127, Dimension.OfLength },
        { "2 ft", 0.6096, Dimension.OfLength },
        { "4 cm2", 4e-4, Dimension.OfArea },
        { "4 cm²", 4e-4, Dimension.OfArea },
        { "5 µg", 5e-9, Dimension.OfMass },
        { "5 mg", 5e-6, Dimension.OfMass },
        { "250 g", 0.25, Dimension.OfMass },
        { "7.2 kg", 7.2, Dimension.OfMass },
        { "1 t", 1000, Dimension.OfMass },
        { "1 lb", 0.45359237, Dimension.OfMass },
        { "1 oz", 0.028349523125, Dimension.OfMass },
        { "30 s", 30, Dimension.OfTime },
        { "5 min", 300, Dimension.OfTime },
        { "24 h", 86400, Dimension.OfTime },
        { "2 d", 172800, Dimension.OfTime },
        { "2 wk", 1209600, Dimension.OfTime },
        { "1 mo", 2592000, Dimension.OfTime },
        { "1 y", 31536000, Dimension.OfTime },
        { "20 degC", 293.15, Dimension.OfTemperature },
        { "20 °C", 293.15, Dimension.OfTemperature },
        { "-20 degC", 253.14999999999998, Dimension.OfTemperature },
        { "−20 degC", 253.14999999999998, Dimension.OfTemperature }, // a typographic minus
        { "293.15 K", 293.15, Dimension.OfTemperature },
        { "10 %", 0.1, Dimension.None },
        { "10%", 0.1, Dimension.None },
        { "70 %vol", 0.7, Dimension.OfShareByVolume },
        { "70 % vol", 0.7, Dimension.OfShareByVolume },
        { "70 % v/v", 0.7, Dimension.OfShareByVolume },
        { "62.4 %mass", 0.624, Dimension.OfShareByMass },
        { "62.4 % w/w", 0.624, Dimension.OfShareByMass },
        { "4 % w/v", 40, Dimension.OfDensity },
        { "4 %w/v", 40, Dimension.OfDensity },
        { "40 g/L", 40, Dimension.OfDensity },
        { "885.56 kg/m3", 885.56, Dimension.OfDensity },
        { "1 g/mL", 1000, Dimension.OfDensity },
        { "10 mL/kg", 1e-5, Dimension.OfSpecificVolume },
        { "2 mL/g", 2e-3, Dimension.OfSpecificVolume },
        { "0.1 mol/L", 100, new Dimension(Amount: 1, Length: -3) },
        { "5 mmol", 5e-3, new Dimension(Amount: 1) },
        { "5 L/h", 5e-3 / 3600, new Dimension(Length: 3, Time: -1) },
        { "50 kPa", 5e4, new Dimension(Mass: 1, Length: -1, Time: -2) },
        { "7 N", 7, new Dimension(Mass: 1, Length: 1, Time: -2) },
        { "12", 12, Dimension.None },
        { ".5", 0.5, Dimension.None },
        { "1e3 mL", 1e-3, Dimension.OfVolume },
        { "2.5e-1 L", 2.5e-4, Dimension.OfVolume },
    };

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void A_quantity_is_read_in_every_unit_that_a_preparator_writes(string text, double si, Dimension dimension)
    {
        Assert.True(QuantityText.TryRead(text, dimension, out var value, out var finding), finding?.ToString());
        Assert.Equal(si, value.Low, Math.Abs(si) * 4e-16);
        Assert.True(value.IsPoint);
    }

    [Fact]
    public void Thirty_two_fahrenheit_is_the_ice_point_and_is_shown_as_zero()
    {
        Assert.True(QuantityText.TryRead("32 degF", Dimension.OfTemperature, out var ice, out _));
        Assert.Equal(273.15, ice.Low, 1e-12);
        Assert.Equal("0 degC", Measurable.Text(ice));
    }

    [Fact]
    public void Every_spelling_of_the_table_is_read_and_none_twice()
    {
        foreach (var spelling in UnitTable.Spellings)
        {
            Assert.Null(QuantityText.Read($"300 {spelling}", out var range));
            Assert.True(UnitTable.TryFind(spelling, out var unit));
            Assert.Equal(unit.Dimension, range.Dimension);
            Assert.Equal(unit.ToSi(300), range.Low);
        }

        Assert.Equal(UnitTable.All.Length, UnitTable.All.Select(u => u.Symbol).Distinct(StringComparer.Ordinal).Count());
        Assert.Empty(UnitTable.Spellings.Intersect(UnitText.Ambiguous.Keys, StringComparer.Ordinal));
    }

    [Fact]
    public void Shares_by_volume_and_by_mass_and_bare_percent_are_three_different_things() =>
        Assert.Equal(3, new[] { "70 %", "70 %vol", "70 %mass" }.Select(Dimension_of).Distinct().Count());

    private static Dimension Dimension_of(string text) => QuantityText.Read(text, out var range) is null ? range.Dimension : default;
}
