using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Drafting;

/// <summary>What really happened: begun, and over.</summary>
internal sealed record Progress(Instant? Begun, Instant? Ended);

/// <summary>Work on a body that goes on soaking.</summary>
/// <param name="Soak">The id of the soak.</param>
/// <param name="SoaksOn">How long the soak goes on at the least afterwards.</param>
internal sealed record DuringSoak(string Soak, Duration SoaksOn)
{
    /// <summary>Whether it is one of the changes of the soak's fluid.</summary>
    public bool IsChange { get; init; }
}

/// <summary>When a step may begin.</summary>
/// <param name="WaitLeast">The shortest wait after the step before.</param>
/// <param name="WaitMost">The longest; null where the protocol does not say.</param>
/// <param name="SinceDeath">The longest time after death; null where the protocol does not say.</param>
/// <param name="SinceCollection">The longest time after the animal was found or taken; null where the protocol does not say.</param>
internal sealed record StepLimits(Duration WaitLeast, Duration? WaitMost, Duration? SinceDeath, Duration? SinceCollection)
{
    public static StepLimits None { get; } = new(Duration.Zero, null, null, null);

    /// <summary>The day on which a person wants it to begin; null where nobody does.</summary>
    public LocalDate? On { get; init; }
}

/// <summary>What a protocol asks of a step for one specimen.</summary>
internal sealed record StepTerms
{
    public static StepTerms None { get; } = new();

    public Duration Least { get; init; }

    public Duration? Most { get; init; }

    /// <summary>The shortest that the protocol has, where the planner takes more for the sake of the core; null where it does not.</summary>
    public Duration? Shortest { get; init; }

    public Duration HandsOn { get; init; }

    public StepLimits Limits { get; init; } = StepLimits.None;

    public QuantityRange? Ratio { get; init; }

    /// <summary>The id of the figure that the ratio is; a step that a log called for has its host's.</summary>
    public string RatioId { get; init; } = "";

    public int Changes { get; init; }

    public (Duration Every, ImmutableArray<(Sign Sign, Remedy Remedy)> Signs)? Watch { get; init; }
}

/// <summary>One step in the making.</summary>
internal sealed record DraftStep(PreparedStage Stage)
{
    /// <summary>A step of a stage that no protocol has.</summary>
    public DraftStep(StageDefinition stage)
        : this(PreparedStage.From(stage))
    {
    }

    public string Id => Stage.Id;

    public StageKind Kind => Stage.Kind;

    /// <summary>What it is called: the protocol's words, or those of a remedy.</summary>
    public Message Title
    {
        get => Logged.Title ?? Stage.Title;
        init => Logged = Logged with { Title = value };
    }

    /// <summary>How it is done, in the protocol's words or those of a remedy; empty where neither says more than the work itself.</summary>
    public Message How
    {
        get => Logged.How ?? Stage.How;
        init => Logged = Logged with { How = value };
    }

    /// <summary>What the protocol asks of this specimen; kept together, because a step is copied often and this seldom changes.</summary>
    public StepTerms Terms { get; init; } = StepTerms.None;

    public Duration Least
    {
        get => Terms.Least;
        init => Terms = Terms with { Least = value };
    }

    public Duration? Most
    {
        get => Terms.Most;
        init => Terms = Terms with { Most = value };
    }

    public Duration HandsOn
    {
        get => Terms.HandsOn;
        init => Terms = Terms with { HandsOn = value };
    }

    /// <summary>When it may begin.</summary>
    public StepLimits Limits => Terms.Limits;

    public Fluid? Fluid { get; init; }

    /// <summary>Wanted volume of fluid for each volume of specimen.</summary>
    public QuantityRange? Ratio => Terms.Ratio;

    public string RatioId => Terms.RatioId;

    public int Changes
    {
        get => Terms.Changes;
        init => Terms = Terms with { Changes = value };
    }

