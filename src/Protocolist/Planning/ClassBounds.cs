using System.Collections.Immutable;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>Between what bounds the measures of all specimens of a class lie. Sizes rise together, so the ends of the class give the ends of the rest.</summary>
internal static class ClassBounds
{
    /// <summary>The largest animal anybody puts into a vessel; what a class without an upper limit ends at. The project's choice.</summary>
    private const double HeaviestKilograms = 500;
    private const double LightestKilograms = 1e-9;

    /// <summary>As many as the specimen file takes.</summary>
    private const double MostAnimals = 1e6;

    /// <summary>Beyond what groups' proportions say, single animals are thinner and thicker.</summary>
    private const double Spread = 2;

    /// <summary>Name → bounds; null where the class limits nothing that leads to a size.</summary>
    public static ImmutableDictionary<string, QuantityRange>? Of(SpecimenClass taxon, TaxonGroup group)
    {
        var small = Ends(taxon, group, low: true);
        var large = Ends(taxon, group, low: false);
        if (small is null || large is null) return null;
        var bounds = ImmutableDictionary.CreateBuilder<string, QuantityRange>(StringComparer.Ordinal);
        Add("specimen.mass", small.Mass.Low.Kilograms, large.Mass.High.Kilograms, Dimension.OfMass, taxon.Limits.GetValueOrDefault("mass"));
        Add("specimen.volume", small.Volume.Low.CubicMeters, large.Volume.High.CubicMeters, Dimension.OfVolume, taxon.Limits.GetValueOrDefault("volume"));
        Add("specimen.length", small.Length.Low.Meters / Spread, large.Length.High.Meters * Spread, Dimension.OfLength, taxon.Limits.GetValueOrDefault("length"));
        Add("specimen.half-thickness", small.HalfThickness.Low.Meters / Spread, large.HalfThickness.High.Meters * Spread, Dimension.OfLength, taxon.Limits.GetValueOrDefault("half-thickness"));
        bounds["specimen.lot-volume"] = new(bounds["specimen.volume"].Low, bounds["specimen.volume"].High * MostAnimals, Dimension.OfVolume);
        bounds["specimen.lot-mass"] = new(bounds["specimen.mass"].Low, bounds["specimen.mass"].High * MostAnimals, Dimension.OfMass);
        bounds["specimen.count"] = new(1, MostAnimals, Dimension.None);
        bounds["specimen.water-share"] = new(group.WaterFraction.Low, group.WaterFraction.High, Dimension.None);
        return bounds.ToImmutable();

        void Add(string name, double low, double high, Dimension dimension, QuantityRange limit)
        {
            if (limit.Dimension == dimension && limit.High > 0) (low, high) = (Math.Max(limit.Low, 0), double.IsFinite(limit.High) ? limit.High : Math.Max(high, limit.Low));
            bounds[name] = new(Math.Min(low, high), Math.Max(low, high), dimension);
        }
    }

    private static BodyMeasure? Ends(SpecimenClass taxon, TaxonGroup group, bool low)
    {
        var specimen = new Specimen { Id = "bound", Group = group.Id };
        if (taxon.Limits.TryGetValue("mass", out var mass)) return Measure(specimen with { Mass = Mass.FromKilograms(End(mass, LightestKilograms, HeaviestKilograms)) });
        if (taxon.Limits.TryGetValue("length", out var length)) return Measure(specimen with { Length = Length.FromMeters(End(length, 1e-4, 20)) });
        if (taxon.Limits.TryGetValue("volume", out var volume)) return Measure(specimen with { DisplacementVolume = Volume.FromCubicMeters(End(volume, LightestKilograms / 1e3, HeaviestKilograms / 1e3)) });
        if (taxon.Limits.TryGetValue("half-thickness", out var half)) return Measure(specimen with { Thickness = Length.FromMeters(2 * End(half, 1e-5, 1)) });
        return Measure(specimen with { Mass = Mass.FromKilograms(low ? LightestKilograms : HeaviestKilograms) });

        double End(QuantityRange limit, double least, double most) => Math.Clamp(low ? limit.Low : limit.High, least, most);
    }

    private static BodyMeasure? Measure(Specimen specimen) => BodyMeasure.Of(specimen).Value;
}
