using FsCheck;
using FsCheck.Fluent;
using Protocolist.Fluids;
using Protocolist.Fluids.Densities;

namespace Protocolist.Properties.Fluids;

public class FluidProperties
{
    private static readonly Gen<double> Percent = Gen.Choose(1, 100_000).Select(n => n / 1000.0);

    private static readonly Gen<Fluid> AnyFluid = Gen.OneOf(
        Gen.Elements(Fluid.Water, Fluid.DistilledWater, Fluid.TapWater),
        Gen.Choose(2000, 42_000).Select(s => Fluid.SeaWater(s / 1000.0)),
        Percent.Select(p => Fluid.Ethanol(p)),
        Percent.Select(p => Fluid.Ethanol(p, StrengthBasis.Mass)),
        Percent.Select(p => Fluid.Isopropanol(p)),
        Percent.Select(p => Fluid.Isopropanol(p, StrengthBasis.Mass)),
        from f in Gen.Choose(10_000, 50_000) from m in Gen.Choose(0, 20_000) select Fluid.FormaldehydeStock(f / 1000.0, methanolMassPercent: m / 1000.0),
        from p in Gen.Choose(1, 30_000) from b in Gen.Elements(Enum.GetValues<Buffering>()) select Fluid.Formalin(p / 1000.0, b),
        from p in Gen.Choose(1, 30_000) from b in Gen.Elements(Enum.GetValues<Buffering>()) select Fluid.FormaldehydeWeightPerVolume(p / 1000.0, b, 28.5));

    [Property(MaxTest = 500)]
    public Property A_fluid_is_read_back_from_its_name() => Prop.ForAll(AnyFluid.ToArbitrary(), fluid =>
    {
        var read = Fluid.Read(fluid.Name);
        return (read.Findings.IsEmpty && read.Value == fluid && read.Value!.Name == fluid.Name).Label($"{fluid.Name} -> {read.Value?.Name} {string.Join("; ", read.Findings)}");
    });

    [Property(MaxTest = 300)]
    public Property Any_fluids_density_falls_between_ten_and_forty_degrees() => Prop.ForAll(AnyFluid.ToArbitrary(), fluid =>
    {
        var before = fluid.DensityAt(10.0);
        for (var celsius = 11.0; celsius <= 40; celsius++)
        {
            var now = fluid.DensityAt(celsius);
            if (!(now < before && now is > 700 and < 1250)) return false;
            before = now;
        }

        return true;
    });

    [Property]
    public bool Reading_any_text_neither_throws_nor_stays_silent(NonNull<string> text)
    {
        var read = Fluid.Read(text.Get);
        return read.Value is not null || read.HasErrors;
    }

    [Property(MaxTest = 300)]
    public Property Isopropanol_is_monotonic_at_every_temperature() => Prop.ForAll(
        Gen.Choose(0, 4000).Select(t => t / 100.0).ToArbitrary(),
        celsius => Enumerable.Range(0, 200).All(i => IsopropanolWater.Density((i + 1) / 200.0, celsius) < IsopropanolWater.Density(i / 200.0, celsius)));

    [Property(MaxTest = 500)]
    public Property Ethanol_strength_of_a_density_is_the_strength() => Prop.ForAll(
        (from p in Gen.Choose(0, 1_000_000) from t in Gen.Choose(-20_000, 40_000) select (P: p / 1e6, T: t / 1e3)).ToArbitrary(),
        at => Math.Abs(EthanolWater.MassFraction(EthanolWater.Density(at.P, at.T), at.T) - at.P) < 1e-9);

    [Property(MaxTest = 300)]
    public Property Volume_and_mass_percent_are_inverse() => Prop.ForAll(Percent.ToArbitrary(), percent =>
        Math.Abs(100 * EthanolWater.VolumeFraction(Fluid.Ethanol(percent).Composition[Solute.Ethanol]) - percent) < 1e-9
        && Math.Abs(100 * IsopropanolWater.VolumeFraction(Fluid.Isopropanol(percent).Composition[Solute.Isopropanol]) - percent) < 1e-9);
}
