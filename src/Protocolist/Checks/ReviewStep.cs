using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Vessels;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks;

/// <summary>One step with the fluid and the vessel as objects.</summary>
/// <param name="Step">The step as it stands on the plan.</param>
/// <param name="Kind">The kind of stage.</param>
/// <param name="Fluid">The fluid, where there is one.</param>
internal sealed record ReviewStep(Step Step, StageKind Kind, Fluid? Fluid)
{
    /// <summary>How long it lasts: as dated, else the least that its protocol asks.</summary>
    public Duration Lasts => Step is { Start: { } start, End: { } end } ? end.ToInstant() - start.ToInstant() : Step.Least;

    /// <summary>How much of the fluid, as it was reckoned: a limit is not to be passed because the plan rounds.</summary>
    public Volume? Volume { get; init; }

    /// <summary>How its vessel is filled; null where it has none.</summary>
    public FittedVessel? Vessel { get; init; }

    /// <summary>Where no vessel fits: every reason against those at hand.</summary>
    public ImmutableArray<Finding> VesselReasons { get; init; } = [];

    /// <summary>Where no vessel fits: what would.</summary>
    public Message VesselAdvice { get; init; }

    /// <summary>What is done, with its facts.</summary>
    public StepWork Work { get; init; } = PlainWork.Instance;

    /// <summary>What its stage declares to see to besides.</summary>
    public Coverage Covers { get; init; }

    /// <summary>How often it is looked at; null where its protocol does not say.</summary>
    public Duration? WatchEvery { get; init; }

    public string Id => Step.Id;

    /// <summary>Volume of fluid over the volume of the body, one filling; null where there is no volume.</summary>
    public double? RatioTo(Volume body) => Vessel?.Ratio ?? (Volume is { } volume && body > UnitsNet.Volume.Zero ? volume / body : null);

    /// <summary>What the protocol closes the vessel with; null where it does not say.</summary>
    public Sealing? Sealing => (Work as SealWork)?.With;
}
