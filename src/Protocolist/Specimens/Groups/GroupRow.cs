using System.Collections.Immutable;

namespace Protocolist.Specimens.Groups;

/// <summary>One row of the tables of groups. What is left out comes from the parent; see <see cref="TaxonGroup"/> for the meaning of each column.</summary>
internal sealed record GroupRow(string Id, string? Parent, string Name)
{
    public ImmutableArray<string> Taxa { get; init; } = [];

    /// <summary>Higher taxa that it lies in though they mean another group here: a seal is of the Carnivora.</summary>
    public ImmutableArray<string> Within { get; init; } = [];

    public BodyAir? Air { get; init; }

    public BodyKind? Kind { get; init; }

    public SourcedBand? DensityKgPerM3 { get; init; }

    public SourcedBand? WaterFraction { get; init; }

    public BodyShape? Shape { get; init; }

    public LengthKind? Length { get; init; }

    public bool? LengthIsTotal { get; init; }

    public SourcedBand? TotalPerLength { get; init; }

    public ImmutableArray<(LengthKind Kind, SourcedBand PerLength)> OtherLengths { get; init; }

    public ImmutableArray<LengthMassRelation> LengthMass { get; init; }

    public SkinBarrier? Barrier { get; init; }

    public bool? IsCalcareous { get; init; }

    public bool? IsSpiculate { get; init; }

    public bool? IsGelatinous { get; init; }

    public ImmutableArray<RegionRow> Regions { get; init; }

    public SourcedBand? WholeUpToMm { get; init; }

    public SourcedBand? DoseMlPerKg { get; init; }

    public SourcedBand? WallMm { get; init; }

    /// <summary>Whether somebody's own: of what it may be nobody here knows.</summary>
    public bool IsOwn { get; init; }

    public string? SpareSide { get; init; }

    public ImmutableArray<CautionRow> Cautions { get; init; } = [];
}
