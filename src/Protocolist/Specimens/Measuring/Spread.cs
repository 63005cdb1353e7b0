using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Specimens.Measuring;

/// <summary>A positive number with its range, and how it was come by.</summary>
internal readonly record struct Spread(double Low, double Nominal, double High, bool IsMeasured, Message How, string Source)
{
    public const string OwnMeasurement = "the specimen's own measurement";

    private static readonly Phrase Direct = new("how.measured", "measured");

    /// <summary>A reading, good to <paramref name="error"/> of itself either way.</summary>
    public static Spread Measured(double value, double error) => Measured(value, error, Direct);

    /// <summary>A reading of something that this follows from at once.</summary>
    public static Spread Measured(double value, double error, Phrase how) => new(value * (1 - error), value, value * (1 + error), true, how, OwnMeasurement);

    /// <summary>The mean of a lot: no animal is lighter by more than the reading, and the largest heavier by <paramref name="upTo"/>.</summary>
    public static Spread MeanOf(double value, double error, double upTo, bool isMeasured, Phrase how) =>
        new(value * (1 - error), value, value * upTo, isMeasured, how, OwnMeasurement);

    /// <summary>An estimate, good within a factor either way.</summary>
    public static Spread Within(double value, double factor, Phrase how, string source) => new(value / factor, value, value * factor, false, how, source);

    /// <summary>This, its range widened by a factor either way.</summary>
    public Spread Widened(double factor) => this with { Low = Low / factor, High = High * factor };

    public Spread Times(double factor) => this with { Low = Low * factor, Nominal = Nominal * factor, High = High * factor };

    /// <summary>This times a number that is no measurement.</summary>
    public Spread Estimated(double factor) => this with { Low = Low * factor, Nominal = Nominal * factor, High = High * factor, IsMeasured = false };

    /// <summary>A share of the whole, for a reason of its own.</summary>
    public Spread Share(double share, Phrase how, string source) => new(Low * share, Nominal * share, High * share, false, how, source);

    public Estimate<Mass> Grams() => new(Mass.FromGrams(Low), Mass.FromGrams(Nominal), Mass.FromGrams(High), IsMeasured, How, Source);

    public Estimate<Volume> Millilitres() =>
        new(Volume.FromMilliliters(Low), Volume.FromMilliliters(Nominal), Volume.FromMilliliters(High), IsMeasured, How, Source);

    public Estimate<Length> Millimetres() =>
        new(Length.FromMillimeters(Low), Length.FromMillimeters(Nominal), Length.FromMillimeters(High), IsMeasured, How, Source);
}
