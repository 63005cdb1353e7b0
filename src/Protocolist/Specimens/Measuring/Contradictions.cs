using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Specimens.Measuring;

/// <summary>Measurements of one animal that cannot all be right, each with the slip that would explain it.</summary>
internal static class Contradictions
{
    // Out of the expected range is a warning; three times out, no living thing is built so: judgement.
    private const double Absurd = 3;

    // Frozen, thawed, bloated or rotting bodies have lost or taken up what a scale cannot tell: wider, and never an error. Judgement.
    private const double NotFresh = 1.5;

    // A relation that takes in more says little of a slip by a pound or an inch: judgement.
    private const double SharpAccept = 3.2;

    // Nine tenths lie within a shape's spread, nearly all within this power of it: 2.576 / 1.645.
    private const double NinetyNineOfNinety = 1.57;

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
    private static readonly Phrase OtherGiven = new("slip.other-length", "the {other} given as the {kind}");
    private static readonly Phrase RadiusGiven = new("slip.radius", "the radius given as the diameter");
    private static readonly Phrase MassOfLot = new("slip.mass-of-lot", "the mass of the whole lot given as that of one");
    private static readonly Phrase HalfThickness = new("slip.half-thickness", "half of it given for the whole");
    private static readonly Phrase HalfGirth = new("slip.half-girth", "half of the girth given for the whole");
    private static readonly Phrase ThicknessAsGirth = new("slip.thickness-as-girth", "the thickness given as the girth");

    /// <summary>Says what contradicts what.</summary>
    /// <param name="s">The specimen.</param>
    /// <param name="group">Its group.</param>
    /// <param name="lengthMm">Its customary length.</param>
    /// <param name="by">The relation that its mass is judged by, with the length that it takes; null where nothing judges it.</param>
    /// <param name="kinds">The groups that there are, for finer words; null where nobody reads them.</param>
    /// <param name="findings">Where to say it.</param>
    public static void Find(
        Specimen s, TaxonGroup group, Spread? lengthMm, (LengthMassRelation Relation, Spread Mm)? by, Kinds? kinds, List<Finding> findings)
    {
        var massG = s.Mass?.Grams ?? (s.LotMass?.Grams / s.Count);
        if (massG is { } m && s.DisplacementVolume is { } displaced) MassAgainstDisplacement(m, displaced, group, findings);
        if (massG is { } mass && by is var (relation, mm) && !IsUngrown(s, relation)) MassAgainstLength(s, mass, relation, mm, group, kinds, findings);
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
        var remedy = Slip.Remedy(ratio, tolerance, slips);
        findings.Add(Judged("mass-against-displacement", "displacement-volume", ByDisplacement.With(facts), ratio, tolerance, remedy));
    }

    private static void MassAgainstLength(
        Specimen s, double massG, LengthMassRelation relation, Spread lengthMm, TaxonGroup group, Kinds? kinds, List<Finding> findings)
    {
        var (expected, power) = (relation.MassG(lengthMm.Nominal), relation.B);

        // A length that was itself estimated, a mass read as a range, the mean of a lot against the length of its largest.
        var doubt = (lengthMm.IsMeasured ? 1 : Math.Pow(lengthMm.High / lengthMm.Nominal, power)) * (IsFresh(s) ? 1 : NotFresh)
            * (s is { MassMargin: { } margin, Mass: { } one } ? 1 / (1 - (margin / one)) : 1) * (s is { Mass: null, Count: > 1 } ? 1.5 : 1);
        var (ratio, tolerance) = (massG / expected, relation.Accept * doubt);
        var isSharp = relation.Accept <= SharpAccept;
        if (Fits(ratio, isSharp ? tolerance : Math.Max(SharpAccept, relation.Within90) * doubt)) return;
        var kind = MeasureNames.Of(relation.Length);
        Argument[] facts =
        [
            ("group", group.Name), ("length", Length.FromMillimeters(lengthMm.Nominal)), ("kind", kind), ("expected", Mass.FromGrams(expected)),
            ("low", expected / relation.Accept), ("high", expected * relation.Accept), ("mass", Mass.FromGrams(massG)),
        ];
        List<Slip> slips = [.. Slip.OfMass(massG), .. Slip.OfLength(kind, lengthMm.Nominal, power)];
        if (s.Count > 1 && s.Mass is not null) slips.Insert(0, new(MassOfLot, 1.0 / s.Count));
        if (relation.Length == group.Length)
        {
            if (group.TotalPerLength is { Nominal: > 1 } tail) slips.Add(new(TailIncluded.With(("kind", kind)), Math.Pow(tail.Nominal, power)));
            foreach (var (other, ratioOf) in group.OtherLengths)
                slips.Add(new(OtherGiven.With(("other", MeasureNames.Of(other)), ("kind", kind)), Math.Pow(ratioOf.Nominal, power)));
        }

        if (relation.Length == LengthKind.Disc) slips.Add(new(RadiusGiven, Math.Pow(2, -power)));
        var remedy = Slip.Remedy(ratio, Math.Max(relation.Within90, Math.Sqrt(relation.Accept)) * doubt, slips, isSharp);
        remedy = FinerWords.With(remedy, group, relation, kinds);

        // Within what a wide relation takes in, but where a place of the point would fit as well: said, and no more.
        findings.Add(Fits(ratio, tolerance)
            ? Finding.Note("mass-against-length", ByLength.With(facts), remedy) with { Subject = "mass" }
            : Judged("mass-against-length", "mass", ByLength.With(facts), ratio, tolerance, remedy, IsFresh(s)));
    }

