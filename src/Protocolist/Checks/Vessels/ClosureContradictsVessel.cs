using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Vessels;

namespace Protocolist.Checks.Vessels;

/// <summary>The final vessel can be closed as the plan closes it.</summary>
internal static class ClosureContradictsVessel
{
    private const string Id = "closure-contradicts-vessel";
    private static readonly Phrase Contradicts = new(Id, "'{step}' closes it with {closing}, and the {vessel} has a closure of another kind: {closure}");
    private static readonly Phrase CloseIt = new("closure-contradicts-vessel.remedy", "close it as it is made to be closed");

    /// <summary>In the order of <see cref="Closure"/>.</summary>
    private static readonly Phrase[] Closures =
    [
        new("closure.open", "open"),
        new("closure.loose-lid", "loose lid"),
        new("closure.snap-lid", "snap lid"),
        new("closure.screw-lid", "screw lid"),
        new("closure.ground-stopper", "ground stopper"),
        new("closure.wire-bail", "wire bail"),
        new("closure.sealed-plate", "sealed plate"),
    ];

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen: a vessel that cannot be closed dries out",
        "common practice",
        Find)
    {
        Severities = [new(Severity.Note, "the vessel closes in another way than the plan seals it")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House?.Vessel is not { Vessel: { } vessel } || SealOf(plan) is not { } seal) return [];
        if (seal.Sealing is not { } sealing || sealing.Fits.Contains(vessel.Closure)) return [];

        // The planner closes each vessel as it is made to be closed; what is lost is told where the protocol means for good.
        if (seal.Work is SealWork { Chosen: not null } && sealing != Sealing.Silicone) return [];
        var message = Contradicts.With(
            Argument.Id("step", seal.Id), ("closing", sealing.Said), ("vessel", vessel.Name), ("closure", Closures[(int)vessel.Closure]));
        return [Finding.Note(Id, message, CloseIt).At(seal, "closure")];
    }

    private static ReviewStep? SealOf(ReviewCase plan)
    {
        for (var i = plan.Steps.Length - 1; i >= 0; i--)
        {
            if (plan.Steps[i].Kind == StageKind.Seal) return plan.Steps[i];
        }

        return null;
    }
}
