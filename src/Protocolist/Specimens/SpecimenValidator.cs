using System.Linq.Expressions;
using System.Text.Json;
using FluentValidation;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Specimens;

/// <summary>What can be said about a specimen without knowing its group: values that cannot be, and values that contradict each other.</summary>
/// <remarks>
/// Every rule carries a kebab-case error code and, as its state, the remedy. Codes: <c>missing-id</c>, <c>count-below-one</c>,
/// <c>not-positive</c>, <c>absurd-size</c>, <c>no-measurement</c>, <c>part-longer-than-whole</c>, <c>thickness-over-width</c>,
/// <c>girth-against-width</c>, <c>lot-lighter-than-one</c>, <c>died-after-found</c>, those of <see cref="SpecimenLimits"/>, and those of <see cref="TaxonGroups.Resolve"/>.
/// What contradicts itself only for a known group is found by <see cref="BodyMeasure"/>.
/// </remarks>
internal sealed class SpecimenValidator : AbstractValidator<Specimen>
{
    // The largest animal that ever lived, a blue whale, is under 200 t and 34 m: from memory.
    private static readonly Mass HeaviestAnimal = Mass.FromTonnes(200);
    private static readonly Length LongestAnimal = UnitsNet.Length.FromMeters(60); // a siphonophore or bootlace worm: from memory
    private static readonly Volume LargestAnimal = Volume.FromCubicMeters(220);

    private static readonly Phrase NotPositive = new("not-positive", "{name} is {value}, and must be a number above 0");
    private static readonly Phrase NotPositiveRemedy = new("not-positive.remedy", "measure it, or leave it out: what is missing is estimated");
    private static readonly Phrase Absurd = new("absurd-size", "{name} is {value}, more than any animal ({most})");
    private static readonly Phrase AbsurdRemedy = new("absurd-size.remedy", "check the unit and the decimal point");

    /// <summary>Sets the rules up.</summary>
    public SpecimenValidator()
    {
        Include(new SpecimenLimits());
        RuleFor(s => s.Id).NotEmpty()
            .WithErrorCode("missing-id").WithMessage("the specimen has no id").WithState(_ => "give id: the catalogue or field number");
        RuleFor(s => s.Count).GreaterThanOrEqualTo(1)
            .WithErrorCode("count-below-one").WithMessage(s => Invariant($"count is {s.Count}, and must be 1 or more")).WithState(_ => "count the animals");

        Sized(s => s.Mass, m => m.Kilograms, HeaviestAnimal.Kilograms, Dimension.OfMass);
        Sized(s => s.DisplacementVolume, v => v.CubicMeters, LargestAnimal.CubicMeters, Dimension.OfVolume);
        Positive(s => s.LotMass, m => m.Kilograms, Dimension.OfMass);
        Sized(s => s.Length, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.TotalLength, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.StandardLength, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.SnoutVentLength, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.HeadBodyLength, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.CarapaceLength, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.MantleLength, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.DiscWidth, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.Girth, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.Width, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.Height, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);
        Sized(s => s.Thickness, l => l.Meters, LongestAnimal.Meters, Dimension.OfLength);

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

    private void Positive<T>(Expression<Func<Specimen, T?>> property, Func<T, double> number, Dimension dimension)
        where T : struct =>
        RuleFor(property).Must(v => v is null || (number(v.Value) > 0 && double.IsFinite(number(v.Value))))
            .Says("not-positive", s => NotPositive.With(("name", Words(property)), Argument.Of("value", Number(property, number, s), dimension)), _ => NotPositiveRemedy);

    private void Sized<T>(Expression<Func<Specimen, T?>> property, Func<T, double> number, double most, Dimension dimension)
        where T : struct
    {
        Positive(property, number, dimension);
        RuleFor(property).Must(v => v is null || !double.IsFinite(number(v.Value)) || number(v.Value) <= most)
            .Says(
                "absurd-size",
                s => Absurd.With(("name", Words(property)), Argument.Of("value", Number(property, number, s), dimension), Argument.Of("most", most, dimension)),
                _ => AbsurdRemedy);
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

    private static string Cm(Length? length) =>
        length is null ? "(none)" : Invariant($"{length.Value.Centimeters:0.##} cm");

    private static string Kg(Mass? mass) =>
        mass is null ? "(none)" : Invariant($"{mass.Value.Kilograms:0.####} kg");
}
