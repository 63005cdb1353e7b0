using System.Text.Json;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Specimens.Groups;
using Protocolist.Specimens.Measuring;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>One thing that cannot be, whatever the group.</summary>
/// <param name="Id">The id of the finding.</param>
/// <param name="Property">The property of <see cref="Specimen"/> that it is said of.</param>
/// <param name="IsBroken">Whether it is the case.</param>
/// <param name="Message">What is the case.</param>
/// <param name="Remedy">What to do.</param>
internal sealed record SpecimenRule(string Id, string Property, Func<Specimen, bool> IsBroken, Func<Specimen, Message> Message, Phrase Remedy)
{
    /// <summary>The property as a specimen file has it.</summary>
    public string Subject { get; } = JsonNamingPolicy.KebabCaseLower.ConvertName(Property);
}

/// <summary>What can be said about a specimen without knowing its group, in the order in which it is said.</summary>
internal static class SpecimenRules
{
    // The largest animal that ever lived, a blue whale, is under 200 t and 34 m: from memory.
    private static readonly Mass HeaviestAnimal = Mass.FromTonnes(200);
    private static readonly Length LongestAnimal = Length.FromMeters(60); // a siphonophore or bootlace worm: from memory
    private static readonly Volume LargestAnimal = Volume.FromCubicMeters(220);

    private static readonly Phrase MissingId = new("missing-id.specimen", "the specimen has no id");
    private static readonly Phrase MissingIdRemedy = new("missing-id.remedy-specimen", "give id: the catalogue or field number");
    private static readonly Phrase BelowOne = new("count-below-one", "count is {count}, and must be 1 or more");
    private static readonly Phrase BelowOneRemedy = new("count-below-one.remedy", "count the animals");
    private static readonly Phrase NotPositive = new("not-positive", "{name} is {value}, and must be a number above 0");
    private static readonly Phrase NotPositiveRemedy = new("not-positive.remedy", "measure it, or leave it out: what is missing is estimated");
    private static readonly Phrase Absurd = new("absurd-size", "{name} is {value}, more than any animal ({most})");
    private static readonly Phrase AbsurdRemedy = new("absurd-size.remedy", "check the unit and the decimal point");
    private static readonly Phrase WideMargin = new("mass-margin", "a margin of {margin} leaves no mass above 0, or there is no mass beside it");
    private static readonly Phrase WideMarginRemedy = new("mass-margin.remedy", "give the mass as it was read, and half of its range");
    private static readonly Phrase NoMeasurement = new("no-measurement", "nothing says how large the animal is");
    private static readonly Phrase NoMeasurementRemedy = new("no-measurement.remedy", "weigh it, or give its length");
    private static readonly Phrase LongerPart = new("part-longer-than-whole", "{name} {part:0.## cm} is more than total length {whole:0.## cm}");
    private static readonly Phrase LongerPartRemedy = new("part-longer-than-whole.remedy", "the two may have been swapped");
    private static readonly Phrase Thicker = new(
        "thickness-over-width",
        "thickness {thickness:0.## cm} is more than width {width:0.## cm} or height {height:0.## cm}, and should be the least of the three");
    private static readonly Phrase ThickerRemedy = new("thickness-over-width.remedy", "measure the thickness through the thickest place, the shorter way");
    private static readonly Phrase TightGirth = new(
        "girth-against-width", "girth {girth:0.## cm} cannot go round a body of width {width:0.## cm} and height {height:0.## cm}");
    private static readonly Phrase TightGirthRemedy = new(
        "girth-against-width.remedy", "a girth is at least twice the width and twice the height: check the units, and that the tape went all the way round");
    private static readonly Phrase LightLot = new(
        "lot-lighter-than-one", "the lot of {count} weighs {lot:0.#### kg}, less than its largest animal at {one:0.#### kg}");
    private static readonly Phrase LightLotRemedy = new("lot-lighter-than-one.remedy", "mass: is one animal, lot-mass: all together");
    private static readonly Phrase DiedLater = new("died-after-found", "it died on {died:day}, after it was found dead on {found:day}");
    private static readonly Phrase DiedLaterRemedy = new(
        "died-after-found.remedy", "correct one of the dates; if it was taken alive, found-on is the day it was dead in hand");
    private static readonly Phrase UnknownPosture = new("unknown-posture", "{group:a} is never laid '{posture}'; custom decides in its place");
    private static readonly Phrase NotGiven = new("not-given", "(none)");

