using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Quantities;

namespace Protocolist.Testing;

/// <summary>Generates formulas of the protocol language: well typed ones that must load, and nearly valid ones that may not.</summary>
public static class FormulaGenerator
{
    /// <summary>What is measured by generated parts, each with units to write it in.</summary>
    private static readonly ImmutableArray<(Dimension Dimension, ImmutableArray<string> Units)> Kinds =
    [
        (Dimension.None, ["", "%"]),
        (Dimension.OfLength, ["mm", "cm", "m", "in"]),
        (Dimension.OfArea, ["cm2"]),
        (Dimension.OfVolume, ["mL", "L", "US gal"]),
        (Dimension.OfMass, ["g", "kg"]),
        (Dimension.OfTime, ["min", "h", "d"]),
        (Dimension.OfTemperature, ["degC"]),
        (Dimension.OfDensity, ["g/L", "kg/m3", "% w/v"]),
        (Dimension.OfSpecificVolume, ["mL/kg"]),
        (Dimension.OfShareByVolume, ["%vol"]),
        (Dimension.OfShareByMass, ["%mass"]),
    ];

    private static readonly Gen<string> Number = Gen.Frequency(
        (6, Gen.Choose(0, 100).Select(n => n.ToString(System.Globalization.CultureInfo.InvariantCulture))),
        (3, Gen.Choose(1, 999).Select(n => (n / 100m).ToString(System.Globalization.CultureInfo.InvariantCulture))),
        (1, Gen.Elements("1e7", "1e-300", "1e-9", "0.000001", "1234567")));

    /// <summary>Well typed formulas over a vocabulary, quantities and conditions, with shrinking.</summary>
    /// <param name="vocabulary">The names that may stand in them.</param>
    /// <returns>An arbitrary for properties: every formula of it loads in a scope that holds the vocabulary and the common functions.</returns>
    public static Arbitrary<FormulaSketch> WellTyped(FormulaVocabulary vocabulary)
    {
        ArgumentNullException.ThrowIfNull(vocabulary);
        var depth = Gen.Choose(0, 4);
        var quantity =
            from d in depth
            from kind in Gen.Elements<(Dimension Dimension, ImmutableArray<string>)>(Kinds)
            from sketch in Quantity(vocabulary, kind.Dimension, d)
            select sketch;
        var condition = from d in depth from sketch in Condition(vocabulary, d) select sketch;
        return Arb.From(Gen.Frequency((4, quantity), (1, condition)).Where(s => s.Text.Length <= 600), s => s.Shrink());
    }

    /// <summary>Texts that are a formula but for a few characters cut out, doubled, swapped or put in.</summary>
    /// <param name="vocabulary">The names that may stand in them.</param>
    /// <returns>An arbitrary for properties about bad input; most of its texts do not load.</returns>
    public static Arbitrary<string> NearlyValid(FormulaVocabulary vocabulary) =>
        Arb.From(from sketch in WellTyped(vocabulary).Generator from damaged in Damage.Of(sketch.Text) select damaged, Damage.Shrink);

    private static Gen<FormulaSketch> Quantity(FormulaVocabulary words, Dimension dimension, int depth)
    {
        var leaf = Leaf(words, dimension);
        if (depth <= 0) return leaf;
        Gen<FormulaSketch> Alike() => Quantity(words, dimension, depth - 1);
        var pair = Alike().Zip(Alike());
        var shapes = new List<Gen<FormulaSketch>>
        {
            leaf,
            Call("least", pair),
            Call("greatest", pair),
            from name in Gen.Elements("low", "high", "middle") from part in Alike() select Make(dimension, Binding.Atom, [part], p => $"{name}({p[0]})"),
            from condition in Condition(words, depth - 1) from sides in pair
            select Make(dimension, Binding.Atom, [condition, sides.Item1, sides.Item2], p => $"choose({p[0]}, {p[1]}, {p[2]})"),

                from word in Gen.Elements("at least", "at most")
                from part in Alike()
                select Make(dimension, Binding.Range, [part], p => $"{word} {p[0].Inside(Binding.Sum)}"),

            // Two plain numbers would have to stand in order.
            pair.Select(s => Make(
                dimension,
                Binding.Range,
                [s.Item1, s.Item2],
                p => p[0].IsLiteral ? $"low({p[0]}) to {p[1].Inside(Binding.Sum)}" : $"{p[0].Inside(Binding.Sum)} to {p[1].Inside(Binding.Sum)}")),
        };
        if (dimension != Dimension.OfTemperature) shapes.AddRange(Arithmetic(words, dimension, depth, pair));
        return Gen.OneOf(shapes);
    }

