using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using Protocolist.Formulas;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Fick's diffusion against Crank's series, summed apart from this code to thousands of terms.</summary>
public class DiffusionTests
{
    // Fourier number; average of slab, cylinder, sphere. Below 0.02 the cylinder's short-time form is good to 0.0001.
    [Theory]
    [InlineData(0.001, 0.0356825, 0.0703589, 0.1040474)]
    [InlineData(0.01, 0.1128379, 0.2154739, 0.3085138)]
    [InlineData(0.0199, 0.1591775, 0.2978696, 0.4178324)]
    [InlineData(0.02, 0.1595769, 0.2985639, 0.4187307)]
    [InlineData(0.0201, 0.1599754, 0.2992562, 0.4196261)]
    [InlineData(0.03, 0.1954410, 0.3597692, 0.4963230)]
    [InlineData(0.05, 0.2523133, 0.4521210, 0.6069398)]
    [InlineData(0.1, 0.3568234, 0.6058242, 0.7704787)]
    [InlineData(0.3, 0.6132361, 0.8779715, 0.9685245)]
    [InlineData(1, 0.9312597, 0.9978705, 0.9999686)]
    public void The_average_is_the_summed_series(double fourier, double slab, double cylinder, double sphere)
    {
        Assert.Equal(slab, Diffusion.Average(DiffusionShape.Slab, fourier), 1e-6);
        Assert.Equal(cylinder, Diffusion.Average(DiffusionShape.Cylinder, fourier), fourier < 0.02 ? 1e-4 : 2e-5);
        Assert.Equal(sphere, Diffusion.Average(DiffusionShape.Sphere, fourier), 1e-6);
    }

    [Theory]
    [InlineData(0.021, 0.0000, 0.0000, 0.0000)]
    [InlineData(0.03, 0.0000891, 0.0004677, 0.0015659)]
    [InlineData(0.05, 0.0031308, 0.0129008, 0.0340015)]
    [InlineData(0.1, 0.0506946, 0.1516449, 0.2928997)]
    [InlineData(0.3, 0.3931962, 0.7175129, 0.8964678)]
    [InlineData(1, 0.8920230, 0.9950677, 0.9998966)]
    public void The_centre_is_the_summed_series(double fourier, double slab, double cylinder, double sphere)
    {
        Assert.Equal(slab, Diffusion.Centre(DiffusionShape.Slab, fourier), fourier < 0.03 ? 1e-4 : 1e-6);
        Assert.Equal(cylinder, Diffusion.Centre(DiffusionShape.Cylinder, fourier), fourier < 0.05 ? 0.002 : 1e-5);
        Assert.Equal(sphere, Diffusion.Centre(DiffusionShape.Sphere, fourier), fourier < 0.03 ? 1e-4 : 1e-6);
    }

