using System.Globalization;
using System.Text;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Tests.Fluids;

/// <summary>What a person is told of a fluid that is written wrongly, word for word, and where each limit lies.</summary>
public class FluidFaultTests
{
    private static readonly string[] s_texts =
    [
        // Nothing, too much, and names that are none.
        "", "   ", new('x', 121), "%", "70 %vol", "gin 40 %vol", "ethanl 70 %vol", "alcohol 70 %vol", "Spirit 70 %vol", "spirits", "formalin bufered 10 %",
        "borax-bufered formalin 10 %", "phosphat-NaOH buffered formaldehyde 4 % w/v",
        // Numbers without their unit or sign.
        "ethanol 62,4 %mass", "ethanol 70", "formalin 10.", "neutral buffered formalin 10",
        // Water.
        "water 10 %", "sea water 3.5 %", "distilled water, salinity 10", "tap water, methanol-free",
        "sea water, salinity 1.999", "sea water, salinity 42.001", "sea water, cold", "sea water, salinity high", "sea water, salinity 30 ppt", "sea water, salinity 3.5 %", "sea-water formalin 10 %, salinity 80",
        // Alcohol.
        "ethanol", "isopropanol", "ethanol 0 %vol", "ethanol 100.001 %vol", "isopropanol 170 %mass", "ethanol 70 % w/v", "isopropanol 70 % of stock", "ethanol 400 g/L",
        "ethanol 70 %vol, methanol 3 %mass", "isopropanol 70 %vol, old", "ethanol 70 %", "isopropanol 70 %",
        // Stock.
        "formaldehyde stock", "formaldehyde stock 9.999 %mass", "formaldehyde stock 50.001 %mass", "formaldehyde stock 54.001 % w/v", "formaldehyde stock 37 %vol",
        "formaldehyde stock 37 % of stock", "formaldehyde stock 37 %mass, methanol 20.001 %mass", "formaldehyde stock 37 %mass, buffered", "formaldehyde stock 37 %mass, methanol",
        "formaldehyde stock 37 %mass, methanol 10 g", "formaldehyde stock 37 %mass, methanol 10 psu", "formaldehyde stock 37 %",
        // Working solutions.
        "formalin", "formaldehyde", "neutral buffered formalin", "formalin 0 %", "formalin 30.001 %", "formaldehyde 37 % w/v", "formaldehyde 55 % w/v", "formaldehyde 29 %mass", "formalin 60 %", "formaldehyde 4 %vol", "borax-buffered formaldehyde 10 % v/v", "formalin 100.001 %", "formalin 10 %, salinity 30",
        "borax formalin 10 %, methanol-free", "formaldehyde 4 %", "borax-buffered formaldehyde 4 %", "formalin 4 %", "borax-buffered formalin 3.5 %", "sea-water formalin 4 %, salinity 30",
    ];

