using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning;

/// <summary>One stage made concrete.</summary>
internal static class StepDraft
{
    /// <summary>A century: what no step outlasts, and what keeps every sum of times within the calendar.</summary>
    private const double LongestSeconds = 100 * 365.25 * 86400;

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
            Work = WorkOf(stage, body, inputs, findings),
        };
        return step.Work is InjectWork { Plan: { } injections } ? step with { Volume = Volume.FromMilliliters(injections.TotalMl * body.Count) } : step;
    }

    /// <summary>The part of the stage that its kind alone has.</summary>
    private static StepWork WorkOf(StageDefinition stage, BodyMeasure body, PlanInputs inputs, List<Finding> findings) => stage.Kind switch
    {
        StageKind.Inject => Injection.Plan(stage, body, inputs, findings),
        StageKind.Slit => Cutting.Plan(stage, body, inputs, findings),
        StageKind.Immerse or StageKind.Bath or StageKind.Wash or StageKind.Rinse or StageKind.Thaw => new SoakWork(Word(stage, "running", inputs) == "yes"),
        StageKind.Hold => new HoldWork(Quantity(stage, "temperature", inputs)),
        StageKind.House => new HouseWork(LengthOf(stage, "below-brim", inputs), LengthOf(stage, "over-specimen", inputs)),
        StageKind.Mount => new MountWork(Word(stage, "on", inputs)),
        StageKind.Seal => new SealWork(Word(stage, "closure", inputs), Quantity(stage, "renew", inputs)),
        StageKind.Label => new LabelWork(stage.Texts("fields"), Word(stage, "written-with", inputs)),
        StageKind.Discard => new DiscardWork(stage.Text("of") ?? "", Word(stage, "to", inputs)),
        StageKind.Inspect or StageKind.TopUp => new CareWork(Quantity(stage, "after", inputs), Quantity(stage, "every", inputs)),
        _ => PlainWork.Instance,
    };

    private static string Word(StageDefinition stage, string key, PlanInputs inputs) => stage.Expression(key)?.Evaluate(inputs.AsFormulaInputs()).ToString() ?? "";

    private static QuantityRange? LengthOf(StageDefinition stage, string key, PlanInputs inputs) =>
        Quantity(stage, key, inputs) is { IsFinite: true, Low: >= 0 } length ? length : null;

    public static QuantityRange? Quantity(StageDefinition stage, string key, PlanInputs inputs) =>
        stage.Expression(key)?.Evaluate(inputs.AsFormulaInputs()) is { Kind: FormulaKind.Quantity } value ? value.Quantity : null;

    private static Fluid? FluidOf(StageDefinition stage, PlanInputs inputs, List<Finding> findings)
    {
        if (stage.Expression("fluid") is not { } expression) return null;
        var read = Fluid.Read(expression.Evaluate(inputs.AsFormulaInputs()).Word, expression.Span);
        findings.AddRange(read.Findings.Select(f => f with { Subject = stage.Id }));
        return read.Value;
    }

    private static QuantityRange? TimeOf(StageDefinition stage, string key, PlanInputs inputs) => Quantity(stage, key, inputs);

    private static Duration Least(QuantityRange time) => Duration.FromSeconds(Math.Clamp(time.Low, 0, LongestSeconds));

    private static Duration? Most(QuantityRange time) =>
        double.IsPositiveInfinity(time.High) ? null : Duration.FromSeconds(Math.Clamp(time.High, 0, LongestSeconds));

    public static int Whole(QuantityRange number) => (int)Math.Clamp(Math.Round(number.Middle), 0, 1000);
}
