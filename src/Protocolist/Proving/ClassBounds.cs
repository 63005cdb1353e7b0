using Protocolist.Findings;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Proving;

/// <summary>
/// Between what bounds the measures of all specimens of a class lie. Sizes rise together, so the ends of the class give the ends of the rest.
/// </summary>
internal static class ClassBounds
{
    /// <summary>As many as the specimen file takes.</summary>
    public const double MostAnimals = 1e6;

    /// <summary>Beyond what groups' proportions say, single animals are thinner and thicker. The project's choice.</summary>
    private const double Spread = 2;

    /// <summary>
    /// What a class can be measured by, in order of preference, and what a class without an end ends at: the project's choice, no vessel takes more.
    /// </summary>
    private static readonly (string Measure, double Least, double Most, Dimension Dimension)[] Measures =
    [
        ("mass", 1e-9, 500, Dimension.OfMass),
        ("length", 1e-4, 20, Dimension.OfLength),
        ("volume", 1e-12, 0.5, Dimension.OfVolume),
        ("half-thickness", 1e-5, 1, Dimension.OfLength),
    ];

    private static readonly Phrase OneOfSize = new("one-of-size", "{group:a} of {measure} {size}");

    /// <summary>A specimen by its size in one measure, as a person would give it.</summary>
    public static Message Describe(BodyMeasure body, string measure, TaxonGroup group) =>
        OneOfSize.With(("group", group.Name), ("measure", measure.Replace('-', ' ')), ("size", SpecimenValues.Measure(body, "specimen." + measure)));

    /// <summary>The measure that a class is mainly limited by, and from where to where; mass where it limits none.</summary>
    public static (string Measure, QuantityRange Stretch) MainMeasure(SpecimenClass taxon)
    {
        var (measure, least, most, dimension) = Array.Find(Measures, m => taxon.Limits.ContainsKey(m.Measure));
        if (measure is null) (measure, least, most, dimension) = Measures[0];
        var limit = taxon.Limits.TryGetValue(measure, out var given) ? given : new QuantityRange(least, most, dimension);
        return (measure, new(Math.Clamp(limit.Low, least, most), Math.Clamp(limit.High, least, most), dimension));
    }

    /// <summary>Name → bounds over a class, or a part of it.</summary>
    /// <param name="taxon">The class.</param>
    /// <param name="group">Its group.</param>
    /// <param name="small">Its smallest specimen.</param>
    /// <param name="large">Its largest.</param>
    public static IReadOnlyDictionary<string, QuantityRange> Of(SpecimenClass taxon, TaxonGroup group, BodyMeasure small, BodyMeasure large)
    {
        var bounds = new Dictionary<string, QuantityRange>(StringComparer.Ordinal);
        Add("specimen.mass", small.Mass.Low.Kilograms, large.Mass.High.Kilograms, Dimension.OfMass, taxon.Limits.GetValueOrDefault("mass"));
        Add("specimen.volume", small.Volume.Low.CubicMeters, large.Volume.High.CubicMeters, Dimension.OfVolume, taxon.Limits.GetValueOrDefault("volume"));
        Add(
            "specimen.length",
            small.Length.Low.Meters / Spread,
            large.Length.High.Meters * Spread,
            Dimension.OfLength,
            taxon.Limits.GetValueOrDefault("length"));
        Add(
            "specimen.half-thickness",
            small.HalfThickness.Low.Meters / Spread,
            large.HalfThickness.High.Meters * Spread,
            Dimension.OfLength,
            taxon.Limits.GetValueOrDefault("half-thickness"));
        bounds["specimen.lot-volume"] = new(bounds["specimen.volume"].Low, bounds["specimen.volume"].High * MostAnimals, Dimension.OfVolume);
        bounds["specimen.lot-mass"] = new(bounds["specimen.mass"].Low, bounds["specimen.mass"].High * MostAnimals, Dimension.OfMass);
        bounds["specimen.count"] = new(1, MostAnimals, Dimension.None);
        bounds["specimen.water-share"] = new(group.WaterFraction.Low, group.WaterFraction.High, Dimension.None);
        return bounds;

        void Add(string name, double low, double high, Dimension dimension, QuantityRange limit)
        {
            if (limit.Dimension == dimension && limit.High > 0)
                (low, high) = (Math.Max(limit.Low, 0), double.IsFinite(limit.High) ? limit.High : Math.Max(high, limit.Low));
            bounds[name] = new(Math.Min(low, high), Math.Max(low, high), dimension);
        }
    }

    /// <summary>One animal of that size, on paper.</summary>
    public static BodyMeasure? Measure(string measure, double size, TaxonGroup group)
    {
        var specimen = new Specimen { Id = "bound", Group = group.Id };
        return BodyMeasure.Estimated(measure switch
        {
            "length" => specimen with { Length = Length.FromMeters(size) },
            "volume" => specimen with { DisplacementVolume = Volume.FromCubicMeters(size) },
            "half-thickness" => specimen with { Thickness = Length.FromMeters(2 * size) },
            _ => specimen with { Mass = Mass.FromKilograms(size) },
        }, group, []).Value;
    }
}
