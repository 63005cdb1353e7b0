using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Vessels;

namespace Protocolist.Planning.Provisioning;

/// <summary>A thing that a step needs, and how often a piece of it is used.</summary>
internal readonly record struct SundryNeed(Sundry Sundry, long Uses);

/// <summary>What a step needs beside fluids and vessels. All numbers are common practice, from memory: no handbook counts gloves.</summary>
internal static class SundryNeeds
{
    public static void Of(DraftStep step, int animals, List<SundryNeed> needs)
    {
        var handlings = Handlings(step);
        var isHazardous = step.Fluid is { HasFormaldehyde: true } or { IsAlcohol: true };
        var touchesBody = step.Kind is StageKind.Sample or StageKind.Slit or StageKind.Inject or StageKind.Pose or StageKind.Thaw or StageKind.Rinse
            or StageKind.Wash or StageKind.Mount or StageKind.House;
        if (isHazardous || touchesBody) Add(SundryKind.Gloves, 2 * handlings);
        if (isHazardous)
        {
            Add(SundryKind.Goggles, handlings);
            Add(SundryKind.Apron, handlings);
        }

        switch (step.Kind)
        {
            case StageKind.Inject:
                Tools(step, animals, needs);
                break;
            case StageKind.Slit:
                Add(SundryKind.ScalpelBlade, animals);
                Add(SundryKind.Forceps, 1);
                break;
            case StageKind.Sample:
                Add(SundryKind.Forceps, 1);
                Add(SundryKind.SampleTube, step.Work is SampleWork { Tissue: { } tissue } ? tissue.Tubes : Lot.Handled(animals));
                break;
            case StageKind.Immerse when step.Work is SoakWork { Afloat.IsWeighted: true }:
                Add(SundryKind.Weight, 1);
                break;
            case StageKind.Label:
                Add(SundryKind.Label, 2);
                break;
            case StageKind.Mount when step.Work is MountWork { IsGiven: true, On: { } on } && Sundries.Named(on.Name.English) is { } support:
                needs.Add(new(support, 1));
                break;
            case StageKind.Seal when step.Work is SealWork seal && ClosedWith(seal) is { } lid:
                needs.Add(new(lid, 1));
                break;
        }

        void Add(SundryKind kind, long uses) => needs.Add(new(new(kind), uses));
    }

    /// <summary>
    /// What closes the vessel that was chosen; a fresh lid for a vessel with its own where the protocol asks for a lid, nothing for a stopper, which is
    /// part of the vessel. Without a vessel, what the protocol has in mind.
    /// </summary>
    private static Sundry? ClosedWith(SealWork seal) => seal.Chosen?.Way.Method switch
    {
        ClosingMethod.Tape => new(SundryKind.Tape),
        ClosingMethod.NeutralSilicone => new(SundryKind.NeutralCureSilicone),
        ClosingMethod.GroundStopper => null,
        ClosingMethod.OwnLid when seal.With != Sealing.ScrewLid && seal.With != Sealing.SnapLid => null,
        _ => seal.With is { } sealing ? Sundries.Named(sealing.Name.English) : null,
    };

    /// <summary>How often somebody has hands in it: at the start, at each change of fluid, at each look by the shortest plan.</summary>
    private static long Handlings(DraftStep step) => 1L + step.Changes + step.Looks;

    /// <summary>One syringe of each size for each animal, and a fresh needle for each region: they blunt on skin and clog with clots.</summary>
    private static void Tools(DraftStep step, int animals, List<SundryNeed> needs)
    {
        if (step.Sites.IsEmpty)
        {
            needs.Add(new(new(SundryKind.Syringe), animals));
            needs.Add(new(new(SundryKind.Needle), animals));
            return;
        }

        var first = needs.Count;
        foreach (var site in step.Sites)
        {
            var syringe = new Sundry(SundryKind.Syringe, site.SyringeMl);
            if (Find(syringe) < 0) needs.Add(new(syringe, animals));
        }

        foreach (var site in step.Sites)
        {
            var needle = new Sundry(SundryKind.Needle, site.NeedleGauge);
            if (Find(needle) is >= 0 and var at) needs[at] = needs[at] with { Uses = needs[at].Uses + animals };
            else needs.Add(new(needle, animals));
        }

        int Find(Sundry sundry)
        {
            for (var i = first; i < needs.Count; i++)
            {
                if (needs[i].Sundry == sundry) return i;
            }

            return -1;
        }
    }
}
