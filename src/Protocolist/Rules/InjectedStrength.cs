using Protocolist.Fluids;

namespace Protocolist.Rules;

/// <summary>Injected formalin is not so strong that it closes the way behind it.</summary>
internal static class InjectedStrength
{
    public const string Id = "injection-too-strong";
    public const string Source = "van Dam, natural-history collections list, 2011";

    /// <summary>8 % formaldehyde, in g/L.</summary>
    public const double Most = 80;

    public static bool IsTooStrong(Fluid fluid) => fluid.FormaldehydeGramsPerLitre > Most;
}