    public static readonly SpecimenRule[] All =
    [
        new("missing-id", nameof(Specimen.Id), s => string.IsNullOrWhiteSpace(s.Id), _ => MissingId, MissingIdRemedy),
        new("count-below-one", nameof(Specimen.Count), s => s.Count < 1, s => BelowOne.With(("count", s.Count)), BelowOneRemedy),
        .. Sized(nameof(Specimen.Mass), MeasureNames.Mass, s => s.Mass?.Kilograms, HeaviestAnimal.Kilograms, Dimension.OfMass),
        .. Sized(
            nameof(Specimen.DisplacementVolume), MeasureNames.DisplacementVolume, s => s.DisplacementVolume?.CubicMeters, LargestAnimal.CubicMeters,
            Dimension.OfVolume),
        new(
            "mass-margin", nameof(Specimen.MassMargin), s => s.MassMargin is { } margin && !(margin.Grams >= 0 && margin.Grams < s.Mass?.Grams),
            s => WideMargin.With(("margin", s.MassMargin!.Value)), WideMarginRemedy),
        Positive(nameof(Specimen.LotMass), MeasureNames.LotMass, s => s.LotMass?.Kilograms, Dimension.OfMass),
        .. Sized(nameof(Specimen.Length), MeasureNames.Length, s => s.Length),
        .. Sized(nameof(Specimen.TotalLength), MeasureNames.TotalLength, s => s.TotalLength),
        .. Sized(nameof(Specimen.StandardLength), MeasureNames.StandardLength, s => s.StandardLength),
        .. Sized(nameof(Specimen.SnoutVentLength), MeasureNames.SnoutVentLength, s => s.SnoutVentLength),
        .. Sized(nameof(Specimen.HeadBodyLength), MeasureNames.HeadBodyLength, s => s.HeadBodyLength),
        .. Sized(nameof(Specimen.CarapaceLength), MeasureNames.CarapaceLength, s => s.CarapaceLength),
        .. Sized(nameof(Specimen.MantleLength), MeasureNames.MantleLength, s => s.MantleLength),
        .. Sized(nameof(Specimen.DiscWidth), MeasureNames.DiscWidth, s => s.DiscWidth),
        .. Sized(nameof(Specimen.ForearmLength), MeasureNames.ForearmLength, s => s.ForearmLength),
        .. Sized(nameof(Specimen.CarapaceWidth), MeasureNames.CarapaceWidth, s => s.CarapaceWidth),
        .. Sized(nameof(Specimen.EggDiameter), MeasureNames.EggDiameter, s => s.EggDiameter),
        .. Sized(nameof(Specimen.VentralMantleLength), MeasureNames.VentralMantleLength, s => s.VentralMantleLength),
        .. Sized(nameof(Specimen.BodyLength), MeasureNames.BodyLength, s => s.BodyLength),
        .. Sized(nameof(Specimen.Girth), MeasureNames.Girth, s => s.Girth),
        .. Sized(nameof(Specimen.Width), MeasureNames.Width, s => s.Width),
        .. Sized(nameof(Specimen.Height), MeasureNames.Height, s => s.Height),
        .. Sized(nameof(Specimen.Thickness), MeasureNames.Thickness, s => s.Thickness),
        new("no-measurement", nameof(Specimen.Mass), s => !HasSize(s), _ => NoMeasurement, NoMeasurementRemedy),
        PartOfTotal(nameof(Specimen.StandardLength), MeasureNames.StandardLength, s => s.StandardLength),
        PartOfTotal(nameof(Specimen.SnoutVentLength), MeasureNames.SnoutVentLength, s => s.SnoutVentLength),
        PartOfTotal(nameof(Specimen.HeadBodyLength), MeasureNames.HeadBodyLength, s => s.HeadBodyLength),
        PartOfTotal(nameof(Specimen.BodyLength), MeasureNames.BodyLength, s => s.BodyLength),
        new(
            "thickness-over-width", nameof(Specimen.Thickness), s => IsOver(s.Thickness, s.Width) || IsOver(s.Thickness, s.Height),
            s => Thicker.With(Fact("thickness", s.Thickness), Fact("width", s.Width), Fact("height", s.Height)), ThickerRemedy),
        new(
            "girth-against-width", nameof(Specimen.Girth), s => s.Girth is { } girth && (IsTight(girth, s.Width) || IsTight(girth, s.Height)),
            s => TightGirth.With(Fact("girth", s.Girth), Fact("width", s.Width), Fact("height", s.Height)), TightGirthRemedy),
        new(
            "lot-lighter-than-one", nameof(Specimen.LotMass), s => s is { LotMass: { } lot, Mass: { } one } && !(lot.Kilograms >= one.Kilograms * 0.999),
            s => LightLot.With(("count", s.Count), ("lot", s.LotMass!.Value), ("one", s.Mass!.Value)), LightLotRemedy),
        new(
            "died-after-found", nameof(Specimen.DiedAt),
            s => s is { DiedAt: { } died, FoundOn: { } found } && NodaTime.Period.DaysBetween(found, died.InUtc().Date) > 1,
            s => DiedLater.With(("died", s.DiedAt!.Value.InUtc().Date), ("found", s.FoundOn!.Value)), DiedLaterRemedy),
    ];

