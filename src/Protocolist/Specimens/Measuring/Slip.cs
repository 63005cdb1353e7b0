using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Specimens.Measuring;

/// <summary>A way to write a measurement down wrong.</summary>
/// <param name="What">What was written wrong.</param>
/// <param name="Factor">What the ratio given : expected is multiplied by when it is put right.</param>
/// <param name="IsForeign">Whether it takes a unit that a museum does not measure in.</param>
internal readonly record struct Slip(Message What, double Factor, bool IsForeign = false)
{
    private static readonly Phrase Milligrams =
        new("slip.mass-in-mg", "the unit of the mass ({meant:0.### mg} rather than {given:0.### g})");
    private static readonly Phrase Grams = new("slip.mass-in-g", "the unit of the mass ({meant:0.### g} rather than {given:0.### kg})");
    private static readonly Phrase Kilograms = new("slip.mass-in-kg", "the unit of the mass ({meant:0.### kg} rather than {given:0.### g})");
    private static readonly Phrase MassPoint = new("slip.mass-point", "the decimal point of the mass ({meant:0.#### g} rather than {given:0.### g})");
    private static readonly Phrase Pounds = new("slip.pounds", "a mass in pounds written as kilograms");
    private static readonly Phrase PoundsAsGrams = new("slip.pounds-as-grams", "a mass in pounds written as grams");
    private static readonly Phrase Ounces = new("slip.ounces", "a mass in ounces written as grams");
    private static readonly Phrase Millimetres = new(
        "slip.length-in-mm", "the unit or decimal point of the {name} ({meant:0.### mm} rather than {given:0.### mm})");
    private static readonly Phrase Centimetres = new(
        "slip.length-in-cm", "the unit or decimal point of the {name} ({meant:0.### cm} rather than {given:0.### cm})");
    private static readonly Phrase Inches = new("slip.inches", "a {name} in inches written as centimetres");
    private static readonly Phrase InchesAsMillimetres = new("slip.inches-as-mm", "a {name} in inches written as millimetres");
    private static readonly Phrase MeasureAgain = new("slip.none", "measure again");
    private static readonly Phrase Likely = new("slip.likely", "likely {slips:, or }; measure again");

    private const double WrittenInGrams = 1000; // judgement

    // Museums weigh in grams and measure in millimetres: a slip of pounds or inches has to fit well before it is named. Judgement.
    private const double FitsWell = 1.5;
    private const double LeastPounds = 0.1; // judgement
    private const double LeastOunces = 0.2; // judgement

    /// <summary>What goes wrong with a mass.</summary>
    public static Slip[] OfMass(double massG)
    {
        var given = Mass.FromGrams(massG);
        return
        [
            new((massG < WrittenInGrams ? Milligrams : Grams).With(("meant", Mass.FromMilligrams(massG)), ("given", given)), 1e-3),
            new(Kilograms.With(("meant", Mass.FromKilograms(massG)), ("given", given)), 1e3),
            new(MassPoint.With(("meant", given / 10), ("given", given)), 0.1),
            new(MassPoint.With(("meant", given * 10), ("given", given)), 10),
            // Nobody weighs in thousandths of a pound or tenths of an ounce.
            .. massG >= LeastPounds * 1000 ? (ReadOnlySpan<Slip>)[new(Pounds, 0.4536, true)] : [],
            .. massG >= LeastPounds ? (ReadOnlySpan<Slip>)[new(PoundsAsGrams, 453.6, true)] : [],
            .. massG >= LeastOunces ? (ReadOnlySpan<Slip>)[new(Ounces, 28.35, true)] : [],
        ];
    }

    /// <summary>What goes wrong with a length on which the expected value depends as length^<paramref name="power"/>.</summary>
    public static Slip[] OfLength(Phrase name, double mm, double power)
    {
        var given = Length.FromMillimeters(mm);
        return
        [
            new(Millimetres.With(("name", name), ("meant", given / 10), ("given", given)), Math.Pow(10, power)),
            new(Centimetres.With(("name", name), ("meant", given * 10), ("given", given)), Math.Pow(10, -power)),
            new(Inches.With(("name", name)), Math.Pow(2.54, -power), true),
            new(InchesAsMillimetres.With(("name", name)), Math.Pow(25.4, -power), true),
        ];
    }

    /// <summary>The remedy that names the slips which would explain a ratio, likeliest first.</summary>
    /// <remarks>
    /// Those that bring it within <paramref name="tolerance"/> of 1, at most two; of units that are not a museum's only what fits well, last.
    /// </remarks>
    public static Message Remedy(double ratio, double tolerance, IEnumerable<Slip> slips, bool isSharp = true)
    {
        var foreign = Math.Min(tolerance, FitsWell);
        var fitting = slips.Select(s => (s.What, s.IsForeign, Off: Math.Abs(Math.Log(ratio * s.Factor))))
            .Where(s => s.Off <= Math.Log(s.IsForeign ? foreign : tolerance))
            .OrderBy(s => s.IsForeign).ThenBy(s => s.Off)
            .Take(2)
            .ToList();

        // Where animals scatter so much, an ounce or an inch by itself fits by chance.
        var likely = !isSharp && fitting.All(s => s.IsForeign) ? [] : fitting.ConvertAll(s => s.What);
        return likely.Count == 0 ? MeasureAgain : Likely.With(Argument.Messages("slips", likely));
    }
}
