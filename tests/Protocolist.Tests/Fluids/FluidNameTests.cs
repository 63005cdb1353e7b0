using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Tests.Fluids;

public class FluidNameTests
{
    [Theory]
    [InlineData("ethanol 70 %vol", "ethanol 70 %vol")]
    [InlineData("Ethanol 70%vol", "ethanol 70 %vol")]
    [InlineData("70 % v/v ethanol", "ethanol 70 %vol")]
    [InlineData("ethyl alcohol 70 vol%", "ethanol 70 %vol")]
    [InlineData("ethanol 62.4 %mass", "ethanol 62.4 %mass")]
    [InlineData("ethanol 62.4 wt%", "ethanol 62.4 %mass")]
    [InlineData("ethanol 62.4 % by mass", "ethanol 62.4 %mass")]
    [InlineData("isopropanol 70 %vol", "isopropanol 70 %vol")]
    [InlineData("2-propanol 50 %vol", "isopropanol 50 %vol")]
    [InlineData("isopropyl alcohol 40 % by volume", "isopropanol 40 %vol")]
    [InlineData("formalin 10 %", "formalin 10 %")]
    [InlineData("10% formalin", "formalin 10 %")]
    [InlineData("formalin 4 % of stock", "formalin 4 % of stock")]
    [InlineData("formalin 4 parts in 100", "formalin 4 % of stock")]
    [InlineData("formaldehyde 4 % of stock", "formalin 4 % of stock")]
    [InlineData("formaldehyde 4 % w/v", "formaldehyde 4 % w/v")]
    [InlineData("formaldehyde 40 g/L", "formaldehyde 4 % w/v")]
    [InlineData("formalin 4 % w/v", "formaldehyde 4 % w/v")]
    [InlineData("formaldehyde stock 37 %mass", "formaldehyde stock 37 %mass")]
    [InlineData("formaldehyde stock 37 %mass, methanol 10 %mass", "formaldehyde stock 37 %mass, methanol 10 %mass")]
    [InlineData("formaldehyde stock 37 %mass, methanol-free", "formaldehyde stock 37 %mass, methanol-free")]
    [InlineData("formaldehyde stock 40 % w/v", "formaldehyde stock 40 % w/v")]
    [InlineData("neutral buffered formalin 10 %", "neutral buffered formalin 10 %")]
    [InlineData("neutral-buffered formalin 10 %", "neutral buffered formalin 10 %")]
    [InlineData("NBF 10 %", "neutral buffered formalin 10 %")]
    [InlineData("phosphate-buffered formaldehyde 4 % w/v", "neutral buffered formaldehyde 4 % w/v")]
    [InlineData("phosphate-NaOH buffered formalin 10 %", "phosphate-NaOH buffered formalin 10 %")]
    [InlineData("borax-buffered formalin 10 %", "borax-buffered formalin 10 %")]
    [InlineData("borax buffered formalin 10 %", "borax-buffered formalin 10 %")]
    [InlineData("sea-water formalin 10 %", "sea-water formalin 10 %")]
    [InlineData("formalin 10 % in sea water", "sea-water formalin 10 %")]
    [InlineData("sea-water formalin 10 %, salinity 30", "sea-water formalin 10 %, salinity 30")]
    [InlineData("hexamine-buffered formalin 5 %", "hexamine-buffered formalin 5 %")]
    [InlineData("formalin 10 % over marble chips", "marble-chip formalin 10 %")]
    [InlineData("water", "water")]
    [InlineData("sea water", "sea water")]
    [InlineData("seawater, salinity 30", "sea water, salinity 30")]
    [InlineData("distilled water", "distilled water")]
    [InlineData("Deionised water", "distilled water")]
    [InlineData("tap water", "tap water")]
    public void Names_are_read_as_people_write_them(string text, string canonical)
    {
        var read = Fluid.Read(text);
        Assert.Empty(read.Findings);
        Assert.Equal(canonical, read.Value!.Name);
        Assert.Equal(read.Value, Fluid.Read(canonical).Value);
    }

