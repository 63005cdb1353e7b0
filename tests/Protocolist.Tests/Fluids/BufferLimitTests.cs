using System.Globalization;
using System.Text;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Tests.Fluids;

/// <summary>Buffers: what is weighed, what pH it gives, what a measured pH means, and what a person is told of it.</summary>
public class BufferLimitTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);
    private static readonly Temperature TwentyFive = Temperature.FromDegreesCelsius(25);

    [Fact]
    public void The_guide_is_what_was_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var p in BufferGuide.All)
        {
            text.Append(CultureInfo.InvariantCulture, $"{p.Buffering}: pH {p.PhLow} to {p.PhHigh}, lasts {(p.LastsDays is { } days ? $"{days} days" : "years")}\n");
            text.Append(CultureInfo.InvariantCulture, $"  can: {p.Can}\n  cannot: {p.Cannot}\n  source: {p.Source}\n");
        }

        KeptText.Holds("Fluids/kept/buffer-guide.txt", text.ToString());
    }

    [Fact]
    public void What_was_weighed_and_what_a_ph_means_is_told_as_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var c in BufferDiagnosis.Cases(Twenty)) text.Append(CultureInfo.InvariantCulture, $"pH {c.Ph:0.00} {(c.IsRight ? "right" : "wrong")}: {c.Made}\n");
        foreach (var ph in (double[])[3.6, 5.5, 6.66, 6.73, 6.7, 6.81, 6.87, 7.0, 7.13, 8.4])
        {
            text.Append(CultureInfo.InvariantCulture, $"\nmeasured {ph} at 20 degC:\n");
            var found = BufferDiagnosis.Of(ph, Twenty);
            if (found.IsEmpty) text.Append("  (silent)\n");
            foreach (var f in found) text.Append(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
        }

        KeptText.Holds("Fluids/kept/buffer-diagnosis.txt", text.ToString());
    }

    // pK2 + log10(basic/acid) less Davies' term, worked apart from this code: the seven ways of weighing, at 20 and 25 °C.
    [Theory]
    [InlineData(20, new[] { 7.0235, 6.9600, 7.0789, 6.9448, 6.8003, 6.6958, 6.6268 })]
    [InlineData(25, new[] { 7.0062, 6.9427, 7.0617, 6.9277, 6.7835, 6.6792, 6.6098 })]
    public void Each_way_of_weighing_has_its_worked_ph(double celsius, double[] ph)
    {
        var cases = BufferDiagnosis.Cases(Temperature.FromDegreesCelsius(celsius));
        Assert.Equal(ph.Length, cases.Length);
        for (var i = 0; i < ph.Length; i++) Assert.Equal(ph[i], cases[i].Ph, 0.0001);
        Assert.Equal([true, false, false, false, false, false, false], cases.Select(c => c.IsRight));
    }

    // At 25 °C the right one has 7.0062; 0.1 of doubt on either side. Of the mistakes 0.06: 7.0617 the highest, 6.6098 the lowest.
    [Theory]
    [InlineData(6.9063, "")]
    [InlineData(6.9061, "buffer-wrong-salt")]
    [InlineData(7.1061, "")]
    [InlineData(7.1063, "buffer-wrong-salt")]
    [InlineData(7.1216, "buffer-wrong-salt")]
    [InlineData(7.1218, "buffer-too-alkaline")]
    [InlineData(6.5499, "buffer-wrong-salt")]
    [InlineData(6.5497, "buffer-too-acid")]
    [InlineData(4.5001, "buffer-too-acid")]
    [InlineData(4.5, "buffer-missing")]
    [InlineData(2.8, "buffer-missing")]
    [InlineData(2.7999, "buffer-too-acid")]
    public void A_measured_ph_is_judged_at_its_limits(double ph, string id) =>
        Assert.Equal(id, string.Join(' ', BufferDiagnosis.Of(ph, TwentyFive).Select(f => f.Id)));

    // Worked as above: Lillie's and Carson's recipe by temperature.
    [Theory]
    [InlineData(5, 7.0994, 7.3820)]
    [InlineData(20, 7.0235, 7.3046)]
    [InlineData(25, 7.0062, 7.2868)]
    [InlineData(32.5, 6.98744, 7.26719)]
    [InlineData(40, 6.9765, 7.2553)]
    public void The_two_phosphate_buffers_have_their_worked_ph(double celsius, double lillie, double carson)
    {
        var at = Temperature.FromDegreesCelsius(celsius);
        Assert.Equal(lillie, BufferDiagnosis.PredictedPh(Fluid.Formalin(10, Buffering.Phosphate), at)!.Value, 0.0001);
        Assert.Equal(carson, BufferDiagnosis.PredictedPh(Fluid.Formalin(10, Buffering.PhosphateSodiumHydroxide), at)!.Value, 0.0001);
    }

    [Theory]
    [InlineData(Buffering.None)]
    [InlineData(Buffering.Borax)]
    [InlineData(Buffering.SeaWater)]
    [InlineData(Buffering.Hexamine)]
    [InlineData(Buffering.MarbleChips)]
    public void Other_bufferings_have_no_predicted_ph(Buffering buffering) =>
        Assert.Null(BufferDiagnosis.PredictedPh(Fluid.Formalin(10, buffering), TwentyFive));

    // 0.1 mol/L of another salt and Davies' later coefficient, worked apart: 6.8629, 6.7884, 6.8782.
    [Fact]
    public void Other_salt_lowers_the_ph_and_the_later_coefficient_raises_it()
    {
        Assert.Equal(6.8629, PhosphateBuffer.Ph(0.025, 0.025, 25), 0.0001);
        Assert.Equal(6.7884, PhosphateBuffer.Ph(0.025, 0.025, 25, otherSalt: 0.1), 0.0001);
        Assert.Equal(6.8782, PhosphateBuffer.Ph(0.025, 0.025, 25, b: 0.3), 0.0001);
    }

    // The tabulated values at every fifth degree, half way between, and the end values beyond the ends.
    [Theory]
    [InlineData(-10, 0.4913)]
    [InlineData(0, 0.4913)]
    [InlineData(2.5, 0.4928)]
    [InlineData(5, 0.4943)]
    [InlineData(10, 0.4976)]
    [InlineData(15, 0.5012)]
    [InlineData(20, 0.5050)]
    [InlineData(25, 0.5092)]
    [InlineData(30, 0.5134)]
    [InlineData(35, 0.5180)]
    [InlineData(36, 0.51894)]
    [InlineData(40, 0.5227)]
    [InlineData(60, 0.5227)]
    public void Debye_and_hueckels_A_is_the_tables(double celsius, double a) => Assert.Equal(a, PhosphateBuffer.A(celsius), 1e-9);

    // 4.2 g NaOH (39.997 g/mol) is 0.10501 mol: it turns as much of 18.6 g NaH2PO4.H2O (0.13479 mol) into the basic salt.
    [Fact]
    public void Hydroxide_turns_acid_phosphate_into_basic()
    {
        var (acid, basic) = PhosphateBuffer.Weighed(18.6, Salts.SodiumDihydrogenPhosphateMonohydrate, 1.41958, Salts.DisodiumPhosphateAnhydrous, 4.2);
        Assert.Equal(0.134791 - 0.105008, acid, 1e-6);
        Assert.Equal(0.01 + 0.105008, basic, 1e-6);
    }

    // To the litre of a solution with 40 g CH2O. Lillie: 4.0 and 6.5 g; Carson 1973: 18.6 and 4.2 g; Steedman 1976: a litre of stock, 400 g, takes 30 g
    // of borax or 200 g of hexamine. Without crystal water: 119.976/137.991, 201.213/381.363 of what is weighed.
    [Theory]
    [InlineData(Buffering.None, "", 0)]
    [InlineData(Buffering.Phosphate, "NaH2PO4.H2O 4, Na2HPO4 6.5", 9.97780)]
    [InlineData(Buffering.PhosphateSodiumHydroxide, "NaH2PO4.H2O 18.6, NaOH 4.2", 20.37173)]
    [InlineData(Buffering.Borax, "Na2B4O7.10H2O 3", 1.58285)]
    [InlineData(Buffering.SeaWater, "", 0)]
    [InlineData(Buffering.Hexamine, "C6H12N4 20", 20)]
    [InlineData(Buffering.MarbleChips, "CaCO3 20", 0)]
    public void A_litre_takes_the_salts_of_the_recipe(Buffering buffering, string salts, double anhydrous)
    {
        var weighed = BufferRecipe.PerLitre(buffering, 40);
        Assert.Equal(salts, string.Join(", ", weighed.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Salt.Formula} {Math.Round(s.GramsPerLitre, 9)}"))));
        Assert.Equal(anhydrous, BufferRecipe.AnhydrousGramsPerLitre(buffering, 40), 0.00001);
    }

    [Fact]
    public void Preparations_are_what_was_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var p in (Preparation[])
        [
            Preparations.FromParaformaldehyde(Volume.FromLiters(2), 0.95), Preparations.MagnesiumChloride(Volume.FromLiters(2)),
            Preparations.MagnesiumChloride(Volume.FromLiters(0.5), Salts.MagnesiumChlorideAnhydrous), Preparations.Menthol(Volume.FromLiters(3)),
        ])
        {
            text.Append(CultureInfo.InvariantCulture, $"{p.Name}\n");
            foreach (var i in p.Ingredients)
                text.Append(CultureInfo.InvariantCulture, $"  take {(i.Mass is { } m ? $"{m.Grams:0.##} g of " : "")}{(i.Volume is { } v ? $"{v.Milliliters:0.##} mL of " : "")}{i.Name}\n");
            foreach (var step in p.Method) text.Append(CultureInfo.InvariantCulture, $"  {step}\n");
            text.Append(CultureInfo.InvariantCulture, $"  caution: {p.Caution}\n  source: {p.Source}\n\n");
        }

        KeptText.Holds("Fluids/kept/preparations.txt", text.ToString());
    }

    [Theory]
    [InlineData(0.4999)]
    [InlineData(1.0001)]
    [InlineData(double.NaN)]
    public void An_assay_that_no_powder_has_is_the_callers_bug(double assay) =>
        Assert.StartsWith("An assay is a share of the mass, 0.5 to 1.", Assert.Throws<ArgumentOutOfRangeException>(() => Preparations.FromParaformaldehyde(Volume.FromLiters(1), assay)).Message.ToString(), StringComparison.Ordinal);

    // 40 g of CH2O to the litre: 80 g of a powder that is half of it.
    [Fact]
    public void The_weakest_and_the_purest_powder_are_taken()
    {
        Assert.Equal(80, Preparations.FromParaformaldehyde(Volume.FromLiters(1), 0.5).Ingredients[0].Mass!.Value.Grams, 1e-9);
        Assert.Equal(40, Preparations.FromParaformaldehyde(Volume.FromLiters(1), 1).Ingredients[0].Mass!.Value.Grams, 1e-9);
    }
}
