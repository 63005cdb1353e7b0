using System.Collections.Frozen;
using static Protocolist.Specimens.Groups.Source;
using static Protocolist.Specimens.LengthKind;

namespace Protocolist.Specimens.Measuring;

/// <summary>Length-mass relations of single species, and of single genera, by exact scientific name.</summary>
internal static class RelationsByName
{
    // A fish of one species is within a factor 1.8 of its curve: f99 of fifteen species, 6 to 33,321 fish each, is 1.2 to 2.0.
    private const double OneFish = 1.8;

    private static readonly FrozenDictionary<string, LengthMassRelation> ByName = new Dictionary<string, LengthMassRelation>
    {
        ["Gadus morhua"] = Mean(0.007696, 3.0808),
        ["Clupea harengus"] = Mean(0.007720, 3.0657),
        ["Scomber scombrus"] = Mean(0.004582, 3.2459),
        ["Pleuronectes platessa"] = Mean(0.009856, 3.0561),
        ["Scyliorhinus canicula"] = Mean(0.001709, 3.1932),
        ["Squalus acanthias"] = Mean(0.004232, 3.0678),
        ["Salmo trutta"] = Curve(-4.867, 2.960),
        ["Oncorhynchus mykiss"] = Curve(-5.023, 3.024),
        ["Cyprinus carpio"] = Curve(-4.639, 2.920),
        ["Micropterus salmoides"] = Curve(-5.528, 3.273),
        ["Abramis brama"] = Fitted(Total, 0.007596, 3.092, 35, 1.16, OneFish, Brofeldt),
        ["Blicca bjoerkna"] = Fitted(Total, 0.01203, 3, 11, 1.13, OneFish, Brofeldt),
        ["Esox lucius"] = Fitted(Total, 0.002028, 3.250, 17, 1.14, OneFish, Brofeldt),
        ["Osmerus eperlanus"] = Fitted(Total, 0.005334, 2.963, 14, 1.15, OneFish, Brofeldt),
        ["Perca fluviatilis"] = Fitted(Total, 0.006032, 3.168, 56, 1.20, OneFish, Brofeldt),
        ["Rutilus rutilus"] = Fitted(Total, 0.006834, 3.095, 19, 1.16, OneFish, Brofeldt),
        ["Oncorhynchus clarkii"] = Fitted(Total, 0.01145, 2.936, 12038, 1.20, OneFish, Andrews),
        ["Sander vitreus"] = Fitted(Total, 0.002287, 3.388, 33321, 1.15, OneFish, "FSAdata WalleyeErie2, individuals"),
        ["Lepomis macrochirus"] = Fitted(Total, 0.008134, 3.380, 100, 1.12, OneFish, "FSAdata BluegillLM, individuals"),
        ["Gymnocephalus cernua"] = Fitted(Total, 0.01609, 2.913, 736, 1.24, OneFish, "FSAdata RuffeSLRH92, individuals"),
        ["Cottus cognatus"] = Fitted(Total, 0.004773, 3.267, 117, 1.26, OneFish, "FSAdata SculpinALTER, individuals"),
        ["Perca flavescens"] = Fitted(Total, 0.005875, 3.190, 1342, 1.43, OneFish, "FSAdata YPerchTL, individuals"),
        ["Coregonus artedi"] = Fitted(Total, 0.006354, 3.054, 1238, 1.15, OneFish, "FSAdata CiscoTL, individuals"),
        ["Salvelinus namaycush"] = Fitted(Total, 0.003387, 3.274, 86, 1.19, OneFish, "FSAdata LakeTroutALTER, individuals"),
        ["Anguis"] = Fitted(SnoutVent, 0.001823, 3, 38, 3.52, 5, Amniote),
        ["Anolis"] = Fitted(SnoutVent, 0.02333, 2.942, 115, 1.48, 2.4, Feldman),
        ["Draco"] = Fitted(SnoutVent, 0.02148, 2.642, 33, 1.86, 2.6, Feldman),
        ["Liolaemus"] = Fitted(SnoutVent, 0.02624, 3.097, 48, 1.26, 2.4, Feldman),
        ["Phymaturus"] = Fitted(SnoutVent, 0.01919, 3.323, 11, 1.28, 2.4, Feldman),
        ["Imantodes"] = Fitted(SnoutVent, 5.148e-5, 3, 114, 1.55, 2.5, Zipkin),
        ["Oxybelis"] = Fitted(SnoutVent, 8.957e-5, 3, 174, 1.57, 2.5, Zipkin),
        ["Sibon"] = Fitted(SnoutVent, 0.000168, 3, 149, 1.55, 2.5, Zipkin),
        ["Leptodeira"] = Fitted(SnoutVent, 0.0002083, 3, 41, 1.81, 3.1, Zipkin),
        ["Bothriechis"] = Fitted(SnoutVent, 0.0003368, 3, 33, 1.79, 2.6, Zipkin),
        ["Rhadinaea"] = Fitted(SnoutVent, 0.0005983, 3, 16, 1.24, 2.5, Zipkin),
        ["Crotalus"] = Fitted(Total, 0.000677, 3, 32, 1.23, 2.2, "Conner et al. 2003, timber rattlesnake, digitised in Add-my-Pet"),
        ["Agkistrodon"] = Fitted(SnoutVent, 0.001446, 3, 10, 1.31, 2.2, "Hill & Beaupre 2008, cottonmouth, digitised in Add-my-Pet"),
        ["Testudo"] = Fitted(Carapace, 0.1926, 3, 63, 1.13, 1.8, GolemGrad),
        ["Alligator"] = new(Total, 0.003294, 3.048, 1.8, "from two predictions of Platt et al. 2018 (823 cm 2534 kg, 432 cm 355 kg)"),
        ["Dicamptodon"] = Fitted(SnoutVent, 0.0482, 2.842, 6265, 1.24, 1.8, Andrews),
        ["Cancer"] = new(CarapaceWidth, 0.38, 2.690, 2, "Klaoudatos et al. 2013, Cancer pagurus, abstract"),
        ["Loligo"] = Fitted(Mantle, 0.2304, 2.171, 8, 1.3, 2, "curve of Lange & Johnson, Loligo pealei, in Add-my-Pet"),
        ["Asterias"] = new(Disc, 0.035, 3, 3, "three species in Add-my-Pet, the length of one unsure"),
        ["Echinus"] = new(Disc, 0.4943, 2.877, 1.8, "Robinson et al. 2010, as quoted in Add-my-Pet"),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, LengthMassRelation>.AlternateLookup<ReadOnlySpan<char>> BySpan =
        ByName.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>The relation of a species, else that of its genus; null where neither is known.</summary>
    public static LengthMassRelation? Find(string? species)
    {
        if (species is null) return null;
        var name = species.AsSpan().Trim();
        return BySpan.TryGetValue(name, out var own) || (name.IndexOf(' ') is > 0 and var end && BySpan.TryGetValue(name[..end], out own)) ? own : null;
    }

    /// <summary>Arithmetic means of FishBase records, which are 10 to 25 % heavy: divided by 1.15.</summary>
    private static LengthMassRelation Mean(double a, double b) =>
        new(Total, a / 1.15, b, OneFish, "arithmetic means of FishBase records (a and b per species), over 1.15");

    /// <summary>log10 W(g) = intercept + slope · log10 TL(mm), a curve of the heaviest quarter: times 0.925 for an average fish.</summary>
    private static LengthMassRelation Curve(double intercept, double slope) => new(
        Total, 0.925 * Math.Pow(10, intercept + slope), slope, OneFish, "standard-weight curves as in the FSA package (75th-percentile fish), times 0.925");
}
