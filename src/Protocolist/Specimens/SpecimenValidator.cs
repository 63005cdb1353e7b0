using System.Collections.Immutable;
using System.Linq.Expressions;
using System.Text.Json;
using FluentValidation;
using Protocolist.Findings;
using Protocolist.Reading;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Specimens;

/// <summary>What can be said about a specimen without knowing its group: values that cannot be, and values that contradict each other.</summary>
/// <remarks>
/// Every rule carries a kebab-case error code and, as its state, the remedy. Codes: <c>missing-id</c>, <c>count-below-one</c>,
/// <c>not-positive</c>, <c>absurd-size</c>, <c>no-measurement</c>, <c>part-longer-than-whole</c>, <c>thickness-over-width</c>,
/// <c>girth-against-width</c>, <c>lot-lighter-than-one</c>, <c>died-after-found</c>, and those of <see cref="TaxonGroups.Resolve"/>.
/// What contradicts itself only for a known group is found by <see cref="BodyMeasure"/>.
/// </remarks>
public sealed class SpecimenValidator : AbstractValidator<Specimen>
{
    // The largest animal that ever lived, a blue whale, is under 200 t and 34 m: from memory.
    private static readonly Mass HeaviestAnimal = Mass.FromTonnes(200);
    private static readonly Length LongestAnimal = UnitsNet.Length.FromMeters(60); // a siphonophore or bootlace worm: from memory
    private static readonly Volume LargestAnimal = Volume.FromCubicMeters(220);

    /// <summary>Sets the rules up.</summary>
    public SpecimenValidator()
    {
        RuleFor(s => s.Id).NotEmpty()
            .WithErrorCode("missing-id").WithMessage("the specimen has no id").WithState(_ => "give id: the catalogue or field number");
        RuleFor(s => s.Count).GreaterThanOrEqualTo(1)
            .WithErrorCode("count-below-one").WithMessage(s => Invariant($"count is {s.Count}, and must be 1 or more")).WithState(_ => "count the animals");

        Sized(s => s.Mass, m => m.Kilograms, HeaviestAnimal.Kilograms, "kg");
        Sized(s => s.DisplacementVolume, v => v.Liters, LargestAnimal.Liters, "L");
        Positive(s => s.LotMass, m => m.Kilograms);
        Sized(s => s.Length, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.TotalLength, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.StandardLength, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.SnoutVentLength, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.HeadBodyLength, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.CarapaceLength, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.MantleLength, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.DiscWidth, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.Girth, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.Width, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.Height, Centimetres, LongestAnimal.Centimeters, "cm");
        Sized(s => s.Thickness, Centimetres, LongestAnimal.Centimeters, "cm");

        RuleFor(s => s.Mass).Must((s, _) => HasSize(s))
            .WithErrorCode("no-measurement").WithMessage("nothing says how large the animal is")
            .WithState(_ => "weigh it, or give its length");

        PartOfTotal(s => s.StandardLength, "standard length");
        PartOfTotal(s => s.SnoutVentLength, "snout-vent length");
        PartOfTotal(s => s.HeadBodyLength, "head-body length");

        RuleFor(s => s.Thickness).Must((s, t) => t is null || NotOver(t, s.Width) && NotOver(t, s.Height))
            .WithErrorCode("thickness-over-width")
            .WithMessage(s => $"thickness {Cm(s.Thickness)} is more than width {Cm(s.Width)} or height {Cm(s.Height)}, and should be the least of the three")
            .WithState(_ => "measure the thickness through the thickest place, the shorter way");
        RuleFor(s => s.Girth).Must((s, g) => g is null || GirthFits(g.Value, s.Width) && GirthFits(g.Value, s.Height))
            .WithErrorCode("girth-against-width")
            .WithMessage(s => $"girth {Cm(s.Girth)} cannot go round a body of width {Cm(s.Width)} and height {Cm(s.Height)}")
            .WithState(_ => "a girth is at least twice the width and twice the height: check the units, and that the tape went all the way round");
        RuleFor(s => s.LotMass).Must((s, lot) => lot is null || s.Mass is null || lot.Value.Kilograms >= s.Mass.Value.Kilograms * 0.999)
            .WithErrorCode("lot-lighter-than-one")
            .WithMessage(s => Invariant($"the lot of {s.Count} weighs {Kg(s.LotMass)}, less than its largest animal at {Kg(s.Mass)}"))
            .WithState(_ => "mass: is one animal, lot-mass: all together");
        RuleFor(s => s.DiedAt).Must((s, died) => died is null || s.FoundOn is null || died.Value.InUtc().Date <= s.FoundOn.Value.PlusDays(1))
            .WithErrorCode("died-after-found")
            .WithMessage(s => Invariant($"it died on {s.DiedAt?.InUtc().Date:uuuu-MM-dd}, after it was found dead on {s.FoundOn:uuuu-MM-dd}"))
            .WithState(_ => "correct one of the dates; if it was taken alive, found-on is the day it was dead in hand");

        RuleFor(s => s.Group).Custom((_, context) =>
        {
            var specimen = context.InstanceToValidate;
            foreach (var finding in TaxonGroups.Resolve(specimen.Group, specimen.HigherTaxon).Findings)
            {
                context.AddFailure(ValidatorFindings.Failure(finding, finding.Id == "unknown-higher-taxon" ? nameof(Specimen.HigherTaxon) : nameof(Specimen.Group)));
            }
        });
    }

