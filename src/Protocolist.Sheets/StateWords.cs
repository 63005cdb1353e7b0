using Protocolist.Plans;

namespace Protocolist.Sheets;

/// <summary>How far a step is, in one word.</summary>
internal static class StateWords
{
    public static string Of(StepState state) => state.ToString().ToLowerInvariant();
}

/// <summary>Kinds of stage in the words of the protocol files.</summary>
internal static class StageWords
{
    public static string Of(StageKind kind) => kind == StageKind.TopUp ? "top-up" : kind.ToString().ToLowerInvariant();
}
