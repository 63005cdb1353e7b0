using Protocolist.Fluids;
using Protocolist.Specimens;

namespace Protocolist.Rules;

/// <summary>Weak isopropanol does not meet lime.</summary>
internal static class LimeInIsopropanol
{
    public const string Id = "isopropanol-on-lime";
    public const string Source = "Simmons, natural-history collections list, 27 August 2009";

    /// <summary>%vol below which it may take lime out of shell, skeleton and spicules.</summary>
    public const double Least = 50;

    public static bool Suffers(TaxonGroup group, Fluid fluid) => fluid.IsopropanolVolumePercent < Least && AcidOnLime.Of(group) != Lime.None;
}
