using NodaTime;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>Animals with bone lie in buffered formalin.</summary>
internal static class BoneInAcid
{
    public const string Id = "acid-on-bone";
    public const string Source = "Nagorsen and Peterson 1980; stock at pH 2.8 to 4.6 (Atkins 1922); the week is the project's choice";

    /// <summary>A brief fixation does little harm; the project's choice.</summary>
    public static readonly Duration Most = Duration.FromDays(7);

    /// <summary>Whether so long in an acid fluid, all baths counted, takes lime out of bone and teeth.</summary>
    public static bool Suffers(TaxonGroup group, Duration inAcid) => inAcid > Most && group.IsA("vertebrate");
}