    private static IEnumerable<Gen<FormulaSketch>> Arithmetic(FormulaVocabulary words, Dimension dimension, int depth, Gen<(FormulaSketch, FormulaSketch)> pair)
    {
        yield return pair.Select(s => Make(dimension, Binding.Sum, [s.Item1, s.Item2], p => $"{p[0].Inside(Binding.Sum)} + {p[1].Inside(Binding.Product)}"));

        // A small plain number minus a large one is refused as a range written with a dash, unless in brackets.
        yield return pair.Select(s => Make(
            dimension,
            Binding.Sum,
            [s.Item1, s.Item2],
            p => p[1].IsLiteral ? $"{p[0].Inside(Binding.Sum)} - ({p[1]})" : $"{p[0].Inside(Binding.Sum)} - {p[1].Inside(Binding.Product)}"));
        yield return pair.Select(s => Make(dimension, Binding.Range, [s.Item1, s.Item2], p => $"({p[0]}) ± {p[1].Inside(Binding.Sum)}"));
        yield return Quantity(words, dimension, depth - 1).Select(s => Make(dimension, Binding.Atom, [s], p => $"-({p[0]})"));
        yield return Call("round-up", pair);
        yield return Call("round-down", pair);
        foreach (var (degree, name) in ((int, string)[])[(2, "square-root"), (3, "cube-root")])
        {
            var power = Enumerable.Repeat(dimension, degree).Aggregate((a, b) => a * b);
            if (!Kinds.Any(k => k.Dimension == power)) continue;
            yield return Quantity(words, power, depth - 1).Select(s => Make(dimension, Binding.Atom, [s], p => $"{name}({p[0]})"));
        }

        var factors = (
            from a in Kinds
            from b in Kinds
            where a.Dimension.Temperature == 0 && b.Dimension.Temperature == 0
            select (A: a.Dimension, B: b.Dimension)).ToArray();
        yield return Factors('*', factors.Where(f => f.A * f.B == dimension));
        yield return Factors('/', factors.Where(f => f.A / f.B == dimension));

        Gen<FormulaSketch> Factors(char sign, IEnumerable<(Dimension A, Dimension B)> dimensions) =>
            from pick in Gen.Elements(dimensions)
            from a in Quantity(words, pick.A, depth - 1)
            from b in Quantity(words, pick.B, depth - 1)
            select Make(dimension, Binding.Product, [a, b], p => $"{p[0].Inside(Binding.Product)} {sign} {p[1].Inside(Binding.Atom)}");
    }

    private static Gen<FormulaSketch> Condition(FormulaVocabulary words, int depth)
    {
        var comparison =
            from kind in Gen.Elements<(Dimension Dimension, ImmutableArray<string>)>(Kinds)
            from a in Quantity(words, kind.Dimension, depth - 1)
            from b in Quantity(words, kind.Dimension, depth - 1)
            from sign in Gen.Elements("<", "<=", ">", ">=", "=")
            select Make(null, Binding.Comparison, [a, b], p => $"{p[0].Inside(Binding.Range)} {sign} {p[1].Inside(Binding.Range)}");
        if (words.Words.IsEmpty) return comparison;
        var test =
            from name in Gen.Elements<KeyValuePair<string, ImmutableArray<string>>>(words.Words)
            from word in Gen.Elements<string>(name.Value)
            from sign in Gen.Elements("is", "is not")
            select Make(null, Binding.Comparison, [], _ => $"{name.Key} {sign} {word}");
        if (depth <= 0) return Gen.OneOf(comparison, test);
        var pair = Condition(words, depth - 1).Zip(Condition(words, depth - 1));
        return Gen.OneOf(
            comparison,
            test,
            pair.Select(s => Make(null, Binding.And, [s.Item1, s.Item2], p => $"{p[0].Inside(Binding.And)} and {p[1].Inside(Binding.Not)}")),
            pair.Select(s => Make(null, Binding.Or, [s.Item1, s.Item2], p => $"{p[0].Inside(Binding.Or)} or {p[1].Inside(Binding.And)}")),
            Condition(words, depth - 1).Select(s => Make(null, Binding.Not, [s], p => $"not {p[0].Inside(Binding.Not)}")));
    }

    private static Gen<FormulaSketch> Leaf(FormulaVocabulary words, Dimension dimension)
    {
        var units = Kinds.First(k => k.Dimension == dimension).Units;
        var literal =
            from number in Number
            from unit in Gen.Elements<string>(units)
            select Make(dimension, Binding.Atom, [], _ => unit.Length == 0 ? number : $"{number} {unit}");
        var range = from low in Gen.Choose(0, 50)
                    from more in Gen.Choose(0, 50)
                    from unit in Gen.Elements<string>(units)
                    select Make(dimension, Binding.Range, [], _ => FormattableString.Invariant($"{low} to {low + more} {unit}").TrimEnd());
        var names = words.Quantities.Where(n => n.Value == dimension).Select(n => Make(dimension, Binding.Atom, [], _ => n.Key)).ToArray();
        return names.Length == 0 ? Gen.Frequency((3, literal), (1, range)) : Gen.Frequency((2, literal), (1, range), (4, Gen.Elements(names)));
    }

    private static Gen<FormulaSketch> Call(string name, Gen<(FormulaSketch, FormulaSketch)> pair) =>
        pair.Select(s => Make(s.Item1.Dimension, Binding.Atom, [s.Item1, s.Item2], p => $"{name}({p[0]}, {p[1]})"));

    private static FormulaSketch Make(
        Dimension? dimension,
        Binding binding,
        ImmutableArray<FormulaSketch> parts,
        Func<ImmutableArray<FormulaSketch>, string> write) =>
        new(dimension, binding, parts, write);
}
