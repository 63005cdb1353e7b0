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
internal sealed record ReviewStep(Step Step, StageKind Kind, Fluid? Fluid)
{
    /// <summary>How its vessel is filled; null where it has none.</summary>
    public FittedVessel? Vessel { get; init; }

    /// <summary>Where no vessel fits: every reason against those at hand.</summary>
    public ImmutableArray<Finding> VesselReasons { get; init; } = [];

    /// <summary>Where no vessel fits: what would.</summary>
    public string VesselAdvice { get; init; } = "";

    /// <summary>Words of settings that only the instructions use: <c>closure</c>, <c>running</c>, <c>to</c>.</summary>
    public ImmutableSortedDictionary<string, string> Details { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Of a step that does away with a spent fluid, where this bench puts it; null where it says nothing of its own.</summary>
    public PlannedWaste? PouredOff { get; init; }

    /// <summary>How often it is looked at; null where its protocol does not say.</summary>
    public Duration? WatchEvery { get; init; }

    public string Id => Step.Id;

    /// <summary>How long it lasts: as dated, else the least that its protocol asks.</summary>
    public Duration Lasts => Step is { Start: { } start, End: { } end } ? end.ToInstant() - start.ToInstant() : Step.Least;

    /// <summary>Volume of fluid over the volume of the body, one filling; null where there is no volume.</summary>
    public double? RatioTo(Volume body) => Vessel?.Ratio ?? (Step.Volume is { } volume && body > Volume.Zero ? volume / body : null);

    public string Detail(string key) => Details.GetValueOrDefault(key, "");
}