    [Fact]
    public void Faults_of_a_fluid_are_told_as_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var written in s_texts)
        {
            var read = Fluid.Read(written);
            Assert.NotEmpty(read.Findings);
            text.Append(CultureInfo.InvariantCulture, $"{(written.Length > 100 ? "x, 121 times" : $"\"{written}\"")} gives {read.Value?.Name ?? "nothing"}\n");
            foreach (var f in read.Findings) text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
        }

        KeptText.Holds("Fluids/kept/fluid-faults.txt", text.ToString());
    }

    [Fact]
    public void Each_fault_says_where_it_stands()
    {
        foreach (var written in s_texts)
            Assert.All(Fluid.Read(written, SourceSpan.At("jars.csv", 7, 3)).Findings, f => Assert.Equal(("jars.csv", 7, 3), (f.Where.File, f.Where.Line, f.Where.Column)));
    }

    // What lies just inside each limit is read without a word.
    [Theory]
    [InlineData("ethanol 0.001 %vol")]
    [InlineData("ethanol 100 %vol")]
    [InlineData("isopropanol 0.001 %mass")]
    [InlineData("isopropanol 100 %mass")]
    [InlineData("sea water, salinity 2")]
    [InlineData("sea water, salinity 42")]
    [InlineData("sea-water formalin 10 %, salinity 2")]
    [InlineData("sea-water formalin 10 %, salinity 42")]
    [InlineData("formaldehyde stock 10 %mass")]
    [InlineData("formaldehyde stock 50 %mass")]
    [InlineData("formaldehyde stock 10 % w/v")]
    [InlineData("formaldehyde stock 54 % w/v")]
    [InlineData("formaldehyde stock 37 %mass, methanol 20 %mass")]
    [InlineData("formalin 0.001 %")]
    [InlineData("formalin 30 %")]
    [InlineData("formaldehyde 0.001 % w/v")]
    [InlineData("formaldehyde 30 % w/v")]
    [InlineData("formalin 3.499 %")]
    [InlineData("formalin 4.201 %")]
    public void The_last_value_within_a_limit_is_taken(string text)
    {
        var read = Fluid.Read(text);
        Assert.Empty(read.Findings);
        Assert.Equal(text, read.Value!.Name);
    }

    [Fact]
    public void A_name_of_120_characters_is_read_and_one_of_121_is_not()
    {
        var longest = "ethanol" + new string(' ', 120 - "ethanol70 %vol".Length) + "70 %vol";
        Assert.Equal(120, longest.Length);
        Assert.Equal("ethanol 70 %vol", Fluid.Read(longest).Value!.Name);
        Assert.Equal("unknown-fluid", Assert.Single(Fluid.Read(longest.Replace("ethanol", "ethanol ", StringComparison.Ordinal)).Findings).Id);
    }

    // A comma is a decimal sign only between two digits; elsewhere it begins what follows the strength.
    [Theory]
    [InlineData("sea water,salinity 30", "sea water, salinity 30")]
    [InlineData("formaldehyde stock 37 %mass,methanol-free", "formaldehyde stock 37 %mass, methanol-free")]
    [InlineData("sea water,", "sea water")]
    public void A_comma_beside_a_word_is_no_decimal_sign(string text, string canonical) => Assert.Equal(canonical, Fluid.Read(text).Value!.Name);

    [Theory]
    [InlineData("ethanol,70 %vol", "unexpected-text")]
    [InlineData("ethanol 70, by volume", "strength-missing")]
    [InlineData("sea water, salinity 00000000000000000030", "unexpected-text")]
    public void A_digit_on_one_side_of_a_comma_and_an_endless_number_are_no_decimals(string text, string id) => Assert.Equal(id, Assert.Single(Fluid.Read(text).Findings).Id);

    [Fact]
    public void A_number_of_nineteen_digits_is_read() => Assert.Equal(30, Fluid.Read("sea water, salinity 0000000000000000030").Value!.Salinity);

    [Theory]
    [InlineData("5,5 % formalin")]
    [InlineData("sea water, salinity 30,5")]
    [InlineData("7,0")]
    public void A_comma_between_digits_is_asked_about(string text) => Assert.Equal("decimal-comma", Assert.Single(Fluid.Read(text).Findings).Id);

    [Theory]
    [InlineData("methanol 10 %mass", 10)]
    [InlineData("methanol 10 % mass", 10)]
    [InlineData("methanol 10 %", 10)]
    [InlineData("methanol 10 % w/w", 10)]
    [InlineData("methanol 10 % m/m", 10)]
    [InlineData("methanol 10 g/kg", 1)]
    [InlineData("methanol 120 G/KG", 12)]
    [InlineData("METHANOL 12.5%", 12.5)]
    [InlineData("methanol 0", 0)]
    [InlineData("Methanol-Free", 0)]
    public void Methanol_of_a_stock_is_read_in_each_of_its_units(string extra, double percent) =>
        Assert.Equal(percent, Fluid.Read($"formaldehyde stock 37 %mass, {extra}").Value!.MethanolMassPercent, 1e-9);

    [Fact]
    public void A_stock_of_unsaid_methanol_has_the_middle_of_the_pharmacopoeias_range() =>
        Assert.Equal(12, Fluid.Read("formaldehyde stock 37 %mass").Value!.MethanolMassPercent, 1e-9);

    [Theory]
    [InlineData("sea water, salinity 30", 30)]
    [InlineData("sea water, Salinity 30.5 g/kg", 30.5)]
    [InlineData("sea water, salinity 30 PSU", 30)]
    [InlineData("sea water", 35)]
    [InlineData("sea-water formalin 10 %", 35)]
    [InlineData("sea-water formaldehyde 4 % w/v, salinity 28", 28)]
    [InlineData("formalin 10 % in sea water, salinity 28", 28)]
    [InlineData("borax-buffered formalin 10 %", 0)]
    [InlineData("water", 0)]
    [InlineData("formaldehyde stock 37 %mass", 0)]
    public void Salinity_is_read_and_is_the_oceans_where_it_is_not_said(string text, double salinity) =>
        Assert.Equal(salinity, Fluid.Read(text).Value!.Salinity, 1e-9);

    // 30 % w/v, the strongest, is 28.187 % by mass (Walker's tables); a share by mass above it is no working solution.
    [Theory]
    [InlineData("formaldehyde 28.184 %mass", 0)]
    [InlineData("formaldehyde 28.19 %mass", 1)]
    public void A_working_strength_by_mass_ends_where_thirty_by_volume_is(string text, int findings) => Assert.Equal(findings, Fluid.Read(text).Findings.Length);

    // A share by mass is turned into grams to the litre through the solution's own density.
    [Theory]
    [InlineData("formaldehyde 4 %mass")]
    [InlineData("formaldehyde 0.05 %mass")]
    [InlineData("neutral buffered formaldehyde 20 %mass")]
    [InlineData("sea-water formalin 8 %mass, salinity 20")]
    public void A_working_strength_by_mass_comes_out_by_mass(string text)
    {
        var fluid = Fluid.Read(text).Value!;
        var wanted = double.Parse(text.Split(' ').First(w => char.IsAsciiDigit(w[0])), CultureInfo.InvariantCulture);
        Assert.Equal(wanted, fluid.FormaldehydeMassPercent!.Value, 0.0006);
        Assert.Equal(StrengthBasis.WeightPerVolume, fluid.Basis);
    }
}
