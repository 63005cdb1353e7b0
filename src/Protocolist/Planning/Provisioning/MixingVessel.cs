using System.Collections.Immutable;
using Protocolist.Planning.Drafting;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>In what a filling is mixed, and in how many batches.</summary>
/// <param name="Vessel">The vessel; null where the bench lists none that serves.</param>
/// <param name="Batches">How many; 1 or more.</param>
internal readonly record struct MixingVessel(Vessel? Vessel, int Batches)
{
    /// <summary>More batches than this are no way to fill a tub: then the body is lifted out and it is mixed in its own vessel. The project's choice.</summary>
    private const int MostBatches = 6;

    /// <summary>Fuller than this no vessel is stirred. Common practice.</summary>
    private const double Fill = 0.95;

    /// <summary>
    /// A first filling is mixed in the step's own vessel before the body comes in, as is common practice; a later one, and what is injected, in the smallest
    /// free vessel that holds it, else in few batches.
    /// </summary>
    /// <param name="steps">The steps.</param>
    /// <param name="at">The step.</param>
    /// <param name="filling">The number of the filling, from 0.</param>
    /// <param name="volume">How much is mixed.</param>
    /// <param name="day">The bench on the day of use.</param>
    public static MixingVessel For(ImmutableArray<DraftStep> steps, int at, int filling, Volume volume, StockDay day)
    {
        var (step, litres) = (steps[at], volume.CubicMeters);
        var own = step.Vessel?.Vessel;
        var (inside, best) = (own?.Shape.Inside.CubicMeters ?? 0, (PreparedVessel?)null);
        if (own is not null && filling == 0 && litres <= Fill * inside && !IsTaken(steps, at, own)) return new(own, 1);
        foreach (var other in day.FreeVessels)
        {
            if (other.Vessel.Id == own?.Id && other.Vessel.Count < 2) continue;
            if (other.Remarks(step.Fluid!.Substance, VesselUse.Treating).Rejecting() != FitRemark.None) continue;
            if (best is null || IsBetter(other.Room.Volume, best.Room.Volume, litres / Fill)) best = other;
        }

        var batches = best is null ? MostBatches + 1 : BatchesIn(best.Room.Volume, litres);
        if (batches <= MostBatches) return new(best!.Vessel, batches);
        return own is null ? new(best?.Vessel, best is null ? 1 : batches) : new(own, BatchesIn(inside, litres));
    }

    /// <summary>The smallest that holds it, else the largest.</summary>
    private static bool IsBetter(double room, double other, double wanted) => room >= wanted ? other < wanted || room < other : room > other;

    private static int BatchesIn(double room, double wanted) => (int)Math.Clamp(Math.Ceiling((wanted / (Fill * room)) - 1e-9), 1, 1000);

    /// <summary>Whether the body lies in it until the step begins.</summary>
    private static bool IsTaken(ImmutableArray<DraftStep> steps, int at, Vessel own)
    {
        for (var i = at - 1; i >= 0; i--)
        {
            if (steps[i].Vessel is { } before) return before.Vessel.Id == own.Id && own.Count < 2;
        }

        return false;
    }
}
