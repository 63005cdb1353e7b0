using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>Spicules and ossicles by which an animal is named do not lie in formalin, buffered or not.</summary>
internal static class SpiculesInFormalin
{
    public const string Id = "formalin-on-spicules";
    public const string Source =
        "Western Australian Museum, Preservation and Lodgement of Marine Fauna, 2011 (alcohol for octocorals and echinoderms); Michonneau 2017; "
        + "sea squirts: Lambert 2004 (buffered, a day to a week)";

    /// <summary>What sea squirts bear: they are fixed in borate-buffered formalin for up to a week, and never put into ethanol fresh (Lambert 2004).</summary>
    public static readonly QuantityRange Week = QuantityRange.Point(7 * 86400, Dimension.OfTime);

    public static bool BearsAWeek(TaxonGroup group) => group.IsA("ascidian");

    /// <summary>Whether buffered formalin harms it, if it may stay for any of these times; what acid does has a rule of its own.</summary>
    public static bool Suffers(TaxonGroup group, Fluid fluid, bool isForGood, QuantityRange lasts) =>
        group.IsSpiculate && fluid.HasFormaldehyde && !AcidOnLime.IsAcid(fluid) && (isForGood || lasts.High > Week.High || !BearsAWeek(group));
}
