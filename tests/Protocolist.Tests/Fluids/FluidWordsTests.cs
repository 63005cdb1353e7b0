using Protocolist.Fluids;

namespace Protocolist.Tests.Fluids;

/// <summary>Every name by which a fluid goes in the trade, and the one fluid it stands for.</summary>
public class FluidWordsTests
{
    [Theory]
    [InlineData("water", "water")]
    [InlineData("fresh water", "water")]
    [InlineData("freshwater", "water")]
    [InlineData("distilled water", "distilled water")]
    [InlineData("deionised water", "distilled water")]
    [InlineData("deionized water", "distilled water")]
    [InlineData("de-ionised water", "distilled water")]
    [InlineData("purified water", "distilled water")]
    [InlineData("demineralised water", "distilled water")]
    [InlineData("reverse-osmosis water", "distilled water")]
    [InlineData("reverse osmosis water", "distilled water")]
    [InlineData("tap water", "tap water")]
    [InlineData("tapwater", "tap water")]
    [InlineData("tap-water", "tap water")]
    [InlineData("sea water", "sea water")]
    [InlineData("seawater", "sea water")]
    [InlineData("filtered sea water", "sea water")]
    [InlineData("marine water", "sea water")]
    [InlineData("  Sea   WATER ", "sea water")]
    public void Water_is_known_by_each_of_its_names(string text, string canonical) => ReadsAs(text, canonical);

    [Theory]
    [InlineData("ethanol", "ethanol")]
    [InlineData("ethyl alcohol", "ethanol")]
    [InlineData("EtOH", "ethanol")]
    [InlineData("isopropanol", "isopropanol")]
    [InlineData("isopropyl alcohol", "isopropanol")]
    [InlineData("isopropyl-alcohol", "isopropanol")]
    [InlineData("2-propanol", "isopropanol")]
    [InlineData("propan-2-ol", "isopropanol")]
    [InlineData("IPA", "isopropanol")]
    public void Alcohols_are_known_by_each_of_their_names(string words, string canonical)
    {
        ReadsAs($"{words} 70 %vol", $"{canonical} 70 %vol");
        ReadsAs($"70 %mass {words}", $"{canonical} 70 %mass");
    }

    [Theory]
    [InlineData("formaldehyde stock")]
    [InlineData("formalin stock")]
    [InlineData("stock formaldehyde")]
    [InlineData("stock formalin")]
    [InlineData("concentrated formaldehyde")]
    [InlineData("concentrated formalin")]
    [InlineData("formaldehyde solution")]
    public void The_bottle_of_formaldehyde_is_known_by_each_of_its_names(string words) =>
        ReadsAs($"{words} 36.5 %mass", "formaldehyde stock 36.5 %mass");

    [Theory]
    [InlineData("", "")]
    [InlineData("unbuffered", "")]
    [InlineData("neutral buffered", "neutral buffered ")]
    [InlineData("neutral-buffered", "neutral buffered ")]
    [InlineData("phosphate-buffered", "neutral buffered ")]
    [InlineData("phosphate buffered neutral", "neutral buffered ")]
    [InlineData("neutral phosphate-buffered", "neutral buffered ")]
    [InlineData("buffered neutral", "neutral buffered ")]
    [InlineData("phosphate-NaOH buffered", "phosphate-NaOH buffered ")]
    [InlineData("Phosphate-NaOH-buffered", "phosphate-NaOH buffered ")]
    [InlineData("modified Millonig", "phosphate-NaOH buffered ")]
    [InlineData("Millonig", "phosphate-NaOH buffered ")]
    [InlineData("borax-buffered", "borax-buffered ")]
    [InlineData("borax", "borax-buffered ")]
    [InlineData("sea-water", "sea-water ")]
    [InlineData("seawater", "sea-water ")]
    [InlineData("hexamine-buffered", "hexamine-buffered ")]
    [InlineData("hexamine", "hexamine-buffered ")]
    [InlineData("hexamethylenetetramine-buffered", "hexamine-buffered ")]
    [InlineData("marble-chip", "marble-chip ")]
    [InlineData("marble chips", "marble-chip ")]
    [InlineData("calcium-carbonate", "marble-chip ")]
    public void A_buffering_stands_before_formalin_and_before_formaldehyde(string before, string canonical)
    {
        ReadsAs($"{before} formalin 10 %", $"{canonical}formalin 10 %");
        ReadsAs($"10 % {before} formalin", $"{canonical}formalin 10 %");
        ReadsAs($"{before} formaldehyde 4 % w/v", $"{canonical}formaldehyde 4 % w/v");
    }

