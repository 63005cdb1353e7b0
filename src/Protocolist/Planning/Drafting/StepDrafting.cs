using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

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
    /// <summary>Denser than any fluid that a body is laid in: what is denser still sinks in all of them.</summary>
    private const double DensestFluidKgPerM3 = 1100;
    private const double FilledAtC = 20;

    /// <summary>Less than 5 g of glass is not weighed out: a plate or a piece of gauze does. Judgement.</summary>
    private const double LeastGlassKg = 0.005;

    private readonly StageValues values = new(stage, values);

    public PreparedStage Stage => stage;

    public BodyMeasure Body => body;

    public FormulaInputs Inputs => inputs;

    public List<Finding> Findings => findings;

    /// <summary>The step; null where this body leaves nothing of it to do.</summary>
    public DraftStep? Step()
    {
        if (Work() is not { } done) return null;
        var fluid = Fluid();
        if (stage.Kind == StageKind.Immerse && done is SoakWork soak && AfloatIn(fluid) is { } afloat) done = soak with { Afloat = afloat };
        return new DraftStep(stage)
        {
            Figures = stage.FigureIds,
            Terms = WorkMinutes.Of(stage.Terms ?? values.Terms(inputs), stage, done, body),
            Fluid = fluid,
            Work = done,
            Volume = done is InjectWork { Plan: not null } injections ? injections.InAll : null,
        };
    }

    public QuantityRange? Quantity(StageKey key) => values.Quantity(key);

    public string Word(StageKey key) => values.Word(key);

    /// <summary>A length that is a length: finite, not below nothing.</summary>
    public QuantityRange? Length(StageKey key) => Quantity(key) is { IsFinite: true, Low: >= 0 } length ? length : null;

    /// <summary>The part of the stage that its kind alone has.</summary>
    private StepWork? Work() => stage.Kind switch
    {
        StageKind.Inject => Injecting.Plan(this),
        StageKind.Slit => Cutting.Plan(this),
        StageKind.Immerse or StageKind.Bath or StageKind.Wash or StageKind.Rinse or StageKind.Thaw => Word(StageKey.Running) == "yes"
            ? SoakWork.Running
            : SoakWork.Standing,
        StageKind.Hold => new HoldWork(Quantity(StageKey.Temperature)),
        StageKind.House => new HouseWork(Length(StageKey.BelowBrim), Length(StageKey.OverSpecimen)),
        StageKind.Sample => new SampleWork(stage.Covers.HasFlag(Coverage.Tissue) ? TissueSample.Of(body) : null),
        StageKind.Pose => stage.How.IsEmpty ? PoseWork.Untold : PoseWork.Told,
        StageKind.Mount => new MountWork(Support.Find(Word(StageKey.On))),
        StageKind.Seal => new SealWork(Sealing.Find(Word(StageKey.Closure)), Quantity(StageKey.Renew)),
        StageKind.Label => new LabelWork(stage.Fields, LabelMedium.Find(Word(StageKey.WrittenWith))),
        StageKind.Discard => new DiscardWork(stage.Of, SpentTo.Find(Word(StageKey.To))),
        StageKind.Inspect or StageKind.TopUp => new CareWork(Quantity(StageKey.After), Quantity(StageKey.Every)),
        _ => PlainWork.Instance,
    };

    /// <summary>Whether the body floats where it is fixed: what stands out is not reached.</summary>
    private Afloat? AfloatIn(Fluid? fluid)
    {
        var floating = Floating.Of(body);
        if (fluid is null || !floating.MayFloatIn(DensestFluidKgPerM3)) return null;
        var density = fluid.DensityAt(FilledAtC);
        if (!floating.MayFloatIn(density)) return null;
        var surely = floating.FloatsIn(density);
        var own = surely ? floating.NominalKgPerM3 : floating.LowKgPerM3;
        var glass = Floating.GlassKg(body.Mass.Nominal.Kilograms * body.Count, own, density);
        return new(surely, own, density, glass, surely && body.Count == 1 && glass >= LeastGlassKg && BodyKind.Of(body).Allows(Gestures.Tie));
    }

    private Fluid? Fluid()
    {
        if (stage.PlaceOf(StageKey.Fluid) is not (>= 0 and var place)) return null;
        var read = protocol.FluidOf(Word(StageKey.Fluid), stage.Settings[place].Expression.Span);
        foreach (var finding in read.Findings) findings.Add(finding with { Subject = stage.Id });
        return read.Value;
    }
}