    private static void Across(Specimen s, double volumeMl, Spread? lengthMm, TaxonGroup group, List<Finding> findings)
    {
        var shape = group.Shape;

        // Proportions that are assumed judge nobody.
        if (shape.Measured is not { } spread || s is { Thickness: null, Width: null, Height: null, Girth: null } || IsUngrown(s)) return;
        var expected = lengthMm is { } l ? shape.HalfThicknessMm(volumeMl, l.Nominal) : BodyThickness.Alone(group, BodyLength.Customary(s, group), volumeMl);

        // A fat or a starved animal besides: judgement.
        var tolerance = Math.Pow(lengthMm is null ? shape.Spread : spread, NinetyNineOfNinety) * 1.35 * (IsFresh(s) ? 1 : NotFresh);
        if (BodyThickness.ByCallipers(s, shape) is { } half && !Fits(half.Nominal / expected, tolerance))
        {
            var (subject, name) = s.Thickness is not null ? ("thickness", MeasureNames.Thickness)
                : s.Width is not null ? ("width", MeasureNames.Width) : ("height", MeasureNames.Height);
            var ratio = half.Nominal / expected;
            findings.Add(Judged(
                "thickness-against-mass", subject, ByThickness.With([.. Sizes(group, volumeMl, 2 * expected, 2 * half.Nominal), ("name", name)]),
                ratio, tolerance, Slip.Remedy(ratio, tolerance, Upside(name, 2 * half.Nominal, new(HalfThickness, 2))), IsFresh(s)));
        }

        if (s.Girth is { } girth && expected * shape.GirthPerHalfThickness is var round && !Fits(girth.Millimeters / round, tolerance))
        {
            var ratio = girth.Millimeters / round;
            findings.Add(Judged(
                "girth-against-mass", "girth", ByGirth.With(Sizes(group, volumeMl, round, girth.Millimeters)), ratio, tolerance,
                Slip.Remedy(ratio, tolerance, [.. Upside(MeasureNames.Girth, girth.Millimeters, new(HalfGirth, 2)), new(ThicknessAsGirth, Math.PI)]),
                IsFresh(s)));
        }
    }

    private static bool IsFresh(Specimen s) => s.Condition is null or Condition.Fresh or Condition.Chilled;

    /// <summary>What is said of grown animals says nothing of eggs, embryos and larvae.</summary>
    private static bool IsUngrown(Specimen s, LengthMassRelation? relation = null) =>
        s.LifeStage is LifeStage.Egg or LifeStage.Embryo or LifeStage.Larva && relation?.Length != LengthKind.EggDiameter;

    private static Argument[] Sizes(TaxonGroup group, double volumeMl, double expectedMm, double givenMm) =>
    [
        ("group", group.Name), ("volume", Volume.FromMilliliters(volumeMl)),
        ("expected", Length.FromMillimeters(expectedMm)), ("given", Length.FromMillimeters(givenMm)),
    ];

    /// <summary>Slips of a length that is itself the value judged: put right, the ratio moves the other way.</summary>
    private static Slip[] Upside(Phrase name, double mm, Slip halved) => [.. Slip.OfLength(name, mm, 1).Select(s => s with { Factor = 1 / s.Factor }), halved];

    private static bool Fits(double ratio, double tolerance) => Math.Max(ratio, 1 / ratio) <= tolerance;

    private static Finding Judged(string id, string subject, Message message, double ratio, double tolerance, Message remedy, bool mayStop = true) =>
        new(id, mayStop && !Fits(ratio, tolerance * Absurd) ? Severity.Error : Severity.Warning, message, remedy) { Subject = subject };
}
