using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>Sea water of a practical salinity, brackish water included.</summary>
internal sealed class SeaWater() : Substance("sea-water")
{
    /// <summary>Least salinity that is told from fresh water, and the least of the density formula's use here.</summary>
    private const double Least = 2;

    private static readonly Phrase GiveSalinity = new(
        "strength-out-of-place.sea-water.remedy", "leave the percentage out; salt is given as in 'sea water, salinity 35'");

    private static readonly Phrase WriteSalinity = new("unexpected-text.salinity.remedy", "write 'salinity 35' there, or nothing");
    private static readonly Phrase OutOfRange = new("salinity-out-of-range", "a salinity of {salinity:0.###} is outside {least:0.###} to {most:0.###}");
    private static readonly Phrase GivePractical = new("salinity-out-of-range.remedy", "give the practical salinity of the sea water");

    /// <summary>What is dissolved in it.</summary>
    public static Solute Salt { get; } = new("sea-salt", 0);

    public override Phrase Noun { get; } = new("substance.sea-water", "sea water");

    public override ImmutableArray<string> Examples => ["sea water"];

    public override bool IsWater => true;

    public override Message Gear => default;

    public override Message FirstAid => default;

    public override Fluid Of(double percent, StrengthBasis basis) => OfSalinity(SeaWaterDensity.OceanSalinity);

    /// <summary>Sea water of a practical salinity, 2 to 42.</summary>
    public static Fluid OfSalinity(double salinity)
    {
        salinity = Salinity(salinity);
        return new(SeaWater, 0, StrengthBasis.None, new((Salt, salinity / 1000)), detail: salinity);
    }

    /// <summary>A salinity to a thousandth, within its limits.</summary>
    public static double Salinity(double salinity) => Fluid.Rounded(salinity, Least, SeaWaterDensity.HighestSalinity);

    /// <summary>The salinity behind a comma, that of the ocean where there is none; or what is wrong with it.</summary>
    public static Checked<Fluid>? Salinity(in WrittenFluid written, out double salinity)
    {
        salinity = SeaWaterDensity.OceanSalinity;
        if (written.Extra.Length == 0) return null;
        if (written.Salinity is not { } given) return FluidName.Leftover(written, WriteSalinity);
        salinity = given;
        return given is >= Least and <= SeaWaterDensity.HighestSalinity
            ? null
            : FluidName.Fault(
                "salinity-out-of-range",
                OutOfRange.With(("salinity", given), ("least", Least), ("most", SeaWaterDensity.HighestSalinity)),
                GivePractical,
                written.Where);
    }

    /// <summary>The salinity in a canonical name; empty for the ocean's.</summary>
    public static string SalinityOf(Fluid fluid) => fluid.Salinity > 0 && !fluid.Salinity.Equals(SeaWaterDensity.OceanSalinity)
        ? $", salinity {StrengthText.Number(fluid.Salinity, 3)}"
        : "";

    /// <summary>What its salt adds to the density of the water in a mixture, kg/m³.</summary>
    public static double Added(in Composition composition, double celsius)
    {
        if (composition[Salt] is not (> 0 and var salt)) return 0;
        var salinity = Math.Min(1000 * salt / (salt + composition.Water), SeaWaterDensity.HighestSalinity);
        return SeaWaterDensity.Of(salinity, celsius) - SeaWaterDensity.Of(0, celsius);
    }

    internal override bool CloudsAlcohol => true;

    internal override IEnumerable<FluidWord> Words => Called("sea water", "seawater", "filtered sea water", "marine water");

    internal override IEnumerable<string> Canonical => ["sea water"];

    internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word)
    {
        if (written.Percent is not null) return Substances.Water.GivenStrength(written, GiveSalinity);
        return Salinity(written, out var salinity) ?? new(OfSalinity(salinity), []);
    }

    internal override string NameOf(Fluid fluid) => $"sea water{SalinityOf(fluid)}";

    internal override double Density(in Composition composition, double celsius) => WaterDensity.Of(celsius) + Added(composition, celsius);

    internal override double DensityDoubt(in Composition composition, double celsius) => WaterDensity.Doubt;

    internal override Fluid DiluentOf(Fluid target) => target;
}
