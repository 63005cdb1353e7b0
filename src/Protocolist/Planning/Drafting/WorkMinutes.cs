using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Drafting;

/// <summary>How long somebody is busy with a step, by what there is to do: sites, cuts, animals.</summary>
/// <remarks>All of it common practice: no published minutes were found. What a protocol says comes first.</remarks>
internal static class WorkMinutes
{
    /// <summary>From the tenth alike animal on the work is quicker.</summary>
    private const int Practised = 10;
    private const double PractisedShare = 0.8;

    /// <summary>Nobody plans hands by the minute.</summary>
    private const double Grain = 5;

    /// <summary>The most that one person does at a stretch, min: what is more is shared out, and a check tells it.</summary>
    private const double AtAStretch = 240;

    /// <summary>The terms of a step with the time that its work takes.</summary>
    public static StepTerms Of(StepTerms terms, PreparedStage stage, StepWork work, BodyMeasure body)
    {
        if (stage.Has(StageKey.HandsOn)) return terms;
        var usual = StageDefaults.HandsOn(stage.Kind);
        var time = Whole(Minutes(stage.Kind, work, body, usual.TotalMinutes));
        if (time == usual) return terms;
        return stage.Has(StageKey.Last) ? terms with { HandsOn = time } : terms with { HandsOn = time, Least = time, Most = time };
    }

    /// <summary>One look at what soaks: 3 min and 1.5 for the vessel; of a lot, each animal that is turned.</summary>
    public static Duration Look(int animals) => Whole(4.5 + Placing(animals));

    /// <summary>
    /// One change of fluid, without mixing it: 14 min for a jar of up to 4 L, 90 min for 100 L, between them by the litre; of water 8 min and less by
    /// the litre.
    /// </summary>
    public static Duration Change(DraftStep step, int animals)
    {
        var (first, litre) = step.Fluid is { IsWater: true } ? (8, 0.2) : (14, 0.8);
        return Whole(first + (litre * Math.Max(0, (step.Volume?.Liters ?? 0) - 4)) + Placing(animals));
    }

    /// <summary>Mixing: 10 min a batch, and 10 min for 10 L of fixative, whose salts are dissolved first, 8 of others.</summary>
    public static Duration Mixing(Fluid fluid, Volume volume, int batches) =>
        Whole((10 * batches) + ((fluid.HasFormaldehyde ? 1 : 0.8) * volume.Liters));

    /// <summary>All the work while a step lasts.</summary>
    public static Duration WhileItLasts(DraftStep step, int animals) =>
        (step.Changes == 0 ? Duration.Zero : Change(step, animals) * step.Changes) + (step.Looks == 0 ? Duration.Zero : Look(animals) * step.Looks);

    private static Duration Whole(double minutes) => Duration.FromMinutes(Grain * Math.Ceiling(Math.Min(minutes, AtAStretch) / Grain));

    private static double Placing(int animals) => Alike(Lot.Handled(animals) - 1, 0.5);

    private static double Minutes(StageKind kind, StepWork work, BodyMeasure body, double usual) => (kind, work) switch
    {
        (_, InjectWork { Plan: { } plan }) => 5 + Alike(body.Count, plan.Minutes),
        (_, CutWork cuts) => 3 + Alike(body.Count, CutMinutes(cuts, body)),
        (StageKind.Sample, _) => usual + Alike(Lot.Handled(body.Count) - 1, 8 * By(body, 0.2)),
        (StageKind.Pose, _) => usual + Alike(Lot.Handled(body.Count) - 1, 4 * By(body, 0.4)),
        (StageKind.Immerse or StageKind.Wash or StageKind.Bath or StageKind.House, _) => usual + Placing(body.Count),
        _ => usual,
    };

    /// <summary>A cut by itself takes longer in a larger animal, one of a row is as short in any.</summary>
    private static double CutMinutes(CutWork work, BodyMeasure body)
    {
        var minutes = 0.0;
        foreach (var cut in work.Cuts) minutes += cut.Count == 1 ? 1.5 * By(body, 0.3) : cut.Count;
        return minutes;
    }

    /// <summary>A larger animal takes longer: by a power of its mass over 100 g, between a half and three times.</summary>
    private static double By(BodyMeasure body, double power) => Math.Clamp(Math.Pow(body.Mass.Nominal.Grams / 100, power), 0.5, 3);

    private static double Alike(int animals, double each) =>
        each * (Math.Min(animals, Practised) + (PractisedShare * Math.Max(0, animals - Practised)));
}
