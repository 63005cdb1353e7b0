using Protocolist.Fluids;

namespace Protocolist.Rules;

/// <summary>The same buffering from the first injection to the last top-up.</summary>
internal static class OneBuffering
{
    public const string Id = "mixed-buffering";
    public const string Source = "common practice; white precipitate on topping up old formalin with neutral (Conservation DistList, 2007)";

    /// <summary>Whether two formalins must not meet, in one body or in one tub.</summary>
    public static bool Clash(Fluid one, Fluid other) => one.HasFormaldehyde && other.HasFormaldehyde && one.Buffering != other.Buffering;
}
