using System.Collections.Immutable;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning.Comparing;

/// <summary>What is published of shrinkage and colour in a plan's fluids, for this sort of animal.</summary>
internal static class KeepingRemarks
{
    public static ImmutableArray<string> Of(Plan plan)
    {
        var fluids = plan.Steps.Where(s => s.Fluid is not null).Select(s => Fluid.Read(s.Fluid!).Value).OfType<Fluid>().ToList();
        var kept = plan.Steps.LastOrDefault(s => s.Kind == StageKind.House)?.Fluid is { } name ? Fluid.Read(name).Value : null;
        return [.. Shrinkage(plan.Specimen, fluids, kept), .. Colour(fluids, kept)];
    }

    private static IEnumerable<string> Shrinkage(Specimen specimen, List<Fluid> fluids, Fluid? kept)
    {
        var group = TaxonGroups.Resolve(specimen.Group, specimen.HigherTaxon).Value;
        var hasFormaldehyde = fluids.Any(f => f.HasFormaldehyde);
        if (group?.IsA("bony-fish") == true && specimen.LifeStage == LifeStage.Larva && hasFormaldehyde)
            yield return "fish larvae come out at down to 90.6 % of their live length (Tucker and Chester 1984, Copeia)";
        else if (group?.IsA("bony-fish") == true && kept?.Substance == Substance.Ethanol)
            yield return "small fish of 32 to 82 mm lost 2.48 mm of standard length in 70 % ethanol (median; 3.86 mm at most after a year): measure "
                + "before fixing (Grant and Archdeacon 2021)";
        if (group?.IsA("lizard") == true)
            yield return "lizards lost 3.5 % of snout-vent length in ten years: measure before fixing (Maayan et al., Anolis sagrei)";
        if (fluids.Any(f => f.Substance == Substance.Isopropanol))
            yield return "isopropanol shrinks more than ethanol, layers when it is not mixed, and may decalcify below 50 % (Simmons, natural-history "
                + "collections list, 2009)";
        if (kept is { IsAlcohol: true } && !hasFormaldehyde)
            yield return "alcohol alone does not fix: it shrinks, and histology is lost (Simmons, natural-history collections list, 2009)";
        if (kept is { IsAlcohol: true, AlcoholVolumePercent: > 80 })
            yield return "above 80 % alcohol specimens turn stiff and appendages drop (Michonneau 2017)";
        if (kept is { HasFormaldehyde: true })
            yield return "kept in formalin it stays supple in form but DNA is lost: take tissue first (common practice)";
    }

    private static IEnumerable<string> Colour(List<Fluid> fluids, Fluid? kept)
    {
        if (fluids.Any(f => f.Buffering == Buffering.Borax)) yield return "borax clears pigment in time (Tucker and Chester 1984, Copeia)";
        if (fluids.Any(f => f.Buffering == Buffering.SeaWater)) yield return "buffered sea-water formalin bleaches (Tucker and Chester 1984, Copeia)";
        if (kept is not null) yield return "colour fades in every fluid: photograph first (Allen, Marine Fishes of South-East Asia; Michonneau 2017)";
    }
}
