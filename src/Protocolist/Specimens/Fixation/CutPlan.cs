using System.Collections.Immutable;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Specimens.Fixation;

/// <summary>Cuts into one region of one animal.</summary>
/// <param name="Region">Which region.</param>
/// <param name="Count">Number of cuts; of a pair, both sides together.</param>
/// <param name="LengthMm">Length of one cut, mm.</param>
/// <param name="DepthMm">Depth, mm; where <paramref name="OpensCavity"/>, through the wall.</param>
/// <param name="SpacingMm">Middle to middle, mm.</param>
/// <param name="OpensCavity">Whether they let fluid into the body cavity.</param>
/// <param name="ReachMm">What is left to cross between the cuts, mm; null where there are too few of them to count on (one row that lets fluid in and out).</param>
public sealed record RegionCuts(BodyRegion Region, int Count, double LengthMm, double DepthMm, double SpacingMm, bool OpensCavity, double? ReachMm);

/// <summary>Where and how one animal is cut.</summary>
public sealed record CutPlan
{
    /// <summary>The regions cut, in the order of the group's table; empty where the animal is left whole.</summary>
    public required ImmutableArray<RegionCuts> Regions { get; init; }

    /// <summary>All cuts.</summary>
    public int Count => Regions.Sum(r => r.Count);

    /// <summary>The side kept whole for display; empty where custom names none.</summary>
    public required string SpareSide { get; init; }

    /// <summary>What to watch while cutting: common practice.</summary>
    public static string Caution => "Cut away from the hand; a fixed blade, cut-proof glove. Open no carcass of unknown death before the authority has been asked.";

    /// <summary>Plans the cuts of an animal by custom.</summary>
    /// <param name="body">Its measure.</param>
    /// <param name="spacingMm">Middle to middle of neighbouring cuts, mm; null for custom.</param>
    /// <param name="cover">
    /// False: a row along each part lets fluid in and out, as is done beside injection. True: rows side by side over the whole hidden
    /// face, so that the spacing can be counted on: for a body that is not injected.
    /// </param>
    /// <returns>
    /// The plan for one animal. Findings: <c>spacing-not-positive</c> (error, no plan), <c>many-cuts</c> (warning),
    /// <c>left-whole</c>, <c>not-cut-by-custom</c> (notes).
    /// </returns>
    public static Checked<CutPlan> For(BodyMeasure body, double? spacingMm = null, bool cover = false)
    {
        if (spacingMm is not null and not > 0)
        {
            return new(null, [Finding.Error("spacing-not-positive", Invariant($"cuts {spacingMm} mm apart are no cuts"), "give a spacing above 0 mm, or none for custom")]);
        }

        var findings = ImmutableArray.CreateBuilder<Finding>();
        var regions = InjectionPlan.LeftWhole(body, findings) ? [] : body.Regions
            .Where(r => r.Region.Cut is not null && !InjectionPlan.IsThin(r, body.Group))
            .Select(r => Cut(r, r.Region.Cut!, body.Length.Nominal.Millimeters, spacingMm ?? r.Region.Cut!.SpacingMm, cover))
            .ToImmutableArray();
        if (regions.IsEmpty && findings.Count == 0)
        {
            findings.Add(Finding.Note("not-cut-by-custom", $"a {body.Group.Name} is not cut by custom"));
        }

        var plan = new CutPlan { Regions = regions, SpareSide = body.Group.SpareSide };
        if (plan.Count > 150) // more than an hour's work, and little left to look at: judgement
        {
            findings.Add(Finding.Warning("many-cuts", Invariant($"{plan.Count} cuts spoil the specimen"), "inject or perfuse instead"));
        }

        return new(plan, findings.ToImmutable());
    }

    private static RegionCuts Cut(RegionMeasure part, CustomaryCut custom, double bodyMm, double spacingMm, bool cover)
    {
        var half = part.HalfThickness.Nominal.Millimeters;
        var volumeMm3 = part.Volume.Nominal.Milliliters * 1000 / part.Region.Count;
        var alongMm = Math.Max(volumeMm3 / (Math.PI * half * half), part.Region.Along * bodyMm); // the part as a cylinder, unless it is known to reach further
        var length = custom.IsSingle ? Math.Clamp(alongMm / 3, custom.LengthMm.Low, custom.LengthMm.High) : Math.Min(custom.LengthMm.Nominal, 2 * half);
        var depth = custom.DepthShare * 2 * half;
        var inRow = custom.IsSingle ? 1 : Whole(alongMm / spacingMm);
        var counted = cover && custom is { IsSingle: false, OpensCavity: false };
        // Half of the way round is cut, the other half is spared.
        var rows = counted ? Whole(Math.PI * half / spacingMm) : 1;
        double? reach = counted ? EffectiveDepth.CutsMm(spacingMm, length, depth, 2 * half) : null;
        return new(part.Region, inRow * rows * part.Region.Count, length, depth, spacingMm, custom.OpensCavity, reach);
    }

    private static int Whole(double count) => checked((int)Math.Max(1, Math.Ceiling(count - 1e-9)));
}
