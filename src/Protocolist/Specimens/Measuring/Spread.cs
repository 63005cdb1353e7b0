using UnitsNet;

namespace Protocolist.Specimens.Measuring;

/// <summary>A positive number with its range, and how it was come by.</summary>
internal readonly record struct Spread(double Low, double Nominal, double High, bool IsMeasured, string How, string Source)
{
    /// <summary>A reading, good to <paramref name="error"/> of itself either way.</summary>
    public static Spread Measured(double value, double error, string how = "measured") =>
        new(value * (1 - error), value, value * (1 + error), true, how, "the specimen's own measurement");

    /// <summary>A reckoned value, good within a factor either way.</summary>
    public static Spread Within(double value, double factor, string how, string source) =>
        new(value / factor, value, value * factor, false, how, source);

    /// <summary>This through a function that grows with its argument.</summary>
    public Spread Rising(Func<double, double> f, string how, string source) =>
        new(f(Low), f(Nominal), f(High), false, how, source);

    /// <summary>This, its range widened by a factor either way.</summary>
    public Spread Widened(double factor) => this with { Low = Low / factor, High = High * factor };

    public Spread Times(double factor) => this with { Low = Low * factor, Nominal = Nominal * factor, High = High * factor };

    public Estimate<Mass> Grams() => As(g => Mass.FromGrams(g));

    public Estimate<Volume> Millilitres() => As(v => Volume.FromMilliliters(v));

    public Estimate<Length> Millimetres() => As(l => Length.FromMillimeters(l));

    public Estimate<Area> SquareCentimetres() => As(a => Area.FromSquareCentimeters(a));

    private Estimate<T> As<T>(Func<double, T> make)
        where T : struct =>
        new(make(Low), make(Nominal), make(High), IsMeasured, How, Source);
}
