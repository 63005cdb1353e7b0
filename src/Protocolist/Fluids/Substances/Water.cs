using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids.Substances;

/// <summary>Fresh water of one make: told apart by what it may be mixed into, alike in everything else.</summary>
internal sealed class Water(string id, string name, params string[] otherNames) : Substance(id)
{
    private static readonly Phrase NoStrength = new("strength-out-of-place", "'{text}' gives water a strength");
    private static readonly Phrase LeaveItOut = new("strength-out-of-place.remedy", "leave the percentage out");

    public override Phrase Noun { get; } = new($"substance.{id}", name);

    public override ImmutableArray<string> Examples => [name];

    public override bool IsWater => true;

    public override Message Gear => default;

    public override Message FirstAid => default;

    public override Fluid Of(double percent, StrengthBasis basis) => new(this, 0, StrengthBasis.None, default);

    internal override IEnumerable<FluidWord> Words => Called([name, .. otherNames]);

    internal override IEnumerable<string> Canonical => [name];

    internal override Checked<Fluid> Read(in WrittenFluid written, in FluidWord word)
    {
        if (written.Percent is not null) return GivenStrength(written, LeaveItOut);
        return written.Extra.Length > 0 ? FluidName.Leftover(written) : new(Of(0, StrengthBasis.None), []);
    }

    /// <summary>Water of any make has no strength.</summary>
    internal static Checked<Fluid> GivenStrength(in WrittenFluid written, Phrase remedy) =>
        FluidName.Fault("strength-out-of-place", NoStrength.With(("text", written.Text)), remedy, written.Where);

    internal override string NameOf(Fluid fluid) => name;

    internal override double Density(in Composition composition, double celsius) => WaterDensity.Of(celsius);

    internal override double DensityDoubt(in Composition composition, double celsius) => WaterDensity.Doubt;

    internal override Fluid DiluentOf(Fluid target) => target;
}
