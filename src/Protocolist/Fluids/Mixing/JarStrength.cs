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
internal sealed record JarCorrection(Fluid Target, Volume Draw, Volume Add, Mass AddMass, string Stock, Volume Result)
{
    private static readonly Phrase AddOnly = new("jar-correction.add", "add {add:mix} of {stock}, mix, and measure again after a day");
    private static readonly Phrase DrawAndAdd = new(
        "jar-correction.draw-and-add", "draw off {draw:mix}, then add {add:mix} of {stock}, mix, and measure again after a day");

    /// <summary>What to do, in one line, such as <c>draw off 120 mL, then add 310 mL of ethanol 96 %vol</c>.</summary>
    public Message Method => (Draw > Volume.Zero ? DrawAndAdd : AddOnly).With(("draw", Draw), ("add", Add), ("stock", Stock));

    /// <summary>What to do.</summary>
    /// <returns>English.</returns>
    public override string ToString() => Method.ToString();
}

/// <summary>Corrects the strength of a filled jar without emptying it: by adding where there is room, else with the least drawn off.</summary>
internal static class JarStrength
{
    private static readonly Phrase NoVolume = new(
        "volume-out-of-range.jar", "the amounts of fluid and room must not be negative, and the jar must hold some fluid");

    private static readonly Phrase MeasureJar = new("volume-out-of-range.jar.remedy", "measure the jar again");
    private static readonly Phrase CannotRaise = new("target-too-strong.jar", "{stock} cannot raise {jar} to {target}");
    private static readonly Phrase TakeStronger = new("target-too-strong.jar.remedy", "take a stronger stock");
    private static readonly Phrase CannotLower = new("target-out-of-reach", "{stock} cannot lower {jar} to {target}");
    private static readonly Phrase TakeWeaker = new("target-out-of-reach.remedy", "take a weaker stock, or water");
    private static readonly Phrase TissueHolds = new(
        "target-out-of-reach.tissue",
        "even with all fluid replaced {stock} does not bring the jar to {target}, for the specimen holds {tissue:mix} of the old strength");

    private static readonly Phrase ChangeTwice = new("target-out-of-reach.tissue.remedy", "take a stronger stock, or change the fluid twice");
    private static readonly Phrase WaterHasNone = new("target-out-of-reach.water", "water has no strength to bring about");
    private static readonly Phrase MixRecipe = new("target-out-of-reach.water.remedy", "mix a recipe instead");
    private static readonly Phrase Unlike = new("mixed-alcohols.jar", "{jar}, {stock} and {target} are not liquids of one kind");
    private static readonly Phrase OneThroughout = new("mixed-alcohols.jar.remedy", "use one alcohol, or formaldehyde, throughout");
    private static readonly Phrase Clouds = new("water-unfit-for-alcohol.jar", "{stock} makes alcohol cloudy");
    private static readonly Phrase TakeDistilled = new("water-unfit-for-alcohol.jar.remedy", "take distilled or deionised water");
    private static readonly Phrase SaltForFresh = new(
        "mixed-buffering.jar-sea-water",
        "{stock} is not for {target}: its calcium and magnesium fall out with buffers, and its carbonate buffers in another way");

    private static readonly Phrase TakeFresh = new("mixed-buffering.jar-sea-water.remedy", "take fresh water");
    private static readonly Phrase FreshForSalt = new(
        "mixed-buffering.jar-fresh-water", "{stock} is not for {target}: it weakens the sea water, and the animals swell");

    private static readonly Phrase TakeSea = new("mixed-buffering.jar-fresh-water.remedy", "take sea water of the same salinity");
    private static readonly Phrase OtherBuffering = new("mixed-buffering.jar", "{jar}, {stock} and {target} differ in buffering");
    private static readonly Phrase OneBuffering = new("mixed-buffering.jar.remedy", "use one buffering throughout");

