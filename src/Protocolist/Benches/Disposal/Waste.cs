using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Benches.Disposal;

/// <summary>The words of waste.</summary>
internal static class Waste
{
    private static readonly Phrase[] Classes =
    [
        new("waste-class.formaldehyde", "formaldehyde"),
        new("waste-class.flammable-alcohol", "flammable alcohol"),
        new("waste-class.formaldehyde-and-alcohol", "formaldehyde and alcohol"),
        new("waste-class.dilute-alcohol", "dilute alcohol"),
        new("waste-class.rinse-water", "rinse water"),
        new("waste-class.organic-in-water", "organic in water"),
        new("waste-class.contaminated-solids", "contaminated solids"),
        new("waste-class.sharps", "sharps"),
        new("waste-class.tissue", "tissue"),
    ];

    private static readonly Phrase[] Ways =
    [
        new("waste-way.kept-for-reuse", "kept for reuse"),
        new("waste-way.collected-as-hazardous", "collected as hazardous"),
        new("waste-way.collected-as-clinical", "collected as clinical"),
        new("waste-way.drained-where-allowed", "drained where allowed"),
    ];

    /// <summary>Every class in the order of its English words.</summary>
    public static ImmutableArray<WasteClass> ByWord { get; } = [.. Enum.GetValues<WasteClass>().OrderBy(c => Words(c).English, StringComparer.Ordinal)];

    /// <summary>What people call a class.</summary>
    public static Phrase Words(WasteClass @class) => Classes.At((int)@class);

    /// <summary>What people call a way.</summary>
    public static Phrase Words(WasteWay way) => Ways.At((int)way);

    /// <summary>Counted by the piece; the rest is poured.</summary>
    public static bool IsSolid(WasteClass @class) => @class is WasteClass.ContaminatedSolids or WasteClass.Sharps or WasteClass.Tissue;
}
