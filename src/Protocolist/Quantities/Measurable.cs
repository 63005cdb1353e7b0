using System.Globalization;

namespace Protocolist.Quantities;

/// <summary>Quantities rounded to what a person can measure out. Only for showing: a rounded number never goes back into a sum.</summary>
/// <remarks>
/// The steps are those of ordinary tools (common practice): a 1 mL syringe reads to 0.01 mL, a 10 or 20 mL syringe to 0.1 or 0.2 mL,
/// a 250 mL cylinder to 1 or 2 mL, a 1 L cylinder to 5 or 10 mL, a marked bucket to 0.1 L; a pocket balance reads 0.01 or 0.1 g,
/// a kitchen scale 1 g, a hanging scale 10 to 100 g; a rule reads 1 mm, a calliper 0.1 mm. Never more than 6 significant figures stand
/// there, and a trace too small for its tool is given with 2 rather than as nothing.
/// </remarks>
internal static class Measurable
{
    private static readonly Unit MicroLitre = UnitTable.Get("µL");
    private static readonly Unit MilliLitre = UnitTable.Get("mL");
    private static readonly Unit Litre = UnitTable.Get("L");
    private static readonly Unit Milligram = UnitTable.Get("mg");
    private static readonly Unit Gram = UnitTable.Get("g");
    private static readonly Unit Kilogram = UnitTable.Get("kg");
    private static readonly Unit Millimetre = UnitTable.Get("mm");
    private static readonly Unit Metre = UnitTable.Get("m");
    private static readonly Unit Minute = UnitTable.Get("min");
    private static readonly Unit Hour = UnitTable.Get("h");
    private static readonly Unit Day = UnitTable.Get("d");

    /// <summary>Below each bound (SI): the unit to use and the step to round to, in that unit.</summary>
    private static readonly Dictionary<Dimension, (double Below, Unit Unit, double Step)[]> Steps = new()
    {
        [Dimension.OfVolume] =
        [
            (1e-7, MicroLitre, 1), (1e-6, MilliLitre, 0.01), (20e-6, MilliLitre, 0.1), (250e-6, MilliLitre, 1), (995e-6, MilliLitre, 5),
            (0.01, Litre, 0.01), (0.1, Litre, 0.1), (double.PositiveInfinity, Litre, 1),
        ],
        [Dimension.OfMass] =
        [
            (9.95e-5, Milligram, 1), (1e-3, Gram, 0.01), (0.1, Gram, 0.1), (0.9995, Gram, 1), (10, Kilogram, 0.01), (double.PositiveInfinity, Kilogram, 0.1),
        ],
        [Dimension.OfLength] = [(0.01, Millimetre, 0.1), (1.9995, Millimetre, 1), (double.PositiveInfinity, Metre, 0.01)],
        [Dimension.OfTime] =
        [
            (119.5, UnitTable.Get("s"), 1),
            (600, Minute, 0.5),
            (7170, Minute, 1),
            (36000, Hour, 0.5),
            (171000, Hour, 1),
            (864000, Day, 0.5),
            (double.PositiveInfinity, Day, 1),
        ],
        [Dimension.OfTemperature] = [(double.PositiveInfinity, UnitTable.Get("degC"), 0.5)],
        [Dimension.OfShareByVolume] = [(double.PositiveInfinity, UnitTable.Get("%vol"), 0.1)],
        [Dimension.OfShareByMass] = [(double.PositiveInfinity, UnitTable.Get("%mass"), 0.1)],
        [Dimension.OfDensity] = [(300, UnitTable.Get("g").Per(UnitTable.Get("L")), 0.1), (double.PositiveInfinity, Kilogram.Per(UnitTable.Get("m3")), 0.1)],
        [Dimension.OfSpecificVolume] = [(double.PositiveInfinity, MilliLitre.Per(Kilogram), 1)],
    };

    /// <summary>A quantity as a person measures it: what is dosed so is reckoned with so.</summary>
    /// <param name="si">The value in SI units.</param>
    /// <param name="dimension">What it measures.</param>
    /// <returns>The value that <see cref="Text(double, Dimension)"/> shows; what would be shown as nothing is left as it is.</returns>
    public static double Rounded(double si, Dimension dimension)
    {
        if (!IsFinite(si)) return si;
        var (unit, step) = StepFor(Math.Abs(si), dimension);
        var rounded = Math.Round(unit.FromSi(si) / step) * step;
        return rounded == 0 ? si : unit.ToSi(rounded);
    }

