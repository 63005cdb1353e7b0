using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using Protocolist.Findings;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Plans;

/// <summary>A stage of the protocol made concrete for this specimen.</summary>
public sealed record Step
{
    private readonly ValueList<InjectionSite> _sites = [];
    private readonly ValueList<PlannedCut> _cuts = [];
    private readonly ValueList<Message> _lookFor = [];
    private readonly ValueList<OffsetDateTime> _inspections = [];
    private readonly ValueList<OffsetDateTime> _changesAt = [];
    private readonly ValueList<StepMaterial> _materials = [];
    private readonly ValueList<Message> _cautions = [];
    private readonly ValueList<string> _figures = [];
    private readonly ValueList<Message> _because = [];

    /// <summary>Its id, the stage's own; unique in the plan.</summary>
    public required string Id { get; init; }

    /// <summary>The kind of stage.</summary>
    [JsonPropertyName("stage")]
    [JsonConverter(typeof(StageKindJson))]
    public required StageKind Kind { get; init; }

    /// <summary>What it is called.</summary>
    public required Message Title { get; init; }

    /// <summary>When it begins; null where no time could be found.</summary>
    [JsonConverter(typeof(OffsetDateTimeJson))]
    public OffsetDateTime? Start { get; init; }

    /// <summary>When it ends; null where no time could be found.</summary>
    [JsonConverter(typeof(OffsetDateTimeJson))]
    public OffsetDateTime? End { get; init; }

    /// <summary>The shortest time it may last; elapsed time, whatever the clocks do.</summary>
    [JsonPropertyName("leastHours")]
    [JsonConverter(typeof(DurationInHours))]
    public Duration Least { get; init; }

    /// <summary>The longest time it may last; null where there is no limit.</summary>
    [JsonPropertyName("mostHours")]
    [JsonConverter(typeof(DurationInHours))]
    public Duration? Most { get; init; }

    /// <summary>How long somebody is busy with it.</summary>
    [JsonPropertyName("handsOnMinutes")]
    [JsonConverter(typeof(DurationInMinutes))]
    public Duration HandsOn { get; init; }

    /// <summary>The fluid's name, where there is one.</summary>
    public string? Fluid { get; init; }

    /// <summary>How much of it.</summary>
    [JsonPropertyName("volumeMl")]
    [JsonConverter(typeof(VolumeInMillilitres))]
    public Volume? Volume { get; init; }

    /// <summary>How many times the fluid is replaced while the step lasts.</summary>
    public int Changes { get; init; }

    /// <summary>When the fluid is replaced, on open days; fewer moments than changes where the bench is not open for all.</summary>
    [JsonConverter(typeof(OffsetDateTimesJson))]
    public ImmutableArray<OffsetDateTime> ChangesAt { get => _changesAt; init => _changesAt = value; }

    /// <summary>How long somebody is busy with one change, mixing apart; nothing where there is none.</summary>
    [JsonPropertyName("changeMinutes")]
    [JsonConverter(typeof(DurationInMinutes))]
    public Duration Change { get; init; }

    /// <summary>The vessel's name, where there is one.</summary>
    public string? Vessel { get; init; }

    /// <summary>Where and how much to inject.</summary>
    public ImmutableArray<InjectionSite> Sites { get => _sites; init => _sites = value; }

    /// <summary>Where and how to cut.</summary>
    public ImmutableArray<PlannedCut> Cuts { get => _cuts; init => _cuts = value; }

    /// <summary>What to do, sentence by sentence: the protocol's own words and this specimen's numbers.</summary>
    public ImmutableArray<Message> Instructions
    {
        get => Telling.Sentences;
        init => Telling = new WrittenTelling(value);
    }

    /// <summary>What to look at, and what each sign calls for.</summary>
    public ImmutableArray<Message> LookFor { get => _lookFor; init => _lookFor = value; }

    /// <summary>When to look, on open days.</summary>
    [JsonConverter(typeof(OffsetDateTimesJson))]
    public ImmutableArray<OffsetDateTime> Inspections { get => _inspections; init => _inspections = value; }

    /// <summary>How long one look takes; nothing where there is none.</summary>
    [JsonPropertyName("lookMinutes")]
    [JsonConverter(typeof(DurationInMinutes))]
    public Duration Look { get; init; }

    /// <summary>What it needs.</summary>
    public ImmutableArray<StepMaterial> Materials { get => _materials; init => _materials = value; }

