using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Specimens.Fixation;

/// <summary>Cuts into one region of one animal.</summary>
/// <param name="Region">Which region.</param>
/// <param name="Count">Number of cuts; of a pair, both sides together.</param>
/// <param name="LengthMm">Length of one cut, mm.</param>
/// <param name="DepthMm">Depth, mm; where <paramref name="OpensCavity"/>, through the wall.</param>
/// <param name="SpacingMm">Middle to middle, mm.</param>
/// <param name="OpensCavity">Whether they let fluid into the body cavity.</param>
/// <param name="ReachMm">
/// What is left to cross between the cuts, mm; null where there are too few of them to count on, as one row that lets fluid in and out.
/// </param>
internal sealed record RegionCuts(BodyRegion Region, int Count, double LengthMm, double DepthMm, double SpacingMm, bool OpensCavity, double? ReachMm);

/// <summary>Where and how one animal is cut.</summary>
internal sealed record CutPlan
{
    // More than an hour's work, and little left to look at: judgement.
    private const int ManyCuts = 150;

    private static readonly Phrase NoSpacing = new("spacing-not-positive", "cuts {spacing} mm apart are no cuts");
    private static readonly Phrase NoSpacingRemedy = new("spacing-not-positive.remedy", "give a spacing above 0 mm, or none for custom");
    private static readonly Phrase NotCut = new("not-cut-by-custom", "{group:a} is not cut by custom");
    private static readonly Phrase TooMany = new("many-cuts", "{count} cuts spoil the specimen");
    private static readonly Phrase TooManyRemedy = new("many-cuts.remedy", "inject or perfuse instead");

    /// <summary>The regions cut, in the order of the group's table; empty where the animal is left whole.</summary>
    public required ImmutableArray<RegionCuts> Regions { get; init; }

    /// <summary>All cuts.</summary>
    public int Count
    {
        get
        {
            var count = 0;
            foreach (var region in Regions) count += region.Count;
            return count;
        }
    }

    /// <summary>The side kept whole for display; empty where custom names none.</summary>
    public required string SpareSide { get; init; }

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
        ArgumentNullException.ThrowIfNull(body);
        if (spacingMm is { } given && !(given > 0))
            return new(null, [Finding.Error("spacing-not-positive", NoSpacing.With(("spacing", given)), NoSpacingRemedy)]);

        var findings = new List<Finding>();
        var regions = InjectionPlan.LeftWhole(body, findings) ? [] : Cuts(body, spacingMm, cover);
        if (regions.IsEmpty && findings.Count == 0) findings.Add(Finding.Note("not-cut-by-custom", NotCut.With(("group", body.Group.Name))));
        var plan = new CutPlan { Regions = regions, SpareSide = body.Group.SpareSide };
        if (plan.Count is > ManyCuts and var count) findings.Add(Finding.Warning("many-cuts", TooMany.With(("count", count)), TooManyRemedy));
        return new(plan, [.. findings]);
    }

    private static ImmutableArray<RegionCuts> Cuts(BodyMeasure body, double? spacingMm, bool cover)
    {
        var cuts = new RegionCuts[body.Regions.Length];
        var count = 0;
        foreach (var part in body.Regions)
        {
            if (part.Region.Cut is not { } custom || InjectionPlan.IsThin(part, body.Group)) continue;
            cuts[count++] = Cut(part, custom, body.Length.Nominal.Millimeters, spacingMm ?? custom.SpacingMm, cover);
        }

        return [.. cuts.AsSpan(0, count)];
    }

    private static RegionCuts Cut(in RegionMeasure part, CustomaryCut custom, double bodyMm, double spacingMm, bool cover)
    {
        var half = part.HalfThickness.Nominal.Millimeters;
        var volumeMm3 = part.Volume.Nominal.Milliliters * 1000 / part.Region.Count;

        // The part as a cylinder, unless it is known to reach further.
        var alongMm = Math.Max(volumeMm3 / (Math.PI * half * half), part.Region.Along * bodyMm);
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