    /// <summary>Validates and says the result as findings; <see cref="Finding.Subject"/> is the property in kebab-case, as in a specimen file.</summary>
    /// <param name="specimen">The specimen.</param>
    /// <returns>The findings, in the order of the rules; empty where nothing is wrong.</returns>
    public ImmutableArray<Finding> Check(Specimen specimen) =>
    [
        .. Validate(specimen).Errors.Select(e => ValidatorFindings.Of(e) with { Subject = JsonNamingPolicy.KebabCaseLower.ConvertName(e.PropertyName) }),
    ];

    private void Positive<T>(Expression<Func<Specimen, T?>> property, Func<T, double> number)
        where T : struct =>
        RuleFor(property).Must(v => v is null || (number(v.Value) > 0 && double.IsFinite(number(v.Value))))
            .WithErrorCode("not-positive")
            .WithMessage(s => Invariant($"{Words(property)} is {Number(property, number, s):0.####}, and must be a number above 0"))
            .WithState(_ => "measure it, or leave it out: what is missing is estimated");

    private void Sized<T>(Expression<Func<Specimen, T?>> property, Func<T, double> number, double most, string unit)
        where T : struct
    {
        Positive(property, number);
        RuleFor(property).Must(v => v is null || !double.IsFinite(number(v.Value)) || number(v.Value) <= most)
            .WithErrorCode("absurd-size")
            .WithMessage(s => Invariant($"{Words(property)} is {Number(property, number, s):0} {unit}, more than any animal ({most:0} {unit})"))
            .WithState(_ => "check the unit and the decimal point");
    }

    private void PartOfTotal(Expression<Func<Specimen, Length?>> property, string name)
    {
        var read = property.Compile();
        RuleFor(property).Must((s, part) => part is null || NotOver(part, s.TotalLength))
            .WithErrorCode("part-longer-than-whole")
            .WithMessage(s => $"{name} {Cm(read(s))} is more than total length {Cm(s.TotalLength)}")
            .WithState(_ => "the two may have been swapped");
    }

    private static bool HasSize(Specimen s) =>
        s.Mass is not null || s.LotMass is not null || s.DisplacementVolume is not null || s.Length is not null || s.TotalLength is not null
        || s.StandardLength is not null || s.SnoutVentLength is not null || s.HeadBodyLength is not null || s.CarapaceLength is not null
        || s.MantleLength is not null || s.DiscWidth is not null;

    private static bool NotOver(Length? part, Length? whole) =>
        part is null || whole is null || part.Value.Meters <= whole.Value.Meters * 1.001; // readings rounded each for itself

    // Round a flat ribbon the tape goes 2 widths, round anything else more; 5 % for a tight tape.
    private static bool GirthFits(Length girth, Length? across) =>
        across is null || girth.Meters >= 1.9 * across.Value.Meters;

    private static string Words<T>(Expression<Func<Specimen, T?>> property)
        where T : struct =>
        JsonNamingPolicy.KebabCaseLower.ConvertName(((MemberExpression)property.Body).Member.Name).Replace('-', ' ');

    private static double Number<T>(Expression<Func<Specimen, T?>> property, Func<T, double> number, Specimen specimen)
        where T : struct =>
        property.Compile()(specimen) is { } value ? number(value) : double.NaN;

    private static double Centimetres(Length length) => length.Centimeters;

    private static string Cm(Length? length) =>
        length is null ? "(none)" : Invariant($"{length.Value.Centimeters:0.##} cm");

    private static string Kg(Mass? mass) =>
        mass is null ? "(none)" : Invariant($"{mass.Value.Kilograms:0.####} kg");
}