    [Theory]
    [InlineData(DiffusionShape.Slab)]
    [InlineData(DiffusionShape.Cylinder)]
    [InlineData(DiffusionShape.Sphere)]
    public void Nothing_has_come_before_there_was_time(Enum shape)
    {
        Assert.Equal(0, Diffusion.Average((DiffusionShape)shape, 0));
        Assert.Equal(0, Diffusion.Average((DiffusionShape)shape, -1));
        Assert.Equal(0, Diffusion.Average((DiffusionShape)shape, double.NaN));
        Assert.Equal(0, Diffusion.Centre((DiffusionShape)shape, 0.02));
        Assert.NotEqual(0, Diffusion.Centre((DiffusionShape)shape, 0.0201));
        Assert.Equal(1, Diffusion.Average((DiffusionShape)shape, 50), 1e-12);
        Assert.Equal(1, Diffusion.Centre((DiffusionShape)shape, 50), 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void A_share_that_is_none_is_the_callers_bug(double share) =>
        Assert.StartsWith("A share of the way is between 0 and 1.", Assert.Throws<ArgumentOutOfRangeException>(() => Diffusion.FourierNumber(DiffusionShape.Slab, share)).Message.ToString(), StringComparison.Ordinal);

    // Late in a slab one term is left: 1 - share = 8/pi² exp(-pi² Fo / 4).
    [Fact]
    public void A_share_very_near_to_all_takes_the_time_of_the_last_term() =>
        Assert.Equal(4 / (Math.PI * Math.PI) * Math.Log(8 / (Math.PI * Math.PI) / 1e-6), Diffusion.FourierNumber(DiffusionShape.Slab, 1 - 1e-6), 1e-6);

    // Thirds and halves of the coefficients in water (Wilke and Chang 1955), as the summary says.
    [Theory]
    [InlineData("ethanol", 0.3e-9, 0.5e-9)]
    [InlineData("isopropanol", 0.25e-9, 0.5e-9)]
    [InlineData("formaldehyde", 0.5e-9, 0.8e-9)]
    [InlineData("methanol", 0.5e-9, 0.9e-9)]
    public void Each_solute_has_its_band_and_its_times(string id, double slow, double fast)
    {
        Solute[] all = [Solute.Ethanol, Solute.Isopropanol, Solute.Formaldehyde, Solute.Methanol];
        var solute = all.Single(s => s.Id == id);
        Assert.Equal((slow, fast), Diffusion.InTissue(solute));
        // A sphere of 4 mm radius: Fo = 0.18299 at nine tenths (Crank), R² = 16e-6 m².
        var time = Diffusion.Time(DiffusionShape.Sphere, Length.FromMillimeters(4), 0.9, solute);
        Assert.Equal(0.182985 * 16e-6 / fast, time.Low, time.Low * 1e-4);
        Assert.Equal(0.182985 * 16e-6 / slow, time.High, time.High * 1e-4);
        Assert.Equal(Dimension.OfTime, time.Dimension);
        // 6 sqrt(Fo/pi) - 3 Fo after 300 s.
        var reached = Diffusion.Reached(DiffusionShape.Sphere, Length.FromMillimeters(4), 300, solute);
        double foSlow = slow * 300 / 16e-6, foFast = fast * 300 / 16e-6;
        Assert.Equal(6 * Math.Sqrt(foSlow / Math.PI) - 3 * foSlow, reached.Slow, 1e-6);
        Assert.Equal(6 * Math.Sqrt(foFast / Math.PI) - 3 * foFast, reached.Fast, 1e-6);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_body_without_thickness_is_the_callers_bug(double millimetres) =>
        Assert.StartsWith("A body has a thickness.", Assert.Throws<ArgumentOutOfRangeException>(() => Diffusion.Time(DiffusionShape.Slab, Length.FromMillimeters(millimetres), 0.9, Solute.Ethanol)).Message.ToString(), StringComparison.Ordinal);

    // Fourier numbers at nine tenths: slab 0.84809, cylinder 0.33441, sphere 0.18299 (Crank).
    [Theory]
    [InlineData("slab", "ethanol", 0.848085, 0.3e-9, 0.5e-9)]
    [InlineData("cylinder", "ethanol", 0.334413, 0.3e-9, 0.5e-9)]
    [InlineData("sphere", "ethanol", 0.182985, 0.3e-9, 0.5e-9)]
    [InlineData("slab", "isopropanol", 0.848085, 0.25e-9, 0.5e-9)]
    [InlineData("slab", "formaldehyde", 0.848085, 0.5e-9, 0.8e-9)]
    public void The_formula_language_knows_the_time_to_nine_tenths(string shape, string solute, double fourier, double slow, double fast)
    {
        var time = Evaluate(new(0.002, 0.005, Dimension.OfLength), shape, solute);
        Assert.Equal(fourier * 0.002 * 0.002 / fast, time.Low, time.Low * 1e-4);
        Assert.Equal(fourier * 0.005 * 0.005 / slow, time.High, time.High * 1e-4);
        Assert.Equal(Dimension.OfTime, time.Dimension);
    }

    [Fact]
    public void Nothing_takes_no_time_and_what_has_no_end_takes_for_ever()
    {
        var time = Evaluate(new(0, double.PositiveInfinity, Dimension.OfLength), "slab", "ethanol");
        Assert.Equal(0, time.Low);
        Assert.Equal(double.PositiveInfinity, time.High);
        Assert.Equal(0, Evaluate(new(-0.001, 0, Dimension.OfLength), "slab", "ethanol").High);
    }

    [Fact]
    public void The_function_is_written_in_the_guide()
    {
        var function = Assert.Single(FluidFunctions.All);
        Assert.Equal("diffusion-time(half-thickness, shape, of)", function.Signature);
        Assert.Equal("Time in which a body of that half-thickness is nine tenths of the way to what its bath holds, as a band (Crank's solutions; diffusion in tissue at a third to a half of that in water).", function.Summary);
        Assert.Equal([FormulaType.Of(Dimension.OfLength).ToString(), FormulaType.OneOf("slab", "cylinder", "sphere").ToString(), FormulaType.OneOf("ethanol", "isopropanol", "formaldehyde").ToString()], function.Parameters.Select(p => p.Type!.ToString()));
        Assert.Equal((FormulaType.Of(Dimension.OfTime), (string?)null), function.ResultType([]));
    }

    private static QuantityRange Evaluate(QuantityRange half, string shape, string solute) =>
        FluidFunctions.All[0].Evaluate([FormulaValue.Of(half), FormulaValue.Of(shape), FormulaValue.Of(solute)]).Quantity;
}
