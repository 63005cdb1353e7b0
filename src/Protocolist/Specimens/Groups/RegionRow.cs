using System.Collections.Immutable;

namespace Protocolist.Specimens.Groups;

/// <summary>One region in the tables of groups; see <see cref="BodyRegion"/> for the meaning of each column.</summary>
internal sealed record RegionRow(string Id, string Name, double Share, int Count, double Thickness, string Source)
{
    public double Along { get; init; }

    public Tissue Tissue { get; init; } = Tissue.Muscle;

    public bool IsCavity { get; init; }

    public ImmutableArray<string> Aliases { get; init; } = [];

    public string InjectAt { get; init; } = "";

    public CutRow? Cut { get; init; }
}

/// <summary>The cut of a region; see <see cref="CustomaryCut"/>.</summary>
internal sealed record CutRow(string Where, SourcedBand LengthMm, double SpacingMm, double DepthShare, bool OpensCavity, bool IsSingle = false);

/// <summary>A caution of a group; see <see cref="GroupCaution"/>.</summary>
internal sealed record CautionRow(string Id, bool IsLegal, string Text, string Source)
{
    public ImmutableArray<string> Of { get; init; } = [];
}
