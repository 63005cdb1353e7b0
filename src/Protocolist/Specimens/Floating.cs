namespace Protocolist.Specimens;

/// <summary>The air that is still in a dead body: in lungs, air sacs, swim bladder, breathing tubes.</summary>
/// <param name="FleshKgPerM3">Density without it, kg/m³: as <paramref name="Share"/>.</param>
/// <param name="Share">Its share of the body's volume.</param>
internal sealed record BodyAir(double FleshKgPerM3, SourcedBand Share)
{
    /// <summary>For a group that holds none, below one that does.</summary>
    public static BodyAir None { get; } = new(0, new(0, 0, 0, "common practice"));
}

/// <summary>Whether a body floats, by its own density with the air in it, and what holds it down.</summary>
/// <param name="LowKgPerM3">With the most air.</param>
/// <param name="NominalKgPerM3">As it usually is.</param>
/// <param name="HighKgPerM3">With the least air, as after its openings were pressed or filled.</param>
internal readonly record struct Floating(double LowKgPerM3, double NominalKgPerM3, double HighKgPerM3)
{
    /// <summary>Plate and rod of glass, kg/m³: from memory.</summary>
    private const double Glass = 2500;

    /// <summary>Without air a body that is nearly as dense as the fluid hangs in it: within a hundredth it is not called floating. Judgement.</summary>
    private const double Hangs = 1.01;

    /// <summary>The density of a body with its air; eggs and larvae have none yet.</summary>
    public static Floating Of(BodyMeasure body)
    {
        var kind = BodyKind.Of(body);
        return Of(body.Group, kind == BodyKind.Eggs || kind == BodyKind.Larvae ? null : body.Group.Air);
    }

    /// <summary>The density of a grown animal with its air.</summary>
    public static Floating Of(TaxonGroup group) => Of(group, group.Air);

    private static Floating Of(TaxonGroup group, BodyAir? air)
    {
        if (air is not { Share.High: > 0 })
        {
            var own = group.DensityKgPerM3.Nominal * Hangs;
            return new(own, own, own);
        }

        return new(air.FleshKgPerM3 * (1 - air.Share.High), air.FleshKgPerM3 * (1 - air.Share.Nominal), air.FleshKgPerM3 * (1 - air.Share.Low));
    }

    /// <summary>Whether it floats as it usually is.</summary>
    public bool FloatsIn(double fluidKgPerM3) => NominalKgPerM3 < fluidKgPerM3;

    /// <summary>Whether it floats where it holds much air.</summary>
    public bool MayFloatIn(double fluidKgPerM3) => LowKgPerM3 < fluidKgPerM3;

    /// <summary>Whether it floats though the air was let out of it.</summary>
    public bool FloatsEmptiedIn(double fluidKgPerM3) => HighKgPerM3 < fluidKgPerM3;

    /// <summary>Glass that holds a body of that mass down, kg: its lift over what glass weighs in the fluid. Never below 0.</summary>
    public static double GlassKg(double massKg, double bodyKgPerM3, double fluidKgPerM3) =>
        Math.Max(0, massKg * ((fluidKgPerM3 / bodyKgPerM3) - 1) / (1 - (fluidKgPerM3 / Glass)));
}
