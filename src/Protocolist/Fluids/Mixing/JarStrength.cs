using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>How a filled jar is brought to another strength.</summary>
/// <param name="Target">The strength it comes to.</param>
/// <param name="Draw">What is drawn off first; zero where there is room enough.</param>
/// <param name="Add">What is added then.</param>
/// <param name="AddMass">The same, weighed.</param>
/// <param name="Stock">What is added.</param>
/// <param name="Result">Fluid in the jar afterwards.</param>
public sealed record JarCorrection(Fluid Target, Volume Draw, Volume Add, Mass AddMass, string Stock, Volume Result)
{
    /// <summary>What to do, in one line.</summary>
    /// <returns>Text such as <c>draw off 120 mL, then add 310 mL of ethanol 96 %vol</c>.</returns>
    public override string ToString()
    {
        var add = $"add {MixText.Volume(Add)} of {Stock}, mix, and measure again after a day";
        return Draw > Volume.Zero ? $"draw off {MixText.Volume(Draw)}, then {add}" : add;
    }
}

/// <summary>Corrects the strength of a filled jar without emptying it: by adding where there is room, else with the least drawn off.</summary>
public static class JarStrength
{
    /// <summary>Brings a jar to a target strength with one stock, stronger to raise it, weaker (or water) to lower it.</summary>
    /// <param name="inJar">The fluid in the jar, at the strength it has now.</param>
    /// <param name="amount">How much of it stands in the jar.</param>
    /// <param name="target">The strength wanted.</param>
    /// <param name="stock">What is added.</param>
    /// <param name="room">How much more fluid the jar may hold.</param>
    /// <param name="at">Temperature of measuring, 0 to 40 °C.</param>
    /// <param name="inTissue">Fluid inside the specimen that shares the jar's strength and cannot be drawn off.</param>
    /// <returns>The correction; or <c>mixed-alcohols</c>, <c>mixed-buffering</c>, <c>target-too-strong</c>, <c>target-out-of-reach</c>, <c>volume-out-of-range</c>.</returns>
    public static Checked<JarCorrection> Bring(Fluid inJar, Volume amount, Fluid target, StockFluid stock, Volume room, Temperature at, Volume inTissue = default)
    {
        ArgumentNullException.ThrowIfNull(inJar);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(stock);
        var celsius = at.DegreesCelsius;
        if (!(amount.CubicMeters > 0 && room.CubicMeters >= 0 && inTissue.CubicMeters >= 0))
            return Fault("volume-out-of-range", "the amounts of fluid and room must not be negative, and the jar must hold some fluid", "measure the jar again");
        if (Unlike(inJar, target, stock.Fluid) is { } unlike) return unlike;

        double has = Shelf.Active(inJar, inJar.Composition), wants = Shelf.Active(target, target.Composition), brings = Shelf.Active(stock.Fluid, stock.Fluid.Composition);
        if (Math.Abs(has - wants) < 1e-5) return new(new(target, Volume.Zero, Volume.Zero, Mass.Zero, stock.Name, amount), []);
        if ((wants - has) * (brings - wants) <= 0)
        {
            return wants > has
                ? Fault("target-too-strong", $"{stock.Name} cannot raise {inJar.Name} to {target.Name}", "take a stronger stock")
                : Fault("target-out-of-reach", $"{stock.Name} cannot lower {inJar.Name} to {target.Name}", "take a weaker stock, or water");
        }

        var density = inJar.DensityAt(celsius);
        var whole = (amount + inTissue).CubicMeters * density;
        var added = whole * (wants - has) / (brings - wants);
        var full = (amount + inTissue + room).CubicMeters;
        var after = Mixed(inJar, stock.Fluid, whole, added).Density(celsius);
        var drawn = 0.0;
        if ((whole + added) / after > full)
        {
            var mass = full * after;
            added = mass * (wants - has) / (brings - has);
            drawn = (whole - (mass - added)) / density;
            if (drawn > amount.CubicMeters)
                return Fault("target-out-of-reach", $"even with all fluid replaced {stock.Name} does not bring the jar to {target.Name}, for the specimen holds {MixText.Volume(inTissue)} of the old strength", "take a stronger stock, or change the fluid twice");
        }

        // What contracts does so in jar and tissue together; the jar's own level is told by the sum.
        var result = (whole - drawn * density + added) / after - inTissue.CubicMeters;
        return new(
            new(target, Volume.FromCubicMeters(drawn), Volume.FromCubicMeters(added / stock.Fluid.DensityAt(celsius)), Mass.FromKilograms(added), stock.Name, Volume.FromCubicMeters(result)),
            []);
    }

    private static Composition Mixed(Fluid inJar, Fluid stock, double whole, double added) =>
        Composition.Mix([inJar.Composition, stock.Composition], [whole, added]);

    private static Checked<JarCorrection>? Unlike(Fluid inJar, Fluid target, Fluid stock)
    {
        if (inJar.IsWater || target.IsWater) return Fault("target-out-of-reach", "water has no strength to bring about", "mix a recipe instead");
        var alcohols = new[] { inJar, target, stock }.Where(f => !f.IsWater).Select(f => f.IsAlcohol ? f.Kind : FluidKind.Formaldehyde).Distinct().Count();
        if (alcohols > 1) return Fault("mixed-alcohols", $"{inJar.Name}, {stock.Name} and {target.Name} are not liquids of one kind", "use one alcohol, or formaldehyde, throughout");
        if (target.IsAlcohol && stock.Kind is FluidKind.TapWater or FluidKind.SeaWater)
            return Fault("water-unfit-for-alcohol", $"{stock.Name} makes alcohol cloudy", "take distilled or deionised water");
        if (target.HasFormaldehyde && stock.IsWater && stock.Kind is FluidKind.SeaWater != (target.Buffering is Buffering.SeaWater))
        {
            return stock.Kind is FluidKind.SeaWater
                ? Fault("mixed-buffering", $"{stock.Name} is not for {target.Name}: its calcium and magnesium fall out with buffers, and its carbonate buffers in another way", "take fresh water")
                : Fault("mixed-buffering", $"{stock.Name} is not for {target.Name}: it weakens the sea water, and the animals swell", "take sea water of the same salinity");
        }

        var bufferings = new[] { inJar, target, stock }.Where(f => f.Kind is FluidKind.Formaldehyde).Select(f => f.Buffering).Distinct().Count();
        return bufferings > 1
            ? Fault("mixed-buffering", $"{inJar.Name}, {stock.Name} and {target.Name} differ in buffering", "use one buffering throughout")
            : null;
    }

    private static Checked<JarCorrection> Fault(string id, string message, string remedy) => new(null, [Finding.Error(id, message, remedy)]);
}
