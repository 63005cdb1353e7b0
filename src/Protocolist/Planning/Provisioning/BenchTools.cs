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
            var (needle, syringe) = (NeedleFor(site.NeedleGauge, shelf), SyringeFor(site.SyringeMl, shelf));
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

    /// <summary>A larger syringe reads coarser: no more than the next two sizes up.</summary>
    private static int SyringeFor(int sizeMl, SundryShelf shelf)
    {
        if (shelf.Find(new(SundryKind.Syringe, sizeMl)) is not null) return sizeMl;
        var at = Syringe.SizesMl.IndexOf(sizeMl);
        for (var i = at + 1; i < Math.Min(at + 3, Syringe.SizesMl.Length); i++)
        {
            if (shelf.Lists(new(SundryKind.Syringe, Syringe.SizesMl[i]))) return Syringe.SizesMl[i];
        }

        return sizeMl;
    }
}
