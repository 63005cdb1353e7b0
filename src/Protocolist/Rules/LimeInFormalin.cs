using NodaTime;
using Protocolist.Fluids;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>Shells and skeletons of lime leave even buffered formalin soon. Spicules have a rule of their own.</summary>
internal static class LimeInFormalin
{
    public const string Id = "lime-long-in-formalin";
    public const string Source =
        "Western Australian Museum 2011; Michonneau 2017 (buffered formalin for a short time, then alcohol); "
        + "large squid for a month and more: O'Shea 2003, Te Papa 2008; the week is common practice";

    /// <summary>Common practice: days, not weeks.</summary>
    public static readonly Duration Most = Duration.FromDays(7);

    public static bool Suffers(TaxonGroup group, Fluid fluid, bool isForGood, Duration lasts) =>
        group is { IsCalcareous: true, IsSpiculate: false } && fluid.HasFormaldehyde && !AcidOnLime.IsAcid(fluid) && (isForGood || lasts > Most);

    /// <summary>Whether only the statoliths are at stake: squid, cuttlefish, octopus.</summary>
    public static bool IsInStatolithsOnly(TaxonGroup group) => group.IsA("cephalopod");
}
