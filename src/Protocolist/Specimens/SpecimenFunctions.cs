using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Quantities;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Specimens;

/// <summary>What this room adds to the formula language: how far fixative gets, and what cuts and injections change.</summary>
internal static class SpecimenFunctions
{
    private const string Usual = "usual";

    private static readonly FormulaType Length = FormulaType.Of(Dimension.OfLength);
    private static readonly FormulaType Time = FormulaType.Of(Dimension.OfTime);
    private static readonly FormulaType VolumeType = FormulaType.Of(Dimension.OfVolume);
    private static readonly FormulaType Temperature = FormulaType.Of(Dimension.OfTemperature);
    private static readonly FormulaParameter Pace = new("pace", FormulaType.OneOf("slow", Usual, "fast"), Optional: true);
    private static readonly FormulaParameter At = new("temperature", Temperature, Optional: true);

    public static ImmutableArray<FormulaFunction> All { get; } =
    [
        new(
            "penetration-time",
            "Time in which 10 % formalin crosses a depth of muscle, d = K·√t, binding not counted. K in mm/√h: slow 1.0, usual 2.0 "
            + "(Steicke et al. 2018, bovine muscle), fast 3.6 (Baker 1958, gel). Slow is what to plan on.",
            [new("depth", Length), Pace, At],
            _ => (Time, null),
            values => Of(PenetrationTime(values), Dimension.OfTime)),
        new(
            "penetration-depth",
            "Depth of muscle that 10 % formalin crosses in a time; the paces are those of penetration-time.",
            [new("time", Time), Pace, At],
            _ => (Length, null),
            values => Of(PenetrationDepth(values), Dimension.OfLength)),
        Rising(
            "cavity-reach", "What fixative has still to cross once a body cavity is opened or filled: the trunk's wall or its largest organ.",
            Length, h => EffectiveDepth.CavityMm(h * 1e3) / 1e3),
        Rising("depot-radius", "Radius of the tissue that a volume injected at one site soaks.", VolumeType, v => EffectiveDepth.DepotRadiusMm(v * 1e6) / 1e3),
        new(
            "slit-reach",
            "What fixative has still to cross between cuts: half of their spacing, or what is left under them in a part of that thickness.",
            [new("spacing", Length), new("depth", Length), new("thickness", Length)],
            _ => (Length, null),
            values => Of(SlitReach(values), Dimension.OfLength)),
    ];

    private static FormulaFunction Rising(string name, string summary, FormulaType of, Func<double, double> function) => new(
        name,
        summary,
        [new("of", of)],
        _ => (Length, null),
        values => FormulaValue.Of(RangeArithmetic.Rising(AtLeastNothing(values[0].Quantity), function, Dimension.OfLength)));

    private static (double Low, double High) PenetrationTime(ImmutableArray<FormulaValue> values)
    {
        var depth = AtLeastNothing(values[0].Quantity);
        var (slowest, fastest) = Rates(values);
        return (Seconds(depth.Low, fastest), Seconds(depth.High, slowest));
    }

    private static (double Low, double High) PenetrationDepth(ImmutableArray<FormulaValue> values)
    {
        var time = AtLeastNothing(values[0].Quantity);
        var (slowest, fastest) = Rates(values);
        return (Penetration.DepthMm(time.Low / 3600, slowest) / 1e3, Penetration.DepthMm(time.High / 3600, fastest) / 1e3);
    }

    /// <summary>Deeper cuts and narrower spacing never leave more to cross; a thicker part never less.</summary>
    private static (double Low, double High) SlitReach(ImmutableArray<FormulaValue> values)
    {
        var (spacing, depth, thickness) = (AtLeastNothing(values[0].Quantity), AtLeastNothing(values[1].Quantity), AtLeastNothing(values[2].Quantity));
        return (Reach(spacing.Low, depth.High, thickness.Low), Reach(spacing.High, depth.Low, thickness.High));

        // Customary cuts are at least as long as they are deep; the length does not limit the reach then.
        static double Reach(double s, double d, double t) => double.IsFinite(s) && double.IsFinite(d) && double.IsFinite(t)
            ? EffectiveDepth.CutsMm(s * 1e3, Math.Max(s, t) * 1e3, d * 1e3, t * 1e3) / 1e3
            : double.PositiveInfinity;
    }

    /// <summary>The slowest and fastest K that the arguments allow, mm/√h. Colder is slower.</summary>
    private static (double Slowest, double Fastest) Rates(ImmutableArray<FormulaValue> values)
    {
        var band = PenetrationRate.Of(Tissue.Muscle, Fixative.Formaldehyde);
        var (pace, at) = (Usual, (QuantityRange?)null);
        for (var i = 1; i < values.Length; i++)
        {
            if (values[i].Kind == FormulaKind.Word) pace = values[i].Word;
            else if (values[i].Kind == FormulaKind.Quantity) at = values[i].Quantity;
        }

        var k = pace switch { "slow" => band.Low, "fast" => band.High, _ => band.Nominal };
        return at is { } bath ? (k * Warmth.RateFactor(Celsius(bath.Low)), k * Warmth.RateFactor(Celsius(bath.High))) : (k, k);
    }

    private static double Celsius(double kelvin) => Math.Clamp(kelvin - 273.15, Warmth.ColdestC, Warmth.WarmestC);

    private static double Seconds(double metres, double k) => Penetration.HoursToReach(metres * 1e3, k) * 3600;

    private static QuantityRange AtLeastNothing(QuantityRange range) => RangeArithmetic.Greatest(range, QuantityRange.Point(0, range.Dimension));

    private static FormulaValue Of((double Low, double High) ends, Dimension dimension) => FormulaValue.Of(
        ends.Low == ends.High
            ? QuantityRange.Point(ends.Low, dimension)
            : new QuantityRange(Math.BitDecrement(ends.Low), Math.BitIncrement(ends.High), dimension));
}
