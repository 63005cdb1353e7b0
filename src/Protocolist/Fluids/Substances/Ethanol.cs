using System.Collections.Immutable;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>Ethanol and water. Density: OIML R 22, see <see cref="EthanolWater"/>.</summary>
internal sealed class Ethanol() : Alcohol(Liquid)
{
    // Special provision 144 of the transport rules: aqueous ethanol up to 24 %vol is free.
    private const double FreeInTransport = 24;

    // Closed cup, by %vol: a table in wide use, printed in one place against mass percent and in another against %vol; read here against %vol, which
    // gives the lower and safer value, good to 3 K.
    private static readonly MonotoneCurve ByVolume = new(
        [5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 96, 100],
        [62, 49, 36, 29, 26, 24, 22, 21, 20, 17, 17, 13]);

    /// <summary>C2H5OH (IUPAC abridged atomic weights).</summary>
    public static Solute Liquid { get; } = new(
        "ethanol",
        46.069,
        ("OSHA and NIOSH (USA)", true, ExposureKind.WorkingDay, 1000, null, 2019),
        ("NIOSH Pocket Guide (USA)", false, ExposureKind.ImmediateDanger, 3300, null, 2019),
        // From memory.
        ("ACGIH (recommended)", false, ExposureKind.FifteenMinutes, 1000, null, 2009))
    {
        InTissue = (0.3e-9, 0.5e-9),
        // The specific limit in suppliers' sheets for ethanol (from memory).
        Hazards = [new("H319", 50)],
    };

    public override ImmutableArray<string> Examples => ["ethanol 70 %vol", "ethanol 62.4 %mass", "ethanol 96 %vol"];

    public override KeepingBand Keeping { get; } = new(
        50, 65, 80,
        "Museum of Vertebrate Zoology handbook (70), Ahlander 2021 (80 too strong), Western Australian Museum 2011 (above 75); below 50 Simmons (from memory)");

    public override double PureAt20 => EthanolWater.PureAt20;

    public override double DensityOf(double massFraction, double celsius) => EthanolWater.Density(massFraction, celsius);

    /// <summary>Against the Bureau of Standards' measurements of 1913, 0.12 at most.</summary>
    public override double DensityErrorOf(double massFraction, double celsius) => 0.15;

    public override double MassFractionOfDensity(double density, double celsius) => EthanolWater.MassFraction(density, celsius);

    public override double MassFractionOfVolume(double volumeFraction) => EthanolWater.MassFractionOfVolume(volumeFraction);

    public override double VolumePercentDoubt(double massFraction, double celsius) => 0.1;

    internal override IEnumerable<FluidWord> Words => Called("ethanol", "ethyl alcohol", "etoh");

    public override double LowestCelsius => EthanolWater.LowestCelsius;

    public override Fluid UsualStock => Fluid.Ethanol(96);

    internal override double FlashPointDoubt => 3;

    internal override string HazardSource => "safety data sheets of absolute and 70 % ethanol; category by flash point";

    protected override MonotoneCurve FlashPoints => ByVolume;

    internal override string Transport(Fluid fluid, int? flammableCategory) =>
        fluid.AlcoholVolumePercent > FreeInTransport ? "UN 1170 ethanol solution, class 3" : "";
}
