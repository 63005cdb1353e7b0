using System.Numerics;

namespace Protocolist.Fluids.Mixing;

/// <summary>A liquid to blend: its active content, how much there is and what it costs.</summary>
/// <param name="Share">Active component as a mass fraction.</param>
/// <param name="Most">Mass on hand, kg; infinite where unlimited.</param>
/// <param name="CostPerKilogram">Price of a kilogram.</param>
internal readonly record struct Blendable(double Share, double Most, double CostPerKilogram);

/// <summary>Finds masses of liquids that sum to a mass and hold a mass of one component: the fewest liquids, then the least cost.</summary>
/// <remarks>
/// Two balances, so at most two liquids are taken in part and every other one whole. The search goes through all choices of one liquid, of two,
/// of three, and stops at the first number that has an answer; among its answers the cheapest wins, among equals the one listed first.
/// </remarks>
internal static class BlendSolver
{
    /// <summary>More liquids than this are not searched; the largest amounts are kept.</summary>
    public const int MostLiquids = 16;

    private const double Tolerance = 1e-9;
    private const double SameStrength = 1e-5;

    /// <summary>The masses, kg, in the order of <paramref name="liquids"/>; null where there is no answer.</summary>
    public static double[]? Solve(ReadOnlySpan<Blendable> liquids, double mass, double active)
    {
        if (liquids.Length > MostLiquids) throw new ArgumentException("Too many liquids to search.", nameof(liquids));
        if (!IsReachable(liquids, mass, active)) return null;
        for (var count = 1; count <= liquids.Length; count++)
        {
            double[]? best = null;
            var bestCost = double.PositiveInfinity;
            for (uint chosen = 1; chosen < 1u << liquids.Length; chosen++)
            {
                if (BitOperations.PopCount(chosen) == count) Try(liquids, chosen, mass, active, ref best, ref bestCost);
            }

            if (best is not null) return best;
        }

        return null;
    }

    /// <summary>The least and the most of the active component that so much liquid can hold, kg; NaN where there is not so much liquid.</summary>
    public static (double Least, double Most) Reach(ReadOnlySpan<Blendable> liquids, double mass) =>
        (Fill(liquids, mass, strongFirst: false), Fill(liquids, mass, strongFirst: true));

    private static bool IsReachable(ReadOnlySpan<Blendable> liquids, double mass, double active)
    {
        var (least, most) = Reach(liquids, mass);
        var slack = Tolerance * mass;
        return active >= least - slack && active <= most + slack;
    }

    private static double Fill(ReadOnlySpan<Blendable> liquids, double mass, bool strongFirst)
    {
        double left = mass, active = 0;
        var taken = 0u;
        for (var n = 0; n < liquids.Length && left > 0; n++)
        {
            var next = -1;
            for (var i = 0; i < liquids.Length; i++)
            {
                if ((taken >> i & 1) != 0) continue;
                if (next < 0 || (strongFirst ? liquids[i].Share > liquids[next].Share : liquids[i].Share < liquids[next].Share)) next = i;
            }

            taken |= 1u << next;
            var amount = Math.Min(left, liquids[next].Most);
            active += amount * liquids[next].Share;
            left -= amount;
        }

        return left > Tolerance * mass ? double.NaN : active;
    }

    private static void Try(ReadOnlySpan<Blendable> liquids, uint chosen, double mass, double active, ref double[]? best, ref double bestCost)
    {
        for (var i = 0; i < liquids.Length; i++)
        {
            if ((chosen >> i & 1) == 0) continue;
            Keep(liquids, chosen, i, i, mass, active, ref best, ref bestCost);
            for (var j = i + 1; j < liquids.Length; j++)
            {
                if ((chosen >> j & 1) != 0) Keep(liquids, chosen, i, j, mass, active, ref best, ref bestCost);
            }
        }
    }

    /// <summary>Takes every chosen liquid whole but <paramref name="i"/> and <paramref name="j"/>, which follow from the balances.</summary>
    private static void Keep(ReadOnlySpan<Blendable> liquids, uint chosen, int i, int j, double mass, double active, ref double[]? best, ref double bestCost)
    {
        double leftMass = mass, leftActive = active, cost = 0;
        for (var k = 0; k < liquids.Length; k++)
        {
            if ((chosen >> k & 1) == 0 || k == i || k == j) continue;
            leftMass -= liquids[k].Most;
            leftActive -= liquids[k].Most * liquids[k].Share;
            cost += liquids[k].Most * liquids[k].CostPerKilogram;
        }

        if (!double.IsFinite(leftMass)) return;
        double first, second = 0;
        var slack = Tolerance * mass;
        if (i == j)
        {
            first = leftMass;
            // Strengths are kept to a thousandth of a percent: a bottle that near is the fluid wanted, not one to be corrected by a drop.
            var near = chosen == 1u << i ? SameStrength * mass : slack;
            if (Math.Abs(first * liquids[i].Share - leftActive) > near) return;
        }
        else
        {
            var difference = liquids[i].Share - liquids[j].Share;
            if (Math.Abs(difference) < Tolerance) return;
            first = (leftActive - liquids[j].Share * leftMass) / difference;
            second = leftMass - first;
            if (second <= slack || second > liquids[j].Most + slack) return;
            cost += second * liquids[j].CostPerKilogram;
        }

        if (first <= slack || first > liquids[i].Most + slack) return;
        cost += first * liquids[i].CostPerKilogram;
        if (cost >= bestCost - Tolerance * Math.Abs(bestCost) && best is not null) return;
        bestCost = cost;
        best = new double[liquids.Length];
        for (var k = 0; k < liquids.Length; k++)
        {
            if ((chosen >> k & 1) != 0) best[k] = k == i ? first : k == j ? second : liquids[k].Most;
        }
    }
}
