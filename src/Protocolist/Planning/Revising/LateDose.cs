using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Planning.Drafting;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Planning.Revising;

/// <summary>How much fixative to have ready for a part that is injected again.</summary>
internal static class LateDose
{
    /// <summary>A fifth of the first dose for a part that the plan has no figure for: the project's choice, to be stopped at when the part is firm.</summary>
    private const double ShareOfFirst = 0.2;

    /// <summary>
    /// Where nothing was injected at first: a twentieth of the body's volume, half of the 10 mL for 100 g that is common practice for a whole animal.
    /// </summary>
    private const double ShareOfBody = 0.05;

    public static Volume Of(Draft draft, DraftStep host, string place)
    {
        var first = draft.Steps.FirstOrDefault(s => s.Kind == StageKind.Inject && s.Volume is not null && s.Fluid?.Name == host.Fluid?.Name);
        if (first is null) return draft.Body.LotVolume.Nominal * ShareOfBody;
        var words = Slug.Of(place);
        var site = first.Sites.FirstOrDefault(s => IdsOf(s.Region, draft).Any(id => Names(words, id) || Names(id, words)));
        return site?.Total ?? first.Volume!.Value * ShareOfFirst;

        static bool Names(string words, string part) => part.Length > 0 && words.Contains(part, StringComparison.Ordinal);
    }

    /// <summary>By what logs and protocols call a region, whatever a sheet calls it; what the group does not have is the protocol's own word.</summary>
    private static IEnumerable<string> IdsOf(Message region, Draft draft)
    {
        var known = draft.Body.Group.Regions.FirstOrDefault(r => BodyRegion.IsCalled(region, r.Id));
        return known is null ? [Slug.Of(region.ToString())] : [known.Id, .. known.Aliases];
    }
}
