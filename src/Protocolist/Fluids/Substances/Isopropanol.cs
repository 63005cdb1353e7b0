using System.Collections.Immutable;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>Isopropanol (2-propanol) and water. Density: Lebo 1921, see <see cref="IsopropanolWater"/>.</summary>
internal sealed class Isopropanol() : Alcohol(Liquid)
{
    // Closed cup, by %vol: 12 pure (NIOSH Pocket Guide 0359), 14 at 91 and 18 at 70 (safety data sheets); below 70 from memory, good to 5 K.
    private static readonly MonotoneCurve ByVolume = new([10, 20, 30, 50, 70, 91, 100], [44, 34, 28, 21, 18, 14, 12]);

    /// <summary>C3H7OH (IUPAC abridged atomic weights).</summary>
    public static Solute Liquid { get; } = new(
        "isopropanol",
        60.096,
        // NIOSH Pocket Guide 0359.
        ("OSHA and NIOSH (USA)", true, ExposureKind.WorkingDay, 400, null, 2019),
        ("NIOSH Pocket Guide (USA, recommended)", false, ExposureKind.FifteenMinutes, 500, null, 2019),
        ("NIOSH Pocket Guide (USA)", false, ExposureKind.ImmediateDanger, 2000, null, 2019),
        // From memory.
        ("ACGIH (recommended)", false, ExposureKind.WorkingDay, 200, null, 2003),
        ("ACGIH (recommended)", false, ExposureKind.FifteenMinutes, 400, null, 2003))
    {
        InTissue = (0.25e-9, 0.5e-9),
        // Generic limits of CLP for mixtures: eye irritation from 10 %, narcosis from 20 % by mass.
        Hazards = [new("H319", 10), new("H336", 20)],
    };

    public override ImmutableArray<string> Examples => ["isopropanol 50 %vol"];

    /// <summary>That it does not preserve below 30, ten points below what is kept, is the project's choice.</summary>
    public override KeepingBand Keeping { get; } = new(30, 40, 55, "USGS 93-104, Simmons 2009");

    public override double PureAt20 => IsopropanolWater.PureAt20;

    public override double DensityOf(double massFraction, double celsius) => IsopropanolWater.Density(massFraction, celsius);

    public override double DensityErrorOf(double massFraction, double celsius) => IsopropanolWater.DensityError(massFraction, celsius);

    public override double MassFractionOfDensity(double density, double celsius) => IsopropanolWater.MassFraction(density, celsius);

    public override double MassFractionOfVolume(double volumeFraction) => IsopropanolWater.MassFractionOfVolume(volumeFraction);

    internal override IEnumerable<FluidWord> Words => Called("isopropanol", "isopropyl alcohol", "2-propanol", "propan-2-ol", "ipa");

    public override Fluid UsualStock => Fluid.Isopropanol(99.8);

    internal override string HazardSource => "safety data sheets of 2-propanol; CLP limits for mixtures";

    protected override MonotoneCurve FlashPoints => ByVolume;

    internal override string Transport(Fluid fluid, int? flammableCategory) => flammableCategory is null ? "" : "UN 1219 isopropanol, class 3";
}
