using Protocolist.Fluids;

namespace Protocolist.Rules;

/// <summary>Formalin is washed out before alcohol.</summary>
internal static class WashBeforeAlcohol
{
    public const string Id = "unwashed-into-alcohol";
    public const string Source = "Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104; common practice";

    /// <summary>Whether a body that comes with formalin inside, or without, has some after this stage: only a wash in water takes it out.</summary>
    public static bool HoldsFormalin(bool before, StageKind kind, Fluid fluid) =>
        fluid.HasFormaldehyde || (before && !(fluid.IsWater && kind == StageKind.Wash));

    /// <summary>Whether formalin is carried into alcohol.</summary>
    public static bool IsMissing(bool holdsFormalin, Fluid next) => holdsFormalin && next.IsAlcohol;
}
