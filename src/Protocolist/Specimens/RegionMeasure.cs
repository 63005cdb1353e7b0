using Protocolist.Findings;
using Protocolist.Specimens.Measuring;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>One region of one animal's body.</summary>
/// <param name="Region">Which region.</param>
/// <param name="Whole">The body that it is a part of.</param>
internal readonly record struct RegionMeasure(BodyRegion Region, BodySpreads Whole)
{
    private static readonly Phrase ShareOfWhole = new("how.share-of-whole", "share of the whole");
    private static readonly Phrase ShareOfThickest = new("how.share-of-thickest", "share of the thickest place");

    /// <summary>Its mass; of a pair, both together.</summary>
    public Estimate<Mass> Mass => Whole.MassG.Share(Region.Share, ShareOfWhole, Region.Source).Grams();

    /// <summary>Its volume; of a pair, both together.</summary>
    public Estimate<Volume> Volume => Whole.VolumeMl.Share(Region.Share, ShareOfWhole, Region.Source).Millilitres();

    /// <summary>Half of its thickness, the shorter way.</summary>
    public Estimate<Length> HalfThickness =>
        (Region.Thickness == 1 ? Whole.HalfMm : Whole.HalfMm.Share(Region.Thickness, ShareOfThickest, Region.Source)).Millimetres();
}

/// <summary>The measures of a body that those of its regions are shares of.</summary>
internal sealed record BodySpreads(Spread MassG, Spread VolumeMl, Spread HalfMm);
