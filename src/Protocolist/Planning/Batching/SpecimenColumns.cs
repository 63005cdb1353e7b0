using System.Collections.Immutable;

namespace Protocolist.Planning.Batching;

/// <summary>One column that a table of specimens may have.</summary>
/// <param name="Name">Its name; case, spaces, hyphens and brackets do not matter, so that <c>Mass (g)</c> is <c>mass-g</c>.</param>
/// <param name="Unit">The unit of bare numbers in it; empty where the cell says it.</param>
internal readonly record struct SpecimenColumn(string Name, string Unit = "");

/// <summary>Which columns give which key of a specimen file, the preferred one first. Terms of Darwin Core stand beside the house's own words.</summary>
/// <remarks>Darwin Core terms as in the TDWG quick reference guide; measuredMassInGrams and its like are the flat names that measurement extensions
/// use.</remarks>
internal static class SpecimenColumns
{
    public static ImmutableArray<SpecimenColumn> Id { get; } = Plain("specimen", "catalog-number", "record-number", "field-number", "occurrence-id", "id");

    /// <summary>Ranks from high to low; what is known of them is taken together.</summary>
    public static ImmutableArray<SpecimenColumn> Ranks { get; } = Plain("higher-taxon", "higher-classification", "phylum", "class", "order", "family");

    /// <summary>Where it was found, from the nearest to the widest.</summary>
    public static ImmutableArray<SpecimenColumn> Places { get; } = Plain("where", "locality", "verbatim-locality");

    /// <summary>Key → columns that hold a quantity.</summary>
    public static ImmutableArray<(string Key, ImmutableArray<SpecimenColumn> Columns)> Quantities { get; } =
    [
        ("mass", [.. Masses("mass"), new("measured-mass-in-grams", "g"), new("weight-g", "g"), new("weight-in-grams", "g")]),
        ("lot-mass", Masses("lot-mass")),
        ("displacement-volume", [new("displacement-volume"), new("displacement-volume-ml", "mL"), new("measured-volume-in-millilitres", "mL")]),
        ("length", [.. Lengths("length"), new("measured-length-in-millimeters", "mm"), new("measured-length-in-millimetres", "mm")]),
        ("total-length", [.. Lengths("total-length"), new("total-length-in-mm", "mm")]),
        ("standard-length", Lengths("standard-length")),
        ("snout-vent-length", [.. Lengths("snout-vent-length"), .. Lengths("svl")]),
        ("head-body-length", Lengths("head-body-length")),
        ("carapace-length", Lengths("carapace-length")),
        ("mantle-length", Lengths("mantle-length")),
        ("disc-width", Lengths("disc-width")),
        ("forearm-length", Lengths("forearm-length")),
        ("carapace-width", Lengths("carapace-width")),
        ("egg-diameter", Lengths("egg-diameter")),
        ("ventral-mantle-length", Lengths("ventral-mantle-length")),
        ("body-length", Lengths("body-length")),
        ("girth", Lengths("girth")),
        ("width", Lengths("width")),
        ("height", Lengths("height")),
        ("thickness", Lengths("thickness")),
    ];

    /// <summary>Key → columns that hold words.</summary>
    public static ImmutableArray<(string Key, ImmutableArray<SpecimenColumn> Columns)> Words { get; } =
    [
        ("count", Plain("count", "individual-count")),
        ("group", Plain("group")),
        ("scientific-name", Plain("scientific-name")),
        ("sex", Plain("sex")),
        ("life-stage", Plain("life-stage")),
        ("condition", Plain("condition")),
        ("died-at", Plain("died-at")),
        ("found-on", Plain("found-on", "event-date")),
        ("how-obtained", Plain("how-obtained", "sampling-protocol")),
        ("collected-by", Plain("collected-by", "recorded-by")),
        ("permits", Plain("permits", "permit")),
        ("intended-use", Plain("intended-use")),
        ("posture", Plain("posture")),
        ("notes", Plain("notes", "occurrence-remarks")),
    ];

    /// <summary>All columns, for the heading.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        .. Id.Concat(Ranks)
            .Concat(Places)
            .Concat(Quantities.SelectMany(q => q.Columns))
            .Concat(Words.SelectMany(w => w.Columns))
            .Select(c => c.Name)
            .Distinct(StringComparer.Ordinal),
    ];

    private static ImmutableArray<SpecimenColumn> Plain(params string[] names) => [.. names.Select(n => new SpecimenColumn(n))];

    private static ImmutableArray<SpecimenColumn> Masses(string key) => [new(key), new(key + "-g", "g"), new(key + "-kg", "kg"), new(key + "-mg", "mg")];

    private static ImmutableArray<SpecimenColumn> Lengths(string key) => [new(key), new(key + "-mm", "mm"), new(key + "-cm", "cm"), new(key + "-m", "m")];
}
