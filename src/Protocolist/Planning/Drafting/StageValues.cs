using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Quantities;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Drafting;

/// <summary>The values of a stage's settings.</summary>
/// <param name="stage">The stage.</param>
/// <param name="figures">The figures of its settings, in their order; null for one that is not known.</param>
internal readonly ref struct StageValues(PreparedStage stage, ReadOnlySpan<Figure?> figures)
{
    /// <summary>A century: what no step outlasts, and what keeps every sum of times within the calendar.</summary>
    private const double LongestSeconds = 100 * 365.25 * 86400;

    private readonly ReadOnlySpan<Figure?> figures = figures;

    public QuantityRange? Quantity(StageKey key) => stage.PlaceOf(key) is >= 0 and var place ? figures[place]?.Quantity : null;

    public string Word(StageKey key) => stage.PlaceOf(key) is >= 0 and var place ? figures[place]?.Answer.Word ?? "" : "";

    public static int Whole(QuantityRange number) => (int)Math.Clamp(Math.Round(number.Middle), 0, 1000);

    /// <summary>What the stage asks of a step.</summary>
    /// <param name="inputs">For the rhythm of looking, which is no figure.</param>
    public StepTerms Terms(FormulaInputs inputs)
    {
        var handsOn = Quantity(StageKey.HandsOn) is { } work ? Least(work) : StageDefaults.HandsOn(stage.Kind);
        var last = Quantity(StageKey.Last);
        return new()
        {
            Least = last is { } l ? Duration.Max(Least(l), Duration.Zero) : handsOn,
            Most = last is { } m ? Most(m) : handsOn,
            HandsOn = handsOn,
            Limits = Limits(),
            Ratio = Quantity(StageKey.Ratio),
            RatioId = stage.Has(StageKey.Ratio) ? stage.Settings[stage.PlaceOf(StageKey.Ratio)].Origin.Id : "",
            Changes = Quantity(StageKey.Changes) is { } changes ? Whole(changes) : 0,
            Watch = stage.Watch is { } watch ? (Least(watch.Every.Evaluate(inputs).Quantity), watch.Signs) : null,
        };
    }

    private StepLimits Limits()
    {
        if (stage.UsualLimits is { } usual) return usual;
        var wait = Quantity(StageKey.Wait) is { } least ? Least(least) : Duration.Zero;
        var within = Quantity(StageKey.Within) is { } most ? Most(most) : StageDefaults.Within(stage.Kind);
        var (death, collection) = (Quantity(StageKey.SinceDeath), Quantity(StageKey.SinceCollection));
        return new(wait, within, death is { } died ? Most(died) : null, collection is { } found ? Most(found) : null);
    }

    private static Duration Least(QuantityRange time) => Duration.FromSeconds(Math.Clamp(time.Low, 0, LongestSeconds));

    private static Duration? Most(QuantityRange time) =>
        double.IsPositiveInfinity(time.High) ? null : Duration.FromSeconds(Math.Clamp(time.High, 0, LongestSeconds));
}