    /// <summary>One quantity for a person to read.</summary>
    /// <param name="si">The value in SI units.</param>
    /// <param name="dimension">What it measures.</param>
    /// <returns>Text such as <c>0.99 L</c>.</returns>
    public static string Text(double si, Dimension dimension)
    {
        if (!IsFinite(si)) return "without limit";
        var (unit, step) = StepFor(Math.Abs(si), dimension);
        return Join(Number(unit.FromSi(si), step, dimension), unit.Symbol);
    }

    /// <summary>A range for a person to read; one number where both ends round to the same.</summary>
    /// <param name="range">The range.</param>
    /// <returns>Text such as <c>10 to 21 d</c> or <c>at least 24 h</c>.</returns>
    public static string Text(QuantityRange range)
    {
        if (range.IsPoint) return Text(range.Low, range.Dimension);
        if (!IsFinite(range.High)) return IsFinite(range.Low) && range.Low != 0 ? $"at least {Text(range.Low, range.Dimension)}" : "any";
        if (!IsFinite(range.Low) || (range.Low == 0 && range.High > 0)) return $"at most {Text(range.High, range.Dimension)}";
        var (unit, step) = StepFor(Math.Max(Math.Abs(range.Low), Math.Abs(range.High)), range.Dimension);
        var low = Number(unit.FromSi(range.Low), step, range.Dimension);
        var high = Number(unit.FromSi(range.High), step, range.Dimension);

        // The lower end of a wide range would vanish in the unit of the upper.
        if (Vanishes(unit.FromSi(range.Low), step, range.Dimension) && Text(range.Low, range.Dimension) is var small && small != Join(high, unit.Symbol))
            return $"{small} to {Join(high, unit.Symbol)}";
        return low == high ? Join(high, unit.Symbol) : $"{low} to {Join(high, unit.Symbol)}";
    }

    /// <summary>Finite in any unit, not in the SI unit alone.</summary>
    private static bool IsFinite(double si) => Math.Abs(si) < 1e290;

    private static (Unit Unit, double Step) StepFor(double si, Dimension dimension)
    {
        if (Steps.TryGetValue(dimension, out var steps))
        {
            var (_, unit, step) = Array.Find(steps, s => si < s.Below);
            return (unit, step);
        }

        var fitting = WrittenUnits.Fitting(si, dimension);
        return (fitting, OneIn(3, fitting.FromSi(si)));
    }

    /// <summary>The place value of the last of so many significant figures.</summary>
    private static double OneIn(int figures, double value) =>
        value == 0 ? 1 : Math.Max(double.Epsilon, Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) + 1 - figures));

    /// <summary>Whether something would be shown as nothing. A temperature near 0 degC is no trace of anything.</summary>
    private static bool Vanishes(double value, double step, Dimension dimension) =>
        value != 0 && Math.Round(value / step) == 0 && dimension != Dimension.OfTemperature;

    /// <summary>Rounded to the step, halves to the even side, with no more decimals than the step has.</summary>
    private static string Number(double value, double step, Dimension dimension)
    {
        if (value == 0) return "0";
        if (Vanishes(value, step, dimension)) step = OneIn(2, value);
        step = Math.Max(step, OneIn(6, value));

        // Sizes that nothing at a bench has: the shortest form will do.
        if (!double.IsFinite(value / step) || Math.Abs(value) is < 1e-6 or >= 1e9) return value.ToString("G3", CultureInfo.InvariantCulture);
        var decimals = step >= 1 ? 0 : (int)Math.Ceiling(-Math.Log10(step) - 1e-9);
        var rounded = Math.Round(value / step) * step;
        return rounded == 0 ? "0" : rounded.ToString($"0.{new string('#', decimals)}", CultureInfo.InvariantCulture);
    }

    private static string Join(string number, string unit) => unit.Length == 0 ? number : $"{number} {unit}";
}
