using Protocolist.Fluids;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>What an animal has of lime.</summary>
internal enum Lime
{
    None,

    /// <summary>A shell or a skeleton.</summary>
    Shell,

    /// <summary>Spicules or ossicles, by which it is named.</summary>
    Spicules,
}

/// <summary>No acid formalin on shells, tests, spicules and ossicles.</summary>
internal static class AcidOnLime
{
    public const string Id = "acid-on-calcareous";
    public const string Source =
        "Western Australian Museum, Preservation and Lodgement of Marine Fauna, 2011; stock at pH 2.8 to 4.6 (Atkins 1922; Nagorsen and Peterson 1980)";

    public static Lime Of(TaxonGroup group) => group.IsCalcareous ? Lime.Shell : group.IsSpiculate ? Lime.Spicules : Lime.None;

    /// <summary>Whether a fluid turns acid for want of a buffer.</summary>
    public static bool IsAcid(Fluid fluid) => fluid is { HasFormaldehyde: true, Buffering: Buffering.None };

    /// <summary>What the fluid dissolves.</summary>
    public static Lime Dissolves(TaxonGroup group, Fluid fluid) => IsAcid(fluid) ? Of(group) : Lime.None;
}
