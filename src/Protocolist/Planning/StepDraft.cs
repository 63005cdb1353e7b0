using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning;

/// <summary>One stage made concrete.</summary>
internal static class StepDraft
{
    /// <summary>A century: what no step outlasts, and what keeps every sum of times within the calendar.</summary>
    private const double LongestSeconds = 100 * 365.25 * 86400;

    /// <summary>Settings that go into the instructions as they are.</summary>
    private static readonly string[] Told = ["temperature", "below-brim", "over-specimen", "closure", "on", "running", "renew", "every", "after", "to", "side"];

    public static DraftStep Of(StageDefinition stage, BodyMeasure body, PlanInputs inputs, List<Finding> findings)
    {
        var handsOn = TimeOf(stage, "hands-on", inputs) is { } work ? Least(work) : StageDefaults.HandsOn(stage.Kind);
        var last = TimeOf(stage, "last", inputs);
        var within = TimeOf(stage, "within", inputs);
        var wait = TimeOf(stage, "wait", inputs);
        var fluid = FluidOf(stage, inputs, findings);
        var step = new DraftStep(stage)
        {
            Least = last is { } l ? Duration.Max(Least(l), Duration.Zero) : handsOn,
            Most = last is { } m ? Most(m) : handsOn,
            HandsOn = handsOn,
            WaitLeast = wait is { } w ? Least(w) : Duration.Zero,
            WaitMost = within is { } x ? Most(x) : StageDefaults.Within(stage.Kind),
            SinceDeath = TimeOf(stage, "since-death", inputs) is { } death ? Most(death) : null,
            SinceCollection = TimeOf(stage, "since-collection", inputs) is { } collection ? Most(collection) : null,
            Fluid = fluid,
            Ratio = Quantity(stage, "ratio", inputs),
            Changes = Quantity(stage, "changes", inputs) is { } changes ? Whole(changes) : 0,
            Watch = stage.Find("watch") is WatchSetting watch ? (Least(watch.Every.Evaluate(inputs.AsFormulaInputs()).Quantity), watch.Signs) : null,
            Details = DetailsOf(stage, inputs),
            Lengths = LengthsOf(stage, inputs),
            Every = Quantity(stage, "every", inputs),
        };
        return stage.Kind switch
        {
            StageKind.Inject => Injection.Plan(step, body, inputs, findings),
            StageKind.Slit => Cutting.Plan(step, body, inputs, findings),
            _ => step,
        };
    }

    public static QuantityRange? Quantity(StageDefinition stage, string key, PlanInputs inputs) =>
        stage.Expression(key)?.Evaluate(inputs.AsFormulaInputs()) is { Kind: FormulaKind.Quantity } value ? value.Quantity : null;

    private static Fluid? FluidOf(StageDefinition stage, PlanInputs inputs, List<Finding> findings)
    {
        if (stage.Expression("fluid") is not { } expression) return null;
        var read = Fluid.Read(expression.Evaluate(inputs.AsFormulaInputs()).Word, expression.Span);
        findings.AddRange(read.Findings.Select(f => f with { Subject = stage.Id }));
        return read.Value;
    }

    private static ImmutableSortedDictionary<string, string> DetailsOf(StageDefinition stage, PlanInputs inputs)
    {
        var details = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var key in Told)
        {
            if (stage.Expression(key) is { } expression) details[key] = expression.Evaluate(inputs.AsFormulaInputs()).ToString();
        }

        return details.ToImmutable();
    }

    private static ImmutableSortedDictionary<string, QuantityRange> LengthsOf(StageDefinition stage, PlanInputs inputs)
    {
        var lengths = ImmutableSortedDictionary.CreateBuilder<string, QuantityRange>(StringComparer.Ordinal);
        foreach (var key in (ReadOnlySpan<string>)["below-brim", "over-specimen"])
        {
            if (Quantity(stage, key, inputs) is { IsFinite: true, Low: >= 0 } length) lengths[key] = length;
        }

        return lengths.ToImmutable();
    }

    private static QuantityRange? TimeOf(StageDefinition stage, string key, PlanInputs inputs) => Quantity(stage, key, inputs);

    private static Duration Least(QuantityRange time) => Duration.FromSeconds(Math.Clamp(time.Low, 0, LongestSeconds));

    private static Duration? Most(QuantityRange time) =>
        double.IsPositiveInfinity(time.High) ? null : Duration.FromSeconds(Math.Clamp(time.High, 0, LongestSeconds));

    public static int Whole(QuantityRange number) => (int)Math.Clamp(Math.Round(number.Middle), 0, 1000);
}
