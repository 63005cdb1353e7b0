using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Specimens;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>The final fluid is neither too weak to keep nor too strong to handle.</summary>
internal static class KeepingStrengthOutOfBand
{
    private const double MouldGramsPerLitre = 12;
    private const double HardensGramsPerLitre = 45;

    public static PlanCheck Check { get; } = new(
        "keeping-strength-out-of-band",
        "the specimen: weak fluid lets it rot and mould, strong alcohol makes it brittle",
        "ethanol 65 to 80 %vol: Museum of Vertebrate Zoology handbook (70), Ahlander 2021 (80 too strong), Western Australian Museum 2011 (above 75); isopropanol 40 to 55: USGS 93-104, Simmons 2009; formalin above 12 g/L: Moore 2018 (mould in 2 to 3 % formalin); ethanol to 100 %vol for DNA: Michonneau 2017, Bishop Museum",
        Find)
    {
        Speaks =
        [
            new(Severity.Error, "the final jar holds ethanol below 50 %vol, isopropanol below 30 %vol, or plain water"),
            new(Severity.Warning, "it holds ethanol outside 65 to 80 %vol (to 100 for tissue for DNA), isopropanol outside 40 to 55 %vol, or formalin of 12 g/L of formaldehyde or less, or of more than 45"),
        ],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid: { } fluid } house) yield break;
        var (stop, low, high) = fluid.Substance.Keeping is { } band ? (band.Preserves, band.Low, band.High) : (0, 0, 100);
        var strength = fluid.AlcoholVolumePercent;

        // For DNA strong ethanol is wanted, stiff or not.
        if (plan.Specimen.IntendedUse == IntendedUse.TissueForDnaFirst && fluid.Substance == Substance.Ethanol) high = 100;
        if (fluid.IsAlcohol && strength < stop)
            yield return Finding.Error("keeping-strength-out-of-band", Invariant($"'{house.Id}' keeps it in {fluid.Name}; below {stop:0} %vol it does not preserve"), Invariant($"use {low:0} to {high:0} %vol")).At(house, "fluid");
        else if (fluid.IsAlcohol && (strength < low || strength > high))
            yield return Finding.Warning("keeping-strength-out-of-band", Invariant($"'{house.Id}' keeps it in {fluid.Name}; {low:0} to {high:0} %vol is right for keeping"), Invariant($"use {low:0} to {high:0} %vol")).At(house, "fluid");
        else if (fluid.FormaldehydeGramsPerLitre is { } grams && (grams <= MouldGramsPerLitre || grams > HardensGramsPerLitre))
            yield return Finding.Warning("keeping-strength-out-of-band", Invariant($"'{house.Id}' keeps it in {fluid.Name}, {Telling.Apart(grams, HardensGramsPerLitre).Value} g/L of formaldehyde; up to {MouldGramsPerLitre:0} g/L lets mould grow, and more than {HardensGramsPerLitre:0} g/L only hardens"), "use 5 to 10 % formalin, neutral buffered").At(house, "fluid");
        else if (fluid.IsWater)
            yield return Finding.Error("keeping-strength-out-of-band", $"'{house.Id}' keeps it in {fluid.Name}, which preserves nothing", "use alcohol or buffered formalin").At(house, "fluid");
    }
}
