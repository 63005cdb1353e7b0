using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>A jar, tub or tank, of which some number may be at hand. Immutable.</summary>
/// <param name="Id">Kebab-case name, unique on the bench.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Shape">The room inside.</param>
/// <param name="Wall">What the walls are made of.</param>
/// <param name="Count">How many are at hand, 0 or more.</param>
public sealed record Vessel(string Id, string Name, VesselShape Shape, VesselMaterial Wall, int Count)
{
    private static readonly VesselValidator Validator = new();

    /// <summary>What is wrong with it, in the same words as of a bench file.</summary>
    /// <returns>Findings, each with the property as its subject; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Validate() => ValidatorFindings.Of(Validator, this);

    /// <summary>What the maker says it holds; checked against the dimensions where given.</summary>
    public Volume? Capacity { get; init; }

    /// <summary>How it closes.</summary>
    public Closure Closure { get; init; } = Closure.LooseLid;

    /// <summary>What the lid is made of; <see cref="VesselMaterial.Unknown"/> where there is none or it is not known.</summary>
    public VesselMaterial Lid { get; init; }

    /// <summary>What seals the lid: liner, gasket or sealant.</summary>
    public VesselMaterial Seal { get; init; }

    /// <summary>Mass with its lid, empty.</summary>
    public Mass? EmptyMass { get; init; }

    /// <summary>Of a glass tank: how thick its walls are; null where nobody measured.</summary>
    public Length? Pane { get; init; }

    /// <summary>What one more of it costs; null where it cannot be bought.</summary>
    public Money? Price { get; init; }

    /// <summary>Calendar days from order to arrival.</summary>
    public int LeadDays { get; init; }

    /// <summary>What one of it, filled and closed, loses in a year as this house has measured it; null where nobody has.</summary>
    public Volume? LossPerYear { get; init; }

    /// <summary>Whether it keeps gas in: a sealed rigid vessel builds up pressure when it warms.</summary>
    public bool IsGasTight => Closure is Closure.ScrewLid or Closure.WireBail or Closure.SealedPlate or Closure.GroundStopper;
}
