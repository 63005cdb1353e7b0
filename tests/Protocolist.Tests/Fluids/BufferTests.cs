using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

public class BufferTests
{
    private static readonly Temperature TwentyFive = Temperature.FromDegreesCelsius(25);

    // Worked apart from this code at 25 °C, Davies b = 0.2.
    [Theory]
    [InlineData(0, 7.01)]
    [InlineData(1, 6.94)]
    [InlineData(2, 7.06)]
    [InlineData(4, 6.78)]
    [InlineData(5, 6.68)]
    public void Each_mistake_has_its_own_ph(int index, double ph) => Assert.Equal(ph, BufferDiagnosis.Cases(TwentyFive)[index].Ph, 0.01);

    [Fact]
    public void The_right_ph_raises_no_finding() => Assert.Empty(BufferDiagnosis.Of(7.0, TwentyFive));

    [Theory]
    [InlineData(6.78, "buffer-wrong-salt", "7H2O")]
    [InlineData(6.68, "buffer-wrong-salt", "12H2O")]
    [InlineData(3.6, "buffer-missing", "unbuffered")]
    [InlineData(5.5, "buffer-too-acid", "spent")]
    [InlineData(8.4, "buffer-too-alkaline", "meter")]
    public void A_wrong_ph_tells_what_went_wrong(double ph, string id, string says)
    {
        var finding = Assert.Single(BufferDiagnosis.Of(ph, TwentyFive));
        Assert.Equal(id, finding.Id);
        Assert.Contains(says, finding.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Na2HPO4")]
    [InlineData("NaH2PO4")]
    [InlineData("disodium phosphate")]
    [InlineData("sodium phosphate monobasic")]
    [InlineData("magnesium chloride")]
    public void A_salt_without_its_hydrate_is_sent_back(string text)
    {
        var read = Salts.Read(text);
        Assert.Null(read.Value);
        var finding = Assert.Single(read.Findings);
        Assert.Equal("salt-without-hydrate", finding.Id);
        Assert.Contains("H2O", finding.Remedy.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Na2HPO4·7H2O", "Na2HPO4.7H2O")]
    [InlineData("disodium phosphate heptahydrate", "Na2HPO4.7H2O")]
    [InlineData("Sodium phosphate dibasic, anhydrous", "Na2HPO4")]
    [InlineData("NaH2PO4 anhydrous", "NaH2PO4")]
    [InlineData("borax", "Na2B4O7.10H2O")]
    [InlineData("NaOH", "NaOH")]
    [InlineData("magnesium chloride hexahydrate", "MgCl2.6H2O")]
    public void Salts_are_read_with_their_hydrate(string text, string formula) => Assert.Equal(formula, Salts.Read(text).Value!.Formula);

    [Fact]
    public void A_misspelt_salt_is_guessed() => Assert.Contains("borax", Assert.Single(Salts.Read("boraks").Findings).Remedy.ToString(), StringComparison.Ordinal);

    [Fact]
    public void Every_salt_is_read_back_from_its_name()
    {
        foreach (var salt in Salts.All) Assert.Equal(salt, Salts.Read(salt.Name).Value);
    }

    [Fact]
    public void Every_buffering_has_its_profile_in_its_place()
    {
        foreach (var buffering in Enum.GetValues<Buffering>())
        {
            var profile = BufferGuide.Of(buffering);
            Assert.Equal(buffering, profile.Buffering);
            Assert.True(profile.PhLow < profile.PhHigh && profile.Can.English.Length > 0 && profile.Cannot.English.Length > 0 && profile.Source.Length > 0);
            if (BufferDiagnosis.PredictedPh(Fluid.Formalin(10, buffering), TwentyFive) is { } ph) Assert.InRange(ph, profile.PhLow, profile.PhHigh);
        }
    }

    // 3 g borax to the litre is 7.87 mmol/L (USGS Open-File Report 93-104, computed).
    [Fact]
    public void Borax_is_three_grams_to_a_litre_of_ten_percent_formalin()
    {
        var salt = Assert.Single(BufferRecipe.PerLitre(Buffering.Borax, 40));
        Assert.Equal(3.0, salt.GramsPerLitre, 1e-9);
        Assert.Equal(7.87, 1000 * salt.GramsPerLitre / salt.Salt.MolarMass, 0.01);
    }

    // 40 g to the litre: 1.332 mol/L; MgCl2.6H2O 75 g is 35.12 g anhydrous (CRC Handbook molar masses).
    [Fact]
    public void Preparations_weigh_what_the_recipes_say()
    {
        Assert.Equal(20.0, Preparations.FromParaformaldehyde(Volume.FromLiters(0.5)).Ingredients[0].Mass!.Value.Grams, 1e-9);
        Assert.Equal(42.1, Preparations.FromParaformaldehyde(Volume.FromLiters(1), 0.95).Ingredients[0].Mass!.Value.Grams, 0.01);
        Assert.Equal(75.0, Preparations.MagnesiumChloride(Volume.FromLiters(1)).Ingredients[0].Mass!.Value.Grams, 1e-9);
        Assert.Equal(35.12, Preparations.MagnesiumChloride(Volume.FromLiters(1), Salts.MagnesiumChlorideAnhydrous).Ingredients[0].Mass!.Value.Grams, 0.01);
    }
}
