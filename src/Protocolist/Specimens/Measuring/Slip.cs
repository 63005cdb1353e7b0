using static System.FormattableString;

namespace Protocolist.Specimens.Measuring;

/// <summary>A way to write a measurement down wrong. <paramref name="Factor"/> is what the ratio given : expected is multiplied by when it is put right.</summary>
internal readonly record struct Slip(string What, double Factor)
{
    /// <summary>What goes wrong with a mass.</summary>
    public static IEnumerable<Slip> OfMass(double massG) =>
    [
        new(Invariant($"the unit of the mass ({massG:0.###} mg or {massG / 1000:0.######} g rather than {massG / 1000:0.######} kg)"), 1e-3),
        new(Invariant($"the unit of the mass ({massG:0.###} kg rather than {massG:0.###} g)"), 1e3),
        new(Invariant($"the decimal point of the mass ({massG / 10:0.####} g rather than {massG:0.###} g)"), 0.1),
        new(Invariant($"the decimal point of the mass ({massG * 10:0.####} g rather than {massG:0.###} g)"), 10),
        new("a mass in pounds written as kilograms", 0.4536),
        new("a mass in ounces written as grams", 28.35),
    ];

    /// <summary>What goes wrong with a length on which the expected value depends as length^<paramref name="power"/>.</summary>
    public static IEnumerable<Slip> OfLength(string name, double mm, double power) =>
    [
        new(Invariant($"the unit or decimal point of the {name} ({mm / 10:0.###} mm rather than {mm:0.###} mm)"), Math.Pow(10, power)),
        new(Invariant($"the unit or decimal point of the {name} ({mm:0.###} cm rather than {mm / 10:0.###} cm)"), Math.Pow(10, -power)),
        new($"a {name} in inches written as centimetres", Math.Pow(2.54, -power)),
    ];

    /// <summary>The slips that would explain a ratio, likeliest first: those that bring it within <paramref name="tolerance"/> of 1, at most two.</summary>
    public static IReadOnlyList<string> Explain(double ratio, double tolerance, IEnumerable<Slip> slips) =>
    [
        .. slips.Select(s => (s.What, Off: Math.Abs(Math.Log(ratio * s.Factor))))
            .Where(s => s.Off <= Math.Log(tolerance))
            .OrderBy(s => s.Off)
            .Select(s => s.What)
            .Take(2),
    ];

    /// <summary>The remedy that names them.</summary>
    public static string Remedy(IReadOnlyList<string> likely) =>
        likely.Count == 0 ? "measure again" : $"likely {string.Join(", or ", likely)}; measure again";
}
