using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Vessels;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Plans;

/// <summary>A stage of the protocol made concrete for this specimen.</summary>
public sealed record Step
{
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

    /// <summary>The vessel's name, where there is one.</summary>
    public string? Vessel { get; init; }

    /// <summary>Where and how much to inject.</summary>
    public ImmutableArray<InjectionSite> Sites { get; init; } = [];

    /// <summary>Where and how to cut.</summary>
    public ImmutableArray<PlannedCut> Cuts { get; init; } = [];

    /// <summary>What to do, sentence by sentence: the protocol's own words and this specimen's numbers.</summary>
    public ImmutableArray<Message> Instructions
    {
        get => Work is WrittenWork written ? written.Sentences : [.. How.IsEmpty ? [] : (Message[])[How], .. Work.Instructions(Facts), .. Note.IsEmpty ? [] : (Message[])[Note]];
        init => Work = new WrittenWork(value);
    }

    /// <summary>What to look at, and what each sign calls for.</summary>
    public ImmutableArray<Message> LookFor { get; init; } = [];

    /// <summary>When to look, on open days.</summary>
    [JsonConverter(typeof(OffsetDateTimesJson))]
    public ImmutableArray<OffsetDateTime> Inspections { get; init; } = [];

    /// <summary>What it needs.</summary>
    public ImmutableArray<StepMaterial> Materials { get; init; } = [];

    /// <summary>What can hurt a person or the specimen here.</summary>
    public ImmutableArray<Message> Cautions { get; init; } = [];

    /// <summary>The ids of the figures behind its numbers.</summary>
    public ImmutableArray<string> Figures { get; init; } = [];

    /// <summary>Where the protocol has it from; empty where it does not say.</summary>
    public string Source { get; init; } = "";

    /// <summary>How far it is by the log.</summary>
    public StepState State { get; init; }

    /// <summary>Why it is there or as it is, where a log called for it, or why it was left out; else empty.</summary>
    public ImmutableArray<Message> Because { get; init; } = [];

    /// <summary>How many times a revision has changed it: the SEQUENCE of its calendar event.</summary>
    public int Sequence { get; init; }

    /// <summary>The most inspections that any revision planned for it, so that a calendar can take back what is no longer needed.</summary>
    public int MostInspections { get; init; }

    /// <summary>What is done, with its facts.</summary>
    internal StepWork Work { get; init; } = PlainWork.Instance;

    /// <summary>The protocol's own words on how it is done.</summary>
    internal Message How { get; init; }

    /// <summary>The protocol's own remark.</summary>
    internal Message Note { get; init; }

    /// <summary>How its vessel is filled; null where it has none.</summary>
    internal FittedVessel? Fitted { get; init; }

    /// <summary>The fluid as a substance; null where there is none, or the plan was read.</summary>
    internal Fluid? Liquid { get; init; }

    private StepFacts Facts => new(Kind, Liquid, Volume, Changes, Fitted);
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
/// <param name="Region">The region.</param>
/// <param name="Sites">How many places.</param>
/// <param name="PerSiteLow">Least at one place.</param>
/// <param name="PerSite">What to inject at one place.</param>
/// <param name="PerSiteHigh">Most at one place.</param>
/// <param name="Total">In the whole region.</param>
/// <param name="SyringeMl">Size of the syringe, mL.</param>
/// <param name="NeedleGauge">Gauge of the needle; a lower number is a thicker one.</param>
/// <param name="NeedleMm">Length of the needle, mm.</param>
public sealed record InjectionSite(
    string Region,
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
    public string At { get; init; } = "";
}

/// <summary>Cuts in one region of the body.</summary>
/// <param name="Region">The region.</param>
/// <param name="Count">How many; 0 where the spacing decides.</param>
/// <param name="Length">Length of one.</param>
/// <param name="Depth">How deep; null where the protocol does not say.</param>
/// <param name="Spacing">Distance from one to the next; null where there is one.</param>
/// <param name="Side">On which side, so that the other stays whole.</param>
public sealed record PlannedCut(
    string Region,
    int Count,
    [property: JsonPropertyName("lengthMm"), JsonConverter(typeof(LengthInMillimetres))] Length? Length,
    [property: JsonPropertyName("depthMm"), JsonConverter(typeof(LengthInMillimetres))] Length? Depth,
    [property: JsonPropertyName("spacingMm"), JsonConverter(typeof(LengthInMillimetres))] Length? Spacing,
    string Side);
