using FluentValidation;
using Protocolist.Reading;

namespace Protocolist.Specimens;

/// <summary>What can be said about a specimen without knowing its group: values that cannot be, and values that contradict each other.</summary>
/// <remarks>
/// Every rule carries a kebab-case error code and, as its state, the remedy. Codes: <c>missing-id</c>, <c>count-below-one</c>,
/// <c>not-positive</c>, <c>absurd-size</c>, <c>no-measurement</c>, <c>part-longer-than-whole</c>, <c>thickness-over-width</c>,
/// <c>girth-against-width</c>, <c>lot-lighter-than-one</c>, <c>died-after-found</c>, those of <see cref="SpecimenLimits"/>, and those of <see
/// cref="Kinds.Resolve(string?, string?)"/>.
/// What contradicts itself only for a known group is found by <see cref="BodyMeasure"/>.
/// </remarks>
internal sealed class SpecimenValidator : AbstractValidator<Specimen>
{
    /// <summary>Sets the rules up.</summary>
    public SpecimenValidator(Kinds kinds)
    {
        Include(new SpecimenLimits());
        foreach (var rule in SpecimenRules.All)
            RuleFor(s => s).Must(s => !rule.IsBroken(s)).Says(rule.Id, rule.Message, _ => rule.Remedy).OverridePropertyName(rule.Property);

        RuleFor(s => s).Custom((specimen, context) =>
        {
            foreach (var finding in kinds.Resolve(specimen.Group, specimen.HigherTaxon).Findings)
            {
                var property = SpecimenRules.SubjectOf(finding) == "group" ? nameof(Specimen.Group) : nameof(Specimen.HigherTaxon);
                context.AddFailure(ValidatorFindings.Failure(finding, property));
            }
        });
    }
}