    /// <summary>What can hurt a person or the specimen here.</summary>
    public ImmutableArray<Message> Cautions { get => _cautions; init => _cautions = value; }

    /// <summary>The ids of the figures behind its numbers.</summary>
    public ImmutableArray<string> Figures { get => _figures; init => _figures = value; }

    /// <summary>Where the protocol has it from; empty where it does not say.</summary>
    public string Source { get; init; } = "";

    /// <summary>How far it is by the log.</summary>
    public StepState State { get; init; }

    /// <summary>Why it is there or as it is, where a log called for it, or why it was left out; else empty.</summary>
    public ImmutableArray<Message> Because { get => _because; init => _because = value; }

    /// <summary>How many times a revision has changed it: the SEQUENCE of its calendar event.</summary>
    public int Sequence { get; init; }

    /// <summary>The most inspections that any revision planned for it, so that a calendar can take back what is no longer needed.</summary>
    public int MostInspections { get; init; }

    /// <summary>The most dated changes of fluid that any revision planned for it, likewise.</summary>
    public int MostChanges { get; init; }

    /// <summary>What is done, to be put into sentences when somebody reads.</summary>
    internal Telling Telling { get; init; } = WrittenTelling.Nothing;
}

/// <summary>How far a step is by the log.</summary>
public enum StepState
{
    /// <summary>Still to be done.</summary>
    Planned,

    /// <summary>Under way.</summary>
    Begun,

    /// <summary>Over.</summary>
    Done,

    /// <summary>Left out.</summary>
    Skipped,
}

/// <summary>Injection into one region of the body.</summary>
/// <param name="Region">The region, as the catalogue of its group names it; what a protocol names otherwise is the protocol's own word.</param>
/// <param name="Sites">How many places.</param>
/// <param name="PerSiteLow">Least at one place.</param>
/// <param name="PerSite">What to inject at one place.</param>
/// <param name="PerSiteHigh">Most at one place.</param>
/// <param name="Total">In the whole region.</param>
/// <param name="SyringeMl">Size of the syringe, mL.</param>
/// <param name="NeedleGauge">Gauge of the needle; a lower number is a thicker one.</param>
/// <param name="NeedleMm">Length of the needle, mm.</param>
public sealed record InjectionSite(
    Message Region,
    int Sites,
    [property: JsonPropertyName("perSiteLowMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume PerSiteLow,
    [property: JsonPropertyName("perSiteMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume PerSite,
    [property: JsonPropertyName("perSiteHighMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume PerSiteHigh,
    [property: JsonPropertyName("totalMl"), JsonConverter(typeof(VolumeInMillilitres))] Volume Total,
    int SyringeMl,
    int NeedleGauge,
    int NeedleMm)
{
    private static readonly Phrase SyringeAndNeedle = new("injection-tool", "{syringe} mL syringe, {gauge} G needle of {length} mm");

    /// <summary>Syringe and needle in words.</summary>
    public Message Tool => SyringeAndNeedle.With(("syringe", SyringeMl), ("gauge", NeedleGauge), ("length", NeedleMm));

    /// <summary>Where in the region the needle goes in.</summary>
    public Message At { get; init; }
}

/// <summary>Cuts in one region of the body.</summary>
/// <param name="Region">The region, as the catalogue of its group names it; what a protocol names otherwise is the protocol's own word.</param>
/// <param name="Count">How many.</param>
/// <param name="Length">Length of one.</param>
/// <param name="Depth">How deep; through a wall, its thickness; null where nothing is cut through.</param>
/// <param name="Spacing">Distance from one to the next; null where there is one.</param>
/// <param name="Side">On which side, so that the other stays whole.</param>
public sealed record PlannedCut(
    Message Region,
    int Count,
    [property: JsonPropertyName("lengthMm"), JsonConverter(typeof(LengthInMillimetres))] Length? Length,
    [property: JsonPropertyName("depthMm"), JsonConverter(typeof(LengthInMillimetres))] Length? Depth,
    [property: JsonPropertyName("spacingMm"), JsonConverter(typeof(LengthInMillimetres))] Length? Spacing,
    string Side)
{
    /// <summary>Whether it opens a cavity: through the wall, and no deeper.</summary>
    public bool IsThroughWall { get; init; }

    /// <summary>Whether the part is too short for the length that the protocol gives: no cut is longer than a third of its part.</summary>
    public bool IsShortened { get; init; }
}
