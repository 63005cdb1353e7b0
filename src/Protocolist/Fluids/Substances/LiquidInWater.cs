using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>A liquid that mixes with water in any share and whose strength a density tells: its strength is by volume or by mass.</summary>
internal abstract class LiquidInWater(Solute liquid, double usualPercent) : Substance(liquid.Id)
{
    private static readonly Phrase WriteAs = new("strength-missing.liquid.remedy", "write it as '{example}'");
    private static readonly Phrase UnfitBasis = new("strength-basis-unfit", "'{text}' gives {liquid} on a basis that is not used for it");
    private static readonly Phrase GiveVolumeOrMass = new("strength-basis-unfit.remedy", "give %vol or %mass, as in '{example}'");
    private static readonly Phrase NoBasis = new(
        "strength-basis-missing", "'{text}' does not say by volume or by mass; read as %vol ({mass:0.#} %vol it would be by mass)");

    private static readonly Phrase WriteName = new("strength-basis-missing.remedy", "write '{name}'");

    public override Phrase Noun { get; } = new($"substance.{liquid.Id}", liquid.Name.English);

    public override ImmutableArray<string> Examples => [Example];

    /// <summary>Density of the pure liquid at 20 °C, kg/m³: strengths by volume refer to it.</summary>
    public abstract double PureAt20 { get; }

    /// <summary>Density in kg/m³ of a mass fraction, 0 to 1.</summary>
    public abstract double DensityOf(double massFraction, double celsius);

    /// <summary>Half the width of the band around it, kg/m³.</summary>
    public abstract double DensityErrorOf(double massFraction, double celsius);

    /// <summary>The mass fraction whose density in kg/m³ that is; NaN where no mixture has it.</summary>
    public abstract double MassFractionOfDensity(double density, double celsius);

    /// <summary>Mass fraction of a strength by volume given as a fraction (base 20 °C).</summary>
    public abstract double MassFractionOfVolume(double volumeFraction);

    /// <summary>Strength by volume as a fraction (base 20 °C) of a mass fraction.</summary>
    public double VolumeFraction(double massFraction) => massFraction * DensityOf(massFraction, 20) / PureAt20;

    /// <summary>Half the width of the band around a strength by volume, in points, that comes from the density.</summary>
    public virtual double VolumePercentDoubt(double massFraction, double celsius)
    {
        // What the density's error moves the strength by, from the densities on either side.
        double error = DensityErrorOf(massFraction, celsius) * (PureAt20 > WaterDensity.Of(20) ? 1 : -1);
        double density = DensityOf(massFraction, celsius), volume = 100 * VolumeFraction(massFraction);
        double stronger = MassFractionOfDensity(density + error, celsius), weaker = MassFractionOfDensity(density - error, celsius);
        var high = double.IsNaN(stronger) ? 100 : 100 * VolumeFraction(stronger);
        var low = double.IsNaN(weaker) ? 0 : 100 * VolumeFraction(weaker);
        return Math.Max(high - volume, volume - low);
    }

    /// <summary>A fluid of it, above 0 to 100 % by volume or by mass.</summary>
    public override Fluid Of(double percent, StrengthBasis basis)
    {
        percent = Fluid.Rounded(percent, 0.001, 100);
        var massFraction = basis switch
        {
            StrengthBasis.Volume => MassFractionOfVolume(percent / 100),
            StrengthBasis.Mass => percent / 100,
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "The strength of a liquid in water is by volume or by mass."),
        };
        return new(this, percent, basis, new((liquid, massFraction)));
    }

    public override Solute Active => liquid;

    public override bool HasStrengthByDensity => true;

    internal override IEnumerable<string> Canonical => [liquid.Name.English];

    internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word)
    {
        if (written.Extra.Length > 0) return FluidName.Leftover(written);
        if (written.Percent is not { } percent) return FluidName.NoStrength(written, WriteAs.With(("example", Example)));
        if (FluidName.Outside(written, percent) is { } outside) return outside;
        if (written.Basis is StrengthBasis.WeightPerVolume or StrengthBasis.PartsOfStock)
        {
            return FluidName.Fault(
                "strength-basis-unfit",
                UnfitBasis.With(("text", written.Text), ("liquid", Sort)),
                GiveVolumeOrMass.With(("example", Example)),
                written.Where);
        }

        var fluid = Of(percent, written.Basis is StrengthBasis.Mass ? StrengthBasis.Mass : StrengthBasis.Volume);
        if (written.Basis is not StrengthBasis.None) return new(fluid, []);
        return new(fluid, [Finding.Warning(
            "strength-basis-missing",
            NoBasis.With(("text", written.Text), ("mass", 100 * VolumeFraction(percent / 100))),
            WriteName.With(("name", fluid.Name)),
            written.Where)]);
    }

    internal override string NameOf(Fluid fluid) => $"{liquid.Name.English} {StrengthText.Of(fluid)}";

    internal override double Density(in Composition composition, double celsius) => DensityOf(composition[liquid], celsius);

    internal override double DensityDoubt(in Composition composition, double celsius) => DensityErrorOf(composition[liquid], celsius);

    internal override double? VolumePercent(Fluid fluid, Solute of) => of != liquid
        ? null
        : fluid.Basis is StrengthBasis.Volume ? fluid.Strength : 100 * VolumeFraction(fluid.Composition[liquid]);

    internal override Fluid DiluentOf(Fluid target) => Fluid.DistilledWater;

    /// <summary>What a sentence about its strength calls it.</summary>
    protected virtual Phrase Sort => Noun;

    private string Example => $"{liquid.Name.English} {StrengthText.Number(usualPercent, 1)} %vol";
}
