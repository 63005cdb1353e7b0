using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Provisioning;

/// <summary>What steps share once each has its vessel: a tub that is bought anyway, and a bath that has hardly served.</summary>
internal static class SharedBaths
{
    /// <summary>
    /// A bath that hardened a wall for so long at the most serves the same body again: formalin may serve again while it is clear and of its strength
    /// (Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104). How long is the project's choice.
    /// </summary>
    private static readonly Duration Briefly = Duration.FromHours(2);

    /// <summary>Shares them out.</summary>
    /// <param name="steps">The steps with their vessels and volumes; takes those that share.</param>
    /// <param name="draft">The draft.</param>
    /// <param name="day">The bench on the day of use.</param>
    /// <param name="isFree">Whether a step's vessel was left to the planner.</param>
    public static void Share(DraftStep[] steps, Draft draft, StockDay day, Func<DraftStep, bool> isFree)
    {
        for (var i = 0; i < steps.Length; i++)
        {
            if (ServesAgainIn(steps, i) is >= 0 and var later) Reuse(steps, i, later, draft, day, isFree);
            else if (steps[i].Fluid is { IsWater: true } && IsBought(steps[i], day) && isFree(steps[i])) TakeBought(steps, i, draft, day);
        }
    }

    /// <summary>The later bath of the same fluid, with no other fluid between; -1 for none.</summary>
    private static int ServesAgainIn(DraftStep[] steps, int at)
    {
        if (!Lies(steps[at]) || steps[at].Least > Briefly || steps[at].Changes > 0) return -1;
        for (var i = at + 1; i < steps.Length; i++)
        {
            if (Lies(steps[i]) && steps[i].Fluid == steps[at].Fluid) return steps[i].Used is null ? i : -1;
            if (steps[i] is { Fluid: not null, Kind: not StageKind.Inject }) return -1;
        }

        return -1;

        static bool Lies(DraftStep step) => step is { Kind: StageKind.Immerse, Fluid.HasFormaldehyde: true, Volume: not null, Work: SoakWork };
    }

    /// <summary>In the vessel of the later bath where the body fits into that; its fluid, or as much as is wanted of it, stays for that bath.</summary>
    private static void Reuse(DraftStep[] steps, int at, int later, Draft draft, StockDay day, Func<DraftStep, bool> isFree)
    {
        if (steps[later].Vessel is { } tub && steps[at].Used is null && isFree(steps[at]) && steps[at].Vessel?.Vessel != tub.Vessel
            && VesselChoice.Try(steps[at], draft.Body, draft.Posture!.Body, day.Stock.Bench, tub.Vessel).Fitted is { } same)
            steps[at] = steps[at] with { Vessel = same, NoVessel = null, Volume = same.FluidVolume };
        Volume there = steps[at].Volume!.Value, wanted = steps[later].Volume!.Value;
        var again = there < wanted ? there : wanted;
        steps[at] = steps[at] with { Work = (SoakWork)steps[at].Work with { ServesAgainIn = steps[later].Id } };
        steps[later] = steps[later] with { Work = (SoakWork)steps[later].Work with { Again = new(steps[at].Id, again) } };
    }

    /// <summary>For water, a larger tub that is bought for another step is as good as one of its own.</summary>
    private static void TakeBought(DraftStep[] steps, int at, Draft draft, StockDay day)
    {
        foreach (var other in steps)
        {
            if (other is not { Vessel.Vessel: { } tub, IsSoak: true } || !IsBought(other, day)) continue;
            if (tub.Shape.Inside <= steps[at].Vessel!.Vessel.Shape.Inside) continue;
            if (VesselChoice.Try(steps[at], draft.Body, draft.Posture!.Body, day.Stock.Bench, tub).Fitted is not { } fitted) continue;
            steps[at] = steps[at] with { Vessel = fitted, Volume = steps[at].Used ?? fitted.FluidVolume };
            return;
        }
    }

    private static bool IsBought(DraftStep step, StockDay day) => step.Vessel is { } fitted && VesselPurchases.IsForSale(fitted.Vessel, day);
}
