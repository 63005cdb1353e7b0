using System.Collections.Immutable;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Specimens.Measuring;

/// <summary>Measurements of one animal that cannot all be right, each with the slip that would explain it.</summary>
internal static class Contradictions
{
    // Out of the expected range is a warning; three times out, no living thing is built so: judgement.
    private const double Absurd = 3;

    public static void Find(Specimen s, TaxonGroup group, Spread? lengthMm, ImmutableArray<Finding>.Builder findings)
    {
        var massG = s.Mass?.Grams ?? (s.LotMass?.Grams / s.Count);
        if (massG is { } m && s.DisplacementVolume is { } displaced) MassAgainstDisplacement(m, displaced.Milliliters, group, findings);
        if (massG is { } mass && lengthMm is { } length) MassAgainstLength(s, mass, length, group, findings);
        var volume = s.DisplacementVolume?.Milliliters ?? (massG / group.DensityKgPerM3.Nominal * 1000);
        if (volume is { } v) Across(s, v, lengthMm, group, findings);
        if (s is { Mass: { } one, LotMass: { } lot } && lot.Grams > one.Grams * s.Count * 1.05)
        {
            findings.Add(Finding.Warning(
                "lot-heavier-than-its-animals",
                Invariant($"{s.Count} animals of at most {one.Grams:0.##} g cannot weigh {lot.Grams:0.##} g together"),
                "mass: is the largest animal, lot-mass: all together; count again") with
            { Subject = "lot-mass" });
        }
    }

    private static void MassAgainstDisplacement(double massG, double volumeMl, TaxonGroup group, ImmutableArray<Finding>.Builder findings)
    {
        var density = group.DensityKgPerM3;
        var found = massG / volumeMl * 1000;
        // 10 % for readings and trapped air.
        var tolerance = Math.Max(density.High / density.Nominal, density.Nominal / density.Low) * 1.10;
        Judge(found / density.Nominal, tolerance, "mass-against-displacement", "displacement-volume",
            Invariant($"{massG:0.###} g in {volumeMl:0.###} mL is a density of {found:0} kg/m3; a {group.Name} has {density.Low:0} to {density.High:0}"),
            [
                .. Slip.OfMass(massG),
                new("litres written as millilitres, or the other way", 1e3), new("litres written as millilitres, or the other way", 1e-3),
                new("the decimal point of the volume", 10), new("the decimal point of the volume", 0.1),
            ],
            findings);
    }

    private static void MassAgainstLength(Specimen s, double massG, Spread lengthMm, TaxonGroup group, ImmutableArray<Finding>.Builder findings)
    {
        var relation = BodyVolume.RelationOf(s, group);
        var (expected, spread, power) = relation is null
            ? (group.Shape.VolumeMl(lengthMm.Nominal) * group.DensityKgPerM3.Nominal / 1000, Math.Pow(group.Shape.Spread, 2), 3)
            : (relation.MassG(lengthMm.Nominal), relation.Spread, relation.B);
        var doubt = Math.Pow(lengthMm.High / lengthMm.Nominal, power); // of a length that was itself reckoned
        var kind = BodyLength.Words(group.Length);
        List<Slip> slips = [.. Slip.OfMass(massG), .. Slip.OfLength("length", lengthMm.Nominal, power)];
        if (group.TotalPerLength is { Nominal: > 1 } tail && s.Length is not null) slips.Add(new($"the total length given as the {kind}", Math.Pow(tail.Nominal, power)));
        if (group.IsA("fish") && s.Length is not null) slips.Add(new("the standard length given as the total length", Math.Pow(1.18, -power)));
        Judge(massG / expected, spread * doubt, "mass-against-length", "mass",
            Invariant($"a {group.Name} of {lengthMm.Nominal:0.#} mm {kind} weighs about {TwoFigures.Of(expected)} g ({TwoFigures.Of(expected / spread)} to {TwoFigures.Of(expected * spread)}), and {TwoFigures.Of(massG)} g is given"),
            slips, findings);
    }

    private static void Across(Specimen s, double volumeMl, Spread? lengthMm, TaxonGroup group, ImmutableArray<Finding>.Builder findings)
    {
        var shape = group.Shape;
        var expected = lengthMm is { } l ? shape.HalfThicknessMm(volumeMl, l.Nominal) : shape.HalfThicknessMm(volumeMl);
        var tolerance = shape.Spread * (lengthMm is null ? 1.5 : 1.35); // a fat or a starved animal besides: judgement
        if (BodyThickness.Measured(s with { Girth = null }, shape) is { } half)
        {
            var name = s.Thickness is not null ? "thickness" : s.Width is not null ? "width" : "height";
            Judge(half.Nominal / expected, tolerance, "thickness-against-mass", name,
                Invariant($"a {group.Name} of {TwoFigures.Of(volumeMl)} mL is about {TwoFigures.Of(2 * expected)} mm thick, and the {name} given makes it {TwoFigures.Of(2 * half.Nominal)} mm"),
                Upside(Slip.OfLength(name, 2 * half.Nominal, 1), "half of it given for the whole"), findings);
        }

        if (s.Girth is { } girth)
        {
            var round = expected * shape.GirthPerHalfThickness;
            Judge(girth.Millimeters / round, tolerance, "girth-against-mass", "girth",
                Invariant($"a {group.Name} of {TwoFigures.Of(volumeMl)} mL is about {TwoFigures.Of(round)} mm round, and a girth of {TwoFigures.Of(girth.Millimeters)} mm is given"),
                [.. Upside(Slip.OfLength("girth", girth.Millimeters, 1), "half of the girth given for the whole"), new("the thickness given as the girth", Math.PI)], findings);
        }
    }

    /// <summary>Slips of a length that is itself the value judged: put right, the ratio moves the other way.</summary>
    private static IEnumerable<Slip> Upside(IEnumerable<Slip> slips, string halved) =>
        [.. slips.Select(s => s with { Factor = 1 / s.Factor }), new(halved, 2)];

    private static void Judge(
        double ratio, double tolerance, string id, string subject, string message, IEnumerable<Slip> slips, ImmutableArray<Finding>.Builder findings)
    {
        var off = Math.Max(ratio, 1 / ratio);
        if (off <= tolerance) return;
        findings.Add(new Finding(
            id, off > tolerance * Absurd ? Severity.Error : Severity.Warning, message, Slip.Remedy(Slip.Explain(ratio, tolerance, slips)))
        {
            Subject = subject,
        });
    }
}
