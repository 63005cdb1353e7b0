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

    /// <summary>The sentences for one fluid, the hazards first; none for water.</summary>
    public static IEnumerable<string> Of(Fluid fluid)
    {
        if (fluid.IsWater) yield break;
        var hazards = Hazards.Of(fluid);
        if (hazards.SignalWord.Length > 0)
            yield return $"{hazards.SignalWord.ToUpperInvariant()}: {(fluid.HasFormaldehyde ? fluid.Substance.Noun.English : fluid.Name)}: {string.Join("; ", hazards.Statements.Select(HazardWords.Of))}.";
        if (!fluid.Substance.Gear.IsEmpty) yield return fluid.Substance.Gear.ToString();
        if (fluid.Substance.Active is { Limits.IsEmpty: false } active) yield return Limits(active);
        if (!fluid.Substance.FirstAid.IsEmpty) yield return fluid.Substance.FirstAid.ToString();
    }

    /// <summary>One sentence for mixing from formaldehyde stock, whose hazards go beyond those of the formalin made of it.</summary>
    public static string OfStock(Fluid stock)
    {
        var hazards = Hazards.Of(stock);
        return $"{hazards.SignalWord.ToUpperInvariant()}, when mixing: {stock.Name}: {string.Join("; ", hazards.Statements.Select(HazardWords.Of))}. Face shield, gloves over the wrist, in a hood or outdoors.";
    }

    /// <summary>The limits of every authority, dated: facts for information.</summary>
    private static string Limits(Solute substance)
    {
        var all = substance.Limits.Where(l => l.Kind is ExposureKind.WorkingDay or ExposureKind.FifteenMinutes or ExposureKind.Ceiling)
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
