using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids.Buffers;

/// <summary>One way in which a buffered formalin can have been made, right or wrong.</summary>
/// <param name="Made">What was weighed.</param>
/// <param name="IsRight">Whether that is the recipe.</param>
/// <param name="Ph">The pH it would have.</param>
internal sealed record BufferCase(Phrase Made, bool IsRight, double Ph);

/// <summary>What a measured pH says about how a buffer was made: wrong hydrate, wrong salt, no salt.</summary>
internal static class BufferDiagnosis
{
    /// <summary>How well a predicted pH is known: the activity model 0.03, formic acid and formaldehyde in the stock the rest (estimate).</summary>
    public const double PhDoubt = 0.1;

    // Unbuffered formalin: pH of the stock 2.8 (Atkins 1922) to 4.0; diluted 1+9, 3 to 4 in histology handbooks.
    private const double UnbufferedLow = 2.8;
    private const double UnbufferedHigh = 4.5;

    private static readonly Phrase Right = new("buffer-case.right", "4.0 g NaH2PO4.H2O and 6.5 g anhydrous Na2HPO4 to the litre, as the recipe says");
    private static readonly Phrase AcidAnhydrous = new("buffer-case.acid-anhydrous", "4.0 g of the anhydrous acid salt in place of its monohydrate");
    private static readonly Phrase AcidDihydrate = new("buffer-case.acid-dihydrate", "4.0 g of the acid salt's dihydrate in place of its monohydrate");
    private static readonly Phrase BasicDihydrate = new(
        "buffer-case.basic-dihydrate", "6.5 g of Na2HPO4.2H2O in place of the anhydrous salt (8.15 g were wanted)");

    private static readonly Phrase BasicHeptahydrate = new(
        "buffer-case.basic-heptahydrate", "6.5 g of Na2HPO4.7H2O in place of the anhydrous salt (12.27 g were wanted)");

    private static readonly Phrase BasicDodecahydrate = new(
        "buffer-case.basic-dodecahydrate", "6.5 g of Na2HPO4.12H2O in place of the anhydrous salt (16.40 g were wanted)");

    private static readonly Phrase Exchanged = new("buffer-case.exchanged", "the two phosphates exchanged (6.5 g NaH2PO4.H2O and 4.0 g Na2HPO4)");

    private static readonly Phrase Missing = new(
        "buffer-missing", "pH {measured:0.0#} measured, {expected:0.0#} expected of this neutral buffered formalin: that is unbuffered formalin");

    private static readonly Phrase WeighIn = new(
        "buffer-missing.remedy", "weigh the phosphates in, dissolve, measure again; do not use it on bone or shell as it is");

    private static readonly Phrase WrongSalt = new(
        "buffer-wrong-salt", "pH {measured:0.0#} measured, {expected:0.0#} expected of this neutral buffered formalin: it fits {mistakes:; or }");

    private static readonly Phrase CompareLabels = new(
        "buffer-wrong-salt.remedy", "compare the bottle's label with the recipe; weigh the missing salt in, or make it anew");

    private static readonly Phrase TooAcid = new(
        "buffer-too-acid",
        "pH {measured:0.0#} measured, {expected:0.0#} expected of this neutral buffered formalin: no single weighing mistake gives this; "
        + "the buffer is spent or the stock is old and acid");

    private static readonly Phrase MakeAnew = new("buffer-too-acid.remedy", "make it anew; below pH 6.5 discard it");
    private static readonly Phrase TooAlkaline = new(
        "buffer-too-alkaline",
        "pH {measured:0.0#} measured, {expected:0.0#} expected of this neutral buffered formalin: no single weighing mistake gives this");

    private static readonly Phrase CheckMeter = new("buffer-too-alkaline.remedy", "check the meter and which salts were used; make it anew");

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
        BufferCase Case(Phrase made, bool right, Salt acidSalt, Salt basicSalt, double acidGrams = 4.0, double basicGrams = 6.5)
        {
            var (a, b) = PhosphateBuffer.Weighed(acidGrams, acidSalt, basicGrams, basicSalt);
            return new(made, right, PhosphateBuffer.Ph(a, b, celsius));
        }

        return
        [
            Case(Right, true, acid, basic),
            Case(AcidAnhydrous, false, Salts.SodiumDihydrogenPhosphateAnhydrous, basic),
            Case(AcidDihydrate, false, Salts.SodiumDihydrogenPhosphateDihydrate, basic),
            Case(BasicDihydrate, false, acid, Salts.DisodiumPhosphateDihydrate),
            Case(BasicHeptahydrate, false, acid, Salts.DisodiumPhosphateHeptahydrate),
            Case(BasicDodecahydrate, false, acid, Salts.DisodiumPhosphateDodecahydrate),
            Case(Exchanged, false, acid, basic, 6.5, 4.0),
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
        Argument measured = ("measured", measuredPh), wanted = ("expected", expected);
        if (measuredPh is >= UnbufferedLow and <= UnbufferedHigh) return [Finding.Error("buffer-missing", Missing.With(measured, wanted), WeighIn)];

        var doubt = PhDoubt * 0.6;
        var fits = cases.Where(c => !c.IsRight && Math.Abs(c.Ph - measuredPh) <= doubt).Select(c => (Message)c.Made).ToArray();
        if (fits.Length > 0)
            return [Finding.Warning("buffer-wrong-salt", WrongSalt.With(measured, wanted, Argument.Messages("mistakes", fits)), CompareLabels)];
        return measuredPh < expected
            ? [Finding.Warning("buffer-too-acid", TooAcid.With(measured, wanted), MakeAnew)]
            : [Finding.Warning("buffer-too-alkaline", TooAlkaline.With(measured, wanted), CheckMeter)];
    }
}
