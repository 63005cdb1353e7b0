using Protocolist.Fluids;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>Jelly goes to alcohol by small steps, or better not at all.</summary>
internal static class JellyInAlcohol
{
    public const string Id = "alcohol-on-gelatinous";
    public const string Source =
        "Moore, natural-history collections list, 28 August 2009 (formalin for cnidarians); "
        + "Boltovskoy 1999, South Atlantic Zooplankton (10 % steps where alcohol must be)";

    /// <summary>The most points of %vol at once: Boltovskoy 1999.</summary>
    public const double Most = 10;

    /// <summary>Whether the body shrinks in it, however slowly it gets there.</summary>
    public static bool Shrinks(TaxonGroup group, Fluid fluid) => group.IsGelatinous && fluid.IsAlcohol;

    /// <summary>Whether it shrinks to a shred.</summary>
    public static bool IsTooBig(Rise rise) => rise.IsOver(Most);
}