    /// <summary>Brings a jar to a target strength with one stock, stronger to raise it, weaker (or water) to lower it.</summary>
    /// <param name="inJar">The fluid in the jar, at the strength it has now.</param>
    /// <param name="amount">How much of it stands in the jar.</param>
    /// <param name="target">The strength wanted.</param>
    /// <param name="stock">What is added.</param>
    /// <param name="room">How much more fluid the jar may hold.</param>
    /// <param name="at">Temperature of measuring, 0 to 40 °C.</param>
    /// <param name="inTissue">Fluid inside the specimen that shares the jar's strength and cannot be drawn off.</param>
    /// <returns>
    /// The correction; or <c>mixed-alcohols</c>, <c>mixed-buffering</c>, <c>target-too-strong</c>, <c>target-out-of-reach</c>,
    /// <c>volume-out-of-range</c>.
    /// </returns>
    public static Checked<JarCorrection> Bring(
        Fluid inJar, Volume amount, Fluid target, StockFluid stock, Volume room, Temperature at, Volume inTissue = default)
    {
        ArgumentNullException.ThrowIfNull(inJar);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(stock);
        var celsius = at.DegreesCelsius;
        if (!(amount.CubicMeters > 0 && room.CubicMeters >= 0 && inTissue.CubicMeters >= 0))
            return Fault("volume-out-of-range", NoVolume, MeasureJar);
        if (Mismatch(inJar, target, stock.Fluid) is { } mismatch) return mismatch;

        var active = target.Substance.Active!;
        double has = inJar.Composition[active], wants = target.Composition[active], brings = stock.Fluid.Composition[active];
        if (Math.Abs(has - wants) < 1e-5) return new(new(target, Volume.Zero, Volume.Zero, Mass.Zero, stock.Name, amount), []);
        Argument jarName = ("jar", inJar.Name), targetName = ("target", target.Name), stockName = ("stock", stock.Name);
        if ((wants - has) * (brings - wants) <= 0)
        {
            return wants > has
                ? Fault("target-too-strong", CannotRaise.With(stockName, jarName, targetName), TakeStronger)
                : Fault("target-out-of-reach", CannotLower.With(stockName, jarName, targetName), TakeWeaker);
        }

        var density = inJar.DensityAt(celsius);
        var whole = (amount + inTissue).CubicMeters * density;
        var added = whole * (wants - has) / (brings - wants);
        var full = (amount + inTissue + room).CubicMeters;
        var mixed = Composition.Mix([inJar.Composition, stock.Fluid.Composition], [whole, added]);
        var after = target.Substance.Density(mixed, celsius);
        var drawn = 0.0;
        if ((whole + added) / after > full)
        {
            var mass = full * after;
            added = mass * (wants - has) / (brings - has);
            drawn = (whole - (mass - added)) / density;
            if (drawn > amount.CubicMeters)
                return Fault("target-out-of-reach", TissueHolds.With(stockName, targetName, ("tissue", inTissue)), ChangeTwice);
        }

        // What contracts does so in jar and tissue together; the jar's own level is told by the sum.
        var result = (whole - drawn * density + added) / after - inTissue.CubicMeters;
        var add = Volume.FromCubicMeters(added / stock.Fluid.DensityAt(celsius));
        return new(
            new(target, Volume.FromCubicMeters(drawn), add, Mass.FromKilograms(added), stock.Name, Volume.FromCubicMeters(result)),
            []);
    }

    private static Checked<JarCorrection>? Mismatch(Fluid inJar, Fluid target, Fluid stock)
    {
        if (inJar.IsWater || target.IsWater) return Fault("target-out-of-reach", WaterHasNone, MixRecipe);
        Argument jarName = ("jar", inJar.Name), targetName = ("target", target.Name), stockName = ("stock", stock.Name);
        Fluid[] all = [inJar, target, stock];
        if (all.Where(f => !f.IsWater).Select(f => f.Substance.Active).Distinct().Count() > 1)
            return Fault("mixed-alcohols", Unlike.With(jarName, stockName, targetName), OneThroughout);
        if (target.IsAlcohol && stock.Substance.CloudsAlcohol) return Fault("water-unfit-for-alcohol", Clouds.With(stockName), TakeDistilled);
        if (target.HasFormaldehyde && stock.IsWater && stock.Salinity > 0 != target.Salinity > 0)
        {
            return stock.Salinity > 0
                ? Fault("mixed-buffering", SaltForFresh.With(stockName, targetName), TakeFresh)
                : Fault("mixed-buffering", FreshForSalt.With(stockName, targetName), TakeSea);
        }

        return all.Where(f => f is { HasFormaldehyde: true, Substance.IsConcentrate: false }).Select(f => f.Buffering).Distinct().Count() > 1
            ? Fault("mixed-buffering", OtherBuffering.With(jarName, stockName, targetName), OneBuffering)
            : null;
    }

    private static Checked<JarCorrection> Fault(string id, Message message, Message remedy) => new(null, [Finding.Error(id, message, remedy)]);
}
