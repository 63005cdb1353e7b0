using Protocolist.Planning.Drafting;
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
        var site = first.Sites.FirstOrDefault(s => Names(place, s.Region.ToString()) || (place.Length > 0 && Names(s.Region.ToString(), place)));
        return site?.Total ?? first.Volume!.Value * ShareOfFirst;

        static bool Names(string words, string part) => words.Contains(part, StringComparison.OrdinalIgnoreCase);
    }
}
