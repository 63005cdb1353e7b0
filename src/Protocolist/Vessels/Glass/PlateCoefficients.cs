using System.Globalization;

namespace Protocolist.Vessels.Glass;

/// <summary>How far and how hard a pane of one shape bends, whatever its size: thin-plate theory, simply supported edges, small deflections.</summary>
/// <remarks>
/// With p the pressure at the bottom, H the pane's height (for a bottom pane: its short side), t its thickness and E the glass's stiffness:
/// stress = <see cref="Stress"/> · p · H² / t², deflection = <see cref="Deflection"/> · p · H⁴ / (E · t³).
/// They are computed by Lévy's series and agree with Roark's Formulas for Stress and Strain (table 11.4, cases 1a and 1d)
/// and, for a free top, with Timoshenko and Woinowsky-Krieger's plates on three supports.
/// </remarks>
/// <param name="Deflection">α: the greatest deflection. Contains 12 (1 - ν²).</param>
/// <param name="Stress">β: the greatest principal stress, in whatever direction and place. Contains 6.</param>
/// <param name="SideReaction">The greatest load per length on a side edge, in units of p · H.</param>
/// <param name="BottomReaction">The greatest load per length on the bottom edge, in units of p · H.</param>
public sealed record PlateCoefficients(
    double Deflection, double Stress, double SideReaction, double BottomReaction)
{
    /// <summary>The Poisson number of the published tables. That of real glass, 0.22 to 0.23 (EN 572-1 has 0.2), gives up to 4 % less stress.</summary>
    public const double TabulatedPoisson = 0.3;

    private const int Across = 16, Up = 32;

    /// <summary>Computes the coefficients for a wall or a bottom.</summary>
    /// <param name="aspect">The pane's length over its height (for a bottom: over its short side); from 0.05 to 20.</param>
    /// <param name="load">Whether the pane is a wall or a bottom.</param>
    /// <param name="top">What holds the upper edge of a wall; a bottom is always held at four edges.</param>
    /// <param name="poisson">The glass's Poisson number, from 0 to 0.49.</param>
    /// <returns>The coefficients.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The aspect or the Poisson number is out of its range.</exception>
    public static PlateCoefficients Compute(double aspect, PaneLoad load, TankTop top, double poisson = TabulatedPoisson)
    {
        if (!(aspect is >= 0.05 and <= 20)) throw OutOfRange(nameof(aspect), aspect, "0.05 to 20");
        if (!(poisson is >= 0 and <= 0.49)) throw OutOfRange(nameof(poisson), poisson, "0 to 0.49");
        var plate = new LevyPlate(aspect, load, load == PaneLoad.Uniform ? TankTop.Framed : top, poisson);
        var middle = aspect / 2;
        var deflection = Peak(1, Up, (_, y) => plate.Deflection(middle, y));
        var moment = Peak(Across, Up, (x, y) => plate.PrincipalMoment(x * middle, y));
        var side = Peak(1, Up, (_, y) => plate.SideReaction(y));
        var bottom = Peak(Across, 1, (x, _) => plate.BottomReaction(x * middle));
        return new(12 * (1 - poisson * poisson) * deflection, 6 * moment, side, bottom);
    }

    /// <summary>The greatest value over the unit square: the best of a grid, then steps of halving length around it.</summary>
    private static double Peak(int across, int up, Func<double, double, double> height)
    {
        var best = (Value: double.NegativeInfinity, X: 0.0, Y: 0.0);
        void Try(double x, double y)
        {
            var value = height(x, y);
            if (value > best.Value) best = (value, x, y);
        }

        for (var i = 0; i <= across; i++)
        {
            for (var j = 0; j <= up; j++) Try((double)i / across, (double)j / up);
        }

        for (double dx = 0.5 / across, dy = 0.5 / up; dx > 1e-4 || dy > 1e-4; dx /= 2, dy /= 2)
        {
            var (_, x, y) = best;
            Try(Math.Max(0, x - dx), y);
            Try(Math.Min(1, x + dx), y);
            Try(x, Math.Max(0, y - dy));
            Try(x, Math.Min(1, y + dy));
        }

        return best.Value;
    }

    private static ArgumentOutOfRangeException OutOfRange(string name, double value, string range) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"must lie in {range}"));
}
