using Protocolist.Fluids;

namespace Protocolist.Rules;

/// <summary>One alcohol from the first bath to the last top-up.</summary>
internal static class OneAlcohol
{
    public const string Id = "mixed-alcohols";
    public const string Source = "Swift, natural-history collections list, May 2021; Simmons, the same, 27 August 2009 (isopropanol lies in layers)";

    /// <summary>Whether two alcohols must not meet.</summary>
    public static bool Clash(Fluid one, Fluid other) => one.IsAlcohol && other.IsAlcohol && one.Substance != other.Substance;
}
