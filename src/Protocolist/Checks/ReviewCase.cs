using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Vessels;

namespace Protocolist.Checks;

/// <summary>Everything a check may look at: the finished plan, and what stands behind it.</summary>
internal sealed record ReviewCase(Plan Plan, BodyMeasure Body, Bench Bench, Protocol Protocol, ImmutableArray<ReviewStep> Steps)
{
    public TaxonGroup Group => Body.Group;

    public Specimen Specimen => Body.Specimen;

    /// <summary>The steps in which fluid meets the body, in order.</summary>
    public IEnumerable<ReviewStep> FluidSteps => Steps.Where(s => s.Fluid is not null && s.Kind is not (StageKind.Sample or StageKind.Discard));
}

/// <summary>One step with the fluid and the vessel as objects.</summary>
internal sealed record ReviewStep(Step Step, StageKind Kind, Fluid? Fluid)
{
    /// <summary>How its vessel is filled; null where it has none.</summary>
    public FittedVessel? Vessel { get; init; }

    /// <summary>Where no vessel fits: every reason against those at hand.</summary>
    public ImmutableArray<Findings.Finding> VesselReasons { get; init; } = [];

    /// <summary>Where no vessel fits: what would.</summary>
    public string VesselAdvice { get; init; } = "";

    /// <summary>Fluid wanted over the specimen; 0 where the protocol does not say.</summary>
    public UnitsNet.Length OverSpecimen { get; init; }

    public string Id => Step.Id;
}
