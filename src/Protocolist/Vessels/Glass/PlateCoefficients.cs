using System.Globalization;

namespace Protocolist.Vessels.Glass;

/// <summary>How far and how hard a pane of one shape bends, whatever its size: thin-plate theory, simply supported edges, small deflections.</summary>
/// <remarks>
/// With p the pressure at the bottom, H the pane's height (for a bottom pane: its short side), t its thickness and E the glass's stiffness:
/// stress = <see cref="Stress"/> · p · H² / t², deflection = <see cref="Deflection"/> · p · H⁴ / (E · t³).
/// They are computed by Lévy's series and agree with Roark's Formulas for Stress and Strain (table 11.4, cases 1a and 1d)
/// and, for a free top, with Timoshenko and Woinowsky-Krieger's plates on three supports.
/// </remarks>
internal sealed class PlateCoefficients
{
    /// <summary>The Poisson number of the published tables. That of real glass, 0.22 to 0.23 (EN 572-1 has 0.2), gives up to 4 % less stress.</summary>
    public const double TabulatedPoisson = 0.3;

    private const int Across = 16, Up = 32;

    // Each is a search over the pane, and most who ask need one or two of them.
    private readonly Lazy<double> _deflection, _stress, _side, _bottom;

    private PlateCoefficients(double aspect, PaneLoad load, TankTop top, double poisson)
    {
        var middle = aspect / 2;
        var plate = new Lazy<LevyPlate>(() => new(aspect, load, top, poisson));
        _deflection = new(() => 12 * (1 - poisson * poisson) * Peak(Up, plate.Value.DeflectionInTheMiddle));
        _stress = new(() => 6 * PeakMoment(plate.Value, middle));
        _side = new(() => Peak(Up, plate.Value.SideReaction));
        _bottom = new(() => Peak(Across, x => plate.Value.BottomReaction(x * middle)));
    }

    /// <summary>α: the greatest deflection. Contains 12 (1 - ν²).</summary>
    public double Deflection => _deflection.Value;

    /// <summary>β: the greatest principal stress, in whatever direction and place. Contains 6.</summary>
    public double Stress => _stress.Value;

    /// <summary>The greatest load per length on a side edge, in units of p · H.</summary>
    public double SideReaction => _side.Value;

    /// <summary>The greatest load per length on the bottom edge, in units of p · H.</summary>
    public double BottomReaction => _bottom.Value;

    /// <summary>The coefficients for a wall or a bottom.</summary>
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
        return new(aspect, load, load == PaneLoad.Uniform ? TankTop.Framed : top, poisson);
    }

    /// <summary>How near the greatest value is searched for, in parts of the pane's height and of half its length: it is flat there.</summary>
    private const double Near = 1e-4;

    /// <summary>The greatest value from 0 to 1: the best of a grid, then steps of halving length around it.</summary>
    private static double Peak(int grid, Func<double, double> value)
    {
        var (best, at) = (double.NegativeInfinity, 0.0);
        for (var i = 0; i <= grid; i++) Try((double)i / grid);
        for (var step = 0.5 / grid; step > Near; step /= 2)
        {
            var around = at;
            Try(Math.Max(0, around - step));
            Try(Math.Min(1, around + step));
        }

        return best;

        void Try(double here)
        {
            if (value(here) is var found && found > best) (best, at) = (found, here);
        }
    }

    /// <summary>The same for the moment over half of the pane. Waves and terms are worked out once for each line of the grid.</summary>
    private static double PeakMoment(LevyPlate plate, double middle)
    {
        Span<double> waves = stackalloc double[(Across + 1) * LevyPlate.WavesLength];
        Span<double> terms = stackalloc double[LevyPlate.HeightLength];
        for (var i = 0; i <= Across; i++) plate.WavesAt(middle * i / Across, WavesOf(i, waves));
        var (best, x, y) = (double.NegativeInfinity, 0.0, 0.0);
        for (var j = 0; j <= Up; j++)
        {
            var count = plate.TermsAt((double)j / Up, terms);
            for (var i = 0; i <= Across; i++)
            {
                var moment = plate.PrincipalMoment(middle * i / Across, WavesOf(i, waves), (double)j / Up, terms, count);
                if (moment > best) (best, x, y) = (moment, (double)i / Across, (double)j / Up);
            }
        }

        var here = waves[..LevyPlate.WavesLength];
        for (double dx = 0.5 / Across, dy = 0.5 / Up; dx > Near || dy > Near; dx /= 2, dy /= 2)
        {
            ReadOnlySpan<(double X, double Y)> around =
                [(Math.Max(0, x - dx), y), (Math.Min(1, x + dx), y), (x, Math.Max(0, y - dy)), (x, Math.Min(1, y + dy))];
            foreach (var (atX, atY) in around)
            {
                plate.WavesAt(middle * atX, here);
                var count = plate.TermsAt(atY, terms);
                var moment = plate.PrincipalMoment(middle * atX, here, atY, terms, count);
                if (moment > best) (best, x, y) = (moment, atX, atY);
            }
        }

        return best;
    }

    private static Span<double> WavesOf(int place, Span<double> waves) => waves.Slice(place * LevyPlate.WavesLength, LevyPlate.WavesLength);

    private static ArgumentOutOfRangeException OutOfRange(string name, double value, string range) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"must lie in {range}"));
}
