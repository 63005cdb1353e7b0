using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids.Safety;

/// <summary>How much of a flammable liquid may stand somewhere, by one rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Most">The most that may stand there.</param>
/// <param name="Categories">GHS categories of flammable liquids it holds for.</param>
internal sealed record StorageThreshold(string Rule, Phrase Place, Volume Most, ImmutableArray<int> Categories)
{
    private static readonly Phrase InACabinet = new("storage.in-a-cabinet", "in one storage cabinet");
    private static readonly Phrase OutsideACabinet = new("storage.outside", "in containers outside a store room or cabinet");
    private static readonly Phrase InALaboratory = new("storage.in-a-laboratory", "outside a cabinet in one laboratory");

    /// <summary>The thresholds known here. Facts for information: the local fire code and the authority having jurisdiction prevail.</summary>
    public static ImmutableArray<StorageThreshold> All { get; } =
    [
        new("OSHA 29 CFR 1910.106(d)(3)", InACabinet, Volume.FromUsGallons(60), [1, 2, 3]),
        new("OSHA 29 CFR 1910.106(d)(3)", InACabinet, Volume.FromUsGallons(120), [4]),
        new("OSHA 29 CFR 1910.106(e)(2)(ii)(b)", OutsideACabinet, Volume.FromUsGallons(25), [1]),
        new("OSHA 29 CFR 1910.106(e)(2)(ii)(b)", OutsideACabinet, Volume.FromUsGallons(120), [2, 3, 4]),
        new("a university's laboratory rule, as an example of a stricter one", InALaboratory, Volume.FromUsGallons(10), [1, 2, 3]),
    ];
}
