using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Planning.Provisioning;

/// <summary>Needles and syringes from what the bench has: a neighbouring gauge or the next larger syringe serves where the wanted one is not listed.</summary>
internal static class BenchTools
{
    /// <summary>The step with the tools that are there; the same step where nothing is injected or nothing better is listed.</summary>
    public static DraftStep Of(DraftStep step, SundryShelf shelf)
    {
        if (step.Work is not InjectWork { Sites: { IsEmpty: false } sites } work) return step;
        var tooled = sites;
        for (var i = 0; i < sites.Length; i++)
        {
            var site = sites[i];
            var (needle, syringe) = (NeedleFor(site.NeedleGauge, shelf), SyringeFor(site, shelf));
            if (needle != site.NeedleGauge || syringe != site.SyringeMl) tooled = tooled.SetItem(i, site with { NeedleGauge = needle, SyringeMl = syringe });
        }

        return tooled == sites ? step : step with { Work = work with { Sites = tooled } };
    }

    private static int NeedleFor(int gauge, SundryShelf shelf)
    {
        if (shelf.Find(new(SundryKind.Needle, gauge)) is not null) return gauge;
        foreach (var other in Needle.InPlaceOf(gauge))
        {
            if (shelf.Lists(new(SundryKind.Needle, other))) return other;
        }

        return gauge;
    }

    /// <summary>The next larger one on whose marks the volume can be read, else a smaller one that is filled once more.</summary>
    private static int SyringeFor(InjectionSite site, SundryShelf shelf)
    {
        var (sizeMl, ml) = (site.SyringeMl, site.PerSite.Milliliters);
        if (shelf.Find(new(SundryKind.Syringe, sizeMl)) is not null) return sizeMl;
        foreach (var larger in Syringe.SizesMl)
        {
            if (larger > sizeMl && Syringe.Reads(ml, larger) && shelf.Lists(new(SundryKind.Syringe, larger))) return larger;
        }

        foreach (var smaller in Syringe.SizesMl.AsEnumerable().Reverse())
        {
            if (smaller < sizeMl && Syringe.Fills(ml, smaller) <= Math.Max(2, Syringe.Fills(ml, sizeMl)) && shelf.Lists(new(SundryKind.Syringe, smaller)))
                return smaller;
        }

        return sizeMl;
    }
}
