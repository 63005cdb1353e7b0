using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Mixing;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>A mixture of one strength that is used as it comes: a house's own, or one that is bought.</summary>
internal sealed class ReadyMade(string id, string name, Composition composition, double densityAt20, double densityDoubt) : Substance(id)
{
    public override Phrase Noun { get; } = new($"substance.{id}", name);

    public override ImmutableArray<string> Examples => [name];

    public override bool Fixes => Contains.Fixes;

    public override Message Gear => Contains.Gear;

    public override Message FirstAid => Contains.FirstAid;

    public override Solute? Active => Contains.Active;

    public override Fluid UsualStock => Of(0, StrengthBasis.None);

    public double? FlashPointCelsius { get; init; }

    /// <summary>On a bench a fluid says how strong it is; this one says that nothing was added to it.</summary>
    internal override IEnumerable<FluidWord> Words => Called(name, $"{name} undiluted");

    internal override IEnumerable<string> Canonical => [name];

    internal override string HazardSource => "CLP limits for mixtures, by what it was said to contain";

    /// <summary>The substance that decides how it is handled: formaldehyde before alcohols, those before water.</summary>
    private Substance Contains =>
        composition[Solute.Formaldehyde] > 0 ? Formaldehyde
        : composition[Solute.Ethanol] > 0 || composition[Solute.Methanol] > 0 ? Ethanol
        : composition[Solute.Isopropanol] > 0 ? Isopropanol
        : Water;

    public override Fluid Of(double percent, StrengthBasis basis) => new(this, 0, StrengthBasis.None, composition);

    internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word) => new(Of(0, StrengthBasis.None), []);

    internal override string NameOf(Fluid fluid) => name;

    /// <summary>It is taken to widen as water does: alcohol in it widens faster, which the band has to cover.</summary>
    internal override double Density(in Composition composition, double celsius) => densityAt20 + WaterDensity.Of(celsius) - WaterDensity.Of(20);

    internal override double DensityDoubt(in Composition composition, double celsius) => densityDoubt + 0.6 * Math.Abs(celsius - 20);

    internal override double? VolumePercent(Fluid fluid, Solute liquid) =>
        liquid == Solute.Ethanol ? Share(Ethanol) : liquid == Solute.Isopropanol ? Share(Isopropanol) : null;

    internal override Fluid DiluentOf(Fluid target) => Fluid.DistilledWater;

    /// <summary>It is poured as it comes: nobody but its maker knows how it is made up.</summary>
    internal override Refusal? Refuses(Fluid target, Fluid stock, string name) =>
        stock.Substance != this && stock.Substance.Active is { } active ? Refusal.Stranger(target, name, active) : null;

    internal override double? FlashPoint(Fluid fluid) => FlashPointCelsius;

    private double Share(Substance of) => 100 * composition[of.Active!] * densityAt20 / of.Of(100, StrengthBasis.Volume).DensityAt(20.0);
}
