using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Specimens.Measuring;

/// <summary>Measurements of one animal that cannot all be right, each with the slip that would explain it.</summary>
internal static class Contradictions
{
    // Out of the expected range is a warning; three times out, no living thing is built so: judgement.
    private const double Absurd = 3;

    private static readonly Phrase TooHeavyLot = new(
        "lot-heavier-than-its-animals", "{count} animals of at most {one:0.## g} cannot weigh {lot:0.## g} together");
    private static readonly Phrase TooHeavyLotRemedy =
        new("lot-heavier-than-its-animals.remedy", "mass: is the largest animal, lot-mass: all together; count again");
    private static readonly Phrase ByDisplacement = new(
        "mass-against-displacement", "{mass:0.### g} in {volume:0.### mL} is a density of {density:0 kg/m3}; {group:a} has {usual:0}");
    private static readonly Phrase ByLength = new(
        "mass-against-length", "{group:a} of {length:0.# mm} {kind} weighs about {expected:two g} ({low:two} to {high:two}), and {mass:two g} is given");
    private static readonly Phrase ByThickness = new(
        "thickness-against-mass", "{group:a} of {volume:two mL} is about {expected:two mm} thick, and the {name} given makes it {given:two mm}");
    private static readonly Phrase ByGirth = new(
        "girth-against-mass", "{group:a} of {volume:two mL} is about {expected:two mm} round, and a girth of {given:two mm} is given");
    private static readonly Phrase Litres = new("slip.litres", "litres written as millilitres, or the other way");
    private static readonly Phrase VolumePoint = new("slip.volume-point", "the decimal point of the volume");
    private static readonly Phrase TailIncluded = new("slip.tail-included", "the total length given as the {kind}");
    private static readonly Phrase FinLeftOut = new("slip.fin-left-out", "the standard length given as the total length");
    private static readonly Phrase HalfThickness = new("slip.half-thickness", "half of it given for the whole");
    private static readonly Phrase HalfGirth = new("slip.half-girth", "half of the girth given for the whole");
    private static readonly Phrase ThicknessAsGirth = new("slip.thickness-as-girth", "the thickness given as the girth");

    public static void Find(Specimen s, TaxonGroup group, Spread? lengthMm, List<Finding> findings)
    {
        var massG = s.Mass?.Grams ?? (s.LotMass?.Grams / s.Count);
        if (massG is { } m && s.DisplacementVolume is { } displaced) MassAgainstDisplacement(m, displaced, group, findings);
        if (massG is { } mass && lengthMm is { } length) MassAgainstLength(s, mass, length, group, findings);
        var volume = s.DisplacementVolume?.Milliliters ?? (massG / group.DensityKgPerM3.Nominal * 1000);
        if (volume is { } v) Across(s, v, lengthMm, group, findings);
        if (s is { Mass: { } one, LotMass: { } lot } && lot.Grams > one.Grams * s.Count * 1.05)
        {
            var message = TooHeavyLot.With(("count", s.Count), ("one", one), ("lot", lot));
            findings.Add(Finding.Warning("lot-heavier-than-its-animals", message, TooHeavyLotRemedy) with { Subject = "lot-mass" });
        }
    }

    private static void MassAgainstDisplacement(double massG, Volume displaced, TaxonGroup group, List<Finding> findings)
    {
        var usual = group.DensityKgPerM3;
        var found = massG / displaced.Milliliters * 1000;

        // 10 % for readings and trapped air.
        var (ratio, tolerance) = (found / usual.Nominal, Math.Max(usual.High / usual.Nominal, usual.Nominal / usual.Low) * 1.10);
        if (Fits(ratio, tolerance)) return;
        Argument[] facts =
        [
            ("mass", Mass.FromGrams(massG)), ("volume", displaced), Argument.Of("density", found, Dimension.OfDensity),
            ("group", group.Name), ("usual", new QuantityRange(usual.Low, usual.High, Dimension.OfDensity)),
        ];
        Slip[] slips = [.. Slip.OfMass(massG), new(Litres, 1e3), new(Litres, 1e-3), new(VolumePoint, 10), new(VolumePoint, 0.1)];
        findings.Add(Judged("mass-against-displacement", "displacement-volume", ByDisplacement.With(facts), ratio, tolerance, slips));
    }