    [Theory]
    [InlineData("with borax", "borax-buffered")]
    [InlineData("in sea water", "sea-water")]
    [InlineData("in seawater", "sea-water")]
    [InlineData("with hexamine", "hexamine-buffered")]
    [InlineData("over marble chips", "marble-chip")]
    [InlineData("with marble chips", "marble-chip")]
    public void A_buffering_stands_behind_formalin_and_behind_formaldehyde(string after, string canonical)
    {
        ReadsAs($"formalin 10 % {after}", $"{canonical} formalin 10 %");
        ReadsAs($"formaldehyde 4 % w/v {after}", $"{canonical} formaldehyde 4 % w/v");
    }

    [Fact]
    public void NBF_is_neutral_buffered_formalin_in_parts_of_stock()
    {
        var fluid = Fluid.Read("NBF 10 %").Value!;
        Assert.Equal(Fluid.Formalin(10, Buffering.Phosphate), fluid);
    }

    // Each spelling of a basis, on a fluid that may have it.
    [Theory]
    [InlineData("ethanol 70 %vol", "ethanol 70 %vol")]
    [InlineData("ethanol 70 % vol.", "ethanol 70 %vol")]
    [InlineData("ethanol 70 vol%", "ethanol 70 %vol")]
    [InlineData("ethanol 70 vol %", "ethanol 70 %vol")]
    [InlineData("ethanol 70 % v/v", "ethanol 70 %vol")]
    [InlineData("ethanol 70 % V/V", "ethanol 70 %vol")]
    [InlineData("ethanol 70 % ABV", "ethanol 70 %vol")]
    [InlineData("ethanol 70 % by volume", "ethanol 70 %vol")]
    [InlineData("ethanol 70 %mass", "ethanol 70 %mass")]
    [InlineData("ethanol 70 % m/m", "ethanol 70 %mass")]
    [InlineData("ethanol 70 % w/w", "ethanol 70 %mass")]
    [InlineData("ethanol 70 % by mass", "ethanol 70 %mass")]
    [InlineData("ethanol 70 % by weight", "ethanol 70 %mass")]
    [InlineData("ethanol 70 % wt", "ethanol 70 %mass")]
    [InlineData("ethanol 70 wt%", "ethanol 70 %mass")]
    [InlineData("formaldehyde 4 % w/v", "formaldehyde 4 % w/v")]
    [InlineData("formaldehyde 4 % m/v", "formaldehyde 4 % w/v")]
    [InlineData("formaldehyde 37.5 g/L", "formaldehyde 3.75 % w/v")]
    [InlineData("formaldehyde 4 % of stock", "formalin 4 % of stock")]
    [InlineData("formalin 4 PARTS IN 100", "formalin 4 % of stock")]
    [InlineData("formalin 10 %vol", "formalin 10 %")]
    [InlineData("formaldehyde stock 40 % m/v", "formaldehyde stock 40 % w/v")]
    [InlineData("formaldehyde stock 400 g/l", "formaldehyde stock 40 % w/v")]
    public void A_basis_is_read_in_each_of_its_spellings(string text, string canonical) => ReadsAs(text, canonical);

    // A formalin counted in volumes of stock: "% v/v" can be nothing else, with or without "of stock".
    [Theory]
    [InlineData("formalin 10 % v/v")]
    [InlineData("formalin 10 % v/v of stock")]
    public void Parts_of_stock_may_be_written_by_volume(string text) => ReadsAs(text, "formalin 10 %");

    private static void ReadsAs(string text, string canonical)
    {
        var read = Fluid.Read(text);
        Assert.Empty(read.Findings);
        Assert.Equal(canonical, read.Value!.Name);
    }
}