    [Theory]
    [InlineData("ethanl 70 %vol", "unknown-fluid", "ethanol")]
    [InlineData("isopropnol 70 %vol", "unknown-fluid", "isopropanol")]
    [InlineData("formalin buffered 10 %", "unknown-fluid", "")]
    [InlineData("neutral bufered formalin 10 %", "unknown-fluid", "neutral buffered formalin")]
    [InlineData("alcohol 70 %vol", "unknown-fluid", "ethanol")]
    [InlineData("ethanol", "strength-missing", "ethanol 70 %vol")]
    [InlineData("ethanol 70", "strength-missing", "ethanol 70 %vol")]
    [InlineData("formalin", "strength-missing", "formalin 10 %")]
    [InlineData("ethanol 170 %vol", "strength-out-of-range", "100")]
    [InlineData("ethanol 0 %vol", "strength-out-of-range", "100")]
    [InlineData("formalin 37 %", "strength-out-of-range", "formaldehyde stock 37 %mass")]
    [InlineData("formaldehyde stock 4 %mass", "strength-out-of-range", "formaldehyde 4 % w/v")]
    [InlineData("ethanol 70 % w/v", "strength-basis-unfit", "%vol")]
    [InlineData("water 10 %", "strength-out-of-place", "percentage")]
    [InlineData("ethanol 62,4 %mass", "decimal-comma", "point")]
    [InlineData("ethanol 70 %vol, methanol 3 %mass", "unexpected-text", "leave it out")]
    [InlineData("sea water, salinity 80", "salinity-out-of-range", "salinity")]
    [InlineData("", "fluid-missing", "ethanol 70 %vol")]
    [InlineData("%", "unknown-fluid", "")]
    public void What_cannot_be_read_is_a_finding_with_a_remedy(string text, string id, string remedy)
    {
        var read = Fluid.Read(text, SourceSpan.At("a.yaml", 3, 9));
        Assert.Null(read.Value);
        var finding = Assert.Single(read.Findings);
        Assert.Equal(id, finding.Id);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains(remedy, finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Equal(3, finding.Where.Line);
    }

    [Theory]
    [InlineData("formalin 4 %")]
    [InlineData("4% formalin")]
    [InlineData("neutral buffered formalin 4 %")]
    [InlineData("formalin 3.7 %")]
    public void Four_percent_formalin_asks_which_is_meant(string text)
    {
        var read = Fluid.Read(text);
        var finding = Assert.Single(read.Findings);
        Assert.Equal("ambiguous-formalin-strength", finding.Id);
        Assert.Contains("formalin", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Contains("% of stock", finding.Remedy.ToString(), StringComparison.Ordinal);
        Assert.Contains("% w/v", finding.Remedy.ToString(), StringComparison.Ordinal);
        // Either answer is read without a question.
        foreach (var answer in finding.Remedy.ToString().Split('\'').Where((_, i) => i % 2 == 1)) Assert.Empty(Fluid.Read(answer).Findings);
    }

    [Theory]
    [InlineData("ethanol 70 %", "ethanol 70 %vol")]
    [InlineData("formaldehyde 4 %", "formaldehyde 4 % w/v")]
    [InlineData("formaldehyde stock 37 %", "formaldehyde stock 37 %mass")]
    public void A_missing_basis_is_assumed_and_said(string text, string assumed)
    {
        var read = Fluid.Read(text);
        Assert.Equal(assumed, read.Value!.Name);
        Assert.Equal("strength-basis-missing", Assert.Single(read.Findings).Id);
        Assert.Equal(Severity.Warning, read.Findings[0].Severity);
    }

    [Fact]
    public void Examples_are_canonical_names() => Assert.All(Fluid.Examples, e => Assert.Equal(e, Fluid.Read(e) is { Findings.IsEmpty: true, Value: { } fluid } ? fluid.Name : ""));

    [Fact]
    public void Formaldehyde_by_mass_becomes_its_weight_per_volume()
    {
        var fluid = Fluid.Read("formaldehyde 4 %mass").Value!;
        Assert.Equal(4.0, fluid.FormaldehydeMassPercent!.Value, 0.001);
        Assert.Equal(StrengthBasis.WeightPerVolume, fluid.Basis);
    }

    // Where nobody asks what is wrong the fluid is the same, and nothing stands for what is none.
    [Fact]
    public void What_is_found_is_what_is_read()
    {
        foreach (var name in Fluid.Examples) Assert.Equal(Fluid.Read(name).Value, Fluid.Find(name));
        Assert.Equal(Fluid.Read("formalin 4 %").Value, Fluid.Find("formalin 4 %"));
        foreach (var none in (string[])["", " ", "%", "borax", "disodium phosphate anhydrous", "ethanol", "ethanol 62,4 %mass", "ethanol 170 %vol", new('x', 5000)])
            Assert.Null(Fluid.Find(none));
    }

    // Digits of other scripts are no digits here, and no reason to stumble.
    [Theory]
    [InlineData("ethanol \u0663 %vol")]
    [InlineData("ethanol \u0967\u0966 %vol")]
    [InlineData("sea water, salinity \u0663\u0665")]
    public void Only_plain_digits_count(string text)
    {
        var read = Fluid.Read(text);
        Assert.Null(read.Value);
        Assert.Single(read.Findings);
    }

    // A number of more than nine digits, or twelve behind the point, is none; of two strengths the first counts.
    [Theory]
    [InlineData("ethanol 1234567890 %vol")]
    [InlineData("ethanol 70.1234567890123 %vol")]
    [InlineData("ethanol x70 %vol")]
    [InlineData("ethanol .70 %vol")]
    [InlineData("ethanol 70 %volume")]
    [InlineData("ethanol 30 %vol 70 %vol")]
    public void What_is_no_strength_is_no_fluid(string text) => Assert.Null(Fluid.Find(text));

    /// <summary>No strength is below nothing; a hyphen between words is no sign.</summary>
    [Theory]
    [InlineData("ethanol -70 %vol", false)]
    [InlineData("ethanol --70 %vol", false)]
    [InlineData("neutral buffered formalin -10 %", false)]
    [InlineData("-70 %vol ethanol", false)]
    [InlineData("ethanol-70 %vol", true)]
    [InlineData("neutral-buffered formalin 10 %", true)]
    public void A_sign_before_a_strength_is_not_passed_over(string text, bool isFluid)
    {
        var read = Fluid.Read(text);
        Assert.Equal(isFluid, read.Value is not null);
        if (!isFluid) Assert.NotEmpty(read.Findings);
    }
}