    private static void MassAgainstLength(Specimen s, double massG, Spread lengthMm, TaxonGroup group, List<Finding> findings)
    {
        var relation = BodyVolume.RelationOf(s, group);
        var (expected, spread, power) = relation is null
            ? (group.Shape.VolumeMl(lengthMm.Nominal) * group.DensityKgPerM3.Nominal / 1000, Math.Pow(group.Shape.Spread, 2), 3)
            : (relation.MassG(lengthMm.Nominal), relation.Spread, relation.B);
        var doubt = Math.Pow(lengthMm.High / lengthMm.Nominal, power); // of a length that was itself estimated
        var (ratio, tolerance) = (massG / expected, spread * doubt);
        if (Fits(ratio, tolerance)) return;
        var kind = MeasureNames.Of(group.Length);
        Argument[] facts =
        [
            ("group", group.Name), ("length", Length.FromMillimeters(lengthMm.Nominal)), ("kind", kind), ("expected", Mass.FromGrams(expected)),
            ("low", expected / spread), ("high", expected * spread), ("mass", Mass.FromGrams(massG)),
        ];
        List<Slip> slips = [.. Slip.OfMass(massG), .. Slip.OfLength(MeasureNames.Length, lengthMm.Nominal, power)];
        if (group.TotalPerLength is { Nominal: > 1 } tail && s.Length is not null)
            slips.Add(new(TailIncluded.With(("kind", kind)), Math.Pow(tail.Nominal, power)));
        if (group.IsA("fish") && s.Length is not null) slips.Add(new(FinLeftOut, Math.Pow(1.18, -power)));
        findings.Add(Judged("mass-against-length", "mass", ByLength.With(facts), ratio, tolerance, slips));
    }

    private static void Across(Specimen s, double volumeMl, Spread? lengthMm, TaxonGroup group, List<Finding> findings)
    {
        if (s is { Thickness: null, Width: null, Height: null, Girth: null }) return;
        var shape = group.Shape;
        var expected = lengthMm is { } l ? shape.HalfThicknessMm(volumeMl, l.Nominal) : shape.HalfThicknessMm(volumeMl);
        var tolerance = shape.Spread * (lengthMm is null ? 1.5 : 1.35); // a fat or a starved animal besides: judgement
        if (BodyThickness.ByCallipers(s, shape) is { } half && !Fits(half.Nominal / expected, tolerance))
        {
            var (subject, name) = s.Thickness is not null ? ("thickness", MeasureNames.Thickness)
                : s.Width is not null ? ("width", MeasureNames.Width) : ("height", MeasureNames.Height);
            findings.Add(Judged(
                "thickness-against-mass", subject, ByThickness.With([.. Sizes(group, volumeMl, 2 * expected, 2 * half.Nominal), ("name", name)]),
                half.Nominal / expected, tolerance, Upside(name, 2 * half.Nominal, new(HalfThickness, 2))));
        }

        if (s.Girth is { } girth && expected * shape.GirthPerHalfThickness is var round && !Fits(girth.Millimeters / round, tolerance))
        {
            findings.Add(Judged(
                "girth-against-mass", "girth", ByGirth.With(Sizes(group, volumeMl, round, girth.Millimeters)), girth.Millimeters / round, tolerance,
                [.. Upside(MeasureNames.Girth, girth.Millimeters, new(HalfGirth, 2)), new(ThicknessAsGirth, Math.PI)]));
        }
    }

    private static Argument[] Sizes(TaxonGroup group, double volumeMl, double expectedMm, double givenMm) =>
    [
        ("group", group.Name), ("volume", Volume.FromMilliliters(volumeMl)),
        ("expected", Length.FromMillimeters(expectedMm)), ("given", Length.FromMillimeters(givenMm)),
    ];

    /// <summary>Slips of a length that is itself the value judged: put right, the ratio moves the other way.</summary>
    private static Slip[] Upside(Phrase name, double mm, Slip halved) => [.. Slip.OfLength(name, mm, 1).Select(s => s with { Factor = 1 / s.Factor }), halved];

    private static bool Fits(double ratio, double tolerance) => Math.Max(ratio, 1 / ratio) <= tolerance;

    private static Finding Judged(string id, string subject, Message message, double ratio, double tolerance, IEnumerable<Slip> slips) =>
        new(id, Fits(ratio, tolerance * Absurd) ? Severity.Warning : Severity.Error, message, Slip.Remedy(ratio, tolerance, slips)) { Subject = subject };
}
