using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Testing;

namespace Protocolist.Properties.Quantities;

/// <summary>A unit, what it measures, and two sizes in SI units; no temperature below 0 K.</summary>
public sealed record Sizes(string Unit, Dimension Dimension, double A, double B)
{
    public QuantityRange Range => new(Math.Min(A, B), Math.Max(A, B), Dimension);
}

public class QuantityTextProperties
{
    /// <summary>Any double that a text may give: tame ones, and any pattern of 64 bits.</summary>
    private static readonly Gen<double> AnyFinite = Gen.OneOf(
        Gen.Choose(-100_000, 100_000).Select(n => n / 1000.0),
        Gen.Choose(-100_000, 100_000).Select(n => n / 7.0),
        ArbMap.Default.GeneratorFor<double>(),
        from high in Gen.Choose(int.MinValue, int.MaxValue) from low in Gen.Choose(int.MinValue, int.MaxValue) select BitConverter.Int64BitsToDouble(((long)high << 32) | (uint)low)).Where(n => Math.Abs(n) <= QuantityText.MostSi);

    private static readonly Unit[] Ratios =
    [
        .. from a in UnitTable.All
           from b in UnitTable.All
           where a.Offset == 0 && b.Offset == 0 && WrittenUnits.SiOf(a.Dimension / b.Dimension) is var si && (si.Length == 0 || QuantityText.Read($"1 {si}", out _) is null)
           select a.Per(b),
    ];

    private static readonly Gen<Unit> AnyUnit = Gen.OneOf(Gen.Elements(UnitTable.All), Gen.Elements(Ratios));

    public static Arbitrary<Sizes> AnySizes() => Arb.From(
        from unit in AnyUnit
        from a in AnyFinite
        from b in AnyFinite
        select unit.Dimension == Dimension.OfTemperature ? new Sizes(unit.Symbol, unit.Dimension, Math.Abs(a), Math.Abs(b)) : new(unit.Symbol, unit.Dimension, a, b));

    [Property(MaxTest = 2000, Arbitrary = [typeof(QuantityTextProperties)])]
    public void A_quantity_of_any_size_and_unit_is_read_back_equal(Sizes sizes)
    {
        AssertRoundTrip(QuantityRange.Point(sizes.A, sizes.Dimension));
    }

    /// <summary>A number without a unit is as large as the unit behind it makes it.</summary>
    [Theory]
    [InlineData("-1065795417768199.9 to -81605 L")]
    [InlineData("0 to 9000000000000000 mL")]
    public void A_range_is_measured_by_its_unit(string text)
    {
        Assert.Null(QuantityText.Read(text, out var range));
        AssertRoundTrip(range);
    }

    [Theory]
    [InlineData("1e16")]
    [InlineData("1 to 10000000000000000000 L")]
    [InlineData("-10000000000000000000 to 0 kg")]
    public void More_than_there_can_be_is_refused(string text) => Assert.Equal("bad-number", QuantityText.Read(text, out _)?.Id);

    [Property(MaxTest = 2000, Arbitrary = [typeof(QuantityTextProperties)])]
    public void A_range_of_any_sizes_and_unit_is_read_back_equal(Sizes sizes)
    {
        AssertRoundTrip(sizes.Range);
        AssertRoundTrip(new(sizes.A, double.PositiveInfinity, sizes.Dimension));
        AssertRoundTrip(new(0, Math.Abs(sizes.A), sizes.Dimension));
    }

    /// <summary>Every number of figures is tried here; also of what was typed in the unit, and of what lies a few last bits beside it.</summary>
    [Property(MaxTest = 2000, Arbitrary = [typeof(QuantityTextProperties)])]
    public void An_exact_text_has_the_fewest_figures_that_read_back(Sizes sizes)
    {
        Assert.Null(UnitText.Match(sizes.Unit, 0, out var typed, out _));
        foreach (var si in (double[])[sizes.A, typed.ToSi(sizes.A), Math.BitIncrement(typed.ToSi(sizes.A)), Math.BitDecrement(Math.BitDecrement(typed.ToSi(sizes.A)))])
        {
            if (!double.IsFinite(si)) continue;
            var unit = WrittenUnits.Fitting(Math.Abs(si), sizes.Dimension);
            var fewest = Enumerable.Range(6, 12).Select(f => unit.FromSi(si).ToString($"G{f}", CultureInfo.InvariantCulture)).FirstOrDefault(t => unit.ToSi(double.Parse(t, CultureInfo.InvariantCulture)).Equals(si));
            if (fewest is not null) Assert.Equal(unit.Symbol.Length == 0 ? fewest : $"{fewest} {unit.Symbol}", ExactText.Of(QuantityRange.Point(si, sizes.Dimension)));
        }
    }

    [Property(MaxTest = 1000, Arbitrary = [typeof(QuantityTextProperties)])]
    public void A_written_number_is_read_within_one_rounding_of_its_size(Sizes sizes)
    {
        Assert.Null(UnitText.Match(sizes.Unit, 0, out var unit, out _));
        var number = Math.Abs(sizes.A) is > 1e-100 and var n ? n : 1;
        var fault = QuantityText.Read($"{number.ToString("R", CultureInfo.InvariantCulture)} {unit.Symbol}", out var range);
        Assert.Equal(unit.ToSi(number) > QuantityText.MostSi, fault?.Id == "bad-number");
        if (fault is null) Assert.Equal(unit.ToSi(number), range.Low, Math.Abs(unit.ToSi(number)) * 1e-15);
    }

    [Property(MaxTest = 500)]
    public Property What_people_write_is_read_and_written_again_and_read_back_equal() => Prop.ForAll(QuantityTextGenerator.Valid, text =>
    {
        Assert.Null(QuantityText.Read(text, out var range));
        AssertRoundTrip(range);
    });

    [Property(MaxTest = 2000)]
    public Property What_is_nearly_a_quantity_is_read_or_refused_at_a_place_within_it() => Prop.ForAll(QuantityTextGenerator.NearlyValid, text =>
    {
        if (QuantityText.Read(text, out _) is not { } fault) return;
        Assert.InRange(fault.Offset, 0, text.Length);
        Assert.InRange(fault.Length, 1, text.Length + 1);
        Assert.NotEmpty(fault.Message.ToString());
        Assert.NotEmpty(fault.Remedy.ToString());
    });

    [Property(MaxTest = 500, Arbitrary = [typeof(QuantityTextProperties)])]
    public void Text_is_the_same_in_every_culture(Sizes sizes)
    {
        var range = QuantityRange.Point(sizes.A, sizes.Dimension);
        var here = Cultures.Under(CultureInfo.InvariantCulture, () => Texts(range));
        foreach (var culture in Cultures.Awkward) Assert.Equal(here, Cultures.Under(culture, () => Texts(range)));

        static string Texts(QuantityRange range) =>
            string.Create(CultureInfo.InvariantCulture, $"{ExactText.Of(range)}|{Measurable.Text(range)}|{range.Dimension}|{QuantityText.Read(ExactText.Of(range), out var read)}{read.Low:R}|{QuantityText.Read("5 IN", out _)}|{QuantityText.Read("2,5 i", out _)}");
    }

    private static void AssertRoundTrip(QuantityRange range)
    {
        var text = range.ToString();
        Assert.True(QuantityText.Read(text, out var read) is null, text);
        Assert.True(read == range, $"{text}: {range.Low:R} to {range.High:R} read as {read.Low:R} to {read.High:R}");
    }
}
