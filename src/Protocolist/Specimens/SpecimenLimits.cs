using System.Linq.Expressions;
using System.Text.Json;
using FluentValidation;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>What a specimen may say at all, whoever it is from: texts that can be shown, dates that can be meant, numbers that sums can be made of.</summary>
internal sealed class SpecimenLimits : AbstractValidator<Specimen>
{
    /// <summary>No museum jars more at once; beyond it sums of fluids leave what stock is counted in. The project's choice.</summary>
    private static readonly Mass HeaviestLot = Mass.FromTonnes(500);

    private const int MostAnimals = 1_000_000;

    private static readonly Phrase AbsurdCount = new("absurd-count", "count is {count}, and {most} is the most");
    private static readonly Phrase AbsurdCountRemedy = new("absurd-count.remedy", "plan for a part of the lot");
    private static readonly Phrase AbsurdLot = new("absurd-lot", "{count} animals together would weigh {lot}, more than is ever planned at once ({most})");
    private static readonly Phrase AbsurdLotRemedy = new("absurd-lot.remedy", "check the count and the units; the measurements are those of one animal");
    private static readonly Phrase UnknownWord = new("unknown-word.specimen", "'{key}' has a value that there is no word for");
    private static readonly Phrase UnknownWordRemedy = new("unknown-word.specimen.remedy", "give one of its values");

    public SpecimenLimits()
    {
        RuleFor(s => s.Count).LessThanOrEqualTo(MostAnimals)
            .Says("absurd-count", s => AbsurdCount.With(("count", s.Count), ("most", MostAnimals)), _ => AbsurdCountRemedy);
        RuleFor(s => s.Count).Must((s, _) => !(LotOf(s) > HeaviestLot.Kilograms)).Says(
            "absurd-lot",
            s => AbsurdLot.With(("count", s.Count), Argument.Of("lot", LotOf(s), Dimension.OfMass), ("most", HeaviestLot)),
            _ => AbsurdLotRemedy);
        RuleFor(s => s.FoundOn).IsSane();
        RuleFor(s => s.DiedAt).IsSane();
        Known(s => s.Sex);
        Known(s => s.LifeStage);
        Known(s => s.Condition);
        Known(s => s.IntendedUse);
        RuleFor(s => s.Id).IsLine();
        RuleFor(s => s.Group).IsLine();
        RuleFor(s => s.ScientificName).IsLine();
        RuleFor(s => s.HigherTaxon).IsLine();
        RuleFor(s => s.Where).IsLine();
        RuleFor(s => s.HowObtained).IsLine();
        RuleFor(s => s.CollectedBy).IsLine();
        RuleFor(s => s.Posture).IsLine();
        RuleForEach(s => s.Permits).IsLine();
        RuleFor(s => s.Notes).IsProse();
    }

    private void Known<T>(Expression<Func<Specimen, T?>> property)
        where T : struct, Enum =>
        RuleFor(property).Must(w => w is not { } word || Enum.IsDefined(word)).Says(
            "unknown-word",
            _ => UnknownWord.With(("key", JsonNamingPolicy.KebabCaseLower.ConvertName(((MemberExpression)property.Body).Member.Name))),
            _ => UnknownWordRemedy);

    /// <summary>All animals together, kg, by whichever is given; 0 where nothing is.</summary>
    private static double LotOf(Specimen specimen) =>
        Math.Max(specimen.LotMass?.Kilograms ?? 0, specimen.Count * (specimen.Mass?.Kilograms ?? (specimen.DisplacementVolume?.CubicMeters * 1000) ?? 0));
}
