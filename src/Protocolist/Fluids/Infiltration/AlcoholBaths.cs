using System.Collections.Immutable;
using Protocolist.Fluids.Substances;
using UnitsNet;

namespace Protocolist.Fluids.Infiltration;

/// <summary>One alcohol bath, fresh.</summary>
/// <param name="Alcohol">Ethanol or isopropanol of some strength.</param>
/// <param name="Volume">How much of it surrounds the specimen, at 20 °C.</param>
internal sealed record AlcoholBath(Fluid Alcohol, Volume Volume);

/// <summary>Strength of alcohol baths once the specimen's water has mixed in, contraction included.</summary>
/// <remarks>
/// Mass balance: after each bath tissue fluid and bath have one strength, and the specimen keeps its volume of fluid; shrinkage would make the
/// true result slightly stronger. Strengths are %vol at 20 °C. Methods throw <see cref="ArgumentException"/> for baths that are not alcohol of one kind.
/// </remarks>
internal static class AlcoholBaths
{
    // A series longer than this is no plan.
    private const int MostBaths = 50;

    /// <summary>Strength after each of a series of baths, full equilibrium each time.</summary>
    /// <param name="tissueWater">Fluid volume inside the specimen; water at first.</param>
    /// <param name="baths">The baths in order.</param>
    /// <param name="startVolumePercent">Strength inside the specimen before, %vol of the same alcohol.</param>
    /// <returns>%vol at 20 °C after each bath.</returns>
    public static ImmutableArray<double> Strengths(Volume tissueWater, IEnumerable<AlcoholBath> baths, double startVolumePercent = 0)
    {
        ArgumentNullException.ThrowIfNull(baths);
        var strengths = ImmutableArray.CreateBuilder<double>();
        LiquidInWater? scale = null;
        var inside = 0.0;
        foreach (var bath in baths)
        {
            var now = LiquidOf(bath.Alcohol);
            if (scale is null) inside = now.MassFractionOfVolume(startVolumePercent / 100);
            else if (scale != now) throw new ArgumentException("Ethanol and isopropanol are not mixed.", nameof(baths));
            scale = now;
            inside = Equilibrium(now, tissueWater.CubicMeters, inside, bath);
            strengths.Add(100 * now.VolumeFraction(inside));
        }

        return strengths.ToImmutable();
    }

    /// <summary>How many equal baths bring the specimen to a strength.</summary>
    /// <param name="tissueWater">Water in the specimen.</param>
    /// <param name="bath">The bath, fresh each time.</param>
    /// <param name="keepingVolumePercent">The strength to reach, %vol.</param>
    /// <returns>1 to 50; null where the bath is too weak ever to do it: a bath of just the keeping strength never reaches it.</returns>
    public static int? Needed(Volume tissueWater, AlcoholBath bath, double keepingVolumePercent)
    {
        ArgumentNullException.ThrowIfNull(bath);
        if (bath.Alcohol.AlcoholVolumePercent <= keepingVolumePercent) return null;
        var after = Strengths(tissueWater, Enumerable.Repeat(bath, MostBaths));
        for (var i = 0; i < after.Length; i++)
        {
            if (after[i] >= keepingVolumePercent) return i + 1;
        }

        return null;
    }

    /// <summary>The strength of a last bath that ends just on the keeping strength.</summary>
    /// <param name="alcohol">Ethanol or isopropanol; its own strength does not matter.</param>
    /// <param name="tissueWater">Fluid in the specimen.</param>
    /// <param name="bath">Volume of the bath.</param>
    /// <param name="keepingVolumePercent">The strength to end on, %vol.</param>
    /// <param name="startVolumePercent">Strength in the specimen before, %vol.</param>
    /// <returns>%vol; null where even the pure alcohol would not do.</returns>
    public static double? LastBath(Fluid alcohol, Volume tissueWater, Volume bath, double keepingVolumePercent, double startVolumePercent = 0)
    {
        var scale = LiquidOf(alcohol);
        var inside = scale.MassFractionOfVolume(startVolumePercent / 100);
        var wanted = scale.MassFractionOfVolume(keepingVolumePercent / 100);
        double End(double massFraction) => Equilibrium(scale, tissueWater.CubicMeters, inside, bath.CubicMeters, massFraction);
        if (End(1) < wanted) return null;
        double low = 0, high = 1;
        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            if (End(middle) < wanted) low = middle;
            else high = middle;
        }

        return 100 * scale.VolumeFraction((low + high) / 2);
    }

    /// <summary>What a bath is of.</summary>
    internal static LiquidInWater LiquidOf(Fluid alcohol)
    {
        ArgumentNullException.ThrowIfNull(alcohol);
        return alcohol is { IsAlcohol: true, Substance: LiquidInWater liquid }
            ? liquid
            : throw new ArgumentException($"{alcohol.Name} is no alcohol.", nameof(alcohol));
    }

    /// <summary>Mass fraction in tissue and bath once they have one strength; volume of the tissue's fluid in m³.</summary>
    internal static double Equilibrium(LiquidInWater liquid, double tissue, double inside, AlcoholBath bath) =>
        Equilibrium(liquid, tissue, inside, bath.Volume.CubicMeters, bath.Alcohol.Composition[liquid.Active]);

    private static double Equilibrium(LiquidInWater liquid, double tissue, double inside, double bath, double outside)
    {
        double inTissue = tissue * liquid.DensityOf(inside, 20), inBath = bath * liquid.DensityOf(outside, 20);
        return (inTissue * inside + inBath * outside) / (inTissue + inBath);
    }
}
