using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>Injection.</summary>
/// <param name="Sites">Where and how much, for the whole lot.</param>
/// <param name="Plan">Where and how much is injected into one animal; null where nothing is worked out.</param>
internal sealed record InjectWork(ImmutableArray<InjectionSite> Sites, InjectionPlan? Plan) : StepWork
{
    private static readonly Phrase SoMuchInAll = new("inject.in-all", "{volume} in all; stop at a site when the part is firm or fluid runs back.");
    private static readonly Phrase Region = new(
        "inject.region", "{region}: {sites} {sites|site|sites} of {each}{usual}, {total:mix} in all; {tool}{fills}{where}.");
    private static readonly Phrase Refilled = new("inject.refilled", ", filled {fills} times a site");
    private static readonly Phrase Less = new("inject.less-than-usual", " (less than the usual {least}: the region is small)");
    private static readonly Phrase Where = new("inject.where", "; {at}");

    /// <summary>The protocol's range is told where the planned volume lies below it, which it does in small regions; a thousandth is rounding.</summary>
    private const double Rounding = 0.999;

    /// <summary>What all sites take together.</summary>
    public Volume InAll
    {
        get
        {
            var millilitres = 0.0;
            foreach (var site in Sites) millilitres += site.Total.Milliliters;
            return Volume.FromMilliliters(millilitres);
        }
    }

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        if (step.Volume is { } total) yield return SoMuchInAll.With(("volume", total));
        foreach (var site in Sites)
        {
            yield return Region.With(
                ("region", site.Region),
                ("sites", site.Sites),
                ("each", site.PerSite),
                ("usual", site.PerSite < site.PerSiteLow * Rounding ? Less.With(("least", site.PerSiteLow)) : default),
                ("total", site.Total),
                ("tool", site.Tool),
                ("fills", Syringe.Fills(site.PerSite.Milliliters, site.SyringeMl) is > 1 and var fills ? Refilled.With(("fills", fills)) : default),
                ("where", !site.At.IsEmpty ? Where.With(("at", site.At)) : default));
        }
    }
}
