using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>A part of the body with its customary places for needle and knife. Immutable; safe to share between threads.</summary>
public sealed class BodyRegion
{
    internal BodyRegion(Groups.RegionRow row, string group)
    {
        Id = row.Id;
        Name = new($"region.{group}.{row.Id}", row.Name);
        (Share, Count, Thickness, Along, Source) = (row.Share, row.Count, row.Thickness, row.Along, row.Source);
        (Tissue, IsCavity, Aliases) = (row.Tissue, row.IsCavity, row.Aliases);
        InjectAt = row.InjectAt.Length == 0 ? null : new($"needle.{group}.{row.Id}", row.InjectAt);
        Cut = row.Cut is { } cut
            ? new(new($"cut.{group}.{row.Id}", cut.Where), cut.LengthMm, cut.SpacingMm, cut.DepthShare, cut.OpensCavity, cut.IsSingle)
            : null;
    }

    /// <summary>Whether a plan's region is the one of that id, whatever it is called in a language; a protocol's own word is its id.</summary>
    internal static bool IsCalled(Message region, string id) => region.Phrase is { Id: var phrase } && phrase.StartsWith("region.", StringComparison.Ordinal)
        ? phrase.AsSpan(phrase.LastIndexOf('.') + 1).SequenceEqual(id)
        : region.ToString() == id;

    /// <summary>A kebab-case id such as <c>hindlimbs</c>.</summary>
    public string Id { get; }

    /// <summary>As a person says it.</summary>
    public Phrase Name { get; }

    /// <summary>Share of the body's mass, 0 to 1; of a pair, both together. The shares of a group sum to 1.</summary>
    public double Share { get; }

    /// <summary>How many there are of it: 1, 2 for a pair, 4 for all limbs, 5 for the arms of a sea star.</summary>
    public int Count { get; }

    /// <summary>Its half-thickness over the half-thickness of the thickest place of the body, 0 to 1.</summary>
    public double Thickness { get; }

    /// <summary>How far it reaches along the body, as a share of the length that the group is measured by; 0 where its volume and thickness tell it.</summary>
    public double Along { get; }

    /// <summary>Where share and thickness come from.</summary>
    public string Source { get; }

    /// <summary>What it is made of.</summary>
    public Tissue Tissue { get; }

    /// <summary>Whether it is a cavity with organs, which fluid can fill.</summary>
    public bool IsCavity { get; }

    /// <summary>Other names for it that a protocol may use, such as <c>thigh</c>.</summary>
    public ImmutableArray<string> Aliases { get; }

    /// <summary>Where the needle goes by custom; null where it is not injected.</summary>
    public Phrase? InjectAt { get; }

    /// <summary>The customary cut, or null where none is made.</summary>
    public CustomaryCut? Cut { get; }

    /// <summary>Whether <paramref name="name"/> is this region's id or one of its other names.</summary>
    /// <param name="name">A kebab-case name.</param>
    /// <returns>True on an exact match.</returns>
    public bool IsNamed(string name)
    {
        if (string.Equals(Id, name, StringComparison.Ordinal)) return true;
        foreach (var alias in Aliases)
        {
            if (string.Equals(alias, name, StringComparison.Ordinal)) return true;
        }

        return false;
    }

    /// <summary>The id.</summary>
    /// <returns>Same as <see cref="Id"/>.</returns>
    public override string ToString() => Id;
}

/// <summary>How a region is cut by custom.</summary>
/// <param name="Where">Where, and which way the cut runs.</param>
/// <param name="LengthMm">How long one cut is, in mm.</param>
/// <param name="SpacingMm">From the middle of one cut to the middle of the next, in mm, above 0.</param>
/// <param name="DepthShare">
/// How deep it goes into muscle, as a share of the region's whole thickness, 0 to 1. A cut that opens a cavity goes through its wall and no further; 0
/// where nothing is cut through, as where valves are prised apart.
/// </param>
/// <param name="OpensCavity">Whether it goes through the wall of the cavity.</param>
/// <param name="IsSingle">Whether one such cut is made, however large the animal.</param>
public sealed record CustomaryCut(Phrase Where, SourcedBand LengthMm, double SpacingMm, double DepthShare, bool OpensCavity, bool IsSingle);
