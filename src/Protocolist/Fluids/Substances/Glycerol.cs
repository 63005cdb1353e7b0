using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Contact;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>Glycerol and water: the last fluid of cleared and stained specimens. Density: Volk and Kähler 2018, see <see cref="GlycerolWater"/>.</summary>
internal sealed class Glycerol() : LiquidInWater(Liquid, 70)
{
    // Pure glycerol, closed cup 160 °C, open cup 177 (suppliers' sheets, from memory); a little water quenches it.
    private const double PureFlashPoint = 160, PureFromMassPercent = 99;

    /// <summary>C3H8O3 (IUPAC abridged atomic weights). Not classified under CLP; limits in the air are for its mist alone.</summary>
    public static Solute Liquid { get; } = new("glycerol", 92.094);

    public override ImmutableArray<string> Examples => ["glycerol 70 %vol", "glycerol 85 %mass"];

    public override bool Dehydrates => true;

    /// <summary>Weaker than 60 it moulds without a biocide.</summary>
    public override KeepingBand Keeping { get; } = new(
        60, 60, 100, "van Dam 2014 (natural-history collections list): above 60 % at 35 to 55 % of relative humidity");

    public override Message Gear => default;

    public override Message FirstAid => default;

    public override double PureAt20 => GlycerolWater.PureAt20;

    public override double DensityOf(double massFraction, double celsius) => GlycerolWater.Density(massFraction, celsius);

    public override double DensityErrorOf(double massFraction, double celsius) => GlycerolWater.DensityError(celsius);

    public override double MassFractionOfDensity(double density, double celsius) => GlycerolWater.MassFraction(density, celsius);

    public override double MassFractionOfVolume(double volumeFraction) => GlycerolWater.MassFractionOfVolume(volumeFraction);

    internal override IEnumerable<FluidWord> Words => Called("glycerol", "glycerine", "glycerin");

    /// <summary>Glycerol as it is bought, 99.5 % (ask: 85 to 87 % is sold too).</summary>
    public override Fluid UsualStock => Of(99.5, StrengthBasis.Mass);

    internal override double? FlashPoint(Fluid fluid) => 100 * fluid.Composition[Liquid] >= PureFromMassPercent ? PureFlashPoint : null;

    internal override double FlashPointDoubt => 17;

    internal override string HazardSource => "not classified under CLP (suppliers' sheets, from memory)";

    internal override WasteClass WasteOf(Fluid fluid) => WasteClass.OrganicInWater;

    /// <summary>Raoult's law over the water alone, within 3 points of the humidities in producers' tables (from memory); glycerol stays.</summary>
    internal override Vapours VapoursOver(Fluid fluid, double celsius)
    {
        double water = fluid.Composition.Water / Vapour.WaterMolar, glycerol = fluid.Composition[Liquid] / Liquid.MolarMass;
        return new(0, water / (water + glycerol) * Vapour.Water(celsius));
    }
}
