using System.Collections.Immutable;
using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Testing;

/// <summary>
/// Generates specimen files for the classes of a shelf: every protocol gets its share, sizes are spread evenly over each class by their logarithm.
/// </summary>
public static class SpecimenGenerator
{
    /// <summary>What stands in for an end that a class leaves open. Only to have something to draw from.</summary>
    private static readonly ImmutableSortedDictionary<string, (double Low, double High)> OpenEnds =
        ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal,
    [
        KeyValuePair.Create("half-thickness", (0.5e-3, 0.15)),
        KeyValuePair.Create("length", (5e-3, 1.5)),
        KeyValuePair.Create("mass", (1e-3, 60.0)),
        KeyValuePair.Create("volume", (1e-6, 60e-3)),
    ]);

    /// <summary>Specimen files that read without an error.</summary>
    /// <param name="shelf">The protocols whose classes are wanted; at least one must be for specimens.</param>
    /// <returns>An arbitrary with shrinking.</returns>
    public static Arbitrary<FileSketch> Valid(Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        var classes = shelf.Protocols.Where(p => p.IsForSpecimens && shelf.Kinds.Find(p.Class.Group) is not null).Select(p => p.Class).ToArray();
        if (classes.Length == 0) throw new ArgumentException("No protocol of the shelf is for specimens.", nameof(shelf));
        return Arb.From(Gen.Elements(classes).SelectMany(c => Of(c, shelf.Kinds)), s => s.Shrink());
    }

    /// <summary>Specimen files with a few characters wrong.</summary>
    /// <param name="shelf">The protocols whose classes are wanted.</param>
    /// <returns>An arbitrary for properties about bad input.</returns>
    public static Arbitrary<string> NearlyValid(Shelf shelf) =>
        Arb.From(from file in Valid(shelf).Generator from damaged in Damage.Of(file.Text) select damaged, Damage.Shrink);

    private static Gen<FileSketch> Of(SpecimenClass taxon, Kinds kinds) =>
        from @group in Gen.Elements(kinds.Groups.Where(g => g.IsA(taxon.Group)).ToArray())
        from own in Gen.Elements(true, true, false)
        from place in Gen.Choose(0, 1000)
        from count in Gen.Frequency((5, Gen.Constant(1)), (1, Gen.Choose(2, 40)))
        from words in Gen.CollectToArray(taxon.Words, w => Gen.Elements<string>(w.Value).Select(word => $"{w.Key}: {word}"))
        from condition in Gen.Elements("", "fresh", "chilled", "frozen", "thawed", "bloated")
        from use in Gen.Elements("", "display", "teaching", "research", "tissue-for-dna-first")
        from hasHistory in Gen.Elements(true, true, true, true, false)
        from weighed in Gen.Choose(0, 2)
        select new FileSketch("specimen.yaml",
        [
            new("format: 1", IsNeeded: true),
            new("specimen: GEN-001", IsNeeded: true),
            new($"group: {(own ? taxon.Group : @group.Id)}", IsNeeded: true) { Simpler = own ? [] : [$"group: {taxon.Group}"] },
            .. Sizes(taxon, own ? taxon.Group : @group.Id, place / 1000.0, weighed == 0),
            .. words.Where(w => !w.EndsWith(": unknown", StringComparison.Ordinal)).Select(w => new SketchEntry(w, IsNeeded: true)),
            .. count == 1 ? [] : (SketchEntry[])[new($"count: {count.ToString(CultureInfo.InvariantCulture)}") { Simpler = ["count: 2"] }],
            .. condition.Length == 0 ? [] : (SketchEntry[])[new($"condition: {condition}")],
            .. use.Length == 0 || taxon.Words.ContainsKey("intended-use") ? [] : (SketchEntry[])[new($"intended-use: {use}")],
            .. hasHistory ? History : [],
        ]);

    private static readonly ImmutableArray<SketchEntry> History =
    [
        new("found-on: 2026-12-30"),
        new("where: an invented shore"),
        new("how-obtained: found dead"),
        new("collected-by: A. Nobody"),
    ];

    /// <summary>Sizes at one place between the ends of every limit: they rise together, so that they do not contradict each other by much.</summary>
    private static IEnumerable<SketchEntry> Sizes(SpecimenClass taxon, string group, double place, bool withMass)
    {
        var limits = taxon.Limits.IsEmpty ? [KeyValuePair.Create("mass", new QuantityRange(1e-3, 30, Dimension.OfMass))] : taxon.Limits.ToArray();
        foreach (var (key, limit) in limits) yield return Size(key, limit, place);
        if (!withMass || taxon.Limits.ContainsKey("mass") || !taxon.Limits.TryGetValue("length", out var length)) yield break;
        var reckoned = BodyMeasure.Of(new Specimen { Id = "x", Group = group, Length = Length.FromMeters(At(length, "length", place)) });
        if (reckoned.Value is { } body) yield return new($"mass: {Text(body.Mass.Nominal.Grams)} g");
    }

    private static SketchEntry Size(string key, QuantityRange limit, double place)
    {
        var (size, simple) = (At(limit, key, place), At(limit, key, 0.5));
        return new(Line(key, size), IsNeeded: true) { Simpler = Math.Abs(place - 0.5) < 1e-6 ? [] : [Line(key, simple)] };
    }

    /// <summary>A little inside the ends, so that rounding does not carry it out.</summary>
    private static double At(QuantityRange limit, string key, double place)
    {
        var (least, most) = OpenEnds[key];
        var low = limit.Low > 0 ? limit.Low * 1.01 : Math.Min(least, limit.High / 100);
        var high = double.IsFinite(limit.High) ? limit.High * 0.99 : Math.Max(most, low * 3);
        return low >= high ? (limit.Low + limit.High) / 2 : low * Math.Pow(high / low, place);
    }

    private static string Line(string key, double si) => key switch
    {
        "mass" => $"mass: {Text(si * 1e3)} g",
        "length" => $"length: {Text(si * 1e3)} mm",
        "half-thickness" => $"thickness: {Text(si * 2e3)} mm",
        _ => $"displacement-volume: {Text(si * 1e6)} mL",
    };

    /// <summary>Four figures, more than any table scale shows; a mite's mass in the form that takes no row of noughts.</summary>
    private static string Text(double number)
    {
        var rounded = double.Parse(number.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return rounded < 1e-3 ? rounded.ToString("0.###e-0", CultureInfo.InvariantCulture) : rounded.ToString("0.#######", CultureInfo.InvariantCulture);
    }
}
