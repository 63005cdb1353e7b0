using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Drafting;

/// <summary>One stage made concrete. Lives for one step only.</summary>
/// <param name="stage">The stage.</param>
/// <param name="values">The figures of its settings, in their order.</param>
/// <param name="inputs">Values for what stands within other settings: sites, watches.</param>
/// <param name="body">The body.</param>
/// <param name="protocol">The protocol.</param>
/// <param name="findings">Takes what is found.</param>
internal readonly ref struct StepDrafting(
    PreparedStage stage,
    ReadOnlySpan<Figure> values,
    FormulaInputs inputs,
    BodyMeasure body,
    PreparedProtocol protocol,
    List<Finding> findings)
{
    /// <summary>A century: what no step outlasts, and what keeps every sum of times within the calendar.</summary>
    private const double LongestSeconds = 100 * 365.25 * 86400;

    private readonly ReadOnlySpan<Figure> values = values;

    public PreparedStage Stage => stage;

    public BodyMeasure Body => body;

    public FormulaInputs Inputs => inputs;

    public List<Finding> Findings => findings;

    public DraftStep Step()
    {
        var handsOn = Quantity(StageKey.HandsOn) is { } work ? Least(work) : StageDefaults.HandsOn(stage.Kind);
        var last = Quantity(StageKey.Last);
        var done = Work();
        return new DraftStep(stage)
        {
            Figures = stage.FigureIds,
            Terms = new()
            {
                Least = last is { } l ? Duration.Max(Least(l), Duration.Zero) : handsOn,
                Most = last is { } m ? Most(m) : handsOn,
                HandsOn = handsOn,
                Limits = Limits(),
                Ratio = Quantity(StageKey.Ratio),
                Changes = Quantity(StageKey.Changes) is { } changes ? Whole(changes) : 0,
                Watch = stage.Watch is { } watch ? (Least(watch.Every.Evaluate(inputs).Quantity), watch.Signs) : null,
            },
            Fluid = Fluid(),
            Work = done,
            Volume = done is InjectWork { Plan: { } injections } ? Volume.FromMilliliters(injections.TotalMl * body.Count) : null,
        };
    }

    public QuantityRange? Quantity(StageKey key) =>
        stage.PlaceOf(key) is >= 0 and var place ? values[place].Quantity : null;

    public string Word(StageKey key) => stage.PlaceOf(key) is >= 0 and var place ? values[place].Answer.Word ?? "" : "";

    /// <summary>A length that is a length: finite, not below nothing.</summary>
    public QuantityRange? Length(StageKey key) => Quantity(key) is { IsFinite: true, Low: >= 0 } length ? length : null;

    public static int Whole(QuantityRange number) => (int)Math.Clamp(Math.Round(number.Middle), 0, 1000);

    private StepLimits Limits()
    {
        if (stage.UsualLimits is { } usual) return usual;
        var wait = Quantity(StageKey.Wait) is { } least ? Least(least) : Duration.Zero;
        var within = Quantity(StageKey.Within) is { } most ? Most(most) : StageDefaults.Within(stage.Kind);
        var (death, collection) = (Quantity(StageKey.SinceDeath), Quantity(StageKey.SinceCollection));
        return new(wait, within, death is { } died ? Most(died) : null, collection is { } found ? Most(found) : null);
    }

    /// <summary>The part of the stage that its kind alone has.</summary>
    private StepWork Work() => stage.Kind switch
    {
        StageKind.Inject => Injecting.Plan(this),
        StageKind.Slit => Cutting.Plan(this),
        StageKind.Immerse or StageKind.Bath or StageKind.Wash or StageKind.Rinse or StageKind.Thaw => Word(StageKey.Running) == "yes"
            ? SoakWork.Running
            : SoakWork.Standing,
        StageKind.Hold => new HoldWork(Quantity(StageKey.Temperature)),
        StageKind.House => new HouseWork(Length(StageKey.BelowBrim), Length(StageKey.OverSpecimen)),
        StageKind.Mount => new MountWork(Support.Find(Word(StageKey.On))),
        StageKind.Seal => new SealWork(Sealing.Find(Word(StageKey.Closure)), Quantity(StageKey.Renew)),
        StageKind.Label => new LabelWork(stage.Fields, LabelMedium.Find(Word(StageKey.WrittenWith))),
        StageKind.Discard => new DiscardWork(stage.Of, SpentTo.Find(Word(StageKey.To))),
        StageKind.Inspect or StageKind.TopUp => new CareWork(Quantity(StageKey.After), Quantity(StageKey.Every)),
        _ => PlainWork.Instance,
    };

    private Fluid? Fluid()
    {
        if (stage.PlaceOf(StageKey.Fluid) is not (>= 0 and var place)) return null;
        var read = protocol.FluidOf(values[place].Answer.Word, stage.Settings[place].Expression.Span);
        foreach (var finding in read.Findings) findings.Add(finding with { Subject = stage.Id });
        return read.Value;
    }

    private static Duration Least(QuantityRange time) => Duration.FromSeconds(Math.Clamp(time.Low, 0, LongestSeconds));

    private static Duration? Most(QuantityRange time) =>
        double.IsPositiveInfinity(time.High) ? null : Duration.FromSeconds(Math.Clamp(time.High, 0, LongestSeconds));
}
