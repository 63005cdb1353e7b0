using Protocolist.Fluids;
using Protocolist.Fluids.Safety;
using static System.FormattableString;

namespace Protocolist.Checks.Cautions;

/// <summary>What can hurt a person in a fluid, in sentences.</summary>
internal static class FluidCautions
{
    /// <summary>Said once a plan, after the first of all.</summary>
    public const string Deference =
        "The safety data sheet of your own bottle, local codes, and a licensed or competent person where they ask for one come before this sheet.";

    // Common practice; gloves: Simmons, AIC/FAIC storage book (neoprene); eye wash: 29 CFR 1910.1048.
    private const string FormalinGear =
        "Wear nitrile gloves against splashes, neoprene where hands go in; goggles, apron; work in a hood or outdoors, an eye wash within reach. Never near bleach or hydrochloric acid.";

    private const string AlcoholGear = "Wear goggles and gloves; no flame, spark or hot plate near; ventilate; keep it covered.";

    // First aid in the words of safety data sheets, shortened: common practice.
    private const string FormalinAid =
        "First aid: eyes 15 minutes under running water; skin with plenty of water, wet clothes off; breathed in, fresh air; swallowed, no vomiting; a doctor each time.";

    private const string AlcoholAid = "First aid: eyes some minutes under running water; clothes on fire, water or a blanket; swallowed or dizzy, fresh air and a doctor.";

    /// <summary>The sentences for one fluid, the hazards first; none for water.</summary>
    public static IEnumerable<string> Of(Fluid fluid)
    {
        if (fluid.IsWater) yield break;
        var hazards = Hazards.Of(fluid);
        if (hazards.SignalWord.Length > 0)
            yield return $"{hazards.SignalWord.ToUpperInvariant()}: {(fluid.HasFormaldehyde ? fluid.Kind == FluidKind.FormaldehydeStock ? "formaldehyde stock" : "formalin" : fluid.Name)}: {string.Join("; ", hazards.Statements.Select(HazardWords.Of))}.";
        yield return fluid.HasFormaldehyde ? FormalinGear : AlcoholGear;
        yield return Limits(fluid.HasFormaldehyde ? "formaldehyde" : fluid.Kind == FluidKind.Ethanol ? "ethanol" : "isopropanol");
        yield return fluid.HasFormaldehyde ? FormalinAid : AlcoholAid;
    }

    /// <summary>One sentence for mixing from formaldehyde stock, whose hazards go beyond those of the formalin made of it.</summary>
    public static string OfStock(Fluid stock)
    {
        var hazards = Hazards.Of(stock);
        return $"{hazards.SignalWord.ToUpperInvariant()}, when mixing: {stock.Name}: {string.Join("; ", hazards.Statements.Select(HazardWords.Of))}. Face shield, gloves over the wrist, in a hood or outdoors.";
    }

    /// <summary>The limits of every authority, dated: facts for information.</summary>
    private static string Limits(string substance)
    {
        var all = ExposureLimits.All.Where(l => l.Substance == substance && l.Kind is ExposureKind.WorkingDay or ExposureKind.FifteenMinutes or ExposureKind.Ceiling)
            .GroupBy(l => (l.Authority, l.Year))
            .Select(g => Invariant($"{g.Key.Authority}, {g.Key.Year}: {string.Join(", ", g.Select(l => Said(l)))}"));
        return $"Limits for {substance} in air, ppm: {string.Join("; ", all)}.";
    }

    private static string Said(ExposureLimit limit) => limit.Kind switch
    {
        ExposureKind.WorkingDay => Invariant($"{limit.Ppm:0.###} a day"),
        ExposureKind.Ceiling => Invariant($"never above {limit.Ppm:0.###}"),
        _ => Invariant($"{limit.Ppm:0.###} for 15 minutes"),
    };
}
