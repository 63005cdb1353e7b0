using System.Collections.Immutable;
using Protocolist.Quantities;

namespace Protocolist.Formulas;

/// <summary>The functions that belong to no room: least and greatest, parts of a range, rounding, roots, a choice by condition.</summary>
internal static class CommonFunctions
{
    public static ImmutableArray<FormulaFunction> All { get; } =
    [
        Pairwise("least", "The smallest of its arguments.", RangeArithmetic.Least),
        Pairwise("greatest", "The largest of its arguments.", RangeArithmetic.Greatest),
        Part("low", "The lower end of a range.", r => r.Low),
        Part("high", "The upper end of a range.", r => r.High),
        Part("middle", "The middle of a range.", r => r.Middle),
        Root("square-root", "The square root; the argument's dimension must be a square.", 2, Math.Sqrt),
        Root("cube-root", "The cube root; the argument's dimension must be a cube, such as a volume.", 3, CubeRoot),
        Step("round-up", "The next whole multiple of a step at or above a quantity.", Math.Ceiling),
        Step("round-down", "The next whole multiple of a step at or below a quantity.", Math.Floor),
        new(
            "choose",
            "The second argument where the condition holds, else the third.",
            [new("condition", FormulaType.Truth), new("then", null), new("otherwise", null)],
            ChooseType,
            Choose),
    ];

    /// <summary>
    /// The library's cube root errs in the last place, now up, now down, so that a larger number can have a smaller root.
    /// The largest number whose cube is not above the argument never does; too near to nothing the cubes themselves run together.
    /// </summary>
    private static double CubeRoot(double x)
    {
        var root = Math.Cbrt(x);
        if (x is < 1e-290 or double.PositiveInfinity) return root;
        while (root * root * root > x) root = Math.BitDecrement(root);
        for (var next = Math.BitIncrement(root); next * next * next <= x; next = Math.BitIncrement(next)) root = next;
        return root;
    }

    private static FormulaFunction Pairwise(string name, string summary, Func<QuantityRange, QuantityRange, QuantityRange> fold) => new(
        name,
        summary,
        [new("a", null), new("b", null)],
        types => AllAlike(types),
        values =>
        {
            var all = values[0].Quantity;
            for (var i = 1; i < values.Length; i++) all = fold(all, values[i].Quantity);
            return FormulaValue.Of(all);
        })
    {
        Repeats = true,
    };

    private static FormulaFunction Part(string name, string summary, Func<QuantityRange, double> part) => new(
        name,
        summary,
        [new("range", null)],
        types => AllAlike(types),
        values => FormulaValue.Of(QuantityRange.Point(part(values[0].Quantity), values[0].Quantity.Dimension)))
    {
        Bound = values => values[0],
    };

    private static FormulaFunction Root(string name, string summary, sbyte degree, Func<double, double> root) => new(
        name,
        summary,
        [new("quantity", null)],
        types => types[0].Kind != FormulaKind.Quantity ? (types[0], "takes a quantity")
            : types[0].Dimension.Root(degree) is { } dimension ? (FormulaType.Of(dimension), null)
            : (types[0], $"cannot take a root of {types[0].Dimension}"),
        values =>
        {
            var of = values[0].Quantity;

            // There is no root of a negative amount; zero keeps the formula total and the sign of the fault visible elsewhere.
            var positive = RangeArithmetic.Greatest(of, QuantityRange.Point(0, of.Dimension));
            return FormulaValue.Of(RangeArithmetic.Rising(positive, root, of.Dimension.Root(degree)!.Value));
        });

    private static FormulaFunction Step(string name, string summary, Func<double, double> round) => new(
        name,
        summary,
        [new("quantity", null), new("step", null)],
        types => types[0].Dimension.Temperature != 0 ? (types[0], "takes no temperature") : AllAlike(types),
        values =>
        {
            var (of, step) = (values[0].Quantity, values[1].Quantity);
            if (step.Low <= 0 || double.IsInfinity(step.High)) return FormulaValue.Of(RangeArithmetic.Anything(of.Dimension));

            // A hair of tolerance keeps 30 mm / 10 mm at 3 when the division came out as 3.0000000000000004.
            double At(double x, double s) => double.IsFinite(x / s) ? round((x / s) + (round == Math.Floor ? 1e-12 : -1e-12)) * s : x;
            if (step.IsPoint) return FormulaValue.Of(new QuantityRange(At(of.Low, step.Low), At(of.High, step.Low), of.Dimension));

            // With a step that varies, the rounded value stays within one largest step of the quantity, but for rounding and that hair.
            double Margin(double x) => double.IsFinite(x) ? 1e-11 * (Math.Abs(x) + step.High) : 0;
            var low = of.Low - (round == Math.Floor ? step.High : 0) - Margin(of.Low);
            var high = of.High + (round == Math.Floor ? 0 : step.High) + Margin(of.High);
            return FormulaValue.Of(new QuantityRange(of.Low >= 0 ? Math.Max(0, low) : low, high, of.Dimension));
        });

    private static (FormulaType Type, string? Misfit) AllAlike(ImmutableArray<FormulaType> types)
    {
        foreach (var type in types)
        {
            if (type.Kind != FormulaKind.Quantity) return (type, "takes quantities");
            if (type.Dimension != types[0].Dimension) return (type, $"needs like arguments, not {types[0].Dimension} and {type.Dimension}");
        }

        return (types[0], null);
    }

    private static (FormulaType Type, string? Misfit) ChooseType(ImmutableArray<FormulaType> types)
    {
        var (then, otherwise) = (types[1], types[2]);
        if (then.Kind != FormulaKind.Quantity || otherwise.Kind != FormulaKind.Quantity) return (then, "chooses between quantities");
        return then.Dimension == otherwise.Dimension ? (then, null) : (then, $"needs like choices, not {then.Dimension} and {otherwise.Dimension}");
    }

    private static FormulaValue Choose(ImmutableArray<FormulaValue> values) => values[0].Truth switch
    {
        Truth.Yes => values[1],
        Truth.No => values[2],
        _ => FormulaValue.Of(QuantityRange.Hull(values[1].Quantity, values[2].Quantity)),
    };
}
