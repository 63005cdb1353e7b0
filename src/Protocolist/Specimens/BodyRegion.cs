using System.Collections.Immutable;

namespace Protocolist.Specimens;

/// <summary>A part of the body with its customary places for needle and knife.</summary>
/// <param name="Id">A kebab-case id such as <c>hindlimbs</c>.</param>
/// <param name="Name">As a person says it.</param>
/// <param name="Share">Share of the body's mass, 0 to 1; of a pair, both together. The shares of a group sum to 1.</param>
/// <param name="Count">1, or 2 for a pair.</param>
/// <param name="Thickness">Its half-thickness over the half-thickness of the thickest place of the body, 0 to 1.</param>
/// <param name="Source">Where share and thickness come from.</param>
public sealed record BodyRegion(string Id, string Name, double Share, int Count, double Thickness, string Source)
{
    /// <summary>How far it reaches along the body, as a share of the length that the group is measured by; 0 where its volume and thickness tell it.</summary>
    public double Along { get; init; }

    /// <summary>What it is made of.</summary>
    public Tissue Tissue { get; init; } = Tissue.Muscle;

    /// <summary>Whether it is a cavity with organs, which fluid can fill.</summary>
    public bool IsCavity { get; init; }

    /// <summary>Other names for it that a protocol may use, such as <c>thigh</c>.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>Where the needle goes by custom; empty where it is not injected.</summary>
    public string InjectAt { get; init; } = "";

    /// <summary>The customary cut, or null where none is made.</summary>
    public CustomaryCut? Cut { get; init; }

    /// <summary>Whether <paramref name="name"/> is this region's id or one of its other names.</summary>
    /// <param name="name">A kebab-case name.</param>
    /// <returns>True on an exact match.</returns>
    public bool IsNamed(string name) =>
        string.Equals(Id, name, StringComparison.Ordinal) || Aliases.Contains(name, StringComparer.Ordinal);
}

/// <summary>How a region is cut by custom.</summary>
/// <param name="Where">Where, and which way the cut runs.</param>
/// <param name="LengthMm">How long one cut is, in mm.</param>
/// <param name="SpacingMm">From the middle of one cut to the middle of the next, in mm, above 0.</param>
/// <param name="DepthShare">How deep, as a share of the region's whole thickness, 0 to 1.</param>
/// <param name="OpensCavity">Whether it goes through the wall of the cavity.</param>
/// <param name="IsSingle">Whether one such cut is made, however large the animal.</param>
public sealed record CustomaryCut(string Where, SourcedBand LengthMm, double SpacingMm, double DepthShare, bool OpensCavity, bool IsSingle = false);
