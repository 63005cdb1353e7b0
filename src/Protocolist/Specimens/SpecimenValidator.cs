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
/// <c>girth-against-width</c>, <c>lot-lighter-than-one</c>, <c>died-after-found</c>, <c>absurd-date</c>, <c>absurd-count</c>, <c>absurd-lot</c>,
/// <c>not-one-line</c>, <c>unreadable-character</c>, <c>text-too-long</c>, <c>unknown-word</c>, and those of <see cref="TaxonGroups.Resolve"/>.
/// What contradicts itself only for a known group is found by <see cref="BodyMeasure"/>.
/// </remarks>
internal sealed class SpecimenValidator : AbstractValidator<Specimen>
{
    // The largest animal that ever lived, a blue whale, is under 200 t and 34 m: from memory.
    private static readonly Mass HeaviestAnimal = Mass.FromTonnes(200);
    private static readonly Length LongestAnimal = UnitsNet.Length.FromMeters(60); // a siphonophore or bootlace worm: from memory
    private static readonly Volume LargestAnimal = Volume.FromCubicMeters(220);

    /// <summary>No museum jars more at once; beyond it sums of fluids leave what stock is counted in. The project's choice.</summary>
    private static readonly Mass HeaviestLot = Mass.FromTonnes(500);

    private const int MostAnimals = 1_000_000;

    public SpecimenValidator()
    {
        RuleFor(s => s.Id).NotEmpty()
            .WithErrorCode("missing-id").WithMessage("the specimen has no id").WithState(_ => "give id: the catalogue or field number");
        RuleFor(s => s.Count).GreaterThanOrEqualTo(1)
            .WithErrorCode("count-below-one").WithMessage(s => Invariant($"count is {s.Count}, and must be 1 or more")).WithState(_ => "count the animals");
        RuleFor(s => s.Count).LessThanOrEqualTo(MostAnimals)
            .WithErrorCode("absurd-count").WithMessage(s => Invariant($"count is {s.Count}, and {MostAnimals} is the most")).WithState(_ => "plan for a part of the lot");
        Texts();
        Known(s => s.Sex);
        Known(s => s.LifeStage);
        Known(s => s.Condition);
        Known(s => s.IntendedUse);
        RuleFor(s => s.FoundOn).IsSane();
        RuleFor(s => s.DiedAt).IsSane();

        Sized(s => s.Mass, m => m.Kilograms, HeaviestAnimal.Kilograms, Dimension.OfMass);
        Sized(s => s.DisplacementVolume, v => v.CubicMeters, LargestAnimal.CubicMeters, Dimension.OfVolume);
        Positive(s => s.LotMass, m => m.Kilograms, Dimension.OfMass);
        RuleFor(s => s.Count).Must((s, _) => !(LotOf(s) > HeaviestLot.Kilograms))
            .WithErrorCode("absurd-lot")
            .WithMessage(s => Invariant($"{s.Count} animals together would weigh {Measurable.Text(LotOf(s), Dimension.OfMass)}, more than is ever planned at once ({HeaviestLot.Kilograms:0} kg)"))
            .WithState(_ => "check the count and the units; the measurements are those of one animal");
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
                context.AddFailure(new FluentValidation.Results.ValidationFailure(finding.Id == "unknown-higher-taxon" ? nameof(Specimen.HigherTaxon) : nameof(Specimen.Group), finding.Message)
                {
                    ErrorCode = finding.Id,
                    CustomState = finding.Remedy,
                    Severity = finding.Severity == Findings.Severity.Error ? FluentValidation.Severity.Error : FluentValidation.Severity.Warning,
                });
            }
        });
    }

    private void Texts()
    {
        RuleFor(s => s.Id).IsLine();
        RuleFor(s => s.Group).IsLine();
        RuleFor(s => s.ScientificName).IsLine();
        RuleFor(s => s.HigherTaxon).IsLine();
        RuleFor(s => s.Where).IsLine();
        RuleFor(s => s.HowObtained).IsLine();
        RuleFor(s => s.CollectedBy).IsLine();
        RuleForEach(s => s.Permits).IsLine();
        RuleFor(s => s.Notes).IsProse();
    }

    private void Known<T>(Expression<Func<Specimen, T?>> property)
        where T : struct, Enum =>
        RuleFor(property).Must(w => w is not { } word || Enum.IsDefined(word))
            .WithErrorCode("unknown-word").WithMessage(s => $"'{Words(property)}' has a value that there is no word for").WithState(_ => "give one of its values");

    /// <summary>All animals together, by whichever is given; NaN where nothing is.</summary>
    private static double LotOf(Specimen specimen) =>
        Math.Max(specimen.LotMass?.Kilograms ?? 0, specimen.Count * (specimen.Mass?.Kilograms ?? (specimen.DisplacementVolume?.CubicMeters * 1000) ?? 0));

    private void Positive<T>(Expression<Func<Specimen, T?>> property, Func<T, double> number, Dimension dimension)
        where T : struct =>
        RuleFor(property).Must(v => v is null || (number(v.Value) > 0 && double.IsFinite(number(v.Value))))
            .WithErrorCode("not-positive")
            .WithMessage(s => $"{Words(property)} is {Measurable.Text(Number(property, number, s), dimension)}, and must be above 0")
            .WithState(_ => "measure it, or leave it out: what is missing is estimated");

    private void Sized<T>(Expression<Func<Specimen, T?>> property, Func<T, double> number, double most, Dimension dimension)
        where T : struct
    {
        Positive(property, number, dimension);
        RuleFor(property).Must(v => v is null || !double.IsFinite(number(v.Value)) || number(v.Value) <= most)
            .WithErrorCode("absurd-size")
            .WithMessage(s => $"{Words(property)} is {Measurable.Text(Number(property, number, s), dimension)}, more than any animal ({Measurable.Text(most, dimension)})")
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

    private static string Cm(Length? length) =>
        length is null ? "(none)" : Invariant($"{length.Value.Centimeters:0.##} cm");

    private static string Kg(Mass? mass) =>
        mass is null ? "(none)" : Invariant($"{mass.Value.Kilograms:0.####} kg");
}
