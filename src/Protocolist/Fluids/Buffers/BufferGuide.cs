using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids.Buffers;

/// <summary>What one way of buffering formaldehyde can and cannot do, and how long.</summary>
/// <param name="Buffering">The way.</param>
/// <param name="PhLow">Lower end of the usual pH.</param>
/// <param name="PhHigh">Upper end of the usual pH.</param>
/// <param name="LastsDays">Days after which the pH is no longer to be trusted without a reading; null where years.</param>
/// <param name="Can">What it is good for.</param>
/// <param name="Cannot">What it does badly.</param>
/// <param name="Source">Where that is said.</param>
internal sealed record BufferProfile(Buffering Buffering, double PhLow, double PhHigh, int? LastsDays, Phrase Can, Phrase Cannot, string Source);

/// <summary>The ways of buffering formaldehyde, side by side.</summary>
internal static class BufferGuide
{
    /// <summary>All ways, in the order of <see cref="Fluids.Buffering"/>.</summary>
    public static ImmutableArray<BufferProfile> All { get; } =
    [
        new(Buffering.None, 2.8, 4.5, 0,
            new Phrase("buffering.none.can", "nothing: an acid fixative for tissue without lime"),
            new Phrase("buffering.none.cannot", "dissolves bone mineral, shell and spicules; turns more acid with time"),
            "Atkins 1922 (stock pH 2.8); histology handbooks (1+9 dilution pH 3 to 4)"),
        new(Buffering.Phosphate, 6.9, 7.2, null,
            new Phrase("buffering.phosphate.can", "holds pH 7 for months to years; for bone, shell in short fixation, histology, long keeping"),
            new Phrase("buffering.phosphate.cannot", "its salts fall out in alcohol: wash before alcohol; precipitates with sea water's calcium and magnesium"),
            "Lillie's recipe; Simmons (\"by far the most stable buffer\")"),
        new(Buffering.PhosphateSodiumHydroxide, 7.2, 7.4, null,
            new Phrase("buffering.phosphate-sodium-hydroxide.can", "as phosphate, a little more alkaline and nearer to the osmolality of tissue"),
            new Phrase("buffering.phosphate-sodium-hydroxide.cannot", "caustic hydroxide is weighed; precipitates with sea water's calcium and magnesium"),
            "Carson, Martin and Lynn 1973"),
        new(Buffering.Borax, 8.0, 9.0, 30,
            new Phrase("buffering.borax.can", "cheap and quick; for the short fixation of fish before alcohol"),
            new Phrase("buffering.borax.cannot", "clears tissue and bleaches pigment over weeks; precipitates in sea water; not for long keeping or medusae"),
            "Atkins 1922 (about pH 9); Meador, Cuffney and Gurtz 1993; the 30 days common practice"),
        new(Buffering.SeaWater, 7.0, 8.0, 30,
            new Phrase("buffering.sea-water.can", "keeps the osmolality of marine animals while they fix"),
            new Phrase("buffering.sea-water.cannot", "buffers only for a time: buffer anew or change within a month; not with phosphate, borax or hexamine"),
            "field manuals for marine invertebrates (1 month); the pH common practice"),
        new(Buffering.Hexamine, 7.0, 8.0, 180,
            new Phrase("buffering.hexamine.can", "mild; long used for plankton"),
            new Phrase(
                "buffering.hexamine.cannot",
                "gives formaldehyde and ammonia back as it ages, makes tissue soft and clear; precipitates with gelatinous animals"),
            "Steedman (ed.) 1976 (from memory); pH and days common practice"),
        new(Buffering.MarbleChips, 6.0, 7.0, 1,
            new Phrase("buffering.marble-chips.can", "neutralises free acid of a stock that stands over it"),
            new Phrase("buffering.marble-chips.cannot", "neutralises but does not buffer: with large tissue acid again within hours; crystals on specimens"),
            "ASTM practice for zooplankton; museum list postings on acid after about 3 hours"),
    ];

    /// <summary>The profile of one way.</summary>
    /// <param name="buffering">The way.</param>
    /// <returns>Its profile.</returns>
    public static BufferProfile Of(Buffering buffering) => All.AsSpan().At((int)buffering);
}
