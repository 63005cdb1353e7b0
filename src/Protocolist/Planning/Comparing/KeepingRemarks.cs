using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning.Comparing;

/// <summary>What is published of shrinkage and colour in a plan's fluids, for this sort of animal.</summary>
internal static class KeepingRemarks
{
    private static readonly Phrase Larvae = new(
        "keeping.larvae",
        "fish larvae come out at down to 90.6 % of their live length (Tucker and Chester 1984, Copeia)");

    private static readonly Phrase SmallFish = new(
        "keeping.small-fish",
        "small fish of 32 to 82 mm lost 2.48 mm of standard length in 70 % ethanol (median; 3.86 mm at most after a year): measure before fixing "
        + "(Grant and Archdeacon 2021)");

    private static readonly Phrase Lizards = new(
        "keeping.lizards",
        "lizards lost 3.5 % of snout-vent length in ten years: measure before fixing (Maayan et al., Anolis sagrei)");

    private static readonly Phrase Isopropanol = new(
        "keeping.isopropanol",
        "isopropanol shrinks more than ethanol, layers when it is not mixed, and may decalcify below 50 % (Simmons, natural-history collections "
        + "list, 2009)");

    private static readonly Phrase AlcoholAlone = new(
        "keeping.alcohol-alone",
        "alcohol alone does not fix: it shrinks, and histology is lost (Simmons, natural-history collections list, 2009)");

    private static readonly Phrase StrongAlcohol = new(
        "keeping.strong-alcohol",
        "above 80 % alcohol specimens turn stiff and appendages drop (Michonneau 2017)");

    private static readonly Phrase Formalin = new(
        "keeping.formalin",
        "kept in formalin it stays supple in form but DNA is lost: take tissue first (common practice)");

    private static readonly Phrase Borax = new("keeping.borax", "borax clears pigment in time (Tucker and Chester 1984, Copeia)");
    private static readonly Phrase SeaWater = new("keeping.sea-water", "buffered sea-water formalin bleaches (Tucker and Chester 1984, Copeia)");
    private static readonly Phrase ColourFades = new(
        "keeping.colour",
        "colour fades in every fluid: photograph first (Allen, Marine Fishes of South-East Asia; Michonneau 2017)");

    public static ImmutableArray<Message> Of(Plan plan, Kinds kinds)
    {
        var fluids = plan.Steps.Where(s => s.Fluid is not null).Select(s => Fluid.Read(s.Fluid!, known: kinds.Substances).Value).OfType<Fluid>().ToList();
        var kept = plan.Steps.LastOrDefault(s => s.Kind == StageKind.House)?.Fluid is { } name ? Fluid.Read(name, known: kinds.Substances).Value : null;
        return [.. Shrinkage(plan.Specimen, kinds, fluids, kept), .. Colour(fluids, kept)];
    }

    private static IEnumerable<Message> Shrinkage(Specimen specimen, Kinds kinds, List<Fluid> fluids, Fluid? kept)
    {
        var group = kinds.Resolve(specimen.Group, specimen.HigherTaxon).Value;
        var hasFormaldehyde = fluids.Any(f => f.HasFormaldehyde);
        if (group?.IsA("bony-fish") == true && specimen.LifeStage == LifeStage.Larva && hasFormaldehyde)
            yield return Larvae;
        else if (group?.IsA("bony-fish") == true && kept?.Substance == Substance.Ethanol)
            yield return SmallFish;
        if (group?.IsA("lizard") == true)
            yield return Lizards;
        if (fluids.Any(f => f.Substance == Substance.Isopropanol))
            yield return Isopropanol;
        if (kept is { IsAlcohol: true } && !hasFormaldehyde)
            yield return AlcoholAlone;
        if (kept is { IsAlcohol: true, AlcoholVolumePercent: > 80 })
            yield return StrongAlcohol;
        if (kept is { HasFormaldehyde: true })
            yield return Formalin;
    }

    private static IEnumerable<Message> Colour(List<Fluid> fluids, Fluid? kept)
    {
        if (fluids.Any(f => f.Buffering == Buffering.Borax)) yield return Borax;
        if (fluids.Any(f => f.Buffering == Buffering.SeaWater)) yield return SeaWater;
        if (kept is not null) yield return ColourFades;
    }
}
