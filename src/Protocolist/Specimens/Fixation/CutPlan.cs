using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Specimens.Fixation;

/// <summary>Cuts into one region of one animal.</summary>
/// <param name="Region">Which region.</param>
/// <param name="Count">Number of cuts; of a pair, both sides together.</param>
/// <param name="LengthMm">Length of one cut, mm.</param>
/// <param name="DepthMm">Depth, mm; where <paramref name="OpensCavity"/>, the thickness of the wall; 0 where plates or valves are prised apart.</param>
/// <param name="SpacingMm">Middle to middle, mm.</param>
/// <param name="OpensCavity">Whether they let fluid into the body cavity.</param>
/// <param name="ReachMm">
/// What is left to cross between the cuts, mm; null where there are too few of them to count on, as one row that lets fluid in and out.
/// </param>
internal sealed record RegionCuts(BodyRegion Region, int Count, double LengthMm, double DepthMm, double SpacingMm, bool OpensCavity, double? ReachMm)
{
    /// <summary>Whether the part is too short for the length that is asked.</summary>
    public bool IsShortened { get; init; }
}

/// <summary>What a protocol asks of the cuts into one part; what is null is left to custom.</summary>
/// <param name="LengthMm">From and to which length, mm.</param>
/// <param name="DepthMm">How deep, mm.</param>
/// <param name="SpacingMm">Middle to middle, mm.</param>
/// <param name="Count">How many; 0 where the spacing decides.</param>
internal readonly record struct CutWish((double Low, double High)? LengthMm = null, double? DepthMm = null, double? SpacingMm = null, int Count = 0);

/// <summary>Where and how one animal is cut.</summary>
internal sealed record CutPlan
{
    // More than an hour's work, and little left to look at: judgement.
    private const int ManyCuts = 150;

    // Deeper cuts come out on the other side where a part is thinner than at its thickest: judgement.
    private const double DeepestShare = 0.6;

    // Where a protocol cuts what custom does not: short and few. Common practice.
    private static readonly SourcedBand Short = new(3, 10, 20, "common practice");
    private static readonly CustomaryCut IntoCavity = new(new("cut.into-cavity", "through the wall"), Short, 50, 0.2, OpensCavity: true, IsSingle: true);
    private static readonly CustomaryCut IntoMuscle = new(new("cut.into-muscle", "into the muscle"), Short, 40, 0.5, OpensCavity: false, IsSingle: false);

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
        var whole = InjectionPlan.LeftWhole(body);
        if (whole) InjectionPlan.TellWhole(body, findings);
        var regions = whole ? [] : Cuts(body, spacingMm, cover);
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
            if (part.Region.Cut is null || InjectionPlan.IsThin(part, body.Group)) continue;
            cuts[count++] = Cut(part, body, new(SpacingMm: spacingMm), cover);
        }

        return [.. cuts.AsSpan(0, count)];
    }

    /// <summary>The cuts into one part: as a protocol asks, by custom where it does not say, and never more than the part allows.</summary>
    /// <param name="part">The part.</param>
    /// <param name="body">The body that it is of.</param>
    /// <param name="wish">What a protocol asks.</param>
    /// <param name="cover">See <see cref="For"/>.</param>
    internal static RegionCuts Cut(in RegionMeasure part, BodyMeasure body, CutWish wish, bool cover = false)
    {
        var custom = part.Region.Cut ?? (part.Region.IsCavity ? IntoCavity : IntoMuscle);
        var thickness = 2 * part.HalfThickness.Nominal.Millimeters;
        var along = PartSize.AlongMm(part, body);
        var spacing = wish.SpacingMm ?? custom.SpacingMm;
        var single = custom.IsSingle && (part.Region.Cut is not null || wish.SpacingMm is null);
        var (least, longest) = wish.LengthMm ?? (single ? (custom.LengthMm.Low, custom.LengthMm.High) : (custom.LengthMm.Nominal, custom.LengthMm.Nominal));

        // One cut is a quarter of the part within what is asked, those of a row are of middling length; across a muscle no further than it is thick.
        var most = along * PartSize.LongestCut;
        if (!custom.OpensCavity) most = Math.Min(most, thickness);
        var length = Math.Min(single ? Math.Clamp(along / 4, least, Math.Max(least, longest)) : (least + longest) / 2, most);
        var wall = PartSize.WallMm(part, body);
        var depth = custom switch
        {
            { OpensCavity: true, DepthShare: 0 } => 0,
            { OpensCavity: true } => Math.Min(wall, wish.DepthMm ?? wall),
            _ => Math.Min(wish.DepthMm ?? (custom.DepthShare * thickness), Math.Min(length, DeepestShare * thickness)),
        };
        var inRow = single ? 1 : Whole(along / spacing);
        var counted = cover && custom is { IsSingle: false, OpensCavity: false };
        // Half of the way round is cut, the other half is spared.
        var rows = counted ? Whole(Math.PI * thickness / 2 / spacing) : 1;
        double? reach = counted ? EffectiveDepth.CutsMm(spacing, length, depth, thickness) : null;
        var count = wish.Count is > 0 and var asked ? asked : inRow * rows * part.Region.Count;
        return new(part.Region, count, length, depth, spacing, custom.OpensCavity, reach) { IsShortened = length < least * 0.999 };
    }

    private static int Whole(double count) => checked((int)Math.Max(1, Math.Ceiling(count - 1e-9)));
}
