using NodaTime;

namespace Protocolist.Planning.Drafting;

/// <summary>What a step takes where its protocol does not say. All of it common practice, to be overridden by 'hands-on' and 'within'.</summary>
internal static class StageDefaults
{
    /// <summary>How long somebody is busy.</summary>
    public static Duration HandsOn(StageKind kind) => Duration.FromMinutes(kind switch
    {
        StageKind.Sample => 30,
        StageKind.Slit or StageKind.Inject => 30,
        StageKind.Pose => 20,
        StageKind.Rinse => 10,
        StageKind.Immerse or StageKind.Wash or StageKind.Bath => 15,
        StageKind.Mount or StageKind.House => 30,
        StageKind.Seal or StageKind.Label => 15,
        StageKind.Hold or StageKind.Thaw or StageKind.Inspect or StageKind.TopUp => 10,
        _ => 15,
    });

    /// <summary>
    /// The longest wait after the step before. A body that is opened or out of its fluid does not wait; a labelled jar can.
    /// </summary>
    public static Duration? Within(StageKind kind) => kind switch
    {
        StageKind.Slit or StageKind.Inject or StageKind.Pose or StageKind.Immerse or StageKind.Rinse => Duration.FromHours(2),
        StageKind.Wash or StageKind.Bath or StageKind.Mount or StageKind.House => Duration.FromHours(1),
        StageKind.Seal or StageKind.Label => Duration.FromDays(3),
        StageKind.Sample => Duration.FromHours(12),
        _ => null,
    };
}