    /// <summary>Says what cannot be, and finds the group where there is one; <see cref="Finding.Subject"/> is the property as a specimen file has it.</summary>
    public static TaxonGroup? Check(Specimen specimen, Kinds kinds, List<Finding> findings)
    {
        foreach (var rule in All)
        {
            if (rule.IsBroken(specimen)) findings.Add(Finding.Error(rule.Id, rule.Message(specimen), rule.Remedy) with { Subject = rule.Subject });
        }

        var before = findings.Count;
        var group = kinds.Resolve(specimen.Group, specimen.HigherTaxon, findings);
        for (var i = before; i < findings.Count; i++) findings[i] = findings[i] with { Subject = SubjectOf(findings[i]) };
        if (group is not null && specimen.Posture is { } posture && PostureRows.Of(group) is var own && !own.Any(p => p.Id == posture))
        {
            findings.Add(Finding.Warning(
                "unknown-posture", UnknownPosture.With(("group", group.Name), ("posture", posture)), Suggestion.For(posture, [.. own.Select(p => p.Id)])) with
            { Subject = "posture" });
        }

        return group;
    }

    /// <summary>Which of the two names of a group a finding is about.</summary>
    public static string SubjectOf(Finding finding) => finding.Id == "unknown-higher-taxon" ? "higher-taxon" : "group";

    private static SpecimenRule[] Sized(string property, Phrase name, Func<Specimen, Length?> length) =>
        Sized(property, name, s => length(s)?.Meters, LongestAnimal.Meters, Dimension.OfLength);

    private static SpecimenRule[] Sized(string property, Phrase name, Func<Specimen, double?> si, double most, Dimension dimension) =>
    [
        Positive(property, name, si, dimension),
        new(
            "absurd-size", property, s => si(s) is { } value && double.IsFinite(value) && value > most,
            s => Absurd.With(("name", name), Argument.Of("value", si(s)!.Value, dimension), Argument.Of("most", most, dimension)), AbsurdRemedy),
    ];

    private static SpecimenRule Positive(string property, Phrase name, Func<Specimen, double?> si, Dimension dimension) => new(
        "not-positive", property, s => si(s) is { } value && !(value > 0 && double.IsFinite(value)),
        s => NotPositive.With(("name", name), Argument.Of("value", si(s)!.Value, dimension)), NotPositiveRemedy);

    private static SpecimenRule PartOfTotal(string property, Phrase name, Func<Specimen, Length?> part) => new(
        "part-longer-than-whole", property, s => IsOver(part(s), s.TotalLength),
        s => LongerPart.With(("name", name), ("part", part(s)!.Value), ("whole", s.TotalLength!.Value)), LongerPartRemedy);

    private static bool HasSize(Specimen s) =>
        s.Mass is not null || s.LotMass is not null || s.DisplacementVolume is not null || BodyLength.HasAnyLength(s);

    private static bool IsOver(Length? part, Length? whole) =>
        part is not null && whole is not null && !(part.Value.Meters <= whole.Value.Meters * 1.001); // readings rounded each for itself

    // Round a flat ribbon the tape goes 2 widths, round anything else more; 5 % for a tight tape.
    private static bool IsTight(Length girth, Length? across) => across is not null && !(girth.Meters >= 1.9 * across.Value.Meters);

    private static Argument Fact(string name, Length? length) => length is { } given ? (name, given) : (name, NotGiven);
}
