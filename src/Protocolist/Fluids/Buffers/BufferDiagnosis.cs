using System.Collections.Immutable;
using System.Globalization;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids.Buffers;

/// <summary>One way in which a buffered formalin can have been made, right or wrong.</summary>
/// <param name="Made">What was weighed.</param>
/// <param name="IsRight">Whether that is the recipe.</param>
/// <param name="Ph">The pH it would have.</param>
public sealed record BufferCase(string Made, bool IsRight, double Ph);

/// <summary>What a measured pH says about how a buffer was made: wrong hydrate, wrong salt, no salt.</summary>
public static class BufferDiagnosis
{
    /// <summary>How well a predicted pH is known: the activity model 0.03, formic acid and formaldehyde in the stock the rest (estimate).</summary>
    public const double PhDoubt = 0.1;

    // Unbuffered formalin: pH of the stock 2.8 (Atkins 1922) to 4.0; diluted 1+9, 3 to 4 in histology handbooks.
    private const double UnbufferedLow = 2.8;
    private const double UnbufferedHigh = 4.5;

    /// <summary>Predicted pH of a fluid, where the chemistry allows a prediction: phosphate-buffered formalin.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <param name="at">Temperature, 0 to 40 °C.</param>
    /// <returns>The pH, good to <see cref="PhDoubt"/>; null for every other fluid, see <see cref="BufferGuide"/> for their usual ranges.</returns>
    public static double? PredictedPh(Fluid fluid, Temperature at)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        return PhosphateBuffer.OfRecipe(fluid.Buffering, at.DegreesCelsius);
    }

    /// <summary>The pH of Lillie's neutral buffered formalin made rightly, and with each common mistake.</summary>
    /// <param name="at">Temperature, 0 to 40 °C.</param>
    /// <returns>The cases, the right ones first.</returns>
    public static ImmutableArray<BufferCase> Cases(Temperature at)
    {
        var celsius = at.DegreesCelsius;
        Salt acid = Salts.SodiumDihydrogenPhosphateMonohydrate, basic = Salts.DisodiumPhosphateAnhydrous;
        BufferCase Case(string made, bool right, Salt acidSalt, Salt basicSalt, double acidGrams = 4.0, double basicGrams = 6.5)
        {
            var (a, b) = PhosphateBuffer.Weighed(acidGrams, acidSalt, basicGrams, basicSalt);
            return new(made, right, PhosphateBuffer.Ph(a, b, celsius));
        }

        return
        [
            Case("4.0 g NaH2PO4.H2O and 6.5 g anhydrous Na2HPO4 to the litre, as the recipe says", true, acid, basic),
            Case("4.0 g of the anhydrous acid salt in place of its monohydrate", false, Salts.SodiumDihydrogenPhosphateAnhydrous, basic),
            Case("4.0 g of the acid salt's dihydrate in place of its monohydrate", false, Salts.SodiumDihydrogenPhosphateDihydrate, basic),
            Case("6.5 g of Na2HPO4.2H2O in place of the anhydrous salt (8.15 g were wanted)", false, acid, Salts.DisodiumPhosphateDihydrate),
            Case("6.5 g of Na2HPO4.7H2O in place of the anhydrous salt (12.27 g were wanted)", false, acid, Salts.DisodiumPhosphateHeptahydrate),
            Case("6.5 g of Na2HPO4.12H2O in place of the anhydrous salt (16.40 g were wanted)", false, acid, Salts.DisodiumPhosphateDodecahydrate),
            Case("the two phosphates exchanged (6.5 g NaH2PO4.H2O and 4.0 g Na2HPO4)", false, acid, basic, 6.5, 4.0),
        ];
    }

    /// <summary>Judges a measured pH of what should be Lillie's neutral buffered formalin.</summary>
    /// <param name="measuredPh">The reading.</param>
    /// <param name="at">Its temperature, 0 to 40 °C.</param>
    /// <returns>Nothing where it is as it should be; else one finding that names the mistakes which fit.</returns>
    public static ImmutableArray<Finding> Of(double measuredPh, Temperature at)
    {
        var cases = Cases(at);
        var expected = cases[0].Ph;
        if (Math.Abs(measuredPh - expected) <= PhDoubt) return [];
        var reading = string.Create(CultureInfo.InvariantCulture, $"pH {measuredPh:0.0#} measured, {expected:0.0#} expected of this neutral buffered formalin");
        if (measuredPh is >= UnbufferedLow and <= UnbufferedHigh)
            return [Finding.Error("buffer-missing", $"{reading}: that is unbuffered formalin", "weigh the phosphates in, dissolve, measure again; do not use it on bone or shell as it is")];

        var doubt = PhDoubt * 0.6;
        var fits = cases.Where(c => !c.IsRight && Math.Abs(c.Ph - measuredPh) <= doubt).Select(c => c.Made).ToArray();
        if (fits.Length > 0)
            return [Finding.Warning("buffer-wrong-salt", $"{reading}: it fits {string.Join("; or ", fits)}", "compare the bottle's label with the recipe; weigh the missing salt in, or make it anew")];
        return measuredPh < expected
            ? [Finding.Warning("buffer-too-acid", $"{reading}: no single weighing mistake gives this; the buffer is spent or the stock is old and acid", "make it anew; below pH 6.5 discard it")]
            : [Finding.Warning("buffer-too-alkaline", $"{reading}: no single weighing mistake gives this", "check the meter and which salts were used; make it anew")];
    }
}