    /// <summary>Fluid for one filling, or injected in all; set by injection here, by the vessel later.</summary>
    public Volume? Volume { get; init; }

    /// <summary>The vessel and how it is filled; set when vessels are chosen.</summary>
    public Vessels.FittedVessel? Vessel { get; init; }

    /// <summary>What is done, by its kind.</summary>
    public StepWork Work { get; init; } = PlainWork.Instance;

    public ImmutableArray<InjectionSite> Sites => Work is InjectWork inject ? inject.Sites : [];

    public ImmutableArray<PlannedCut> Cuts => Work is CutWork cut ? cut.Cuts : [];

    public (Duration Every, ImmutableArray<(Sign Sign, Remedy Remedy)> Signs)? Watch
    {
        get => Terms.Watch;
        init => Terms = Terms with { Watch = value };
    }

    /// <summary>Why no vessel at hand will do, and what would; set where none fits.</summary>
    public VesselOutcome? NoVessel { get; init; }

    public ImmutableArray<string> Figures { get; init; } = [];

    /// <summary>When it is done; set by the schedule.</summary>
    public Interval? When { get; init; }

    /// <summary>When somebody looks; set by the schedule.</summary>
    public ImmutableArray<Instant> Inspections { get; init; } = [];

    /// <summary>How often somebody has looked already, by the protocol's rhythm; set by the schedule.</summary>
    public int LooksBefore { get; init; }

    /// <summary>When its fluid is changed; set by the schedule.</summary>
    public ImmutableArray<Instant> ChangesAt { get; init; } = [];

    /// <summary>What the log says of it; null where it says nothing.</summary>
    public Progress? Progress
    {
        get => Logged.Progress;
        init => Logged = Logged with { Progress = value };
    }

    /// <summary>Neither earlier, whatever the windows allow: what was seen or read on the way calls for it.</summary>
    public Instant? NotBefore
    {
        get => Logged.NotBefore;
        init => Logged = Logged with { NotBefore = value };
    }

    public Instant? EndNotBefore
    {
        get => Logged.EndNotBefore;
        init => Logged = Logged with { EndNotBefore = value };
    }

    /// <summary>The soak during which it is done; null for a step that has a turn of its own.</summary>
    public DuringSoak? During
    {
        get => Logged.During;
        init => Logged = Logged with { During = value };
    }

    /// <summary>The fluid really used, where the log says; it stands in place of what was planned.</summary>
    public Volume? Used
    {
        get => Logged.Used;
        init => Logged = Logged with { Used = value };
    }

    /// <summary>Why it differs from the protocol's plan; empty where it does not.</summary>
    public ImmutableArray<Message> Because { get; init; } = [];

    /// <summary>The same step with one more reason for what is different about it.</summary>
    public DraftStep BecauseOf(Message reason) => Because.Contains(reason) ? this : this with { Because = Because.Add(reason) };

    /// <summary>How often somebody looks while it lasts.</summary>
    public int Looks => LooksBefore + Inspections.Length;

    /// <summary>Whether the specimen lies in its fluid while the step lasts.</summary>
    public bool IsSoak => Kind is StageKind.Immerse or StageKind.Wash or StageKind.Bath or StageKind.Rinse or StageKind.Thaw;

    /// <summary>Whether it comes after sealing and belongs to the care round rather than to the work.</summary>
    public bool IsCare => Kind is StageKind.Inspect or StageKind.TopUp;

    public SourceSpan Span => Stage.Span;

    /// <summary>What comes of a log, kept together: a step is copied often, and most are of plans that nobody has begun.</summary>
    private StepLog Logged { get; init; } = StepLog.Nothing;

    private sealed record StepLog(Message? Title, Message? How, Progress? Progress, Instant? NotBefore, Instant? EndNotBefore, DuringSoak? During, Volume? Used)
    {
        public static StepLog Nothing { get; } = new(null, null, null, null, null, null, null);
    }
}
